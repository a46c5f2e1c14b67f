/** What an option is held against: the job, and what the best of all options need. */
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Facts } from './facts'
import type { OptionBasis } from './option-basis'
import type { Context } from './rule'

/** The least of a number over a list; infinite for none. */
export const least = <T>(items: readonly T[], of: (item: T) => number): number =>
  items.reduce((m, item) => Math.min(m, of(item)), Number.POSITIVE_INFINITY)

/** The context before anyone is ruled out: what is affordable, and the cheapest, are not known yet. */
export function contextOf(
  all: readonly OptionBasis[],
  facts: Facts,
  sheet: ShopSheetContent,
  reference: Reference
): Context {
  const passing = all.filter((o) => facts.loaded && o.frame.passes)
  const any = passing.length > 0
  return {
    facts,
    reference,
    sheet,
    leanest: any ? least(passing, (o) => o.section[0] * o.section[1]) : null,
    leastNeeded: any ? least(passing, (o) => o.frame.neededArea) : null,
    cheapest: 0,
    affordable: null
  }
}
