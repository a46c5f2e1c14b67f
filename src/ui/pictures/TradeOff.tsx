/** Options on two figures, less being better on both: the efficient ones on a stepped line. Marks differ by shape. */
import type { ComponentChildren } from 'preact'
import type { TradeOff as Trade, TradePoint } from '../../choice/firm/trade-off'
import type { Quantity } from '../../data/quantity'
import { formatSi, formatUs } from '../format/quantity'
import { Both, Pic, T } from './parts'

const LEFT = 82
const RIGHT = 304
const TOP = 30
const BOTTOM = 196

// To the drawing unit, a pixel or so: a sheet holds a hundred of them.
const px = (at: number) => Math.round(LEFT + 12 + at * (RIGHT - LEFT - 22))
const py = (at: number) => Math.round(BOTTOM - 12 - at * (BOTTOM - TOP - 22))

/** To every other unit: what lies nearer is one mark to the eye. */
const even = (n: number): number => 2 * Math.round(n / 2)

/** Small circles in one path, each place once. */
const circles = (of: readonly TradePoint[]): string =>
  [...new Set(of.map((p) => `M${even(px(p.at[0]) - 3)} ${even(py(p.at[1]))}a3 3 0 1 0 6 0a3 3 0 1 0-6 0`))].join('')

/** A, B, C … for the table beside the picture. */
export const letterOf = (i: number): string => String.fromCharCode(65 + (i % 26))

const Fig = ({ q }: { readonly q: Quantity }) => <Both us={formatUs(q)} si={formatSi(q)} />

interface Props {
  readonly trade: Trade
  readonly xName: string
  readonly yName: string
}

export function TradeOff({ trade, xName, yName }: Props) {
  const { x, y, front } = trade
  const firsts = front.flatMap((group) => group[0] ?? [])
  const lead = trade.points.find((p) => p.lead)
  const others = trade.points.filter((p) => !p.efficient && !p.lead)
  const steps = firsts
    .map((p, i) => (i === 0 ? `M${px(p.at[0])} ${py(p.at[1])}` : `H${px(p.at[0])}V${py(p.at[1])}`))
    .join('')
  return (
    <Pic
      says={`${yName} against ${xName.toLowerCase()}: ${trade.points.length} choices; those that are efficient stand in the table.`}
      h={266}
    >
      <T x={2} y={14} at="start" ink>
        {yName}
      </T>
      <path class="cut thin" d={`M${LEFT} ${TOP - 6}V${BOTTOM}H${RIGHT}`} />
      <T x={LEFT - 5} y={py(1) + 4.5} at="end" size={12.5}>
        <Fig q={y.most} />
      </T>
      <T x={LEFT - 5} y={py(0) + 4.5} at="end" size={12.5}>
        <Fig q={y.least} />
      </T>
      <T x={px(0) - 8} y={BOTTOM + 16} at="start" size={12.5}>
        <Fig q={x.least} />
      </T>
      <T x={RIGHT} y={BOTTOM + 16} at="end" size={12.5}>
        <Fig q={x.most} />
      </T>
      <T x={RIGHT} y={BOTTOM + 33} at="end" ink>
        {xName}
      </T>
      <path class="seen f-paper" d={circles(others)} />
      <path class="seen thin" d={steps} />
      {firsts.map((p) => (p.lead ? null : <Diamond key={p.option} x={px(p.at[0])} y={py(p.at[1])} />))}
      {lead && <Square x={px(lead.at[0])} y={py(lead.at[1])} />}
      <Letters of={firsts} />
      {lead && <LeadName p={lead} />}
      <g>
        <Diamond x={8} y={254} />
        <Legend x={17}>efficient</Legend>
        <Square x={90} y={254} />
        <Legend x={101}>the choice here</Legend>
        <circle class="seen f-paper" cx="212" cy="254" r="3.2" />
        <Legend x={221}>the others</Legend>
      </g>
    </Pic>
  )
}

const Legend = ({ x, children }: { readonly x: number; readonly children: ComponentChildren }) => (
  <T x={x} y={258.5} at="start" size={13}>
    {children}
  </T>
)

const Diamond = ({ x, y }: { readonly x: number; readonly y: number }) => (
  <path class="seen f-ink" d={`M${x} ${y - 6}l6 6-6 6-6-6z`} />
)

/** Filled, in a frame. */
const Square = ({ x, y }: { readonly x: number; readonly y: number }) => (
  <g>
    <rect class="seen f-paper" x={x - 7} y={y - 7} width="14" height="14" />
    <rect class="f-chalk" x={x - 4} y={y - 4} width="8" height="8" />
  </g>
)

/** Below and left of its mark, where no option can lie; one too near the last is left out: the table has the figures. */
function Letters({ of }: { readonly of: readonly TradePoint[] }) {
  let last: readonly [number, number] = [-99, -99]
  return (
    <>
      {of.map((p, i) => {
        const at = [px(p.at[0]) - 7, py(p.at[1]) + 14] as const
        if (Math.abs(at[0] - last[0]) < 9 && Math.abs(at[1] - last[1]) < 11) return null
        last = at
        return (
          <T key={p.option} x={at[0]} y={at[1]} at="end" size={12.5} ink halo>
            {letterOf(i)}
          </T>
        )
      })}
    </>
  )
}

/** Over the mark, on the side where there is room. */
function LeadName({ p }: { readonly p: TradePoint }) {
  const right = p.at[0] > 0.5
  return (
    <T x={px(p.at[0]) + (right ? -2 : 2)} y={py(p.at[1]) - 11} at={right ? 'end' : 'start'} size={13} chalk halo>
      {p.short}
    </T>
  )
}
