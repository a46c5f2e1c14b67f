/** Woods as they look: freshly planed, under each finish, and later. */
import type { Reference, Wood } from '../../data/reference'
import type { FinishContent } from '../../data/schema'
import {
  type Channels,
  type Finish,
  finishedColour,
  type Lab,
  labOf,
  lightBelow,
  partsFor,
  reachable,
  reflectance,
  screenColour,
  throughLayer,
  towards,
  worn
} from '../../wood/colour'
import { colourWords } from '../colour-words'
import { type Facts, limit } from '../facts'
import type { Swatch, WoodLook } from '../types'
import type { Years } from './years'

const channels = (list: readonly number[]): Channels => [list[0] ?? 0, list[1] ?? 0, list[2] ?? 0]

export const opticsOf = ({ optics }: FinishContent): Finish => ({
  coat: channels(optics.coatKX),
  stain: optics.stainKX && channels(optics.stainKX),
  hides: optics.hides,
  pigment: optics.pigment
})

export const silverGrey = (reference: Reference): Lab => ({
  L: limit(reference, 'grey-l'),
  a: limit(reference, 'grey-a'),
  b: limit(reference, 'grey-b')
})

/**
 * A wood after years of light indoors: as published for it, or as light changes most woods.
 * @param light share of the light that reaches it, 0 to 1
 */
export function agedColour(wood: Wood, reference: Reference, light = 1): Lab {
  if (wood.aged) return towards(wood.colour, wood.aged, light)
  const kx = (id: string) => light * limit(reference, id)
  return labOf(throughLayer(reflectance(wood.colour), [kx('light-red'), kx('light-green'), kx('light-blue')]))
}

/** Stain as much as brings the wood to the lightness that the finish aims at. */
const partsOn = (wood: Lab, finish: FinishContent) =>
  finish.targetL === null ? 0 : partsFor(wood, opticsOf(finish), finish.targetL)

export const coated = (wood: Lab, finish: FinishContent): Lab =>
  finishedColour(wood, opticsOf(finish), partsOn(wood, finish))

/** Years between coats as upkeep is planned; null where there will be none. */
export const plannedYears = ({ upkeep }: Facts, reference: Reference): number | null =>
  upkeep === 'none' ? null : limit(reference, upkeep === 'regular' ? 'upkeep-regular' : 'upkeep-seldom')

export const isIndoors = ({ exposure }: Facts): boolean => exposure === 'heated' || exposure === 'unheated'

/** Years after which its later look is drawn: when the next coat is planned, or some years on where none is. */
export const laterYears = (finish: FinishContent, facts: Facts, reference: Reference): number =>
  (isIndoors(facts) || finish.build === 'none' ? null : plannedYears(facts, reference)) ??
  limit(reference, 'look-years')

/**
 * Indoors light changes the wood under the coat. Outdoors what soaked in wears evenly over its life and a film stands until
 * it is over; wood greys as far as it is bared.
 */
function laterColour(wood: Wood, finish: FinishContent, life: Years | null, facts: Facts, reference: Reference): Lab {
  const optics = opticsOf(finish)
  const parts = partsOn(wood.colour, finish)
  if (isIndoors(facts)) return finishedColour(agedColour(wood, reference, lightBelow(optics, parts)), optics, parts)
  const years = laterYears(finish, facts, reference)
  const lasts = life === null || finish.build === 'none' ? 0 : (life.low + life.high) / 2
  const gone = Math.max(0, years - lasts)
  const film = finish.build === 'film'
  const left = gone > 0 ? 0 : film ? 1 : 1 - years / lasts
  // A coat that wears evenly has bared half the wood, on the average of its life.
  const bared = film ? gone : gone > 0 ? lasts / 2 + gone : years ** 2 / (2 * lasts)
  const greys =
    limit(reference, 'grey-years') * (facts.exposure === 'roofed' ? limit(reference, 'grey-roofed-times') : 1)
  return finishedColour(towards(wood.colour, silverGrey(reference), bared / greys), worn(optics, left), parts)
}

export function swatchOf(lab: Lab): Swatch {
  const { hex, true: exact } = screenColour(lab)
  return { hex, inGamut: exact, words: colourWords(lab) }
}

export function woodLook(
  wood: Wood,
  finish: FinishContent,
  life: Years | null,
  facts: Facts,
  reference: Reference
): WoodLook {
  return {
    species: wood.id,
    own: swatchOf(wood.colour),
    finished: swatchOf(coated(wood.colour, finish)),
    later: swatchOf(laterColour(wood, finish, life, facts, reference)),
    reached:
      finish.targetL === null ||
      reachable(wood.colour, opticsOf(finish), finish.targetL, limit(reference, 'pale-shortfall-caution'))
  }
}

/** A wood under each finish in the order of the reference, sRGB; left to go grey, as grey as it comes. */
export const finishColours = (wood: Wood, reference: Reference): string[] =>
  reference.finishes.map(
    (finish) => screenColour(finish.build === 'none' ? silverGrey(reference) : coated(wood.colour, finish)).hex
  )
