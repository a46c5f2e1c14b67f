/** What a piece of a wood does from green to a heated room: figures that open, and its log ends as drawn. */
import { mix } from '../choice/option-facts'
import { lengthwiseTotal } from '../choice/piece-facts'
import { computed, quantity, sentence } from '../choice/say'
import type { LogEnd } from '../choice/types'
import type { Quantity } from '../data/quantity'
import type { Wood } from '../data/reference'
import type { Section } from '../frame/values'
import { type Band, housedBeam } from '../wood/joints'
import { sectionShape } from '../wood/log-end'
import { boxedShares, checkOpening, faceShares, type Heart, logDiameterNeeded } from '../wood/section'
import { shrinkageFromGreen } from '../wood/shrinkage'
import type { Measure } from './measure'
import { BEAM } from './sizes'

const PIECE = { mark: 'practice', sources: [{ key: 'common-practice' }] } as const
const HEARTS: readonly Heart[] = ['boxed', 'free']
const RINGS = 14
/** Movement is drawn this many times larger, as in a brief. */
export const DRAWN_TIMES = 3

/** Strain of a total shrinkage from green to the room: its mean over the year, its wettest and its driest month. */
function strainOf(total: number, wood: Wood, { room }: Measure): Band {
  const at = (moisture: number) => shrinkageFromGreen(total, moisture, wood.fibreSaturation)
  return { value: at(room.mean), low: at(room.wettest), high: at(room.driest) }
}

const shrinkageInputs = (wood: Wood, { reference, room }: Measure): Record<string, Quantity> => ({
  'radial, to oven-dry': quantity('percent', wood.radial, wood.shrinkageOrigin),
  'tangential, to oven-dry': quantity('percent', wood.tangential, wood.shrinkageOrigin),
  Mf: quantity('moisture', wood.fibreSaturation, wood.fibreSaturationOrigin),
  'M in service': quantity('moisture', room.mean, computed(reference, 'service'))
})

/** What opens at a housed shoulder: a square post of that side, a beam as deep between two of them. mm */
export function gapOf(wood: Wood, side: number, measure: Measure): Quantity {
  const { reference } = measure
  const share = boxedShares({ left: side / 2, right: side / 2, up: side / 2, down: side / 2 }).breadth
  const radial = strainOf(wood.radial, wood, measure)
  const tangential = strainOf(wood.tangential, wood, measure)
  const across = mix(radial, tangential, share)
  const [least, most] = lengthwiseTotal(wood, reference)
  const low = strainOf(least, wood, measure)
  const high = strainOf(most, wood, measure)
  const along = { value: (low.value + high.value) / 2, low: low.low, high: high.high }
  const { gap } = housedBeam({
    postSide: side,
    beamDepth: side,
    length: BEAM,
    post: across,
    beam: across,
    along,
    margin: 0
  })
  const origin = computed(reference, 'gap', {
    ...shrinkageInputs(wood, measure),
    'post’s face': quantity('diameter', side, PIECE),
    'strain across': quantity('percent', across.value, computed(reference, 'shrinkage')),
    length: quantity('span', BEAM, PIECE)
  })
  return quantity('gap', gap.value, origin, { low: gap.low, high: gap.high })
}

/** How much smaller a side of that section gets, mm: the depth of a boxed piece. */
export function faceOf(wood: Wood, [breadth, depth]: Section, heart: Heart, measure: Measure): Quantity {
  const share = faceShares(heart, breadth, depth).depth
  const { value } = mix(strainOf(wood.radial, wood, measure), strainOf(wood.tangential, wood, measure), share)
  return quantity(
    'gap',
    value * depth,
    computed(measure.reference, 'face', {
      ...shrinkageInputs(wood, measure),
      strain: quantity('percent', value, computed(measure.reference, 'shrinkage')),
      face: quantity('gap', depth, PIECE)
    })
  )
}

/** Greatest sum of the check openings on a face of a boxed piece in the driest month, mm. */
export function checkOf(wood: Wood, [, depth]: Section, measure: Measure): Quantity {
  const radial = strainOf(wood.radial, wood, measure).high
  const tangential = strainOf(wood.tangential, wood, measure).high
  return quantity(
    'gap',
    checkOpening(depth / 2, radial, tangential),
    computed(measure.reference, 'checks', {
      d: quantity('gap', depth / 2, PIECE),
      'eT, green to driest': quantity('percent', tangential, wood.shrinkageOrigin),
      'eR, green to driest': quantity('percent', radial, wood.shrinkageOrigin)
    })
  )
}

/** Small end of the log that a section needs, mm. */
export const logOf = ([breadth, depth]: Section, heart: Heart, { reference }: Measure): Quantity =>
  quantity(
    'diameter',
    logDiameterNeeded(heart, breadth, depth),
    computed(reference, heart === 'boxed' ? 'log-boxed' : 'log-free')
  )

/** Both cuts of a section in their logs, green to the room, drawn larger than they move. */
export function logEndsOf(wood: Wood, section: Section, measure: Measure): LogEnd[] {
  const [breadth, depth] = section
  const radial = strainOf(wood.radial, wood, measure).value
  const tangential = strainOf(wood.tangential, wood, measure).value
  return HEARTS.map((heart): LogEnd => {
    const shape = sectionShape({ heart, breadth, depth, radial, tangential, exaggeration: DRAWN_TIMES })
    const log = logOf(section, heart, measure)
    return {
      ...shape,
      ringRadii: Array.from({ length: RINGS }, (_, i) => (shape.logRadius * (i + 1)) / RINGS),
      exaggeration: DRAWN_TIMES,
      says:
        heart === 'boxed'
          ? sentence('Boxed heart, from a {log} log: the checks on a face open up to {opening} in all, drawn as one.', {
              log,
              opening: checkOf(wood, section, measure)
            })
          : sentence('Free of heart centre, from a {log} log: no check to the pith, a face up to {less} smaller.', {
              log,
              less: faceOf(wood, section, 'free', measure)
            })
    }
  })
}
