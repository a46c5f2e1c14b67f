/** When each finish is due again, by where the timber stands: the engine's own years between coats. */
import { factsFrom } from '../choice/facts'
import { coatYears } from '../choice/finish/years'
import { computed } from '../choice/say'
import type { Quantity } from '../data/quantity'
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { woodOf } from './movement'

/** Where it stands, and the face: sawn, or planed smooth. */
export const STANDS = [
  ['weather', 'full-sawn'],
  ['weather', 'planed'],
  ['roofed', 'full-sawn'],
  ['heated', 'planed']
] as const

export interface UpkeepRow {
  readonly id: string
  readonly name: string
  readonly build: 'none' | 'penetrating' | 'film'
  /** In the order of STANDS; null where nothing is renewed. */
  readonly years: readonly (Quantity | null)[]
}

export function upkeepRows(reference: Reference, sheet: ShopSheetContent): readonly UpkeepRow[] {
  const wood = woodOf(reference)
  const origin = computed(reference, 'coat-years')
  return reference.finishes.map((finish) => ({
    id: finish.id,
    name: finish.name,
    build: finish.build,
    years: STANDS.map(([exposure, surface]) => {
      const facts = factsFrom({ exposure }, reference)
      const years = coatYears(wood, finish, { facts, reference, sheet: { ...sheet, surface } })
      return years && { kind: 'years', value: (years.low + years.high) / 2, low: years.low, high: years.high, origin }
    })
  }))
}
