/** All woods in a table of few columns: the index and the chart of the comparison. */
import type { Quantity } from '../data/quantity'
import type { Wood } from '../data/reference'
import type { Measure } from './measure'
import { gapOf } from './movement'
import { densityOf, durabilityOf, lineOf, rankOf, weightOf, yardOf } from './numbers'
import { proses } from './prose'
import { SIDE } from './sizes'

export interface ChartRow {
  readonly id: string
  readonly name: string
  readonly kind: Wood['kind']
  readonly line: string
  readonly durability: Quantity
  readonly gap: Quantity
  /** null where it is sold dry. */
  readonly green: Quantity | null
  readonly density: Quantity
  readonly yard: Quantity | null
  readonly section: Quantity | null
  /** Among those that carry the truss, leanest first. */
  readonly rank: number | null
}

/** Every wood that has a page, by name. */
export function chartOf(measure: Measure): ChartRow[] {
  return [...measure.reference.woods.values()]
    .flatMap((wood): ChartRow[] => {
      const prose = proses.get(wood.id)
      if (!prose) return []
      return [
        {
          id: wood.id,
          name: wood.name,
          kind: wood.kind,
          line: prose.line,
          durability: durabilityOf(wood, measure),
          gap: gapOf(wood, SIDE, measure),
          green: prose.soldDry ? null : weightOf(wood, [SIDE, SIDE], false, measure),
          density: densityOf(wood, measure),
          yard: prose.soldDry ? null : yardOf(wood, [SIDE, SIDE], measure),
          section: lineOf(wood, measure)?.section ?? null,
          rank: rankOf(wood, measure)
        }
      ]
    })
    .sort((a, b) => a.name.localeCompare(b.name))
}
