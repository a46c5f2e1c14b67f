/**
 * How safe an option is at given weights: in how many cases it is first there. A case is one way in which the open answers turn
 * out, with what timber itself scatters: the gap at a shoulder and the durability of the heartwood, each within its own band.
 */
import { confidenceFactor, samplingError } from '../acceptability'
import { evenAt, rootSteps } from '../even'
import type { Judging } from '../judge'
import { durabilityAt, movementAt } from '../score'
import { CRITERIA, type Criterion } from '../types'
import { cut } from './sure'

/** Cases tried: every way of the open answers as often as every other. */
const CASES = 512

const MOVEMENT = CRITERIA.indexOf('movement')
const DURABILITY = CRITERIA.indexOf('durability')

/** The options of one way that can do the job, in the order of their ids, with the band of the scores that scatter. */
interface Banded {
  readonly cuts: readonly string[]
  readonly woods: readonly number[]
  readonly scores: readonly number[][]
  /** Scores at the worse and the better end: movement, durability. */
  readonly ends: readonly (readonly [readonly [number, number], readonly [number, number]])[]
}

function banded({ judged, context: c }: Judging, woodIndex: ReadonlyMap<string, number>): Banded {
  const standing = judged.filter((j) => j.in).sort((p, q) => (p.facts.option.id < q.facts.option.id ? -1 : 1))
  return {
    cuts: standing.map((j) => cut(j.facts.option.id)),
    woods: standing.map((j) => woodIndex.get(j.facts.option.species) ?? 0),
    scores: standing.map((j) => CRITERIA.map((id) => j.scores[id])),
    ends: standing.map(({ facts: o }) => [
      [movementAt(o, c, o.gapHigh), movementAt(o, c, o.gapLow)],
      [durabilityAt(o.wood.durability.worst, c), durabilityAt(o.wood.durability.best, c)]
    ])
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
  const steps = rootSteps(2 * species.length)
  const wayOf = (n: number): Banded | undefined => bands[n % bands.length]
  const rowsOf = (n: number): readonly number[][] => {
    const way = wayOf(n)
    if (!way) return []
    const between = (ends: readonly [number, number], d: number) =>
      ends[0] + (ends[1] - ends[0]) * evenAt(n + 1, steps[d] ?? 0)
    for (const [i, row] of way.scores.entries()) {
      const [movement, durability] = way.ends[i] ?? [[0, 0] as const, [0, 0] as const]
      const wood = way.woods[i] ?? 0
      row[MOVEMENT] = between(movement, 2 * wood)
      row[DURABILITY] = between(durability, 2 * wood + 1)
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
