/** What is known of an option before its drying, movement and price are worked out: enough for most rules that put one out. */
import type { Reference, Wood } from '../data/reference'
import type { SeasoningContent } from '../data/schema'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Section } from '../frame/values'
import { logDiameterNeeded } from '../wood/section'
import { freeOfHeartOf, onRequestOf } from './delivery'
import { type Available, availableOf, type Frame } from './frame-for'
import { optionsOf } from './options'
import type { Option } from './types'

/** What a shop's sheet says of an option, whatever the job. */
export interface Stocked {
  readonly option: Option
  readonly wood: Wood
  readonly seasoning: SeasoningContent
  /** Framed before it has dried, so that it is heavier and creeps more. */
  readonly unseasoned: boolean
  readonly available: Available
  /** Middle of the range of durability classes. */
  readonly durabilityClass: number
  readonly onRequest: boolean
  /** How it comes free of heart centre. */
  readonly freeOfHeart: 'usual' | 'rare' | 'hardly'
}

export interface OptionBasis extends Stocked {
  readonly frame: Frame
  readonly section: Section
  readonly logDiameter: number
}

/** Every option of a sheet. @throws Error where the sheet names what the reference does not hold: the door lets none through */
export function stockOf(sheet: ShopSheetContent, reference: Reference): readonly Stocked[] {
  return optionsOf(sheet, reference).map((option) => {
    const wood = reference.woods.get(option.species)
    const seasoning = reference.seasonings.get(option.seasoning)
    if (!wood || !seasoning) throw new Error(`no "${option.id}"`)
    return {
      option,
      wood,
      seasoning,
      unseasoned: option.seasoning === 'green' || option.seasoning === 'air',
      available: availableOf(sheet, wood),
      durabilityClass: (wood.durability.best + wood.durability.worst) / 2,
      onRequest: onRequestOf(sheet, wood, option.heart),
      freeOfHeart: freeOfHeartOf(sheet, wood)
    }
  })
}

/** `frame` is shared by the options of a wood that need the same section. */
export function optionBasis(stocked: Stocked, frame: Frame): OptionBasis {
  const { section } = frame
  return { ...stocked, frame, section, logDiameter: logDiameterNeeded(stocked.option.heart, section[0], section[1]) }
}
