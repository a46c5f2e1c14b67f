/** The link, and words to send it with. */
import { useRef, useState } from 'preact/hooks'
import type { ShopSheetContent } from '../../data/shop-schema'
import { LINK_LENGTH } from '../../shop/invite/slim'
import { canShare, copyText, share } from './copy'

const OURS = (shop: ShopSheetContent) =>
  `Here are some plain questions about your timber frame, with our woods and prices. “Not sure” is always an answer. At the end you get a brief; send it back to us when you like. ${shop.name}`

interface Props {
  readonly link: string
  readonly shop: ShopSheetContent
  readonly words: string | null
  readonly onWords: (words: string | null) => void
}

function lengthWords(n: number): string {
  const said = n.toLocaleString('en-US')
  if (n <= LINK_LENGTH.message)
    return `${said} characters. Under ${LINK_LENGTH.message.toLocaleString('en-US')}, so mail and messengers leave it whole.`
  if (n <= LINK_LENGTH.browser)
    return `${said} characters. Over ${LINK_LENGTH.message.toLocaleString('en-US')}: some messengers cut a link like that. Send it by mail, or leave something out below.`
  return `${said} characters. Over ${LINK_LENGTH.browser.toLocaleString('en-US')}: some browsers and mail programs refuse a link like that. Leave something out below.`
}

export function Letter({ link, shop, words, onWords }: Props) {
  const [said, say] = useState('')
  const [byHand, showByHand] = useState<string | null>(null)
  const field = useRef<HTMLTextAreaElement>(null)
  const text = words ?? OURS(shop)
  const letter = `${text.trim()}\n\n${link}`.trim()

  const byHandInstead = (what: string) => {
    showByHand(what)
    say('Copy the text below: it is selected.')
    requestAnimationFrame(() => {
      field.current?.focus()
      field.current?.select()
    })
  }
  const copy = async (what: string, done: string) => {
    showByHand(null)
    if (await copyText(what)) say(done)
    else byHandInstead(what)
  }
  return (
    <section class="sheet no-print" aria-labelledby="link-title">
      <div class="stack">
        <h2 id="link-title">The link</h2>
        <div class="field">
          <label for="invite-link">Opens the questions with your sheet</label>
          <input
            id="invite-link"
            class="link-field"
            type="text"
            readOnly
            value={link}
            aria-describedby="invite-length"
            onFocus={(event) => event.currentTarget.select()}
          />
          <p class="help" id="invite-length">
            {lengthWords(link.length)}
          </p>
        </div>
        <div class="field">
          <label for="invite-words">Words to send with it</label>
          <textarea
            id="invite-words"
            rows={4}
            value={text}
            maxLength={2000}
            onInput={(event) => onWords(event.currentTarget.value)}
          />
          {words !== null && (
            <button type="button" class="btn btn--link" onClick={() => onWords(null)}>
              Put our words back
            </button>
          )}
        </div>
        <p class="row">
          <button type="button" class="btn btn--small" onClick={() => copy(letter, 'Words and link copied.')}>
            Copy words and link
          </button>
          <button type="button" class="btn btn--quiet btn--small" onClick={() => copy(link, 'Link copied.')}>
            Copy the link alone
          </button>
          {canShare() && (
            <button
              type="button"
              class="btn btn--quiet btn--small"
              onClick={async () => (await share({ text, url: link })) || byHandInstead(letter)}
            >
              Send with …
            </button>
          )}
          <a class="btn btn--quiet btn--small" href={link} target="_blank" rel="noopener">
            See what the client sees
          </a>
        </p>
        <p class="note" role="status">
          {said}
        </p>
        {byHand !== null && (
          <div class="field">
            <label for="invite-by-hand">To copy by hand</label>
            <textarea id="invite-by-hand" ref={field} rows={5} readOnly value={byHand} />
          </div>
        )}
      </div>
      <aside class="margin" aria-label="About the length">
        <p>
          The lengths named here are practice, from how mail and messengers are known to treat links. No standard sets
          them.
        </p>
        <p>
          Opened on this device, the invite is in use here too, until you press “Put this shop’s sheet away” over the
          questions.
        </p>
        <p>A later change of your sheet does not reach a link that is out: make a new one.</p>
      </aside>
    </section>
  )
}
