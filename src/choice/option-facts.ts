/** The numbers of one option, in SI, before anyone judges them. */
import type { Reference, Wood } from '../data/reference'
import type { SeasoningContent, ShopSheetContent } from '../data/schema'
import { INCH, percent } from '../data/units'
import type { Section } from '../frame/values'
import { bill, pricePerVolume } from '../shop/price'
import { type DryingRate, daysToReach, moistureAfter } from '../wood/drying'
import { checkOpening, faceStrain, logDiameterNeeded } from '../wood/section'
import { changeBetween } from '../wood/shrinkage'
import { densityAt } from '../wood/weight'
import { type Facts, limit } from './facts'
import { type Available, availableOf, type Frame } from './frame-for'
import type { Heart, Option } from './types'

export interface OptionFacts {
  readonly option: Option
  readonly wood: Wood
  readonly seasoning: SeasoningContent
  readonly frame: Frame
  readonly available: Available
  readonly section: Section
  readonly logDiameter: number
  /** Mean moisture on delivery, fraction. */
  readonly delivered: number
  readonly deliveredBand: number
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

/** How a wood dries in the yard of this place. */
export function dryingRate(wood: Wood, facts: Facts, reference: Reference): DryingRate {
  const outdoor = facts.service.outdoor
  return {
    green: Math.max(wood.greenWhole, 0.25),
    equilibrium: outdoor.reduce((s, m) => s + m, 0) / outdoor.length,
    boardEquilibrium: percent(limit(reference, 'yard-equilibrium')),
    boardDays: (wood.airDays.min + wood.airDays.max) / 2,
    power: reference.seasonings.get('air')?.thicknessPower ?? 1.58
  }
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
  if (seasoning.id === 'green') return { moisture: wood.greenWhole, yardWeeks: 0, weeks: fixed }
  if (seasoning.id !== 'air') {
    return {
      moisture: percent(seasoning.deliveredPercent ?? 15),
      yardWeeks: 0,
      weeks: fixed + chamberDays(seasoning, section[0]) / 7
    }
  }
  // Yard time is what the dates leave, at most what the shop keeps timbers for, and no longer than drying takes.
  const rate = dryingRate(wood, facts, reference)
  const target = Math.max(percent(20), rate.equilibrium + 0.005)
  const enough = daysToReach(rate, section[0], section[1], target) / 7
  const spare = facts.standsWeeks === null ? Number.POSITIVE_INFINITY : facts.standsWeeks - fixed
  const yardWeeks = Math.max(0, Math.min(spare, terms?.yardWeeks ?? 52, enough))
  return { moisture: moistureAfter(rate, section[0], section[1], yardWeeks * 7), yardWeeks, weeks: fixed + yardWeeks }
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
  const {
    moisture: delivered,
    yardWeeks,
    weeks
  } = delivery(facts, reference, sheet, wood, option.heart, seasoning, section)

  const toCome = (total: number, service: number, from = delivered) =>
    Math.max(0, changeBetween(total, from, Math.min(service, fsp), fsp))
  const radial = toCome(wood.radial, facts.service.mean)
  const tangential = toCome(wood.tangential, facts.service.mean)
  const dryRadial = toCome(wood.radial, facts.service.driest, fsp)
  const dryTangential = toCome(wood.tangential, facts.service.driest, fsp)
  const strainAt = (service: number, from: number) => {
    const s = faceStrain(option.heart, b, d, toCome(wood.radial, service, from), toCome(wood.tangential, service, from))
    return Math.max(s.breadth, s.depth)
  }
  const strain = strainAt(facts.service.mean, delivered)
  const band = percent(seasoning.bandPercent)
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
    -changeBetween(
      (wood.radial + wood.tangential) / 2,
      Math.min(delivered, fsp),
      Math.min(facts.service.mean, fsp),
      fsp
    )
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
    deliveredBand: band,
    yardWeeks,
    readyWeeks: weeks,
    radialToCome: radial,
    tangentialToCome: tangential,
    faceStrain: strain,
    faceShrinkage: strain * d,
    gap: gapOf(strain, (lengthStrain[0] + lengthStrain[1]) / 2),
    gapLow: gapOf(strainAt(facts.service.wettest, Math.max(0, delivered - band)), lengthStrain[0]),
    gapHigh: gapOf(strainAt(facts.service.driest, delivered + band), lengthStrain[1]),
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
