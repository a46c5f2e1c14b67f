/** How sure the answer is, and which open questions would settle it. */

import type { Brief } from '../../choice/brief-types'
import { asList } from '../say/as-list'
import { Say } from '../say/Say'
import { href } from '../site/href'
import { Section } from './Section'
import { List } from './Sentences'

export function Sure({ brief }: { readonly brief: Brief }) {
  const { sure } = brief
  const movers = sure.settle.filter((open) => open.moves)
  const idle = sure.settle.filter((open) => !open.moves)
  return (
    <Section
      id="sure"
      title="How sure is that?"
      margin={
        sure.of > 1 && (
          <p>
            <b>
              First in {sure.firstIn} of {sure.of}
            </b>{' '}
            of the ways your open answers and the weighing could turn out.
          </p>
        )
      }
    >
      <p>
        <Say s={sure.says} />
      </p>
      {movers.length > 0 && (
        <>
          <h3>What would settle it</h3>
          <ul class="list plain" {...asList}>
            {movers.map((open) => (
              <li key={open.question}>
                <a href={href(`/start/#q=${open.question}`)}>{open.title}</a> <Say s={open.says} />
              </li>
            ))}
          </ul>
        </>
      )}
      {idle.length > 0 && (
        <p class="soft">
          Still open, but {movers.length > 0 ? 'hardly able to change it' : 'not able to change it'}:{' '}
          {idle.map((open, i) => (
            <span key={open.question}>
              {i > 0 && ', '}
              <a href={href(`/start/#q=${open.question}`)}>{open.label.toLowerCase()}</a>
            </span>
          ))}
          .
        </p>
      )}
      {sure.weights !== null && (
        <>
          <h3>If the points weighed otherwise</h3>
          <p>
            <Say s={sure.weights.says} />
            {sure.weights.holds !== null && (
              <>
                {' '}
                <Say s={sure.weights.holds} />
              </>
            )}
          </p>
          <List of={sure.weights.others.map((other) => other.says)} />
        </>
      )}
    </Section>
  )
}
