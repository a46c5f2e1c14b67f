/** A returned brief from whatever it came in: a link, the code of one, or a downloaded file. */
import type { Answers } from '../../choice/types'
import type { ShopSheetContent } from '../../data/shop-schema'
import type { Known } from '../../shop/invite/door'
import { readBriefFile } from '../../shop/invite/file'
import { type Decoded, decodeLink, type Given } from '../../shop/link'

export { codeOf } from '../brief/code'
export { knownTo, sheetInForce, underInvite } from '../invite/in-force'

export interface Brought {
  readonly answers: Answers
  /** The shop sheet that came with it; where none did, the one in use on this device stands in. */
  readonly sheet?: ShopSheetContent
  readonly given?: Given
  /** Answers that could not be read, each in words. */
  readonly left: readonly string[]
}
export type Read = Brought | { readonly says: string }

/** Answers, and the sheet where one came along; or in words why not. Never throws. */
export function readBrought(text: string, known: Known = {}): Read {
  const brought = text.trim()
  if (brought === '') return { says: 'Paste a link here, or open a file.' }
  const read = /^[{[]/.test(brought) ? readBriefFile(brought, known) : fromLink(brought, known)
  if (!read.ok) return { says: read.says }
  const { answers, sheet, problems } = read
  const given = 'given' in read ? (read.given as Given | undefined) : undefined
  if (Object.keys(answers).length === 0) return { says: 'There are no answers of a brief in this.' }
  return { answers, left: problems.map((p) => p.says), ...(sheet && { sheet }), ...(given && { given }) }
}

function fromLink(given: string, known: Known): Decoded {
  // A link may stand in the middle of a message.
  const [, kind, found] = /#([abi])=([^\s"<>]+)/.exec(given) ?? []
  const code = found ?? given
  if (/\s/.test(code) || !/^\d+\./.test(code))
    return { ok: false, says: 'There is no link to a brief in this. It holds “#b=” and a long code after it.' }
  const link = decodeLink(code, known)
  if (kind === 'i' || (link.ok && link.locked))
    return {
      ok: false,
      says: 'This is an invite, which is still to be answered. Paste the link of the brief that came back.'
    }
  return link
}
