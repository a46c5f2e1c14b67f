/** Where the numbers come from, as a table, so that paper carries it too. Sources stand once, by number. */
import type { Brief } from '../../choice/brief-types'
import type { Origin, Quantity, SourceRef } from '../../data/quantity'
import { Figure } from '../say/Figure'
import { Heads } from '../say/Heads'
import { useLibrary } from '../say/library'
import { cite, MARK_WORDS, tell } from '../say/origin'
import { Cell } from './Cell'
import { FIGURE_NAMES } from './names'

/** Not published anywhere: the person's own answers, and what was worked out here. */
const OWN = new Set(['answers', 'derived', 'common-practice'])

class Sources {
  readonly keys: string[] = []

  number({ key }: SourceRef): number {
    if (!this.keys.includes(key)) this.keys.push(key)
    return this.keys.indexOf(key) + 1
  }
}

/** The sources of what went into a number, and of what went into that. */
function behind(origin: Origin): readonly SourceRef[] {
  return Object.values(origin.inputs ?? {}).flatMap((q) => [...q.origin.sources, ...behind(q.origin)])
}

function numbered(refs: readonly SourceRef[], sources: Sources): readonly string[] {
  const texts = refs
    .filter((ref) => !OWN.has(ref.key))
    .map((ref) => `${sources.number(ref)}${ref.where === undefined ? '' : ` (${ref.where})`}`)
  return [...new Set(texts)]
}

export function Origins({ brief }: { readonly brief: Brief }) {
  const library = useLibrary()
  const { lead } = brief
  if (lead === null) return null
  const sources = new Sources()
  const rows: readonly (readonly [string, Quantity | null])[] = [
    ...(Object.keys(FIGURE_NAMES) as (keyof typeof FIGURE_NAMES)[]).map(
      (key) => [FIGURE_NAMES[key], lead.figures[key]] as const
    ),
    ['Climate index for rot', brief.durability.hazard]
  ]
  return (
    <section class="sheet" id="origins" aria-labelledby="origins-title">
      <div class="stack bleed">
        <h2 id="origins-title">Where the numbers come from</h2>
        <p>
          For {lead.wood}, {lead.heartSays}, {lead.seasoningSays}.{' '}
          <span class="no-print">Any dotted figure on the page opens to what went into it.</span>
        </p>
        <table class="data data--stack origins" data-plain>
          <Heads words={['What']} numbers={['Figure']} rest={['How', 'From (numbers below)', 'How we know']} />
          <tbody>
            {rows.map(([name, q]) => {
              if (q === null) return null
              const { formula } = tell(q.origin, library)
              const refs = [
                ...q.origin.sources,
                ...(formula === null ? [] : [{ key: formula.source }]),
                ...behind(q.origin)
              ]
              return (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  <Cell label="Figure" num>
                    <Figure q={q} />
                  </Cell>
                  <Cell label="How">{formula === null ? 'as published' : formula.name}</Cell>
                  <Cell label="From">
                    {numbered(refs, sources).join(', ') ||
                      (refs.some((ref) => ref.key === 'answers')
                        ? 'your answers'
                        : refs.some((ref) => ref.key === 'common-practice')
                          ? 'trade custom'
                          : 'our own formula')}
                  </Cell>
                  <Cell label="How we know">{MARK_WORDS[q.origin.mark]}</Cell>
                </tr>
              )
            })}
          </tbody>
        </table>
        <ol class="origin-list" data-plain>
          {sources.keys.map((key) => (
            <li key={key}>{cite({ key }, library).title}</li>
          ))}
        </ol>
      </div>
    </section>
  )
}
