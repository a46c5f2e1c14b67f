/** Every option a shop sheet holds: species x heart x seasoning. */
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Heart, Option, Seasoning } from './types'

export const HEARTS: readonly Heart[] = ['boxed', 'free']

export function optionsOf(sheet: ShopSheetContent, reference: Reference): Option[] {
  return sheet.woods
    .filter((w) => reference.woods.has(w.species))
    .flatMap((w) =>
      HEARTS.flatMap((heart) =>
        sheet.seasonings.map(
          ({ id }): Option => ({
            id: `${w.species}/${heart}/${id}`,
            species: w.species,
            heart,
            seasoning: id as Seasoning
          })
        )
      )
    )
}
