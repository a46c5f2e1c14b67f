/** A link as a QR code: squares in a grid, then as SVG or PNG. Always black on white, with its quiet zone. */
import { zlibSync } from 'fflate'
import { encode } from 'uqr'

/** How much of the code may be lost and still be read: about 7, 15 and 25 %, by the QR standard. */
export const CORRECTIONS = ['L', 'M', 'Q'] as const
export type Correction = (typeof CORRECTIONS)[number]

export const QR = {
  /**
   * Largest version made: 117 squares a side. On a card of 2½ in (64 mm) a square is then half a millimetre, about the
   * least that a phone reads at arm's length. Practice, tried on drawn codes; not from the standard, which goes to 40.
   */
  version: 25,
  /** White squares all round; four by the QR standard. */
  quiet: 4
} as const

export interface Qr {
  readonly version: number
  /** Squares a side, without the quiet zone. */
  readonly size: number
  /** Row by row; true is black. */
  readonly squares: readonly (readonly boolean[])[]
}

/** The code of a text, or null where it does not fit the largest version at this correction. */
export function qrOf(text: string, correction: Correction): Qr | null {
  try {
    const made = encode(text, { ecc: correction, border: 0, maxVersion: QR.version, boostEcc: true })
    return { version: made.version, size: made.size, squares: made.data }
  } catch {
    return null
  }
}

/** The black squares as one SVG path, each row's runs together, offset by the quiet zone. */
export function qrPath(qr: Qr): string {
  let path = ''
  qr.squares.forEach((row, y) => {
    for (let x = 0; x < row.length; ) {
      if (!row[x]) {
        x++
        continue
      }
      const from = x
      while (row[x]) x++
      path += `M${from + QR.quiet} ${y + QR.quiet}h${x - from}v1h${from - x}z`
    }
  })
  return path
}

/** Squares a side, the quiet zone included. */
export const qrSide = (qr: Qr): number => qr.size + 2 * QR.quiet

/** A file that stands alone. */
export function qrSvg(qr: Qr): string {
  const side = qrSide(qr)
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" shape-rendering="crispEdges">` +
    `<rect width="${side}" height="${side}" fill="#fff"/><path d="${qrPath(qr)}" fill="#000"/></svg>\n`
  )
}

const CRC = Array.from({ length: 256 }, (_, n) => {
  let c = n
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1
  return c >>> 0
})

/** A chunk of a PNG file: length, name, body, check sum. */
function chunk(name: string, body: Uint8Array): Uint8Array {
  const out = new Uint8Array(body.length + 12)
  const view = new DataView(out.buffer)
  view.setUint32(0, body.length)
  for (let i = 0; i < 4; i++) out[4 + i] = name.charCodeAt(i)
  out.set(body, 8)
  let crc = 0xffffffff
  for (const byte of out.subarray(4, 8 + body.length)) crc = (CRC[(crc ^ byte) & 0xff] ?? 0) ^ (crc >>> 8)
  view.setUint32(8 + body.length, (crc ^ 0xffffffff) >>> 0)
  return out
}

/** A PNG, one bit a pixel. @param scale pixels a square, whole and at least 1 */
export function qrPng(qr: Qr, scale: number): Uint8Array<ArrayBuffer> {
  const side = qrSide(qr) * scale
  const stride = Math.ceil(side / 8) + 1
  // Rows of bits, white is 1, each after a byte that says "as it is".
  const rows = new Uint8Array(stride * side)
  for (let y = 0; y < side; y++) {
    const squares = qr.squares[Math.floor(y / scale) - QR.quiet]
    for (let x = 0; x < side; x++) {
      if (squares?.[Math.floor(x / scale) - QR.quiet]) continue
      const byte = y * stride + 1 + (x >> 3)
      rows[byte] = (rows[byte] ?? 0) | (0x80 >> (x & 7))
    }
  }
  const head = new Uint8Array(13)
  const view = new DataView(head.buffer)
  view.setUint32(0, side)
  view.setUint32(4, side)
  head[8] = 1
  const parts = [
    Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
    chunk('IHDR', head),
    chunk('IDAT', zlibSync(rows, { level: 9 })),
    chunk('IEND', new Uint8Array())
  ]
  const file = new Uint8Array(parts.reduce((n, part) => n + part.length, 0))
  let at = 0
  for (const part of parts) {
    file.set(part, at)
    at += part.length
  }
  return file
}
