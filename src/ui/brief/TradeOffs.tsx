/** What is traded for what: the choices that can do the job on two figures that the reader picks. */
import { useId, useState } from 'preact/hooks'
import type { Brief } from '../../choice/brief-types'
import type { Comparison } from '../../choice/firm/comparison'
import { AXES, type AxisId, type TradeOff as Trade, type TradePoint } from '../../choice/firm/trade-off'
import { letterOf, TradeOff } from '../pictures/TradeOff'
import { Heads } from '../say/Heads'
import { Q } from '../say/Q'
import { FIGURE_NAMES } from './names'
import { Paragraphs } from './Sentences'

const USUAL = ['jobCost', 'shoulderGap'] as const
/** Alike on both figures: so many named, the rest counted. */
const NAMED = 3

interface Props {
  readonly brief: Brief
  readonly compare: Comparison
}

export function TradeOffs({ brief, compare }: Props) {
  const lead = brief.lead?.option.id ?? null
  const [axes, choose] = useState<readonly [AxisId, AxisId]>(USUAL)
  const trade = compare.tradeOff(lead, axes)
  if (trade === null) return null
  const usual = axes[0] === USUAL[0] && axes[1] === USUAL[1]
  const printed = usual ? null : compare.tradeOff(lead, USUAL)
  // Nothing is told by a figure against itself: the other axis gives way.
  const pick = (x: AxisId, y: AxisId, kept: 'x' | 'y') =>
    x !== y ? choose([x, y]) : choose(kept === 'x' ? [x, axes[0]] : [axes[1], y])
  return (
    <section class="sheet" id="trade" aria-labelledby="trade-title">
      <div class="stack bleed">
        <h2 id="trade-title">What is traded for what</h2>
        {typeof window !== 'undefined' && (
          <div class="row no-print">
            <Axis label="Across" value={axes[0]} onPick={(id) => pick(id, axes[1], 'x')} />
            <Axis label="Upwards" value={axes[1]} onPick={(id) => pick(axes[0], id, 'y')} />
          </div>
        )}
        <div class={printed === null ? 'stack' : 'stack no-print'}>
          <Drawn trade={trade} placeholder={brief.shop.placeholder} />
        </div>
        {printed !== null && (
          <div class="stack print-only">
            <Drawn trade={printed} placeholder={brief.shop.placeholder} />
          </div>
        )}
      </div>
    </section>
  )
}

interface AxisProps {
  readonly label: string
  readonly value: AxisId
  readonly onPick: (id: AxisId) => void
}
function Axis({ label, value, onPick }: AxisProps) {
  const id = useId()
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onPick(event.currentTarget.value as AxisId)}>
        {AXES.map((axis) => (
          <option key={axis} value={axis}>
            {FIGURE_NAMES[axis]}
          </option>
        ))}
      </select>
    </div>
  )
}

function Drawn({ trade, placeholder }: { readonly trade: Trade; readonly placeholder: boolean }) {
  const [x, y] = [FIGURE_NAMES[trade.x.id], FIGURE_NAMES[trade.y.id]]
  const money = trade.x.id === 'jobCost' || trade.y.id === 'jobCost'
  return (
    <div class="two">
      <figure class="figure brief-figure">
        <TradeOff trade={trade} xName={x} yName={y} />
        <figcaption>
          Less is better on both. Letters as in the table.
          {money && placeholder && <> Placeholder prices.</>}
        </figcaption>
      </figure>
      <div class="stack">
        <Paragraphs of={trade.says} />
        <table class="data">
          <caption>Efficient on these two</caption>
          <Heads words={['Choice']} numbers={[x, y]} />
          <tbody>
            {trade.front.map((group, i) => {
              const [first] = group
              return (
                first && (
                  <tr key={first.option} class={group.some((p) => p.lead) ? 'lead' : undefined}>
                    <th scope="row">
                      {letterOf(i)}. <Named group={group} />
                    </th>
                    <td class="num">
                      <Q q={first.x} plain />
                    </td>
                    <td class="num">
                      <Q q={first.y} plain />
                    </td>
                  </tr>
                )
              )
            })}
          </tbody>
        </table>
      </div>
    </div>
  )
}

function Named({ group }: { readonly group: readonly TradePoint[] }) {
  const more = group.length - NAMED
  return (
    <>
      {group.slice(0, NAMED).map((p, i) => (
        <span key={p.option}>
          {i > 0 && '; '}
          {p.short}, {p.how}
        </span>
      ))}
      {more > 0 && `; and ${more} more alike`}
    </>
  )
}
