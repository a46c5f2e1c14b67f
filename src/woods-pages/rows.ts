/** All numbers of a wood in the groups of a table, the same rows for every wood: its page shows them, and so does a comparison. */
import { quantity } from '../choice/say'
import type { Quantity } from '../data/quantity'
import type { Wood } from '../data/reference'
import type { Section } from '../frame/values'
import type { Measure } from './measure'
import { checkOf, faceOf, gapOf } from './movement'
import {
  boardsOf,
  clearOf,
  densityOf,
  designOf,
  durabilityOf,
  LONGEST_YEARS,
  lineOf,
  supplyOf,
  weightOf,
  yardOf
} from './numbers'
import { proses } from './prose'
import { SIDE } from './sizes'

export interface Row {
  readonly label: string
  /** Words where there is no number. */
  readonly value: Quantity | string
}
export interface Group {
  readonly title: string
  readonly rows: readonly Row[]
}

const SQUARE: Section = [SIDE, SIDE]
const US_GROUPS: Readonly<Record<Wood['durability']['group'], string>> = {
  exceptional: 'exceptionally resistant',
  resistant: 'resistant',
  moderate: 'moderately resistant',
  'slight-or-none': 'slightly or not resistant'
}
const FREE: Readonly<Record<Wood['supply']['freeOfHeart'], string>> = {
  usual: 'a regular order',
  rare: 'now and then',
  hardly: 'hardly to be had'
}

export function groupsOf(wood: Wood, measure: Measure): Group[] {
  const design = designOf(wood, measure)
  const stress = (value: number | undefined) =>
    design && value !== undefined ? quantity('stress', value, design.origin) : 'none published'
  const line = lineOf(wood, measure)
  const supply = supplyOf(wood)
  const soldDry = proses.get(wood.id)?.soldDry ?? false
  return [
    {
      title: 'Strength',
      rows: [
        {
          label: 'Stoutest timber of the truss',
          value: line ? (line.section ?? 'no section passes') : 'no strength published'
        },
        { label: 'Its heaviest stick', value: line?.heaviest?.weight ?? 'none' },
        { label: 'Bending, No. 1 timber', value: stress(design?.bending) },
        { label: 'Stiffness, No. 1 timber', value: stress(design?.elasticity) },
        { label: 'Crushing across the grain', value: stress(design?.compressionPerp) },
        {
          label: 'These three are',
          value: !design ? 'not known' : design.derived ? 'derived from clear wood' : `graded as ${wood.designGroup}`
        },
        { label: 'Breaking, small, clear, green', value: clearOf(wood, 'rupture') ?? 'none published' },
        { label: 'Stiffness, small, clear, green', value: clearOf(wood, 'elasticity') ?? 'none published' }
      ]
    },
    {
      title: 'Movement',
      rows: [
        { label: 'Shrinks towards the pith', value: quantity('percent', wood.radial, wood.shrinkageOrigin) },
        { label: 'Shrinks round the rings', value: quantity('percent', wood.tangential, wood.shrinkageOrigin) },
        { label: 'Opens at a shoulder', value: gapOf(wood, SIDE, measure) },
        { label: 'Checks, boxed, up to', value: checkOf(wood, SQUARE, measure) },
        { label: 'A face gets smaller by', value: faceOf(wood, SQUARE, 'boxed', measure) }
      ]
    },
    {
      title: 'Weight and water',
      rows: [
        { label: 'One stick, green', value: soldDry ? 'sold dry' : weightOf(wood, SQUARE, false, measure) },
        { label: 'The same, settled indoors', value: weightOf(wood, SQUARE, true, measure) },
        { label: 'Density indoors', value: densityOf(wood, measure) },
        { label: 'Water in the green stem', value: quantity('moisture', wood.greenWhole, wood.greenOrigin) },
        { label: 'Days for inch boards', value: boardsOf(wood) },
        {
          label: 'Air-dry in the yard',
          value: soldDry ? 'sold dry' : (yardOf(wood, SQUARE, measure) ?? `over ${LONGEST_YEARS} years`)
        }
      ]
    },
    {
      title: 'Lasting and finish',
      rows: [
        { label: 'Class of the heartwood', value: durabilityOf(wood, measure) },
        { label: 'In the American list', value: US_GROUPS[wood.durability.group] },
        {
          label: 'Holds paint, 1 best of 3',
          value:
            wood.paint && wood.paint.group !== null
              ? quantity('count', wood.paint.group, wood.paint.origin)
              : 'not listed'
        }
      ]
    },
    {
      title: 'To be had',
      rows: [
        { label: 'Longest', value: supply.longest },
        { label: 'Largest section', value: supply.largest },
        { label: 'Largest log', value: supply.log },
        { label: 'Free of heart centre', value: FREE[wood.supply.freeOfHeart] }
      ]
    }
  ]
}
