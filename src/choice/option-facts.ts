/** The numbers of one option, in SI, before anyone judges them. */

import { type Bill, bill, type PriceParts, priceParts } from '../cost/price'
import type { Reference, Wood } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Band } from '../wood/joints'
import { widened } from '../wood/scatter'
import { type GrainProfile, type Twist, twistOf } from '../wood/twist'
import { densityAt } from '../wood/weight'
import { delivery } from './delivery'
import { type Facts, limit } from './facts'
import type { OptionBasis } from './option-basis'
import { acrossPost, type PieceFacts, strainToCome } from './piece-facts'

export interface OptionFacts extends OptionBasis, PieceFacts {
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
  /** Strain across the depth, and across the post. */
  readonly faceStrain: number
  readonly postStrain: number
  /** What the depth and the breadth shrink, mm. */
  readonly faceShrinkage: number
  readonly breadthShrinkage: number
  readonly gap: number
  readonly gapLow: number
  readonly gapHigh: number
  /** What the shoulder closes up if the timber comes drier than it will live, mm. */
  readonly swelling: number
  /** Strain along the grain still to come, low and high. */
  readonly lengthStrain: readonly [number, number]
  /** How far the longest stick may turn from end to end, radians. */
  readonly twist: Twist
  /** Of the heaviest stick, kg. */
  readonly stickMass: number
  readonly price: PriceParts
  readonly timberCost: number
  readonly jobCost: number
  readonly bill: Bill
}

/** Strain across a face whose share of the tangential strain is known. */
export const mix = (radial: Band, tangential: Band, share: number): Band => ({
  value: radial.value + share * (tangential.value - radial.value),
  low: radial.low + share * (tangential.low - radial.low),
  high: radial.high + share * (tangential.high - radial.high)
})

/** Limit that holds the usual slope of grain at the pith, by the level of the wood's twist. */
export const GRAIN_ANGLES = ['grain-angle-0', 'grain-angle-1', 'grain-angle-2'] as const

/** How the grain of a wood usually winds: greatest at the pith, by how much the trade knows it to twist. */
export const grainOf = (wood: Wood, reference: Reference): GrainProfile => ({
  atPith: (limit(reference, GRAIN_ANGLES[wood.traits.twist.level]) * Math.PI) / 180,
  fall: limit(reference, 'grain-fall')
})

/** Work out one option. `piece` is shared by the options of one wood, heart and frame. */
export function optionFacts(
  basis: OptionBasis,
  piece: PieceFacts,
  facts: Facts,
  reference: Reference,
  sheet: ShopSheetContent
): OptionFacts {
  const { option, wood, seasoning, section, freeOfHeart } = basis
  const { shares, postShare, lengthwise, stickVolume } = piece
  const [b, d] = section
  const fsp = wood.fibreSaturation
  const came = delivery(facts, reference, sheet, wood, option.heart, seasoning, section)
  const delivered = came.moisture
  const { asIf } = came
  const toCome = (total: number, service: number, from = asIf.value) => strainToCome(total, from, service, fsp)
  const radial = toCome(wood.radial, facts.service.mean)
  const tangential = toCome(wood.tangential, facts.service.mean)
  const { mean, wettest, driest } = facts.service
  const scatter = reference.scatter.shrinkage.of
  const bandOf = (total: number, value: number): Band =>
    widened({ value, low: toCome(total, wettest, asIf.low), high: toCome(total, driest, asIf.high) }, scatter)
  const across = { radial: bandOf(wood.radial, radial), tangential: bandOf(wood.tangential, tangential) }
  const post = mix(across.radial, across.tangential, postShare)
  const strain = radial + shares.depth * (tangential - radial)
  const lengthStrain = [toCome(lengthwise[0], mean), toCome(lengthwise[1], mean)] as const
  // The post is taken as thick as the beam is broad; the beam runs between two shoulders, so each sees half its change.
  const gapOf = (cross: number, length: number) => (b * cross) / 2 + (facts.stick * length) / 2
  const swollen = Math.max(0, -acrossPost(wood, postShare, asIf.value, mean))
  // A price that the shop states for this wood is what it asks, rare or not.
  const stated = sheet.woods.find((w) => w.species === wood.id)?.freeOfHeartAddPercent !== undefined
  const price = priceParts(sheet, option.species, {
    freeTimes: option.heart === 'boxed' ? 0 : stated || freeOfHeart === 'usual' ? 1 : limit(reference, 'rare-free-add'),
    seasoning: option.seasoning,
    // An addition for long sticks is charged on all, as if all were cut from long logs.
    length: Math.max(facts.stick, piece.longest),
    depth: d
  })
  const cost = bill(sheet, piece.volume, price.total)
  return {
    ...basis,
    ...piece,
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
    faceStrain: strain,
    postStrain: post.value,
    faceShrinkage: strain * d,
    breadthShrinkage: (radial + shares.breadth * (tangential - radial)) * b,
    gap: gapOf(post.value, (lengthStrain[0] + lengthStrain[1]) / 2),
    gapLow: gapOf(post.low, lengthStrain[0]),
    gapHigh: gapOf(post.high, lengthStrain[1]),
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
    stickMass: densityAt(wood.gravityGreen, delivered) * stickVolume,
    price,
    timberCost: cost.timber,
    jobCost: cost.job,
    bill: cost
  }
}
