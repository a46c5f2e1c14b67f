/** Any two options of the shop beside each other. Without script, and on paper, the first two of the brief. */
import { useId, useState } from 'preact/hooks'
import type { Brief } from '../../choice/brief-types'
import type { Comparison, Offered } from '../../choice/firm/comparison'
import type { SideBySide as Held, Side } from '../../choice/firm/side-by-side'
import { Figure } from '../say/Figure'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { CRITERION_NAMES, FIGURE_NAMES } from './names'
import { List } from './Sentences'

interface Props {
  readonly brief: Brief
  readonly compare: Comparison
}

export function SideBySide({ brief, compare }: Props) {
  const first = brief.lead ?? brief.woods[0]?.report
  const second = brief.runnerUp ?? brief.woods.find((line) => line.report !== first)?.report
  const own = [first?.option.id ?? '', second?.option.id ?? ''] as const
  const [chosen, choose] = useState(own)
  const pair = compare.pair(...chosen)
  if (pair === null) return null
  const usual = chosen[0] === own[0] && chosen[1] === own[1]
  const printed = usual ? null : compare.pair(...own)
  const quick: Quick[] = [
    ...(own[0] ? [{ option: own[0], as: brief.lead ? 'first choice' : 'came nearest' }] : []),
    ...(own[1] ? [{ option: own[1], as: brief.runnerUp ? 'runner-up' : 'came next' }] : []),
    ...(compare.cheapest ? [{ option: compare.cheapest, as: 'the cheapest' }] : [])
  ]
  return (
    <section class="sheet" id="side" aria-labelledby="side-title">
      <div class="stack bleed">
        <h2 id="side-title">Two side by side</h2>
        {typeof window !== 'undefined' && (
          <div class="two no-print">
            <Pick
              label="The one"
              value={chosen[0]}
              quick={quick}
              options={compare.options}
              onPick={(id) => choose([id, chosen[1]])}
            />
            <Pick
              label="The other"
              value={chosen[1]}
              quick={quick}
              options={compare.options}
              onPick={(id) => choose([chosen[0], id])}
            />
          </div>
        )}
        <div class={printed === null ? 'stack' : 'stack no-print'}>
          <Columns pair={pair} told={!usual || brief.runnerUp === null} placeholder={brief.shop.placeholder} />
        </div>
        {printed !== null && (
          <div class="stack print-only">
            <Columns pair={printed} told={false} placeholder={brief.shop.placeholder} />
          </div>
        )}
      </div>
    </section>
  )
}

interface Quick {
  readonly option: string
  readonly as: string
}
interface PickProps {
  readonly label: string
  readonly value: string
  readonly quick: readonly Quick[]
  readonly options: readonly Offered[]
  readonly onPick: (id: string) => void
}
function Pick({ label, value, quick, options, onPick }: PickProps) {
  const id = useId()
  const woods = [...new Set(options.map((o) => o.wood))]
  const words = (o: Offered) => `${o.wood}, ${o.how}${o.in ? '' : ' (out)'}`
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} class="wide" value={value} onChange={(event) => onPick(event.currentTarget.value)}>
        <optgroup label="Of this brief">
          {quick.map(({ option, as }) => {
            const found = options.find((o) => o.option === option)
            return (
              found && (
                <option key={as} value={option}>
                  {words(found)}: {as}
                </option>
              )
            )
          })}
        </optgroup>
        {woods.map((wood) => (
          <optgroup key={wood} label={wood}>
            {options
              .filter((o) => o.wood === wood && !quick.some((q) => q.option === o.option))
              .map((o) => (
                <option key={o.option} value={o.option}>
                  {words(o)}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </div>
  )
}

const nameOf = (side: Side) => `${side.wood}, ${side.heartSays}, ${side.seasoningSays}`

/** `told` where the sentences do not stand elsewhere on the sheet. */
function Columns({
  pair,
  told,
  placeholder
}: {
  readonly pair: Held
  readonly told: boolean
  readonly placeholder: boolean
}) {
  const { a, b, figures, points, says } = pair
  const out = [a, b].filter((side) => !side.in)
  return (
    <>
      {out.map((side) => (
        <p key={side.option.id}>
          <b>{side.wood} cannot do this job so:</b> <Against side={side} />.
        </p>
      ))}
      {told && (
        <>
          <p>
            What sets {b.said}, {b.heartSays}, {b.seasoningSays}, apart from {a.said}, {a.heartSays}, {a.seasoningSays}:
          </p>
          <List of={says} />
        </>
      )}
      <div class="two">
        <table class="data side">
          <Head a={a} b={b} caption={placeholder ? 'Figures; prices are placeholders' : 'Figures'} />
          <tbody>
            {figures.map(({ figure, a: one, b: two }) => (
              <tr key={figure}>
                <th scope="row">{FIGURE_NAMES[figure]}</th>
                {[one, two].map((q, i) => (
                  <td class="num" key={i}>
                    {q === null ? 'none' : <Q q={q} plain />}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        <table class="data side">
          <Head a={a} b={b} caption="Ahead by points of 100: weight × difference of the scores" />
          <tbody>
            {points.map(({ criterion, better, weight, by }) => (
              <tr key={criterion}>
                <th scope="row">
                  {CRITERION_NAMES[criterion]} (weighs <Figure q={weight} />)
                </th>
                {(['a', 'b'] as const).map((side) => (
                  <td class="num" key={side}>
                    {better === side ? (
                      <>
                        +<Figure q={by} />
                      </>
                    ) : better === null ? (
                      'alike'
                    ) : (
                      ''
                    )}
                  </td>
                ))}
              </tr>
            ))}
            {[a, b].some((side) => side.in && side.against.length > 0) && (
              <tr>
                <th scope="row">Cautions of this one alone</th>
                {[a, b].map((side, i) => (
                  <td class="num" key={i}>
                    {side.in && side.against.length > 0 ? <Against side={side} /> : 'none'}
                  </td>
                ))}
              </tr>
            )}
          </tbody>
        </table>
      </div>
    </>
  )
}

function Head({ a, b, caption }: { readonly a: Side; readonly b: Side; readonly caption: string }) {
  return (
    <>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <td />
          {[a, b].map((side, i) => (
            <th scope="col" class="num" key={i}>
              {nameOf(side)}
            </th>
          ))}
        </tr>
      </thead>
    </>
  )
}

function Against({ side }: { readonly side: Side }) {
  return (
    <>
      {side.against.map((s, i) => (
        <span key={i}>
          {i > 0 && '; '}
          <Say s={s} bare />
        </span>
      ))}
    </>
  )
}
