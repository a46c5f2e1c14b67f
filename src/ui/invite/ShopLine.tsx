/** Whose sheet a brief rests on, and what that shop says. On paper too. */
import type { ShopSheetContent } from '../../data/shop-schema'
import { Lines } from './Lines'

/** Nothing for the sample: the brief says at each price that it is invented. */
export function ShopLine({ sheet, sample }: { readonly sheet: ShopSheetContent; readonly sample: boolean }) {
  if (sample) return null
  return (
    <div class="shop-line">
      <p>
        <b>{sheet.name}</b>
        {sheet.contact && ` · ${sheet.contact}`}
      </p>
      {sheet.note && <Lines text={sheet.note} />}
    </div>
  )
}
