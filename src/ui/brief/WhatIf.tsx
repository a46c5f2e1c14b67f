/** What would change the choice: each other choice with the answers that lead to it, and where numbers tip. */
import type { WhatIf as List, When } from '../../choice/firm/what-if'
import { asList } from '../say/as-list'
import { Say } from '../say/Say'
import { href } from '../site/href'
import { Section } from './Section'

const BEGINNING: Readonly<Record<string, string>> = { size: 'The same, at another size: ' }

/** "budget: “Low” or “High”; local wood: “Yes”", each question leading back to it. */
function Whens({ of }: { readonly of: readonly When[] }) {
  const questions = [...new Set(of.map((when) => when.question))]
  return (
    <>
      {questions.map((question, i) => {
        const own = of.filter((when) => when.question === question)
        return (
          <span key={question}>
            {i > 0 && '; '}
            <a href={href(`/start/#q=${question}`)}>{own[0]?.label.toLowerCase()}</a>:{' '}
            {own.map(({ words }) => `“${words}”`).join(' or ')}
          </span>
        )
      })}
      .
    </>
  )
}

/** `list` is null while it is worked off. */
export function WhatIf({ list }: { readonly list: List | null }) {
  return (
    <Section
      id="change"
      title="What would change this"
      margin={
        <p>
          Every other single answer is tried, with all the rest as they stand. Questions left open count as assumed.
        </p>
      }
    >
      {list === null ? (
        <p class="soft no-print" role="status">
          Trying every other answer …
        </p>
      ) : (
        <>
          {list.turns.length === 0 && (
            <p>No single other answer would change the wood, its cut, its dryness or its size.</p>
          )}
          {list.turns.length > 0 && (
            <ul class="list" {...asList}>
              {list.turns.map((turn, i) => (
                <li key={i}>
                  <b>
                    {BEGINNING[turn.effect]}
                    {turn.says ? <Say s={turn.says} /> : 'Nothing in this shop would pass'}
                  </b>
                  , if <Whens of={turn.when} />
                </li>
              ))}
            </ul>
          )}
          {list.tipping.length > 0 && (
            <>
              <h3>Where it tips</h3>
              <ul class="list" {...asList}>
                {list.tipping.map((point, i) => (
                  <li key={i}>
                    <Say s={point.says} />
                  </li>
                ))}
              </ul>
            </>
          )}
          {list.idle.length > 0 && (
            <p class="soft">
              Whatever else you answered, the choice would stand:{' '}
              {list.idle.map((label) => label.toLowerCase()).join(', ')}.
            </p>
          )}
        </>
      )}
    </Section>
  )
}
