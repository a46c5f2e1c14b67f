/** A wood's page, drawn at build and without script: every figure opens by the browser's own popover. */

import { Section } from '../ui/brief/Section'
import { asList } from '../ui/say/as-list'
import { Figure } from '../ui/say/Figure'
import { type Library, LibraryProvider } from '../ui/say/library'
import { MARK_WORDS } from '../ui/say/origin'
import { Say } from '../ui/say/Say'
import { Shelf } from '../ui/say/Shelf'
import { NoteShelf, ShelfProvider } from '../ui/say/shelf'
import { href } from '../ui/site/href'
import { linkOf } from './link'
import { Looks, Numbers, Value } from './Parts'
import { SIZES } from './sizes'
import type { PartView, WoodView } from './view'
import { WoodActs } from './WoodActs'

interface Props {
  readonly view: WoodView
  readonly library: Library
  /** The same truss in this wood, on the size ladder. */
  readonly ladder: string
}

export function WoodSheet({ view, library, ladder }: Props) {
  return (
    <LibraryProvider value={library}>
      <ShelfProvider value={new NoteShelf()}>
        <Block view={view} />
        <Words view={view} />
        <WoodActs view={view} ladder={ladder} />
        <Lasts view={view} />
        <All view={view} />
        <Shelf />
      </ShelfProvider>
    </LibraryProvider>
  )
}

interface Of {
  readonly view: WoodView
}

/** What tells one wood from another at a glance. */
const CHIEF = [
  ['Class of the heartwood', 'Class against rot, 1 best of 5'],
  ['Opens at a shoulder', 'Opens at a shoulder'],
  ['One stick, green', 'One stick, green'],
  ['Stoutest timber of the truss', 'Stoutest timber of the truss'],
  ['Longest', 'Longest']
] as const

function Block({ view: { groups } }: Of) {
  const rows = groups.flatMap((group) => group.rows)
  return (
    <dl class="title-block wood-block">
      {CHIEF.map(([label, name]) => {
        const row = rows.find((r) => r.label === label)
        return (
          row && (
            <div key={label}>
              <dt>{name}</dt>
              <dd>
                <Value row={row} />
              </dd>
            </div>
          )
        )
      })}
    </dl>
  )
}

function Words({ view }: Of) {
  const { parts, looks, cautions } = view
  return (
    <section class="sheet" aria-label="In words">
      <div class="stack--wide wood-words">
        {parts.map((part) => (
          <Part key={part.id} part={part} />
        ))}
      </div>
      <div class="margin">
        <h2>Colour</h2>
        <Looks of={looks} />
        {cautions.length > 0 && (
          <>
            <h2>Mind</h2>
            {cautions.map((s) => (
              <p key={s.text}>
                <Say s={s} />
              </p>
            ))}
          </>
        )}
        <h2>Grows in</h2>
        <p>{view.regions.join(', ')}.</p>
      </div>
    </section>
  )
}

function Part({ part }: { readonly part: PartView }) {
  const { id, name, mark, says, others } = part
  return (
    <div class={`stack wood-part wood-part--${id}`}>
      <h2>{name}</h2>
      {says.map((s) => (
        <p key={s.text}>
          <Say s={s} />
        </p>
      ))}
      <p class="wood-mark" data-pagefind-ignore>
        {id !== 'opinion' && <>How we know: {MARK_WORDS[mark]}.</>}
        {id === 'opinion' && <>An opinion, as one framer might give it to another. Yours may differ.</>}
        {others.length > 0 && (
          <>
            {' '}
            See{' '}
            {others.map((o, i) => (
              <>
                {i > 0 && ', '}
                <a href={href(`/woods/${o.id}/`)}>{o.name}</a>
              </>
            ))}
            .
          </>
        )}
      </p>
    </div>
  )
}

function Lasts({ view: { trials, wood } }: Of) {
  if (trials.length === 0) return null
  return (
    <Section id="trials" title="What trials found">
      <p class="no-print">
        Classes are one thing, years in the field another. Where {wood.said} was set out and watched:
      </p>
      <ul class="list plain" {...asList}>
        {trials.map((s) => (
          <li key={s.text}>
            <Say s={s} />
          </li>
        ))}
      </ul>
    </Section>
  )
}

function All({ view: { wood, other, groups } }: Of) {
  return (
    <section class="sheet" id="numbers" aria-labelledby="numbers-title">
      <div class="stack bleed">
        <h2 id="numbers-title">All its numbers</h2>
        <p class="note">
          Each opens to its source. Where nothing else is said: a stick of <Figure q={SIZES.square} />,{' '}
          <Figure q={SIZES.stick} /> long, green or settled in a heated room in the middle of the country. Averages of a
          wood; a stick may lie well off them.
        </p>
        <div class="wood-tables">
          {groups.map((group) => (
            <Numbers key={group.title} of={group} />
          ))}
        </div>
        <p class="no-print">
          <a href={href(`/woods/compare/#${linkOf([wood.id, other.id])}`)}>
            {wood.name} beside {other.name}
          </a>
          , or <a href={href('/woods/')}>all woods</a>. Which to choose: <a href={href('/start/')}>the questions</a>.{' '}
          <a href={href('/sources/')}>All sources</a>.
        </p>
      </div>
    </section>
  )
}
