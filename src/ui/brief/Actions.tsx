/** What can be done with a brief: send it, keep it, print it, change it. None of it is on paper. */
import { useRef, useState } from 'preact/hooks'
import type { Brief } from '../../choice/brief-types'
import type { ShopSheetContent } from '../../data/shop-schema'
import { briefFile } from '../../shop/invite/file'
import { LINK_LENGTH } from '../../shop/invite/slim'
import { encodeInvite, encodeLink } from '../../shop/link'
import { canShare, copyText, download, share } from '../invite/copy'
import { href } from '../site/href'
import { OpenFile } from './OpenFile'

interface Props {
  readonly brief: Brief
  /** The sheet that it was worked out from. */
  readonly sheet: ShopSheetContent
  /** The code of its link. */
  readonly code: string
  /** It is the sample's, which every page has: links need not carry it. */
  readonly sample: boolean
  /** The brief came by a link: its answers are somebody's, and not saved here. */
  readonly linked: boolean
  /** It answers this shop's invite, and is to go back there. */
  readonly invited: boolean
  /** Its sheet came by that link too. */
  readonly sheetLinked: boolean
}

export function Actions({ brief, sheet, code, sample, linked, invited, sheetLinked }: Props) {
  const [said, say] = useState('')
  const [byHand, showByHand] = useState(false)
  const field = useRef<HTMLInputElement>(null)
  const link = typeof location === 'undefined' ? '' : `${location.origin}${href('/brief/')}#b=${code}`
  const on = sheetLinked
    ? `/start/#i=${encodeInvite({ sheet, answers: brief.answers, locked: [] })}`
    : `/start/#a=${encodeLink(brief.answers)}`
  const length =
    link.length > LINK_LENGTH.message
      ? ` It is ${link.length} characters long: some messengers cut such a link, so send the file instead.`
      : ''

  const byHandInstead = () => {
    // Refused, or an old browser: the link stands there selected, to be copied by hand.
    showByHand(true)
    say(invited ? `Copy the link below, and send it to ${sheet.name}.` : 'Copy the link below.')
    requestAnimationFrame(() => field.current?.select())
  }
  const copy = async () => {
    if (await copyText(link))
      say(
        `Link copied. ${invited ? `Send it to ${sheet.name} by mail or message; they see` : 'Whoever opens it sees'} this same brief.${length}`
      )
    else byHandInstead()
  }
  const send = async () => {
    if (!(await share({ title: 'A brief for a timber frame', url: link }))) byHandInstead()
  }

  return (
    <div class="actions no-print">
      <p class="row">
        <button type="button" class="btn btn--small" onClick={copy}>
          Copy a link to this brief
        </button>
        {canShare() && (
          <button type="button" class="btn btn--quiet btn--small" onClick={send}>
            Send with …
          </button>
        )}
        <button type="button" class="btn btn--quiet btn--small" onClick={() => print()}>
          Print
        </button>
        <button
          type="button"
          class="btn btn--quiet btn--small"
          onClick={() => download('bentwise-brief.json', briefFile(brief, sheet), 'application/json')}
        >
          Download as JSON
        </button>
        <a class="btn btn--quiet btn--small" href={href(linked ? on : '/start/#overview')}>
          {linked ? 'Go on from these answers' : 'Change answers'}
        </a>
        <OpenFile small />
      </p>
      <p class="note" role="status">
        {said}
      </p>
      {byHand && (
        <div class="field">
          <label for="brief-link">Link to this brief</label>
          <input
            id="brief-link"
            ref={field}
            class="link-field"
            type="text"
            readOnly
            value={link}
            onFocus={(event) => event.currentTarget.select()}
          />
        </div>
      )}
      <p class="help">
        {sample
          ? 'The link carries the answers'
          : `The link and the file carry the answers and the sheet of ${sheet.name}`}
        . Nothing is sent until you send it yourself, and no name is asked.
      </p>
    </div>
  )
}
