/**
 * The envelope of a link: bytes in, the part of an address after its `#` out, and back. `version.payload.checksum`, the
 * payload deflated and written base64url. The fragment of an address never reaches a server.
 */
import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate'

/** Bounds of a link. The largest sheet that its schema permits, in any script, stays under both. Our own practice. */
export const ENVELOPE = {
  /** Longest fragment that is looked at, characters. */
  longest: 96_000,
  /** Most text that it may unpack to, bytes: a small link must not unpack to a huge text. */
  largest: 131_072,
  /** Bytes unpacked at a time, so that a bomb is dropped early: packing shortens at most about a thousand times. */
  step: 512
} as const

function toBase64Url(bytes: Uint8Array): string {
  let binary = ''
  for (const byte of bytes) binary += String.fromCharCode(byte)
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
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

/** Closes text into an envelope. `dictionary` belongs to the version and must never change. */
export function seal(version: string, text: string, dictionary?: Uint8Array): string {
  const payload = toBase64Url(deflateSync(strToU8(text), { level: 9, ...(dictionary && { dictionary }) }))
  return `${version}.${payload}.${checksum(payload)}`
}

function inflate(bytes: Uint8Array, dictionary: Uint8Array | undefined): Uint8Array {
  const parts: Uint8Array[] = []
  let size = 0
  let over = false
  const stream = new Inflate(dictionary ? { dictionary } : {}, (part, final) => {
    parts.push(part)
    size += part.length
    over = final
  })
  for (let at = 0; at < bytes.length && !over; at += ENVELOPE.step) {
    stream.push(bytes.subarray(at, at + ENVELOPE.step), at + ENVELOPE.step >= bytes.length)
    if (size > ENVELOPE.largest) throw new RangeError('unpacks to more than a link may carry')
  }
  const whole = new Uint8Array(size)
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}

export type Opened =
  | { readonly ok: true; readonly version: string; readonly json: unknown }
  | { readonly ok: false; readonly says: string }

/** Opens an envelope of any known version. Never throws. @param versions known versions, each with its dictionary */
export function unseal(fragment: string, versions: ReadonlyMap<string, Uint8Array | undefined>): Opened {
  if (fragment.length > ENVELOPE.longest)
    return { ok: false, says: 'This link is far longer than any of ours; it was not opened.' }
  const parts = fragment.replace(/^#/, '').split('.')
  const [version, payload, sum] = parts
  if (parts.length !== 3 || !version || !payload || !sum)
    return { ok: false, says: 'This link is not whole. It may have been cut when it was copied.' }
  if (!versions.has(version))
    return { ok: false, says: 'This link was made by a version of Bentwise that this page does not know.' }
  if (checksum(payload) !== sum)
    return { ok: false, says: 'This link was changed or cut on its way. Ask for it again, or copy it whole.' }
  try {
    const text = strFromU8(inflate(fromBase64Url(payload), versions.get(version)))
    return { ok: true, version, json: JSON.parse(text) }
  } catch {
    return { ok: false, says: 'What this link carries could not be read.' }
  }
}
