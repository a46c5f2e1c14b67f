/** The numbers of one option, in SI, before anyone judges them. */
import type { Reference, Wood } from '../data/reference'
import type { SeasoningContent, ShopSheetContent } from '../data/schema'
import { INCH, percent } from '../data/units'
import type { Section } from '../frame/values'
import { bill, pricePerVolume } from '../shop/price'
import { dayOfMean, onDay } from '../wood/drying'
import { checkOpening, faceStrain, logDiameterNeeded } from '../wood/section'
import { changeBetween } from '../wood/shrinkage'
import { densityAt } from '../wood/weight'
import { type Facts, limit } from './facts'
import { type Available, availableOf, type Frame } from './frame-for'
import type { Heart, Option } from './types'
import { yardCourse } from './yard'

export interface OptionFacts {
  readonly option: Option
  readonly wood: Wood
  readonly seasoning: SeasoningContent
  readonly frame: Frame
  readonly available: Available
  readonly section: Section
  readonly logDiameter: number
  /** Mean moisture on delivery, fraction, with its band. */
  readonly delivered: number
  readonly deliveredLow: number
  readonly deliveredHigh: number
  /** Weeks in the yard (air-dried only). */
  readonly yardWeeks: number
  /** Weeks from order to standing. */
  readonly readyWeeks: number
  /** Strain still to come, fractions: radial, tangential, mean over the piece's deeper face; low and high by the seasons. */
  readonly radialToCome: number
  readonly tangentialToCome: number
  /** Strain from green to the driest month: what the checks of a boxed piece show at most, whoever dried it. */
  readonly dryRadial: number
  readonly dryTangential: number
  readonly faceStrain: number
  readonly faceShrinkage: number
  readonly gap: number
  readonly gapLow: number
  readonly gapHigh: number
  /** What the shoulder does each year in service, and what it closes up if the timber comes drier than it will live, mm. */
  readonly swing: number
  readonly swelling: number
  /** Strain along the grain still to come, low and high. */
  readonly lengthStrain: readonly [number, number]
  /** Upper bound of the check openings on a face once in service, from green, mm; 0 free of heart. */
  readonly checkOpening: number
  readonly stickVolume: number
  readonly stickMass: number
  readonly volume: number
  readonly pricePerVolume: number
  readonly timberCost: number
  readonly jobCost: number
  /** Middle of the range of durability classes. */
  readonly durabilityClass: number
  readonly onRequest: boolean
}

/** Days that a kiln or a vacuum dryer needs for the thinner side. */
export function chamberDays(seasoning: SeasoningContent, breadth: number): number {
  return (seasoning.daysAtOneInch ?? 0) * (breadth / INCH) ** (seasoning.thicknessPower ?? 1)
}

/** Whether the shop must ask for it: a wood on request, or one that rarely comes free of heart centre. */
function onRequestOf(sheet: ShopSheetContent, wood: Wood, heart: Heart): boolean {
  return (
    (sheet.woods.find((w) => w.species === wood.id)?.onRequest ?? false) ||
    (heart === 'free' && wood.supply.freeOfHeart !== 'usual')
  )
}

interface Delivery {
  readonly moisture: number
  readonly low: number
  readonly high: number
  /** Part of the shrinkage to oven-dry that is made by then: the dry shell has shrunk while the mean is still wet. */
  readonly shrunk: number
  readonly yardWeeks: number
  readonly weeks: number
}

function delivery(
  facts: Facts,
  reference: Reference,
  sheet: ShopSheetContent,
  wood: Wood,
  heart: Heart,
  seasoning: SeasoningContent,
  section: Section
): Delivery {
  const terms = sheet.seasonings.find((s) => s.id === seasoning.id)
  const asked = onRequestOf(sheet, wood, heart) ? sheet.requestWeeks : 0
  const lead = (terms?.leadWeeks ?? 0) + asked
  const fixed = lead + sheet.joineryWeeks
  const band = percent(seasoning.bandPercent)
  const about = (moisture: number) => ({
    moisture,
    low: Math.max(0, moisture - band),
    high: moisture + band,
    shrunk: Math.max(0, 1 - moisture / wood.fibreSaturation)
  })
  if (seasoning.id === 'green') return { ...about(wood.greenWhole), yardWeeks: 0, weeks: fixed }
  if (seasoning.id !== 'air') {
    const days = chamberDays(seasoning, section[0])
    return { ...about(percent(seasoning.deliveredPercent ?? 15)), yardWeeks: 0, weeks: fixed + days / 7 }
  }
  // Yard time is what the dates leave, at most what the shop keeps timbers for, and no longer than drying takes.
  const most = terms?.yardWeeks ?? 52
  const outdoor = facts.service.outdoor
  const settled = outdoor.reduce((sum, m) => sum + m, 0) / outdoor.length
  const target = Math.max(percent(20), settled + percent(limit(reference, 'yard-near')))
  const course = yardCourse(wood, section, most, target, facts, reference)
  const spare = facts.standsWeeks === null ? Number.POSITIVE_INFINITY : facts.standsWeeks - fixed
  const yardWeeks = Math.max(0, Math.min(spare, most, dayOfMean(course, target) / 7))
  const days = 7 * yardWeeks
  // A wood that dries k times as fast is as dry now as this course in k times the time.
  const { factor, slowest, quickest } = wood.drying
  return {
    moisture: onDay(course, course.mean, days),
    low: onDay(course, course.mean, (days * quickest) / factor),
    high: onDay(course, course.mean, (days * slowest) / factor),
    shrunk: onDay(course, course.shrunk, days),
    yardWeeks,
    weeks: fixed + yardWeeks
  }
}

/** Strain along the grain from green to oven-dry that a wood is taken to have, low and high, fractions. */
export function lengthwiseTotal(wood: Wood, reference: Reference): readonly [number, number] {
  const high = limit(reference, wood.traits.lengthwise.level === 2 ? 'lengthwise-troublesome' : 'lengthwise-high')
  return [percent(limit(reference, 'lengthwise-low')), percent(high)]
}

/** Work out one option. `frame` is shared by the options of a wood that need the same section. */
export function optionFacts(
  option: Option,
  facts: Facts,
  reference: Reference,
  sheet: ShopSheetContent,
  frame: Frame
): OptionFacts {
  const wood = reference.woods.get(option.species) as Wood
  const seasoning = reference.seasonings.get(option.seasoning) as SeasoningContent
  const { section } = frame
  const [b, d] = section
  const fsp = wood.fibreSaturation
  const came = delivery(facts, reference, sheet, wood, option.heart, seasoning, section)
  const delivered = came.moisture
  // As much shrinkage is made as if the whole section were at this moisture.
  const asIf = fsp * (1 - came.shrunk)

  const toCome = (total: number, service: number, from = asIf) =>
    Math.max(0, changeBetween(total, from, Math.min(service, fsp), fsp))
  const radial = toCome(wood.radial, facts.service.mean)
  const tangential = toCome(wood.tangential, facts.service.mean)
  const dryRadial = toCome(wood.radial, facts.service.driest, fsp)
  const dryTangential = toCome(wood.tangential, facts.service.driest, fsp)
  const strainAt = (service: number, from: number) => {
    const s = faceStrain(option.heart, b, d, toCome(wood.radial, service, from), toCome(wood.tangential, service, from))
    return Math.max(s.breadth, s.depth)
  }
  const strain = strainAt(facts.service.mean, asIf)
  const along = lengthwiseTotal(wood, reference)
  const lengthStrain = [toCome(along[0], facts.service.mean), toCome(along[1], facts.service.mean)] as const
  // The post is taken as thick as the beam is broad; the beam runs between two shoulders, so each sees half its change.
  const gapOf = (cross: number, length: number) => (b * cross) / 2 + (facts.stick * length) / 2
  const yearly = changeBetween(
    (wood.radial + wood.tangential) / 2,
    Math.min(facts.service.wettest, fsp),
    Math.min(facts.service.driest, fsp),
    fsp
  )
  const swollen = Math.max(
    0,
    -changeBetween((wood.radial + wood.tangential) / 2, Math.min(asIf, fsp), Math.min(facts.service.mean, fsp), fsp)
  )
  const { pieces, length } = timbersOf(facts, frame)
  const waste = 1 + sheet.wastePercent / 100
  const stickVolume = (b * d * facts.stick) / 1e9
  const volume = (pieces.reduce((sum, v) => sum + v, 0) * facts.count * waste) / 1e9
  const perVolume = pricePerVolume(sheet, option.species, {
    freeTimes:
      option.heart === 'boxed' ? 0 : wood.supply.freeOfHeart === 'usual' ? 1 : limit(reference, 'rare-free-add'),
    seasoning: option.seasoning,
    length,
    depth: d
  })
  const cost = bill(sheet, volume, perVolume)
  return {
    option,
    wood,
    seasoning,
    frame,
    available: availableOf(sheet, wood),
    section,
    logDiameter: logDiameterNeeded(option.heart, b, d),
    delivered,
    deliveredLow: came.low,
    deliveredHigh: came.high,
    yardWeeks: came.yardWeeks,
    readyWeeks: came.weeks,
    radialToCome: radial,
    tangentialToCome: tangential,
    faceStrain: strain,
    faceShrinkage: strain * d,
    gap: gapOf(strain, (lengthStrain[0] + lengthStrain[1]) / 2),
    gapLow: gapOf(strainAt(facts.service.wettest, Math.max(0, asIf + came.low - delivered)), lengthStrain[0]),
    gapHigh: gapOf(strainAt(facts.service.driest, Math.min(fsp, asIf + came.high - delivered)), lengthStrain[1]),
    swing: (b * yearly * limit(reference, 'swing-share')) / 2,
    swelling: (b * swollen) / 2,
    lengthStrain,
    dryRadial,
    dryTangential,
    checkOpening: option.heart === 'boxed' ? checkOpening(d / 2, dryRadial, dryTangential) : 0,
    stickVolume,
    stickMass: densityAt(wood.gravityGreen, delivered) * stickVolume,
    volume,
    pricePerVolume: perVolume,
    timberCost: cost.timber,
    jobCost: cost.job,
    durabilityClass: (wood.durability.best + wood.durability.worst) / 2,
    onRequest: onRequestOf(sheet, wood, option.heart)
  }
}

/** Volumes of the timbers of one frame line, mm3, and the longest of them, mm. */
function timbersOf(facts: Facts, frame: Frame): { readonly pieces: readonly number[]; readonly length: number } {
  const area = frame.section[0] * frame.section[1]
  if (frame.members.length === 0) return { pieces: [area * facts.stick], length: facts.stick }
  const pieces = frame.members.map((m) => {
    const s = m.sized.section
    return (s ? s[0] * s[1] : area) * Math.max(m.length, m.id === 'beam' || m.id === 'tie' ? facts.stick : 0) * m.pieces
  })
  if (facts.carries === 'truss') pieces.push(area * (facts.span / 2) * facts.slope) // the king post, about as long as the rise
  return { pieces, length: Math.max(facts.stick, ...frame.members.map((m) => m.length)) }
}
