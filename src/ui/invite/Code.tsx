/** The link as a QR code: how much of it may be lost, and the files. */
import type { ComponentChildren } from 'preact'
import { CORRECTIONS, type Correction, QR, type Qr, qrPng, qrSvg } from '../../shop/qr'
import { download } from './copy'
import { QrPicture } from './QrPicture'

const WORDS: Readonly<Record<Correction, string>> = {
  L: 'For a screen: 7 % may be lost',
  M: 'For paper: 15 % may be lost',
  Q: 'For a workshop wall: 25 % may be lost'
}
/** Pixels a square of the PNG: some 1,000 a side, enough for a card at 300 dots an inch. Our own practice. */
const SCALE = 8

interface Props {
  readonly qr: Qr | null
  readonly codes: ReadonlyMap<Correction, Qr | null>
  readonly correction: Correction | null
  readonly link: string
  readonly onCorrection: (correction: Correction) => void
  readonly slim: ComponentChildren
}

export function Code({ qr, codes, correction, link, onCorrection, slim }: Props) {
  return (
    <section class="sheet no-print" aria-labelledby="code-title">
      <div class="stack">
        <h2 id="code-title">The code</h2>
        {qr === null ? (
          <div class="notice" role="status">
            <p>
              <b>Too much for a code.</b> With {link.length.toLocaleString('en-US')} characters its squares would be too
              small for a phone to read. The link itself works. To get a code, leave something out:
            </p>
          </div>
        ) : (
          <div class="two code">
            <figure class="figure figure--plain">
              <QrPicture qr={qr} title="QR code of the invite" />
              <figcaption>
                {qr.size} × {qr.size} squares. Hold a phone to it before you print a stack.
              </figcaption>
            </figure>
            <div class="stack">
              <fieldset class="choices">
                <legend>How roughly will it be treated?</legend>
                {CORRECTIONS.map((it) => {
                  const made = codes.get(it)
                  return (
                    <label key={it} class="choice">
                      <input
                        type="radio"
                        name="correction"
                        value={it}
                        checked={it === correction}
                        disabled={!made}
                        onChange={() => onCorrection(it)}
                      />
                      <span>
                        {WORDS[it]}
                        <small>{made ? `${made.size} squares a side` : 'does not fit with this much in it'}</small>
                      </span>
                    </label>
                  )
                })}
              </fieldset>
              <p class="row">
                <button
                  type="button"
                  class="btn btn--quiet btn--small"
                  onClick={() => download('invite.svg', qrSvg(qr), 'image/svg+xml')}
                >
                  Download as SVG
                </button>
                <button
                  type="button"
                  class="btn btn--quiet btn--small"
                  onClick={() => download('invite.png', qrPng(qr, SCALE), 'image/png')}
                >
                  Download as PNG
                </button>
              </p>
            </div>
          </div>
        )}
        {slim}
      </div>
      <aside class="margin" aria-label="About the code">
        <p>
          A code has at most {17 + 4 * QR.version} squares a side here. On a card of 2½ in (64 mm) each is then half a
          millimetre. That limit is practice; the QR standard itself goes to 177.
        </p>
      </aside>
    </section>
  )
}
