/**
 * Answers as the fragment of a link: `1.<deflated JSON, base64url>.<checksum>`. The fragment never reaches a server.
 * The first character is the version, so that old links keep opening.
 */
import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate'
import { type Problem, readAnswers } from '../choice/answers'
import type { Answers } from '../choice/types'

const VERSION = '1'
/** Longest fragment that is looked at, characters. A full set of answers takes about 600. */
const LONGEST = 8000
/** Longest JSON that a link may unpack to, bytes: a small link must not unpack to a huge text. */
const LARGEST = 32_768

function toBase64Url(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '')
}

function fromBase64Url(text: string): Uint8Array {
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'))
  return Uint8Array.from(binary, (c) => c.charCodeAt(0))
}

/** 32-bit FNV-1a of the payload, base 36: tells a cut or mistyped link from a whole one. Not a secret. */
function checksum(text: string): string {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193)
  return (hash >>> 0).toString(36)
}

/** The part of a link after `#`, for these answers. */
export function encodeLink(answers: Answers): string {
  const payload = toBase64Url(deflateSync(strToU8(JSON.stringify(answers)), { level: 9 }))
  return `${VERSION}.${payload}.${checksum(payload)}`
}

export type Decoded =
  | { readonly ok: true; readonly answers: Answers; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly says: string }

/** Answers from a link's fragment. Never throws: what cannot be read is said, answer by answer where it can be. */
export function decodeLink(fragment: string, places?: ReadonlySet<string> | ReadonlyMap<string, unknown>): Decoded {
  const parts = fragment.replace(/^#/, '').split('.')
  const [version, payload, sum] = parts
  if (fragment.length > LONGEST)
    return { ok: false, says: 'This link is far longer than any of ours; it was not opened.' }
  if (parts.length !== 3 || !version || !payload || !sum)
    return { ok: false, says: 'This link is not whole. It may have been cut when it was copied.' }
  if (version !== VERSION)
    return { ok: false, says: 'This link was made by a version of Bentwise that this page does not know.' }
  if (checksum(payload) !== sum)
    return { ok: false, says: 'This link was changed or cut on its way. Ask for it again, or copy it whole.' }
  try {
    const bytes = inflateSync(fromBase64Url(payload), { out: new Uint8Array(LARGEST) })
    const { answers, problems } = readAnswers(JSON.parse(strFromU8(bytes)), places)
    return { ok: true, answers, problems }
  } catch {
    return { ok: false, says: 'What this link carries could not be read.' }
  }
}
