/**
 * How safe an option is at given weights: in how many cases it is first there. A case is one way in which the open answers turn
 * out, with what timber and the trade scatter: the gap at a shoulder (how much the wood shrinks, and how dry it comes), the
 * durability of the heartwood, the price, and how long drying takes, each within its own band.
 */
import { confidenceFactor, samplingError } from '../firm/acceptability'
import { evenAt, rootSteps } from '../firm/even'
import type { Judging } from '../judge'
import type { Context } from '../rule'
import { costAt, durabilityAt, movementAt, timeAt } from '../score'
import { CRITERIA, type Criterion } from '../types'
import { cut } from './sure'

/** Cases tried: every way of the open answers as often as every other. */
const CASES = 512

/** What scatters, wood by wood. */
const SCATTERS = ['cost', 'movement', 'durability', 'time'] as const
type Scattering = (typeof SCATTERS)[number]
type Ends = readonly [worse: number, better: number]

/** The options of one way that can do the job, in the order of their ids, with the band of what scatters. */
interface Banded {
  readonly context: Context
  readonly cuts: readonly string[]
  readonly woods: readonly number[]
  readonly scores: readonly number[][]
  /** Scores at the worse and the better end; of cost, the timber's cost itself, since woods are set against the cheapest. */
  readonly ends: readonly Readonly<Record<Scattering, Ends>>[]
}

function banded({ judged, context: c }: Judging, woodIndex: ReadonlyMap<string, number>): Banded {
  const standing = judged.filter((j) => j.in).sort((p, q) => (p.facts.option.id < q.facts.option.id ? -1 : 1))
  return {
    context: c,
    cuts: standing.map((j) => cut(j.facts.option.id)),
    woods: standing.map((j) => woodIndex.get(j.facts.option.species) ?? 0),
    scores: standing.map((j) => CRITERIA.map((id) => j.scores[id])),
    ends: standing.map(({ facts: o }) => ({
      cost: [o.timberCost * (1 + o.bill.band), o.timberCost * (1 - o.bill.band)],
      movement: [movementAt(o, c, o.gapHigh), movementAt(o, c, o.gapLow)],
      durability: [durabilityAt(o.wood.durability.worst, c), durabilityAt(o.wood.durability.best, c)],
      time: [timeAt(o.readyHigh, c), timeAt(o.readyLow, c)]
    }))
  }
}

export interface Confidence {
  /** Share of the cases in which a wood and cut is first at some weights. */
  readonly of: (woodAndCut: string, weights: Readonly<Record<Criterion, number>>) => number
  readonly cases: number
  /** What that share may be off: two standard errors of a half, over as many ways of the open answers as were tried. */
  readonly error: number
  /** True where open answers are among what varies. */
  readonly open: boolean
}

/**
 * Prepare the cases. Options of one wood scatter together; woods scatter each on its own. Deterministic.
 * Source: lahdelma-salminen-2001, confidence factor.
 * @param ways the judging of every way in which the open answers turn out; one where none is open
 */
export function confidence(ways: readonly Judging[]): Confidence {
  const species = [...new Set(ways.flatMap((w) => w.judged.map((j) => j.facts.option.species)))].sort()
  const woodIndex = new Map(species.map((id, i) => [id, i]))
  const bands = ways.map((way) => banded(way, woodIndex))
  const steps = rootSteps(SCATTERS.length * species.length)
  const wayOf = (n: number): Banded | undefined => bands[n % bands.length]
  const rowsOf = (n: number): readonly number[][] => {
    const way = wayOf(n)
    if (!way) return []
    const drawn = (i: number, what: Scattering): number => {
      const [worse, better] = way.ends[i]?.[what] ?? [0, 0]
      const dimension = SCATTERS.length * (way.woods[i] ?? 0) + SCATTERS.indexOf(what)
      return worse + (better - worse) * evenAt(n + 1, steps[dimension] ?? 0)
    }
    const costs = way.scores.map((_, i) => drawn(i, 'cost'))
    const cheapest = Math.min(...costs)
    for (const [i, row] of way.scores.entries()) {
      row[CRITERIA.indexOf('cost')] = costAt(costs[i] ?? 0, cheapest, way.context.reference)
      for (const what of ['movement', 'durability', 'time'] as const) row[CRITERIA.indexOf(what)] = drawn(i, what)
    }
    return way.scores
  }
  return {
    of: (woodAndCut, weights) =>
      confidenceFactor(
        CRITERIA.map((id) => weights[id]),
        CASES,
        rowsOf,
        (i, n) => wayOf(n)?.cuts[i] === woodAndCut
      ),
    cases: CASES,
    error: samplingError(ways.length > 1 ? ways.length : CASES),
    open: ways.length > 1
  }
}
