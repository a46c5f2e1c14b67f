/**
 * How often each of some options comes first, second and so on over all weights that could be meant: stochastic multicriteria
 * acceptability. It knows nothing of wood: a matrix of scores (options × criteria) and a space of weights, plain numbers.
 */

import { rankOrderCentroid } from '../weights'
import { evenAt, evenSteps, rootSteps, sharesFrom } from './even'

/** Corners of a space of weights, each a weight for every criterion: what is meant is any mixture of them. */
export type WeightSpace = readonly (readonly number[])[]

/** A score known exactly; one that lies anywhere between two; or any other spread, by its quantile (0 to 1 in, score out). */
export type Measure = number | readonly [low: number, high: number] | ((u: number) => number)

export interface WeightKnowledge {
  /** Criteria, most important first, each once; null where none is known to matter more. */
  readonly order: readonly number[] | null
  /** False for a criterion that tells nothing here: its weight is zero. */
  readonly matters?: readonly boolean[]
  /** What each weight is multiplied by before they are scaled to sum to 1. */
  readonly factors?: readonly number[]
}

/**
 * All weights of `n` criteria that agree with what is known of them. In an order w₁ ≥ w₂ ≥ … the corners are the first alone, the
 * first two alike, and so on; their mean is the rank-order centroid. Without an order each criterion alone is a corner.
 * Throws where the order does not name every criterion once, or none matters. Source: lahdelma-salminen-2001, weight space.
 */
export function weightSpace(n: number, { order, matters, factors }: WeightKnowledge): WeightSpace {
  if (order && (order.length !== n || new Set(order).size !== n || order.some((k) => !(k >= 0 && k < n))))
    throw new RangeError('an order names every criterion once')
  const ranked = (order ?? Array.from({ length: n }, (_, k) => k)).filter((k) => matters?.[k] ?? true)
  if (ranked.length === 0) throw new RangeError('at least one criterion must matter')
  return ranked.map((own, j) => {
    const alike = order ? ranked.slice(0, j + 1) : [own]
    const corner = new Array<number>(n).fill(0)
    for (const k of alike) corner[k] = (factors?.[k] ?? 1) / alike.length
    return corner
  })
}

/**
 * What a share counted over so many samples may be off: two standard errors of a half, the most there is, of as many samples drawn
 * at random. Even samples stay well within it. Source: derived.
 */
export const samplingError = (samples: number): number => 1 / Math.sqrt(samples)

const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number)
  return sum
}

/**
 * Options that are first for some weights, as far as pairs tell: none is at least as good at every corner of the space. Of options
 * alike at every corner the earlier stays. Exact: what is left out is never first. Source: derived.
 */
export function undominated(values: readonly ArrayLike<number>[]): number[] {
  const beats = (a: ArrayLike<number>, b: ArrayLike<number>, earlier: boolean): boolean => {
    let better = earlier
    for (let j = 0; j < a.length; j++) {
      const by = (a[j] as number) - (b[j] as number)
      if (by < 0) return false
      if (by > 0) better = true
    }
    return better
  }
  // Likely winners first, so that most are struck out at the first comparison.
  const sums = values.map((v) => dot(v, new Float64Array(v.length).fill(1)))
  const kept: number[] = []
  const byMean = values.map((_, i) => i).sort((a, b) => (sums[b] ?? 0) - (sums[a] ?? 0) || a - b)
  for (const i of byMean) {
    const own = values[i] as ArrayLike<number>
    if (!kept.some((k) => beats(values[k] as ArrayLike<number>, own, k < i))) kept.push(i)
  }
  return kept.sort((a, b) => a - b)
}

export interface Firsts {
  /** Share of the weights under which each option is first; they sum to 1. */
  readonly share: readonly number[]
  /** Mean of the weights under which it is first, summing to 1; null where it never is. */
  readonly central: readonly (readonly number[] | null)[]
  readonly samples: number
  readonly error: number
}

/**
 * First ranks alone, for exact scores: quick, since dominated options are left out. Equal values: the earlier option is first.
 * An option with exact scores is first at its central weights, for the weights that put it first are convex.
 * Source: lahdelma-salminen-2001, first-rank acceptability and central weights.
 */
export function firstShares(scores: readonly (readonly number[])[], space: WeightSpace, samples = 4096): Firsts {
  const values = scores.map((own) => Float64Array.from(space, (corner) => dot(corner, own)))
  const weigh = Float64Array.from(space, (corner) => corner.reduce((s, w) => s + w, 0))
  const able = undominated(values)
  // One flat run of numbers: this is the inner loop of every brief.
  const rows = Float64Array.from(able.flatMap((i) => [...(values[i] as Float64Array)]))
  const wins = new Array<number>(scores.length).fill(0)
  const mixes = able.map(() => new Float64Array(space.length))
  const steps = evenSteps(space.length - 1)
  const even = new Float64Array(steps.length)
  const mix = new Float64Array(space.length)
  for (let n = 1; n <= samples; n++) {
    for (let d = 0; d < even.length; d++) even[d] = evenAt(n, steps[d] as number)
    sharesFrom(even, mix)
    let first = 0
    let most = Number.NEGATIVE_INFINITY
    for (let r = 0, at = 0; at < rows.length; r++) {
      let value = 0
      for (let j = 0; j < mix.length; j++) value += (rows[at++] as number) * (mix[j] as number)
      if (value > most) {
        most = value
        first = r
      }
    }
    const i = able[first] as number
    wins[i] = (wins[i] as number) + 1
    const sum = dot(weigh, mix)
    const own = mixes[first] as Float64Array
    for (let j = 0; j < mix.length; j++) own[j] = (own[j] as number) + (mix[j] as number) / sum
  }
  const central = scores.map((own, i) => {
    const won = wins[i] as number
    const mixed = mixes[able.indexOf(i)]
    return mixed && won > 0
      ? own.map(
          (_, k) =>
            dot(
              mixed,
              space.map((corner) => corner[k] ?? 0)
            ) / won
        )
      : null
  })
  return { share: wins.map((w) => w / samples), central, samples, error: samplingError(samples) }
}

/** The first of some options at given weights; -1 where there is none. Equal values: the earlier is first. */
export function firstAt(rows: readonly (readonly number[])[], weights: readonly number[]): number {
  let first = -1
  let most = Number.NEGATIVE_INFINITY
  for (let i = 0; i < rows.length; i++) {
    const value = dot(weights, rows[i] as readonly number[])
    if (value > most) {
      most = value
      first = i
    }
  }
  return first
}

/**
 * Share of the cases in which an option is first at given weights, its central ones as a rule: the confidence factor.
 * Source: lahdelma-salminen-2001, eq. for the confidence factor.
 * @param rowsOf scores of every option in the n-th case, n from 0; may be the same array each time
 * @param own whether the i-th option of the n-th case is the one meant
 */
export function confidenceFactor(
  weights: readonly number[],
  cases: number,
  rowsOf: (n: number) => readonly (readonly number[])[],
  own: (i: number, n: number) => boolean
): number {
  let holds = 0
  for (let n = 0; n < cases; n++) if (own(firstAt(rowsOf(n), weights), n)) holds++
  return holds / cases
}

export interface Acceptability extends Firsts {
  /** Share of each rank for each option: `ranks[option][0]` is first. */
  readonly ranks: readonly (readonly number[])[]
  /** All ranks in one figure, weighted by the rank-order centroid. */
  readonly holistic: readonly number[]
  /** How often an option is first at its central weights, its scores being uncertain; null where it is never first. */
  readonly confidence: readonly (number | null)[]
}

const drawn = (m: Measure, u: () => number): number =>
  typeof m === 'number' ? m : typeof m === 'function' ? m(u()) : m[0] + (m[1] - m[0]) * u()

/**
 * Rank acceptabilities, central weights and confidence factors over a space of weights and uncertain scores, which vary
 * independently of each other. Deterministic; equal values: the earlier option ranks higher.
 * Source: lahdelma-salminen-2001, eqs. for rank acceptability, central weight vector and confidence factor.
 */
export function acceptability(
  scores: readonly (readonly Measure[])[],
  space: WeightSpace,
  samples = 4096
): Acceptability {
  const count = scores.length
  const uncertain = scores.flat().filter((m) => typeof m !== 'number').length
  const zeros = () => new Array<number>(count).fill(0)
  const drawAll = (each: (mix: Float64Array, rows: readonly (readonly number[])[]) => void, mixed: number) => {
    const steps = uncertain > 0 ? rootSteps(mixed + uncertain) : evenSteps(mixed)
    const even = new Float64Array(mixed)
    const mix = new Float64Array(mixed + 1)
    for (let n = 1; n <= samples; n++) {
      for (let d = 0; d < mixed; d++) even[d] = evenAt(n, steps[d] as number)
      sharesFrom(even, mix)
      let d = mixed
      const u = () => evenAt(n, steps[d++] as number)
      each(
        mix,
        scores.map((row) => row.map((m) => drawn(m, u)))
      )
    }
  }
  const won = scores.map(zeros)
  const sums = scores.map((row) => row.map(() => 0))
  drawAll((mix, rows) => {
    const raw = (scores[0] ?? []).map((_, k) => space.reduce((s, corner, j) => s + (mix[j] ?? 0) * (corner[k] ?? 0), 0))
    const total = raw.reduce((s, w) => s + w, 0)
    const values = rows.map((row) => dot(row, raw))
    const order = values.map((_, i) => i).sort((a, b) => (values[b] ?? 0) - (values[a] ?? 0) || a - b)
    for (const [rank, i] of order.entries()) {
      const own = won[i] as number[]
      own[rank] = (own[rank] as number) + 1
    }
    const first = sums[order[0] ?? 0]
    if (first) for (const [k, w] of raw.entries()) first[k] = (first[k] ?? 0) + w / total
  }, space.length - 1)
  const central = sums.map((sum, i) => (won[i]?.[0] ? sum.map((s) => s / (won[i]?.[0] ?? 1)) : null))
  // The cases once, for all options alike.
  const cases: (readonly (readonly number[])[])[] = []
  drawAll((_, rows) => cases.push(rows), 0)
  const held = central.map((at, i) =>
    at
      ? confidenceFactor(
          at,
          samples,
          (n) => cases[n] ?? [],
          (first) => first === i
        )
      : null
  )
  const ranks = won.map((own) => own.map((n) => n / samples))
  const meta = rankOrderCentroid(count)
  return {
    share: ranks.map((own) => own[0] ?? 0),
    ranks,
    holistic: ranks.map((own) => dot(own, meta) / (meta[0] ?? 1)),
    central,
    confidence: held,
    samples,
    error: samplingError(samples)
  }
}
