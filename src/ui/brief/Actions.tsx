/** What can be done with a brief: send it, keep it, print it, change it. None of it is on paper. */
import { useRef, useState } from 'preact/hooks'
import type { Brief } from '../../choice/types'
import { encodeLink } from '../../shop/link'
import { href } from '../site/href'

interface Props {
  readonly brief: Brief
  /** The brief came by a link: its answers are somebody's, and not saved here. */
  readonly linked: boolean
}

function save(brief: Brief): void {
  const url = URL.createObjectURL(new Blob([`${JSON.stringify(brief, null, 1)}\n`], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = url
  link.download = 'bentwise-brief.json'
  link.click()
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}

export function Actions({ brief, linked }: Props) {
  const [said, say] = useState('')
  const [byHand, showByHand] = useState(false)
  const field = useRef<HTMLInputElement>(null)
  const code = encodeLink(brief.answers)
  const link = typeof location === 'undefined' ? '' : `${location.origin}${href('/brief/')}#b=${code}`

  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link)
      say('Link copied. Whoever opens it sees this same brief.')
    } catch {
      // Refused, or an old browser: the link stands there selected, to be copied by hand.
      showByHand(true)
      say('Copy the link below.')
      requestAnimationFrame(() => field.current?.select())
    }
  }

  return (
    <div class="actions no-print">
      <p class="row">
        <button type="button" class="btn btn--small" onClick={copy}>
          Copy a link to this brief
        </button>
        <button type="button" class="btn btn--quiet btn--small" onClick={() => print()}>
          Print
        </button>
        <button type="button" class="btn btn--quiet btn--small" onClick={() => save(brief)}>
          Download as JSON
        </button>
        <a class="btn btn--quiet btn--small" href={href(linked ? `/start/#a=${code}` : '/start/#overview')}>
          {linked ? 'Go on from these answers' : 'Change answers'}
        </a>
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
    </div>
  )
}
