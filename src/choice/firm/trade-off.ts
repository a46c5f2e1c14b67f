/** Options on two axes: which of them no other equals on one and betters on the other. */
import type { Quantity, Sentence } from '../../data/quantity'
import {
  durabilityFigure,
  type FigureOf,
  gapFigure,
  moneyFigures,
  readyFigure,
  sectionFigure,
  twistFigure,
  weightFigure
} from '../figures'
import type { Judged } from '../judge'
import { HEART_SAYS } from '../report'
import type { Context } from '../rule'
import { bare, computed, quantity, sentence, middle as withoutRange } from '../say'

export const AXES = [
  'jobCost',
  'shoulderGap',
  'durabilityClass',
  'readyWeeks',
  'stickWeight',
  'section',
  'twist'
] as const
/** A figure of the options; of each of them less is better. */
export type AxisId = (typeof AXES)[number]

/**
 * Whether each point is efficient: no other is at most as large on both axes and smaller on one. Points alike are both or neither.
 * Less is better on both. Source: derived (Pareto's condition).
 */
export function efficient(points: readonly (readonly [number, number])[]): boolean[] {
  const order = points
    .map((_, i) => i)
    .sort((i, j) => at(points, i, 0) - at(points, j, 0) || at(points, i, 1) - at(points, j, 1))
  const kept = new Array<boolean>(points.length).fill(false)
  // From the left, a point is efficient where it lies lower than all before it, or on the last efficient one.
  let last: readonly [number, number] | null = null
  for (const i of order) {
    const here = points[i]
    if (!here) continue
    if (last === null || here[1] < last[1] || (here[0] === last[0] && here[1] === last[1])) {
      kept[i] = true
      last = here
    }
  }
  return kept
}
const at = (points: readonly (readonly [number, number])[], i: number, axis: 0 | 1): number => points[i]?.[axis] ?? 0

export interface TradePoint {
  readonly option: string
  readonly short: string
  readonly how: string
  readonly lead: boolean
  readonly efficient: boolean
  /** Where it is drawn: 0 at the least of all, 1 at the most. */
  readonly at: readonly [number, number]
  readonly x: Quantity
  readonly y: Quantity
}

export interface TradeAxis {
  readonly id: AxisId
  /** The least and the most of all points. */
  readonly least: Quantity
  readonly most: Quantity
}

export interface TradeOff {
  readonly x: TradeAxis
  readonly y: TradeAxis
  readonly points: readonly TradePoint[]
  /** Efficient points from left to right, those that lie on each other together. */
  readonly front: readonly (readonly TradePoint[])[]
  readonly says: readonly Sentence[]
}

const FIGURES: Readonly<Record<Exclude<AxisId, 'jobCost'>, FigureOf>> = {
  shoulderGap: gapFigure,
  durabilityClass: durabilityFigure,
  readyWeeks: readyFigure,
  stickWeight: weightFigure,
  section: sectionFigure,
  twist: twistFigure
}

const sizeOf = (q: Quantity): number => (typeof q.value === 'number' ? q.value : q.value[0] * q.value[1])

/**
 * Options that can do the job, on two figures. They are compared by the figures as computed, not as rounded for reading.
 * @param lead id of the option that the brief puts first; null where nothing passes
 * @returns null where no option can do the job
 */
export function tradeOff(
  judged: readonly Judged[],
  lead: string | null,
  [xId, yId]: readonly [AxisId, AxisId],
  c: Context
): TradeOff | null {
  const can = judged.filter((j) => j.in)
  const figure = (id: AxisId, { facts: o }: Judged): Quantity =>
    bare(
      id === 'jobCost'
        ? withoutRange(moneyFigures(o, c.reference, c.sheet.placeholder).jobCost)
        : FIGURES[id](o, c.facts, c.reference)
    )
  const xs = can.map((j) => figure(xId, j))
  const ys = can.map((j) => figure(yId, j))
  const best = efficient(xs.map((x, i) => [sizeOf(x), sizeOf(ys[i] ?? x)]))
  const [x, y] = [axis(xId, xs), axis(yId, ys)]
  if (!x || !y) return null
  const points = can.map((j, i): TradePoint => {
    const [qx, qy] = [xs[i] ?? x.least, ys[i] ?? y.least]
    return {
      option: j.facts.option.id,
      short: j.facts.wood.short,
      how: `${HEART_SAYS[j.facts.option.heart]}, ${j.facts.seasoning.short}`,
      lead: j.facts.option.id === lead,
      efficient: best[i] ?? false,
      at: [along(qx, x), along(qy, y)],
      x: qx,
      y: qy
    }
  })
  const front = frontOf(points)
  return { x, y, points, front, says: words(points, c) }
}

function axis(id: AxisId, of: readonly Quantity[]): TradeAxis | null {
  const sorted = [...of].sort((p, q) => sizeOf(p) - sizeOf(q))
  const [least, most] = [sorted[0], sorted.at(-1)]
  return least && most ? { id, least: middle(least), most: middle(most) } : null
}

/** Without its spread: an axis is marked with single figures. */
const middle = ({ low: _low, high: _high, ...q }: Quantity): Quantity => q

/** Where a figure lies between the least and the most; in the middle where all are alike. */
function along(q: Quantity, { least, most }: TradeAxis): number {
  const [low, high] = [sizeOf(least), sizeOf(most)]
  return high > low ? (sizeOf(q) - low) / (high - low) : 0.5
}

function frontOf(points: readonly TradePoint[]): TradePoint[][] {
  const groups: TradePoint[][] = []
  const sorted = points.filter((p) => p.efficient).sort((p, q) => p.at[0] - q.at[0] || Number(q.lead) - Number(p.lead))
  for (const point of sorted) {
    const last = groups.at(-1)
    if (last?.[0] && last[0].at[0] === point.at[0] && last[0].at[1] === point.at[1]) last.push(point)
    else groups.push([point])
  }
  return groups
}

function words(points: readonly TradePoint[], c: Context): Sentence[] {
  const count = (n: number) => quantity('count', n, computed(c.reference, 'efficient'))
  const many = points.filter((p) => p.efficient).length
  const all = sentence(
    many === 1
      ? 'Of {all} choices that can do the job, one is best on both.'
      : 'Of {all} choices that can do the job, {some} are efficient: whatever is better on one of the two is worse on the other.',
    { all: count(points.length), ...(many === 1 ? {} : { some: count(many) }) }
  )
  const lead = points.find((p) => p.lead)
  if (!lead) return [all]
  if (lead.efficient) return [all, sentence('The choice of this brief is one of them.')]
  const better = points.filter((p) => p.efficient && p.at[0] <= lead.at[0] && p.at[1] <= lead.at[1])[0]
  return [
    all,
    sentence(
      `The choice of this brief is not: on these two alone ${better?.short ?? 'another'}${better ? ` (${better.how})` : ''} would do better. It leads for what else matters to you.`
    )
  ]
}
