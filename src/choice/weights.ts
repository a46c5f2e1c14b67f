/** Weights of the criteria from the person's own order. */
import { CRITERIA, type Criterion } from './types'

/**
 * Rank-order centroid weights of n criteria, first to last: w_k = (1/n) sum from i = k to n of 1/i.
 * Source: roc-weights. They sum to 1.
 */
export function rankOrderCentroid(n: number): number[] {
  if (!(Number.isInteger(n) && n >= 1)) throw new RangeError('at least one criterion')
  return Array.from({ length: n }, (_, k) => {
    let sum = 0
    for (let i = k + 1; i <= n; i++) sum += 1 / i
    return sum / n
  })
}

/** What the attitude to price multiplies the weight of cost by. Source: bentwise-scale. */
export const costFactor = (budget: string): number => (budget === 'lowest' ? 2 : budget === 'quality' ? 0.5 : 1)

/**
 * Weight of every criterion. Ordered: rank-order centroid; open: all alike. The attitude to price doubles or halves the
 * weight of cost, and the rest is scaled to sum to 1. Source: roc-weights; the factor of two is bentwise-scale.
 */
export function criterionWeights(order: readonly Criterion[] | null, budget: string): Record<Criterion, number> {
  const ranked = order ?? CRITERIA
  const plain = order ? rankOrderCentroid(ranked.length) : ranked.map(() => 1 / ranked.length)
  const factor = costFactor(budget)
  const raw = ranked.map((c, i) => [c, (plain[i] ?? 0) * (c === 'cost' ? factor : 1)] as const)
  const sum = raw.reduce((s, [, w]) => s + w, 0)
  return Object.fromEntries(raw.map(([c, w]) => [c, w / sum])) as Record<Criterion, number>
}
