/** What the shop says to its clients, at the head of a brief; the title block names it. On paper too. */
import type { ShopSheetContent } from '../../data/shop-schema'
import { Lines } from './Lines'

/** Nothing for the sample: the brief says at each price that it is invented. */
export function ShopLine({ sheet, sample }: { readonly sheet: ShopSheetContent; readonly sample: boolean }) {
  if (sample || !sheet.note) return null
  return (
    <div class="shop-line">
      <p>
        <b>A word from {sheet.name}</b>
      </p>
      <Lines text={sheet.note} />
    </div>
  )
}
