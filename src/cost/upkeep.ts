/** What a finish costs as the years go on: the first coat, and each one that falls due. */

export interface Upkeep {
  /** Coats that fall due within the years looked at, fewest and most. */
  readonly recoats: { readonly low: number; readonly high: number }
  /** First coat and recoats, in the currency of the first. */
  readonly cost: { readonly low: number; readonly high: number }
}

/** Coats due after the first, before the end: one at every interval, none on the last day. */
const due = (years: number, every: number): number => Math.max(0, Math.ceil(years / every - 1e-9) - 1)

/**
 * Cost of a finish over 20 years, first coat included, at today's prices and without interest.
 * @param interval years between coats, shortest and longest
 * @param recoatShare cost of a later coat as a part of the first
 * @throws RangeError where a cost or share is negative, or an interval is not positive or runs backwards
 * Source: derived, finish-20
 */
export function finishCost20(
  firstCost: number,
  interval: { readonly low: number; readonly high: number },
  recoatShare: number
): Upkeep {
  if (!(firstCost >= 0 && recoatShare >= 0)) throw new RangeError('a cost below 0')
  if (!(interval.low > 0 && interval.high >= interval.low)) throw new RangeError('years between coats out of order')
  const recoats = { low: due(20, interval.high), high: due(20, interval.low) }
  const cost = (coats: number) => firstCost * (1 + recoatShare * coats)
  return { recoats, cost: { low: cost(recoats.low), high: cost(recoats.high) } }
}
