/** What all options of one wood, heart and frame share, however dry they come: how the rings lie, what the seasons do, the sticks. */
import type { Reference, Wood } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { percent } from '../data/units'
import type { Section } from '../frame/values'
import { transverseDiffusion } from '../wood/diffusivity'
import { checkOpening, faceShares, type Heart } from '../wood/section'
import { changeBetween, dimensionChange } from '../wood/shrinkage'
import { swingShare } from '../wood/swing'
import { type Facts, limit } from './facts'
import type { OptionBasis } from './option-basis'
import { grossVolume, heaviestOf, longestOf, type Stick, sticksOf, volumeOfOne } from './sticks'

export interface PieceFacts {
  /** Strain from green to the driest month: what the checks of a boxed piece show at most, whoever dried it. */
  readonly dryRadial: number
  readonly dryTangential: number
  /** Share of the tangential strain across the breadth and the depth, from how the rings lie in the piece. */
  readonly shares: { readonly breadth: number; readonly depth: number }
  /** The same across a square post of its breadth, the way that moves more. */
  readonly postShare: number
  /** Strain along the grain from green to oven-dry, low and high. */
  readonly lengthwise: readonly [number, number]
  /** Share of the year's swing of the air's equilibrium that the whole post follows. */
  readonly swingShare: number
  /** How fast moisture moves through it in service, mm2 a day. */
  readonly diffusivity: number
  /** What the shoulder does each year in service, mm. */
  readonly swing: number
  /** Upper bound of the check openings on a face once in service, from green, mm; 0 free of heart. */
  readonly checkOpening: number
  /** Every stick of the job; its volume and price follow from them. */
  readonly sticks: readonly Stick[]
  /** Of the heaviest stick, m3, and of the longest, mm. */
  readonly stickVolume: number
  readonly longest: number
  /** To be bought, m3. */
  readonly volume: number
}

/** Strain along the grain from green to oven-dry that a wood is taken to have, low and high, fractions. */
export function lengthwiseTotal(wood: Wood, reference: Reference): readonly [number, number] {
  const high = limit(reference, wood.traits.lengthwise.level === 2 ? 'lengthwise-troublesome' : 'lengthwise-high')
  return [percent(limit(reference, 'lengthwise-low')), percent(high)]
}

/** Shares of the tangential strain across breadth and depth. A square may be turned either way: its depth is the side that moves more. */
export function sharesOf(heart: Heart, [b, d]: Section): PieceFacts['shares'] {
  const seated = faceShares(heart, b, d)
  return b === d && seated.breadth > seated.depth ? { breadth: seated.depth, depth: seated.breadth } : seated
}

/** Strain still to come between two moistures, 0 where the wood would rather swell; at most from fibre saturation. */
export const strainToCome = (total: number, from: number, to: number, fibreSaturation: number): number =>
  Math.max(0, changeBetween(total, from, Math.min(to, fibreSaturation), fibreSaturation))

/** Strain across a post from one moisture to another; below zero where it swells. */
export function acrossPost(wood: Wood, postShare: number, from: number, to: number): number {
  const fsp = wood.fibreSaturation
  const by = (total: number) => dimensionChange(total, Math.min(from, fsp), Math.min(to, fsp), fsp).strain
  return by(wood.radial) + postShare * (by(wood.tangential) - by(wood.radial))
}

export function pieceFacts(
  { option: { heart }, wood, frame, section }: OptionBasis,
  facts: Facts,
  reference: Reference,
  sheet: ShopSheetContent
): PieceFacts {
  const [b, d] = section
  const fsp = wood.fibreSaturation
  const { service } = facts
  const temperature = service.temperatureC.reduce((sum, t) => sum + t, 0) / 12
  const diffusivity = wood.drying.factor * transverseDiffusion(service.mean, temperature, wood.gravityGreen, fsp)
  const dryRadial = strainToCome(wood.radial, fsp, service.driest, fsp)
  const dryTangential = strainToCome(wood.tangential, fsp, service.driest, fsp)
  // Which way a post is turned is not known: the way that moves more is the one to plan for.
  const square = faceShares(heart, b, b)
  const postShare = Math.max(square.breadth, square.depth)
  // The season runs in as a wave of the monthly means; a few days of rain or drought do not reach the inside.
  const yearly = acrossPost(wood, postShare, Math.max(...service.months), Math.min(...service.months))
  const follows = swingShare(b, b, diffusivity)
  const sticks = sticksOf(facts, frame, reference)
  return {
    dryRadial,
    dryTangential,
    shares: sharesOf(heart, section),
    postShare,
    lengthwise: lengthwiseTotal(wood, reference),
    swingShare: follows,
    diffusivity,
    swing: (b * yearly * follows) / 2,
    checkOpening: heart === 'boxed' ? checkOpening(d / 2, dryRadial, dryTangential) : 0,
    sticks,
    stickVolume: volumeOfOne(heaviestOf(sticks)),
    longest: longestOf(sticks),
    volume: grossVolume(sticks, sheet.wastePercent)
  }
}
