/** How the sheet stands: complete and kept, or what is missing, each with the way to its field. */
import { inventedIn, withOwnPrices } from '../../shop/sheet/draft'
import { asList } from '../say/as-list'
import { href } from '../site/href'
import { goTo, idOf, useSheet } from './use-sheet'

const MOST = 12

export function Standing({
  kept
}: {
  /** A complete sheet is kept on this device, of now or of before. */ readonly kept: boolean
}) {
  const { read, draft, replace } = useSheet()
  const { problems, cautions, sheet } = read
  const invented = inventedIn(draft).length
  const list = [...problems, ...cautions]
  return (
    <section class="shop-standing stack" aria-labelledby="shop-standing-title">
      <h2 id="shop-standing-title">{sheet ? 'The sheet is complete' : 'Not complete yet'}</h2>
      <p role="status">
        {sheet
          ? 'It is kept on this device as you type, and nowhere else.'
          : `${problems.length === 1 ? 'One field' : `${problems.length} fields`} to go. What you typed is kept on this device.`}
        {!sheet && kept && ' The last complete sheet stays in use until then.'}
      </p>
      {list.length > 0 && (
        <ul class="shop-missing plain" {...asList}>
          {list.slice(0, MOST).map(({ field, label, missing, says }) => (
            <li key={`${field} ${says}`}>
              <a
                href={`#${idOf(field)}`}
                onClick={(event) => {
                  event.preventDefault()
                  goTo(field)
                }}
              >
                {label}
              </a>
              {!missing && <span class="note"> {says}</span>}
            </li>
          ))}
          {list.length > MOST && <li class="note">and {list.length - MOST} more</li>}
        </ul>
      )}
      {invented > 0 && (
        <div class="caution stack">
          <p>
            <b>{invented === 1 ? 'One price is' : `${invented} prices are`} still the sample’s.</b> Until each is typed
            over, every brief from this sheet calls its prices placeholders.
          </p>
          <p>
            <button
              type="button"
              class="btn btn--quiet btn--small"
              onClick={() => replace(withOwnPrices(draft), 'Taken as your own prices.')}
            >
              These are our prices
            </button>
          </p>
        </div>
      )}
      {sheet && (
        <p>
          <a class="btn" href={href('/invite/')}>
            Invite a client
          </a>
        </p>
      )}
    </section>
  )
}
