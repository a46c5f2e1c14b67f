/** Figures of a wood besides its movement: weight, strength, drying, what the truss asks. Each opens to its source. */
import { serviceOf } from '../choice/clock/stages'
import { limit } from '../choice/facts'
import { valuesOf } from '../choice/frame-for'
import type { LadderLine } from '../choice/ladder/types'
import { computed, quantity } from '../choice/say'
import { COARSE, dryingWood, felledDay } from '../choice/yard'
import type { Quantity } from '../data/quantity'
import type { ClearStrength, Wood } from '../data/reference'
import { percent } from '../data/units'
import type { DesignValues, Section } from '../frame/values'
import { dryingCourse } from '../wood/drying'
import { densityAt } from '../wood/weight'
import type { Measure } from './measure'
import { SIDE, STICK } from './sizes'

const PIECE = { mark: 'practice', sources: [{ key: 'common-practice' }] } as const
const SQUARE: Section = [SIDE, SIDE]

/** Green as the whole stem is, or at 12 % where strengths are published. */
export function weightOf(wood: Wood, section: Section, dry: boolean, { reference, room }: Measure): Quantity {
  const moisture = dry ? room.mean : wood.greenWhole
  const volume = (section[0] * section[1] * STICK) / 1e9
  return quantity(
    'mass',
    densityAt(wood.gravityGreen, moisture) * volume,
    computed(reference, 'weight', {
      Gb: quantity('ratio', wood.gravityGreen, wood.gravityOrigin),
      M: quantity('moisture', moisture, dry ? computed(reference, 'service') : wood.greenOrigin),
      'b × d': quantity('section', section, PIECE),
      length: quantity('span', STICK, PIECE)
    })
  )
}

/** Density in the heated room. */
export const densityOf = (wood: Wood, { reference, room }: Measure): Quantity =>
  quantity(
    'density',
    densityAt(wood.gravityGreen, room.mean),
    computed(reference, 'weight', {
      Gb: quantity('ratio', wood.gravityGreen, wood.gravityOrigin),
      M: quantity('moisture', room.mean, computed(reference, 'service'))
    })
  )

const CLEAR = ['rupture', 'elasticity', 'compression', 'compressionPerp', 'shear'] as const
export type ClearId = (typeof CLEAR)[number]
export const isClear = (id: string): id is ClearId => CLEAR.some((known) => known === id)

/** Strength of small clear green wood as published; null where it is not. */
export function clearOf(wood: Wood, id: ClearId): Quantity | null {
  const clear: ClearStrength | null = wood.strengthGreen
  const value = clear?.[id]
  return clear && value !== undefined ? quantity('stress', value, clear.origin) : null
}

/** Design values of a square timber of No. 1 grade; null where none is published or can be derived. */
export const designOf = (wood: Wood, { reference }: Measure): DesignValues | null =>
  valuesOf(wood, 'No.1', reference)(SQUARE)

export const durabilityOf = (wood: Wood, { reference }: Measure): Quantity => {
  const { best, worst, origin } = wood.durability
  return quantity(
    'index',
    (best + worst) / 2,
    { ...computed(reference, 'durability'), mark: origin.mark, sources: origin.sources },
    { low: best, high: worst }
  )
}

/** Days of 1 in boards in a yard, from green to 20 %. */
export const boardsOf = ({ airDays: { min, max, origin } }: Wood): Quantity =>
  quantity('count', Math.round(Math.sqrt(min * max)), origin, { low: min, high: max })

/** Longest that is tried in the yard. */
export const LONGEST_YEARS = 20
const LONGEST = LONGEST_YEARS * 52

/** Weeks in the yard until the mean of that section is air-dry, with the spread of the published boards; null where it takes longer than is tried. */
export function yardOf(wood: Wood, [breadth, depth]: Section, { reference, place }: Measure): Quantity | null {
  const { outdoor } = serviceOf(place, 'heated', reference)
  const target = dryAt(reference)
  const weeks = (which: keyof Wood['drying']): number | null => {
    const course = dryingCourse({
      wood: dryingWood(wood, which),
      breadth,
      depth,
      moisture: wood.greenWhole,
      startDay: felledDay({ felledMonth: reference.drying.stages.felledMonths.winter }),
      cells: COARSE,
      stages: [
        {
          air: { temperatureC: place.temperatureC, equilibrium: outdoor },
          days: 7 * LONGEST,
          surface: reference.drying.pile,
          untilMean: target
        }
      ]
    })
    return (course.mean.at(-1) ?? 1) > target + 1e-3 ? null : (course.ends[0] ?? 0) / 7
  }
  const [value, low, high] = [weeks('factor'), weeks('quickest'), weeks('slowest')]
  if (value === null || low === null || high === null) return null
  const origin = computed(reference, 'air-moisture', {
    'M at the saw': quantity('moisture', wood.greenWhole, wood.greenOrigin),
    k: quantity('ratio', wood.drying.factor, computed(reference, 'drying-fit'), {
      low: wood.drying.slowest,
      high: wood.drying.quickest
    }),
    'days for a 1 in board': boardsOf(wood)
  })
  return quantity('weeks', value, origin, { low, high })
}

/** Mean moisture at which a timber is called air-dry, fraction. */
export const dryAt = (reference: Measure['reference']): number => percent(limit(reference, 'air-dry'))

export const lineOf = (wood: Wood, { ladder }: Measure): LadderLine | null =>
  ladder.lines.find((line) => line.wood === wood.id) ?? null

/** Its place among the woods that carry the truss, leanest first: from 1; null where it does not. */
export function rankOf(wood: Wood, { ladder }: Measure): number | null {
  const at = ladder.lines.filter((line) => line.passes).findIndex((line) => line.wood === wood.id)
  return at < 0 ? null : at + 1
}

export const supplyOf = ({ supply }: Wood) => ({
  longest: quantity('span', supply.longest, supply.origin),
  largest: quantity('section', supply.largest, supply.origin),
  log: quantity('diameter', supply.log, supply.origin)
})
