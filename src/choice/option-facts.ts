/** The numbers of one option, in SI, before anyone judges them. */
import type { Reference, Wood } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { percent } from '../data/units'
import type { Section } from '../frame/values'
import { type Bill, bill, type PriceParts, priceParts } from '../shop/price'
import { transverseDiffusion } from '../wood/diffusivity'
import type { Band } from '../wood/joints'
import { widened } from '../wood/scatter'
import { checkOpening, faceShares, type Heart } from '../wood/section'
import { changeBetween, dimensionChange } from '../wood/shrinkage'
import { swingShare } from '../wood/swing'
import { type GrainProfile, type Twist, twistOf } from '../wood/twist'
import { densityAt } from '../wood/weight'
import { delivery } from './delivery'
import { type Facts, limit } from './facts'
import type { OptionBasis } from './option-basis'
import { grossVolume, heaviestOf, longestOf, type Stick, sticksOf, volumeOfOne } from './sticks'

export interface OptionFacts extends OptionBasis {
  /** Mean moisture on delivery, fraction, with its band. */
  readonly delivered: number
  readonly deliveredLow: number
  readonly deliveredHigh: number
  /** The even moisture at which as much would have shrunk as has on delivery. */
  readonly asIf: Band
  /** Weeks in the yard (air-dried only). */
  readonly yardWeeks: number
  /** Weeks from order to standing. */
  readonly readyWeeks: number
  /** The same if it dries as quickly or as slowly as it may. */
  readonly readyLow: number
  readonly readyHigh: number
  /** Strain still to come, fractions; low and high by the seasons, by how dry it may come and by how wood scatters. */
  readonly radial: Band
  readonly tangential: Band
  readonly radialToCome: number
  readonly tangentialToCome: number
  /** Strain from green to the driest month: what the checks of a boxed piece show at most, whoever dried it. */
  readonly dryRadial: number
  readonly dryTangential: number
  /** Share of the tangential strain across the breadth and the depth, from how the rings lie in the piece. */
  readonly shares: { readonly breadth: number; readonly depth: number }
  /** The same across a square post of its breadth, the way that moves more. */
  readonly postShare: number
  /** Strain across the depth, and across the post. */
  readonly faceStrain: number
  readonly postStrain: number
  /** What the depth and the breadth shrink, mm. */
  readonly faceShrinkage: number
  readonly breadthShrinkage: number
  readonly gap: number
  readonly gapLow: number
  readonly gapHigh: number
  /** Share of the year's swing of the air's equilibrium that the whole post follows. */
  readonly swingShare: number
  /** How fast moisture moves through it in service, mm2 a day. */
  readonly diffusivity: number
  /** What the shoulder does each year in service, and what it closes up if the timber comes drier than it will live, mm. */
  readonly swing: number
  readonly swelling: number
  /** Strain along the grain still to come, low and high. */
  readonly lengthStrain: readonly [number, number]
  /** How far the longest stick may turn from end to end, radians. */
  readonly twist: Twist
  /** Upper bound of the check openings on a face once in service, from green, mm; 0 free of heart. */
  readonly checkOpening: number
  /** Every stick of the job; its volume and price follow from them. */
  readonly sticks: readonly Stick[]
  /** Of the heaviest stick. */
  readonly stickVolume: number
  readonly stickMass: number
  readonly volume: number
  readonly price: PriceParts
  readonly timberCost: number
  readonly jobCost: number
  readonly bill: Bill
}

/** Strain along the grain from green to oven-dry that a wood is taken to have, low and high, fractions. */
export function lengthwiseTotal(wood: Wood, reference: Reference): readonly [number, number] {
  const high = limit(reference, wood.traits.lengthwise.level === 2 ? 'lengthwise-troublesome' : 'lengthwise-high')
  return [percent(limit(reference, 'lengthwise-low')), percent(high)]
}

/** Strain across a face whose share of the tangential strain is known. */
export const mix = (radial: Band, tangential: Band, share: number): Band => ({
  value: radial.value + share * (tangential.value - radial.value),
  low: radial.low + share * (tangential.low - radial.low),
  high: radial.high + share * (tangential.high - radial.high)
})

/** Shares of the tangential strain across breadth and depth. A square may be turned either way: its depth is the side that moves more. */
export function sharesOf(heart: Heart, [b, d]: Section): OptionFacts['shares'] {
  const seated = faceShares(heart, b, d)
  return b === d && seated.breadth > seated.depth ? { breadth: seated.depth, depth: seated.breadth } : seated
}

/** Limit that holds the usual slope of grain at the pith, by the level of the wood's twist. */
export const GRAIN_ANGLES = ['grain-angle-0', 'grain-angle-1', 'grain-angle-2'] as const

/** How the grain of a wood usually winds: greatest at the pith, by how much the trade knows it to twist. */
export const grainOf = (wood: Wood, reference: Reference): GrainProfile => ({
  atPith: (limit(reference, GRAIN_ANGLES[wood.traits.twist.level]) * Math.PI) / 180,
  fall: limit(reference, 'grain-fall')
})

/** Work out one option. */
export function optionFacts(
  basis: OptionBasis,
  facts: Facts,
  reference: Reference,
  sheet: ShopSheetContent
): OptionFacts {
  const { option, wood, seasoning, frame, section, freeOfHeart } = basis
  const [b, d] = section
  const fsp = wood.fibreSaturation
  const came = delivery(facts, reference, sheet, wood, option.heart, seasoning, section)
  const delivered = came.moisture
  const { asIf } = came
  const temperature = facts.service.temperatureC.reduce((sum, t) => sum + t, 0) / 12
  const diffusivity = wood.drying.factor * transverseDiffusion(facts.service.mean, temperature, wood.gravityGreen, fsp)

  const toCome = (total: number, service: number, from = asIf.value) =>
    Math.max(0, changeBetween(total, from, Math.min(service, fsp), fsp))
  const radial = toCome(wood.radial, facts.service.mean)
  const tangential = toCome(wood.tangential, facts.service.mean)
  const dryRadial = toCome(wood.radial, facts.service.driest, fsp)
  const dryTangential = toCome(wood.tangential, facts.service.driest, fsp)
  const { mean, wettest, driest } = facts.service
  const scatter = reference.scatter.shrinkage.of
  const bandOf = (total: number, value: number): Band =>
    widened({ value, low: toCome(total, wettest, asIf.low), high: toCome(total, driest, asIf.high) }, scatter)
  const across = { radial: bandOf(wood.radial, radial), tangential: bandOf(wood.tangential, tangential) }
  const shares = sharesOf(option.heart, section)
  // Which way a post is turned is not known: the way that moves more is the one to plan for.
  const square = faceShares(option.heart, b, b)
  const postShare = Math.max(square.breadth, square.depth)
  const post = mix(across.radial, across.tangential, postShare)
  const strain = radial + shares.depth * (tangential - radial)
  const along = lengthwiseTotal(wood, reference)
  const lengthStrain = [toCome(along[0], mean), toCome(along[1], mean)] as const
  // The post is taken as thick as the beam is broad; the beam runs between two shoulders, so each sees half its change.
  const gapOf = (cross: number, length: number) => (b * cross) / 2 + (facts.stick * length) / 2
  const held = (moisture: number) => Math.min(moisture, fsp)
  const change = (from: number, to: number) => {
    const by = (total: number) => dimensionChange(total, held(from), held(to), fsp).strain
    return by(wood.radial) + postShare * (by(wood.tangential) - by(wood.radial))
  }
  // The season runs in as a wave of the monthly means; a few days of rain or drought do not reach the inside.
  const yearly = change(Math.max(...facts.service.months), Math.min(...facts.service.months))
  const follows = swingShare(b, b, diffusivity)
  const swollen = Math.max(0, -change(asIf.value, mean))
  const sticks = sticksOf(facts, frame, reference)
  const stickVolume = volumeOfOne(heaviestOf(sticks))
  const volume = grossVolume(sticks, sheet.wastePercent)
  // A price that the shop states for this wood is what it asks, rare or not.
  const stated = sheet.woods.find((w) => w.species === wood.id)?.freeOfHeartAddPercent !== undefined
  const price = priceParts(sheet, option.species, {
    freeTimes: option.heart === 'boxed' ? 0 : stated || freeOfHeart === 'usual' ? 1 : limit(reference, 'rare-free-add'),
    seasoning: option.seasoning,
    // An addition for long sticks is charged on all, as if all were cut from long logs.
    length: Math.max(facts.stick, longestOf(sticks)),
    depth: d
  })
  const cost = bill(sheet, volume, price.total)
  return {
    ...basis,
    delivered,
    deliveredLow: came.low,
    deliveredHigh: came.high,
    asIf,
    yardWeeks: came.yardWeeks,
    readyWeeks: came.weeks,
    readyLow: came.weeksLow,
    readyHigh: came.weeksHigh,
    radialToCome: radial,
    tangentialToCome: tangential,
    radial: across.radial,
    tangential: across.tangential,
    shares,
    postShare,
    faceStrain: strain,
    postStrain: post.value,
    faceShrinkage: strain * d,
    breadthShrinkage: (radial + shares.breadth * (tangential - radial)) * b,
    gap: gapOf(post.value, (lengthStrain[0] + lengthStrain[1]) / 2),
    gapLow: gapOf(post.low, lengthStrain[0]),
    gapHigh: gapOf(post.high, lengthStrain[1]),
    swingShare: follows,
    diffusivity,
    swing: (b * yearly * follows) / 2,
    swelling: (b * swollen) / 2,
    lengthStrain,
    twist: twistOf(
      option.heart,
      grainOf(wood, reference),
      section,
      facts.stick,
      tangential,
      limit(reference, 'twist-explained'),
      scatter
    ),
    dryRadial,
    dryTangential,
    checkOpening: option.heart === 'boxed' ? checkOpening(d / 2, dryRadial, dryTangential) : 0,
    sticks,
    stickVolume,
    stickMass: densityAt(wood.gravityGreen, delivered) * stickVolume,
    volume,
    price,
    timberCost: cost.timber,
    jobCost: cost.job,
    bill: cost
  }
}
