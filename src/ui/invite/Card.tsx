/** A card for the counter: all that this page prints. */
import type { ShopSheetContent } from '../../data/shop-schema'
import type { Qr } from '../../shop/qr'
import { QrPicture } from './QrPicture'

export function Card({ qr, shop }: { readonly qr: Qr; readonly shop: ShopSheetContent }) {
  return (
    <section class="sheet card-part" aria-labelledby="card-title">
      <div class="stack">
        <h2 id="card-title" class="no-print">
          A card for the counter
        </h2>
        <div class="card">
          <div class="card-words">
            <p class="label">{shop.name}</p>
            <p class="big">Which wood for your frame?</p>
            <p>
              Point your phone’s camera at the code. Plain questions, one at a time; “not sure” is always an answer. You
              get a brief with our woods and prices, to read, print or send to us.
            </p>
            <p class="note">
              Nothing is sent until you send it. Your answers stay on your phone, and nobody asks for your name.
              {shop.placeholder && ' Prices in it are placeholders.'}
            </p>
            {shop.contact && <p class="note">{shop.contact}</p>}
          </div>
          <QrPicture qr={qr} title="The same code, on the card" />
        </div>
        <p class="row no-print">
          <button type="button" class="btn btn--small" onClick={() => print()}>
            Print the card
          </button>
          <span class="help">Less than half a sheet of Letter or A4. Nothing else of this page is printed.</span>
        </p>
      </div>
    </section>
  )
}
