/** What is delivered: how dry, how much of it has shrunk by then, and in how many weeks. */
import type { Reference, Wood } from '../data/reference'
import type { SeasoningContent } from '../data/schema'
import type { ShopSheetContent } from '../data/shop-schema'
import { INCH, percent } from '../data/units'
import type { Section } from '../frame/values'
import { type Course, dayOfMean, onDay } from '../wood/drying'
import type { Band } from '../wood/joints'
import { type Facts, limit } from './facts'
import type { Heart } from './types'
import { yardCourse } from './yard'

/** Days that a kiln or a vacuum dryer needs for the thinner side. */
export function chamberDays(seasoning: SeasoningContent, breadth: number): number {
  return (seasoning.daysAtOneInch ?? 0) * (breadth / INCH) ** (seasoning.thicknessPower ?? 1)
}

/** The same in weeks, with the band of the way of drying. */
export function chamberWeeks(seasoning: SeasoningContent, breadth: number): Band {
  const weeks = chamberDays(seasoning, breadth) / 7
  const band = percent(seasoning.daysBandPercent ?? 0)
  return { value: weeks, low: weeks * (1 - band), high: weeks * (1 + band) }
}

/** How a wood comes free of heart centre: as this shop says, else as the trade has it. */
export function freeOfHeartOf(sheet: ShopSheetContent, wood: Wood): 'usual' | 'rare' | 'hardly' {
  const own = sheet.woods.find((w) => w.species === wood.id)?.freeOfHeart
  return own === undefined ? wood.supply.freeOfHeart : ({ usual: 'usual', request: 'rare', no: 'hardly' } as const)[own]
}

/** Whether the shop must ask for it: a wood on request, or one that rarely comes free of heart centre. */
export function onRequestOf(sheet: ShopSheetContent, wood: Wood, heart: Heart): boolean {
  return (
    (sheet.woods.find((w) => w.species === wood.id)?.onRequest ?? false) ||
    (heart === 'free' && freeOfHeartOf(sheet, wood) !== 'usual')
  )
}

/** Weeks that the shop asks for one wood, cut and way of drying, beside the drying itself. */
export interface ShopWeeks {
  /** Where the shop must ask for the wood first. */
  readonly asked: number
  readonly lead: number
  readonly joinery: number
  /** All of them. */
  readonly fixed: number
  /** The longest that the shop keeps timbers in its yard. */
  readonly mostYard: number
}

export function shopWeeks(sheet: ShopSheetContent, wood: Wood, heart: Heart, seasoning: SeasoningContent): ShopWeeks {
  const terms = sheet.seasonings.find((s) => s.id === seasoning.id)
  const asked = onRequestOf(sheet, wood, heart) ? sheet.requestWeeks : 0
  const lead = terms?.leadWeeks ?? 0
  const joinery = sheet.joineryWeeks
  return { asked, lead, joinery, fixed: lead + asked + joinery, mostYard: terms?.yardWeeks ?? 52 }
}

export interface YardTime {
  readonly course: Course
  readonly weeks: number
  /** As the quickest and as the slowest of the published boards of this wood. */
  readonly low: number
  readonly high: number
}

/** Weeks in the yard: what the dates leave, at most what the shop keeps timbers for, and no longer than drying takes. */
export function yardTime(
  facts: Facts,
  reference: Reference,
  wood: Wood,
  section: Section,
  most: number,
  fixed: number
): YardTime {
  const outdoor = facts.service.outdoor
  const settled = outdoor.reduce((sum, m) => sum + m, 0) / outdoor.length
  const target = Math.max(percent(20), settled + percent(limit(reference, 'yard-near')))
  const course = yardCourse(wood, section, most, target, facts, reference)
  const spare = facts.standsWeeks === null ? Number.POSITIVE_INFINITY : facts.standsWeeks - fixed
  const dry = dayOfMean(course, target) / 7
  const held = (weeks: number) => Math.max(0, Math.min(spare, most, weeks))
  const { factor, slowest, quickest } = wood.drying
  return { course, weeks: held(dry), low: held((dry * factor) / quickest), high: held((dry * factor) / slowest) }
}

export interface Delivery {
  readonly moisture: number
  readonly low: number
  readonly high: number
  /** The even moisture at which as much would have shrunk: the dry shell has shrunk while the mean is still wet. */
  readonly asIf: Band
  readonly yardWeeks: number
  readonly weeks: number
  /** As quick and as slow as the drying may be. */
  readonly weeksLow: number
  readonly weeksHigh: number
}

/** How dry an option comes, and when: from the saw, the yard, the kiln or the vacuum. */
export function delivery(
  facts: Facts,
  reference: Reference,
  sheet: ShopSheetContent,
  wood: Wood,
  heart: Heart,
  seasoning: SeasoningContent,
  section: Section
): Delivery {
  const { fixed, mostYard } = shopWeeks(sheet, wood, heart, seasoning)
  const band = percent(seasoning.bandPercent)
  const fsp = wood.fibreSaturation
  const about = (moisture: number) => {
    const low = Math.max(0, moisture - band)
    const high = moisture + band
    const held = (m: number) => Math.min(m, fsp)
    return { moisture, low, high, asIf: { value: held(moisture), low: held(low), high: held(high) } }
  }
  if (seasoning.id === 'green')
    return { ...about(wood.greenWhole), yardWeeks: 0, weeks: fixed, weeksLow: fixed, weeksHigh: fixed }
  if (seasoning.id !== 'air') {
    const { value: weeks, low, high } = chamberWeeks(seasoning, section[0])
    return {
      ...about(percent(seasoning.deliveredPercent ?? 15)),
      yardWeeks: 0,
      weeks: fixed + weeks,
      weeksLow: fixed + low,
      weeksHigh: fixed + high
    }
  }
  const {
    course,
    weeks: yardWeeks,
    low: soonest,
    high: latest
  } = yardTime(facts, reference, wood, section, mostYard, fixed)
  const days = 7 * yardWeeks
  // A wood that dries k times as fast is as dry now as this course in k times the time.
  const { factor, slowest, quickest } = wood.drying
  const [quick, slow] = [(days * quickest) / factor, (days * slowest) / factor]
  const mean = (day: number) => onDay(course, course.mean, day)
  const asIf = (day: number) => fsp * (1 - onDay(course, course.shrunk, day))
  // Near the end of a long course moisture follows the seasons up and down, and a slower piece may be the drier one for a while.
  const ordered = (of: (day: number) => number): Band => {
    const all = [of(days), of(quick), of(slow)]
    return { value: of(days), low: Math.min(...all), high: Math.max(...all) }
  }
  const moisture = ordered(mean)
  return {
    moisture: moisture.value,
    low: moisture.low,
    high: moisture.high,
    asIf: ordered(asIf),
    yardWeeks,
    weeks: fixed + yardWeeks,
    weeksLow: fixed + soonest,
    weeksHigh: fixed + latest
  }
}
