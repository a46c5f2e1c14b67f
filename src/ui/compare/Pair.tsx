/** Two briefs side by side: the difference in sentences, what comes out of each, and what was answered differently. */
import { type TwoRow, twoBriefs } from '../../choice/two-briefs'
import type { Sentence } from '../../data/quantity'
import { Paragraphs } from '../brief/Sentences'
import { LibraryProvider } from '../say/library'
import { Say } from '../say/Say'
import { SizeCaution } from '../site/SizeCaution'
import { useGlossary } from '../words/load'
import { GlossaryProvider, WordScope } from '../words/scope'
import type { Side } from './pair'

const NAMES = ['First', 'Second'] as const

function Told({ label, s }: { readonly label: string; readonly s: Sentence | null }) {
  return (
    <td data-label={label}>
      <span>{s === null ? '–' : <Say s={s} />}</span>
    </td>
  )
}

function Rows({ caption, of }: { readonly caption: string; readonly of: readonly TwoRow[] }) {
  return (
    <table class="data data--stack pair-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          {NAMES.map((name) => (
            <th key={name} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {of.map((r) => (
          <tr key={r.id} class={r.differs ? undefined : 'soft'}>
            <th scope="row">
              {r.label}
              {!r.differs && <span class="soft"> (alike)</span>}
            </th>
            <Told label={NAMES[0]} s={r.first} />
            <Told label={NAMES[1]} s={r.second} />
          </tr>
        ))}
      </tbody>
    </table>
  )
}

export function Pair({ sides }: { readonly sides: readonly [Side, Side] }) {
  return (
    <GlossaryProvider value={useGlossary()}>
      <WordScope>
        <Both sides={sides} />
      </WordScope>
    </GlossaryProvider>
  )
}

function Both({ sides }: { readonly sides: readonly [Side, Side] }) {
  const [a, b] = sides
  const two = twoBriefs(a.brief, b.brief)
  const differing = two.answers.filter((r) => r.differs)
  const same = two.answers.filter((r) => !r.differs).map((r) => r.label.toLowerCase())
  return (
    <LibraryProvider value={a.library}>
      <article class="stack compared">
        <h2 id="compared" tabIndex={-1}>
          Side by side
        </h2>
        <dl class="title-block">
          {sides.map((side, i) => (
            <div key={NAMES[i]} class="wide">
              <dt>{NAMES[i]}</dt>
              <dd>
                <a href={side.link}>
                  <Say s={side.brief.title} bare />
                </a>
                <span class="soft pair-sheet">
                  {side.own ? 'with its own sheet, of ' : 'came without a sheet; worked out from '}
                  {side.brief.shop.name}
                </span>
              </dd>
            </div>
          ))}
        </dl>
        <Paragraphs of={two.says} />
        {a.sheet.name === b.sheet.name && JSON.stringify(a.sheet) !== JSON.stringify(b.sheet) && (
          <p>Both sheets are of {a.sheet.name}, and they differ: one was changed since. Prices differ for that too.</p>
        )}
        {differing.length > 0 && <Rows caption="Answered differently" of={differing} />}
        {same.length > 0 && <p class="soft">Answered alike: {same.join(', ')}.</p>}
        <Rows caption="What comes out" of={two.outcomes} />
        <SizeCaution />
        <p class="no-print">
          <button type="button" class="btn btn--quiet btn--small" onClick={() => print()}>
            Print
          </button>
        </p>
      </article>
    </LibraryProvider>
  )
}
