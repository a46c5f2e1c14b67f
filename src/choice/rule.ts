/**
 * A rule is data with a reason: what it is about, when it speaks, what it does, what it says, and on whose word.
 * `when` is a pure predicate; `says` is only called where it holds.
 */
import type { Sentence, SourceRef } from '../data/quantity'
import type { Reference } from '../data/reference'
import type { Mark } from '../data/schema'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Facts } from './facts'
import type { OptionBasis } from './option-basis'
import type { OptionFacts } from './option-facts'
import type { Effect, Topic } from './types'

export interface Context {
  readonly facts: Facts
  readonly reference: Reference
  readonly sheet: ShopSheetContent
  /** Section area of the leanest wood that passes, mm2; null where none passes or none is demanded. */
  readonly leanest: number | null
  /** The least that any wood would need if every size were sold, mm2. */
  readonly leastNeeded: number | null
  /** Cost of the cheapest option's timber. */
  readonly cheapest: number
  /** Whether something that else does the job may come within the sum; null while that is not known, and without a sum. */
  readonly affordable: boolean | null
}

interface RuleWords {
  readonly id: string
  readonly about: Topic
  readonly effect: Effect
  /** True where it holds for every wood alike, and so tells none apart in a list. */
  readonly general?: true
  /** A few words for a list, without a full stop. */
  readonly short: (o: OptionFacts, c: Context) => Sentence
  readonly says: (o: OptionFacts, c: Context) => Sentence
  readonly sources: readonly SourceRef[]
  readonly mark: Mark
}

/** A rule that asks only what is known before drying, movement and price: whom it puts out need not be worked out further. */
export interface EarlyRule extends RuleWords {
  readonly early: true
  readonly when: (o: OptionBasis, c: Context) => boolean
}

export interface LateRule extends RuleWords {
  readonly early?: never
  readonly when: (o: OptionFacts, c: Context) => boolean
}

export type Rule = EarlyRule | LateRule

/** How weighty a reason is when only one can be said: ruled out before cautioned before favoured, then by the list's order. */
export const EFFECT_ORDER: readonly Effect[] = ['out', 'caution', 'favour']
