/** The codes are read back by another library than the one that draws them. */
import jsQR from 'jsqr'
import { PNG } from 'pngjs'
import { describe, expect, it } from 'vitest'
import { PARTS, savings, slimmed } from '../../src/shop/invite/slim'
import { decodeLink, encodeInvite, encodeLink } from '../../src/shop/link'
import { CORRECTIONS, QR, qrOf, qrPng, qrSide, qrSvg } from '../../src/shop/qr'
import { reference, sheet } from '../reference'
import { answersFull, thirty, thirtyBare } from './invented-sheets'

const START = 'https://bentwise.example/start/#i='
const link = (s: typeof sheet, answers = {}) => START + encodeInvite({ sheet: s, answers, locked: [] })

function readBack(png: Uint8Array): string | undefined {
  const { width, height, data } = PNG.sync.read(Buffer.from(png))
  return jsQR(new Uint8ClampedArray(data), width, height)?.data
}

describe('a code', () => {
  const texts = {
    'a few answers': `https://bentwise.example/brief/#b=${encodeLink({ span: 6096 })}`,
    'the sample sheet': link(sheet),
    'the sample sheet and every answer': link(sheet, answersFull),
    'thirty woods': link(thirtyBare, answersFull)
  }
  it.each(Object.entries(texts))('%s: reads back at every correction, from the PNG', (_, text) => {
    for (const correction of CORRECTIONS) {
      const qr = qrOf(text, correction)
      if (!qr) throw new Error(`does not fit at ${correction}`)
      expect(qr.version).toBeLessThanOrEqual(QR.version)
      for (const scale of [3, 8]) expect(readBack(qrPng(qr, scale)), `${correction} ${scale}`).toBe(text)
    }
  })
  it('thirty woods with prices and a note each, and every answer, fit and read back', () => {
    const text = link(thirty, answersFull)
    for (const correction of ['L', 'M'] as const) {
      const qr = qrOf(text, correction)
      if (!qr) throw new Error(`does not fit at ${correction}`)
      expect(readBack(qrPng(qr, 4))).toBe(text)
    }
  })
  it('survives what the correction promises: a blot on it', () => {
    const text = link(sheet)
    const qr = qrOf(text, 'Q')
    if (!qr) throw new Error('does not fit')
    const image = PNG.sync.read(Buffer.from(qrPng(qr, 6)))
    const middle = Math.floor(image.width / 2)
    const blot = Math.floor(image.width / 9)
    for (let y = middle; y < middle + blot; y++)
      for (let x = middle; x < middle + blot; x++)
        image.data.fill(0, (y * image.width + x) * 4, (y * image.width + x) * 4 + 3)
    expect(jsQR(new Uint8ClampedArray(image.data), image.width, image.height)?.data).toBe(text)
  })
  it('has its quiet zone, black on white', () => {
    const qr = qrOf('x', 'M')
    if (!qr) throw new Error('does not fit')
    const { width, data } = PNG.sync.read(Buffer.from(qrPng(qr, 2)))
    expect(width).toBe(qrSide(qr) * 2)
    const black = (x: number, y: number) => data[(y * width + x) * 4] === 0
    const edge = QR.quiet * 2
    for (let i = 0; i < width; i++)
      for (let j = 0; j < edge; j++) {
        expect(black(i, j) || black(j, i) || black(i, width - 1 - j) || black(width - 1 - j, i)).toBe(false)
      }
    expect(black(edge, edge)).toBe(true)
  })
  it('as SVG draws the same squares', () => {
    const qr = qrOf(link(sheet), 'M')
    if (!qr) throw new Error('does not fit')
    const drawn = new Set<string>()
    for (const [, x, y, w] of qrSvg(qr).matchAll(/M(\d+) (\d+)h(\d+)v1/g))
      for (let i = 0; i < Number(w); i++) drawn.add(`${Number(x) + i},${y}`)
    const squares = qr.squares.flatMap((row, y) =>
      row.flatMap((b, x) => (b ? [`${x + QR.quiet},${y + QR.quiet}`] : []))
    )
    expect(drawn).toEqual(new Set(squares))
    expect(qrSvg(qr)).toContain('fill="#fff"')
  })
  it('is not made where it would be larger than a phone reads', () => {
    expect(qrOf('x'.repeat(1500), 'L')).toBeNull()
  })
})

describe('a slimmer invite', () => {
  const invite = {
    sheet: {
      ...thirty,
      sections: {
        unit: 'in' as const,
        sizes: [
          [5, 7],
          [7, 9]
        ]
      }
    },
    answers: {},
    locked: []
  }
  it('says what each part saves, and saves it', () => {
    const parts = savings(invite, [])
    expect(parts.map((p) => p.id)).toEqual(PARTS.map((p) => p.id))
    const whole = encodeInvite(invite).length
    for (const part of parts) {
      const less = encodeInvite({ ...invite, sheet: slimmed(invite.sheet, [part.id]) })
      expect(whole - less.length).toBe(part.saves)
      expect(decodeLink(less, { woods: reference.woods })).toMatchObject({ ok: true, problems: [] })
    }
  })
  it('offers nothing that is not there, and still lists what was left out', () => {
    const bare = {
      sheet: slimmed(
        invite.sheet,
        PARTS.map((p) => p.id)
      ),
      answers: {},
      locked: []
    }
    expect(savings(bare, [])).toEqual([])
    expect(savings(invite, ['note']).find((p) => p.id === 'note')).toMatchObject({ left: true })
  })
  it('never leaves a sheet without a wood', () => {
    const all = { ...sheet, woods: sheet.woods.map((w) => ({ ...w, onRequest: true })) }
    expect(slimmed(all, ['request']).woods.length).toBe(sheet.woods.length)
  })
})
