/** Links: what goes in comes out; what comes from nowhere is refused in words or comes out sound. */

import { deflateRawSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/choice/answers'
import { QUESTIONS } from '../../src/choice/questions'
import type { Answers } from '../../src/choice/types'
import { ENVELOPE } from '../../src/shop/invite/envelope'
import { packSheet, unpackSheet } from '../../src/shop/invite/sheet'
import { DICTIONARY_2 } from '../../src/shop/invite/tables'
import { decodeLink, encodeBrief, encodeInvite, encodeLink } from '../../src/shop/link'
import { readSheet } from '../../src/shop/sheet/door'
import { answerTo } from '../choice/any-answers'
import { reference, sheet } from '../reference'
import { answersFull, anySheet, thirty } from './invented-sheets'

const known = { places: reference.places, woods: reference.woods }
const dictionary = new TextEncoder().encode(DICTIONARY_2)
const anyAnswers = fc.record(Object.fromEntries(QUESTIONS.map((q) => [q.id, answerTo(q)])), {
  requiredKeys: []
}) as fc.Arbitrary<Answers>
const base64Url = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64url')
/** The checksum again, from its definition, so that a changed payload passes for a whole one. */
function resealed(version: string, payload: string): string {
  let hash = 0x811c9dc5
  for (const c of payload) hash = Math.imul(hash ^ c.charCodeAt(0), 0x01000193)
  return `${version}.${payload}.${(hash >>> 0).toString(36)}`
}

/** Packed by another library than ours, many times as fast. */
const seal = (version: string, text: string) => resealed(version, base64Url(deflateRawSync(text, { dictionary })))

/** Whatever came out must be sound. */
function checkOut(fragment: string, bounds = known): void {
  const read = decodeLink(fragment, bounds)
  if (!read.ok) {
    expect(read.says.length).toBeGreaterThan(10)
    return
  }
  expect(readAnswers(read.answers, bounds.places).problems).toEqual([])
  if (read.sheet) {
    // Plain comparisons: a hundred thousand times, the matchers' own cost tells.
    const again = readSheet(read.sheet)
    if (!again.ok || JSON.stringify(again.sheet) !== JSON.stringify(read.sheet)) throw new Error('an unsound sheet')
    if (!read.sheet.woods.every((wood) => bounds.woods.has(wood.species))) throw new Error('an unknown wood')
  }
  if (!(read.locked ?? []).every((id) => Object.hasOwn(read.answers, id))) throw new Error('settled without an answer')
}

describe('round trip', () => {
  it('every sheet that the schema takes comes back whole, however long and in any script', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(anySheet, anyAnswers, fc.nat(), (s, answers, n) => {
        const read = readSheet(s)
        if (!read.ok) throw new Error(JSON.stringify(read.problems))
        const locked = Object.keys(answers).filter((_, i) => (n >> (i % 30)) & 1)
        expect(unpackSheet(JSON.parse(JSON.stringify(packSheet(s))))).toEqual(s)
        const places = { places: reference.places }
        expect(decodeLink(encodeInvite({ sheet: s, answers, locked }), places)).toEqual({
          ok: true,
          sheet: s,
          answers,
          locked,
          problems: []
        })
        expect(decodeLink(`#${encodeBrief(answers, s)}`, places)).toEqual({ ok: true, sheet: s, answers, problems: [] })
      }),
      { numRuns: 250 }
    )
  })
  it('a brief says which answers came with the invite, where any did; ids without an answer are dropped', () => {
    const given = { settled: ['span'], suggested: ['knots'] }
    const answers = { span: 6096, knots: 'some' }
    expect(decodeLink(encodeBrief(answers, sheet, given), known)).toMatchObject({ ok: true, answers, given })
    const odd = { settled: ['span', 'span', 'size'], suggested: ['span', 'constructor', 'knots'] }
    expect(decodeLink(encodeBrief(answers, sheet, odd), known)).toMatchObject({ given })
    const none = encodeBrief(answers, sheet, { settled: [], suggested: [] })
    expect(none).toBe(encodeBrief(answers, sheet))
    expect(decodeLink(none, known)).not.toHaveProperty('given')
  })

  it('the longest sheet of all stays within the envelope', () => {
    const long = (n: number, seed: number) =>
      Array.from({ length: n }, (_, i) => String.fromCharCode(0x4e00 + ((i * 7919 + seed * 104729) % 20000))).join('')
    const woods = Array.from({ length: 60 }, (_, i) => ({
      species: `wood-${String(i).padStart(35, 'x')}`.slice(0, 40),
      perBoardFoot: Math.PI * (i + 1),
      freeOfHeartAddPercent: Math.E * (i + 1),
      longestFt: 4 + Math.SQRT2 * (i + 1),
      largestIn: [2 + Math.SQRT1_2 * (i % 40), 30 + 1 / (i + 3)],
      note: long(120, i)
    }))
    const s = {
      ...sheet,
      name: long(80, 100),
      contact: long(160, 101),
      note: long(600, 102),
      cautions: Array.from({ length: 8 }, (_, i) => long(160, 110 + i)),
      woods,
      sections: {
        unit: 'mm' as const,
        sizes: Array.from({ length: 120 }, (_, i) => [50 + i * Math.SQRT2, 60 + i * Math.PI])
      }
    }
    expect(readSheet(s).ok).toBe(true)
    const link = encodeInvite({ sheet: s, answers: answersFull, locked: [] })
    expect(link.length).toBeLessThan(ENVELOPE.longest)
    expect(decodeLink(link, { places: reference.places })).toMatchObject({ ok: true, sheet: s })
  })
  it('a link cut anywhere is refused', () => {
    const whole = encodeInvite({ sheet, answers: answersFull, locked: ['span'] })
    for (let n = 0; n < whole.length; n++) expect(decodeLink(whole.slice(0, n)).ok, `${n}`).toBe(false)
  })
})

describe('what a page does not know', () => {
  it('a wood that it has no numbers on is said and left out; the rest stay', () => {
    const strange = { ...sheet, woods: [...sheet.woods, { species: 'moon-oak', perBoardFoot: 9 }] }
    const read = decodeLink(encodeInvite({ sheet: strange, answers: {}, locked: [] }), known)
    expect(read).toMatchObject({ ok: true, sheet })
    expect(read.ok && read.problems.map((p) => p.says).join()).toContain('moon-oak')
  })
  it('a place of a longer list than this one’s is said and left out', () => {
    const raw = packSheet(sheet) as unknown[][]
    ;(raw[2] as unknown[][]).push([4000, 3])
    const read = decodeLink(seal('2', JSON.stringify(['i', raw, {}, []])), known)
    expect(read).toMatchObject({ ok: true, sheet })
    expect(read.ok && read.problems.length).toBe(1)
  })
  it('a sheet of nothing but such woods is refused in words', () => {
    const strange = { ...sheet, woods: [{ species: 'moon-oak', perBoardFoot: 9 }] }
    const read = decodeLink(encodeBrief({}, strange), known)
    expect(read.ok).toBe(false)
    expect(!read.ok && read.says).toMatch(/no numbers on any wood/)
  })
  it('a later version is refused in words', () => {
    expect(decodeLink(resealed('3', 'abcd'))).toEqual({ ok: false, says: expect.stringContaining('version') })
  })
  it('answers that are settled must be answers', () => {
    const read = decodeLink(
      seal(
        '2',
        JSON.stringify(['i', packSheet(sheet), { span: 6096, finish: 'plaid' }, ['span', 'finish', 'span', 3]])
      ),
      known
    )
    expect(read).toMatchObject({ ok: true, answers: { span: 6096 }, locked: ['span'] })
    expect(read.ok && read.problems.length).toBe(1)
  })
})

describe('from nowhere', () => {
  const bombs = [1_000_000, 20_000_000, 60_000_000].map((n) =>
    deflateRawSync(new Uint8Array(n).fill(0x20), { level: 9 })
  )
  it('a bomb is dropped long before it has unpacked', () => {
    for (const bomb of bombs)
      for (const version of ['1', '2']) {
        const read = decodeLink(resealed(version, base64Url(bomb)), known)
        expect(read.ok).toBe(false)
      }
    // Thousands of brackets are as far as JSON goes, and no further.
    const deep = `${'['.repeat(60_000)}${']'.repeat(60_000)}`
    checkOut(seal('2', deep))
    checkOut(seal('2', `["i",${deep}]`))
  })

  const real = [
    encodeLink(answersFull),
    encodeInvite({ sheet, answers: answersFull, locked: ['span', 'place'] }),
    encodeInvite({ sheet: thirty, answers: {}, locked: [] }),
    encodeBrief(answersFull, sheet)
  ]
  const raws = [
    ['i', packSheet(sheet), answersFull, ['span']],
    ['b', packSheet(thirty), answersFull],
    ['a', answersFull]
  ].map((content) => JSON.stringify(content))
  const patch = (whole: string) =>
    fc
      .tuple(fc.nat(whole.length), fc.nat(6), fc.string({ maxLength: 4 }))
      .map(([at, cut, put]) => whole.slice(0, at) + put + whole.slice(at + cut))
  const anyOf = (all: readonly string[]) => fc.constantFrom(...all).chain(patch)
  const payloads = real.map((link) => link.split('.')[1] ?? '')

  const CASES: readonly [string, fc.Arbitrary<string>, number][] = [
    ['real links with a piece changed', anyOf(real), 25_000],
    ['changed payloads under a right checksum', anyOf(payloads).map((p) => resealed('2', p)), 25_000],
    ['changed contents, packed again', anyOf(raws).map((text) => seal('2', text)), 15_000],
    [
      'a part of the content that is something else altogether',
      fc.tuple(fc.constantFrom(...raws), fc.nat(9), fc.nat(9), fc.jsonValue()).map(([text, i, j, value]) => {
        const content = JSON.parse(text) as unknown[]
        const sheetPart = content[1]
        if (Array.isArray(sheetPart) && i > 3) sheetPart[j] = value
        else content[i % 4] = value
        return seal('2', JSON.stringify(content))
      }),
      10_000
    ],
    [
      'any bytes under a right checksum',
      fc.uint8Array({ maxLength: 200 }).map((b) => resealed('2', base64Url(b))),
      10_000
    ],
    [
      'any text',
      fc.oneof(
        fc.string(),
        fc.tuple(fc.constantFrom('1', '2', ''), fc.base64String(), fc.string()).map((p) => p.join('.'))
      ),
      15_000
    ]
  ]
  it.each(CASES)('%s: never a throw, nothing unsound', { timeout: 120_000 }, (_, links, numRuns) => {
    fc.assert(
      fc.property(links, (link) => checkOut(link)),
      { numRuns }
    )
  })
  it('these are a hundred thousand cases', () => {
    expect(CASES.reduce((n, [, , runs]) => n + runs, 0)).toBe(100_000)
  })
})
