/** The size ladder's address, what is typed on it, and what is said of what cannot be taken. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LadderNumber, ladderRanges, readLadder } from '../../src/choice/ladder-door'
import { KINDS, type LadderAsked } from '../../src/choice/ladder-types'
import { bearsOf, livesOf, usesField } from '../../src/choice/ladder-uses'
import { EXAMPLE, givenOf } from '../../src/ui/size-ladder/at-build'
import { linkOf, readLink } from '../../src/ui/size-ladder/link'
import { rangeWords, readField, textOf, troubleWords } from '../../src/ui/size-ladder/read'
import { settingWords } from '../../src/ui/size-ladder/words'
import { reference } from '../reference'

const asked = fc
  .record({
    kind: fc.constantFrom(...KINDS),
    inches: fc.tuple(fc.integer({ min: 48, max: 720 }), fc.integer({ min: 6, max: 288 })),
    rise: fc.integer({ min: 2, max: 24 }),
    which: fc.nat(6),
    psf: fc.integer({ min: 0, max: 200 }),
    where: fc.nat(2),
    dryness: fc.constantFrom('green', 'dry'),
    grade: fc.constantFrom('select', 'no1', 'no2'),
    surface: fc.constantFrom('full-sawn', 'planed'),
    height: fc.integer({ min: 24, max: 360 }),
    pounds: fc.integer({ min: 0, max: 50_000 }),
    wood: fc.constantFrom(...reference.woods.keys())
  })
  .map(({ kind, inches, rise, which, where, psf, height, pounds, ...rest }): LadderAsked => {
    const can = bearsOf(kind)
    const bears = can[which % can.length] ?? 'roof'
    const live = livesOf(bears)
    return {
      ...rest,
      kind,
      lives: live[where % live.length] ?? '',
      span: inches[0] * 25.4,
      width: inches[1] * 25.4,
      slope: rise / 12,
      bears,
      snow: psf * 47.88025898,
      height: height * 25.4,
      point: pounds * 4.448221615
    }
  })

describe('the address', () => {
  it('comes back as what was asked, where it is used', () => {
    fc.assert(
      fc.property(asked, (a) => {
        const read = readLink(linkOf(a), EXAMPLE)
        if (!read.ok) throw new Error(read.part)
        for (const [field, value] of Object.entries(a) as [keyof LadderAsked, string | number][]) {
          if (!usesField(field, a)) continue
          const back = read.asked[field]
          if (typeof value === 'string') expect(back).toBe(value)
          else expect(Math.abs(Number(back) - value)).toBeLessThanOrEqual(1e-4 * Math.max(1, value))
        }
        expect(readLadder(read.asked, reference).ok).toBe(true)
        expect(linkOf(read.asked)).toBe(linkOf(a))
      })
    )
  })
  it('names the part that does not fit, whatever it is', () => {
    expect(readLink('king/24by10', EXAMPLE)).toEqual({ ok: false, part: '24by10' })
    expect(readLink(`${linkOf(EXAMPLE)}/zz`, EXAMPLE)).toEqual({ ok: false, part: 'zz' })
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readLink(text, EXAMPLE)
        if (!read.ok) expect(text.startsWith(read.part) || text.includes(read.part)).toBe(true)
      })
    )
  })
})

describe('the fields', () => {
  const FIELDS: readonly LadderNumber[] = ['span', 'width', 'slope', 'height', 'snow', 'point']
  it.each(FIELDS)('%s: both ends of the range, as said, are taken when typed', (field) => {
    for (const kind of ['king', 'beam'])
      for (const system of ['us', 'si'] as const) {
        const range = ladderRanges(kind, reference)[field]
        const [, from = '', to = ''] = /^from (.+) to (.+)$/.exec(rangeWords(field, range, system)) ?? []
        for (const end of [from, to]) {
          const value = readField(field, end.replaceAll('\u00a0', ' '), system)
          expect(value, `${end} of ${field}`).not.toBeNull()
          expect(Number(value)).toBeGreaterThanOrEqual(range.least * 0.999)
          expect(Number(value)).toBeLessThanOrEqual(range.most * 1.001)
        }
      }
  })
  it.each(FIELDS)('%s: what is shown reads back', (field) => {
    for (const system of ['us', 'si'] as const) {
      const value = EXAMPLE[field] || 8896
      const back = readField(field, textOf(field, value, system), system)
      expect(Math.abs(Number(back) / value - 1)).toBeLessThan(0.02)
    }
  })
  it('units that are spelled out count', () => {
    expect(readField('point', '2,000 lb', 'si')).toBeCloseTo(8896.44, 1)
    expect(readField('point', '9 kN', 'us')).toBeCloseTo(9000, 6)
    expect(readField('span', '24 ft 6 in', 'si')).toBeCloseTo(7467.6, 6)
    expect(readField('slope', '90 degrees', 'us')).toBeNull()
    expect(readField('point', 'a ton', 'us')).toBeNull()
  })
  it('a refusal names the range', () => {
    const { span, slope } = ladderRanges('king', reference)
    expect(troubleWords('span', 'range', span, 'us')).toMatch(/from 4\sft to 60\sft/)
    expect(troubleWords('slope', 'unread', slope, 'us')).toMatch(/from 2\sin 12 to 24\sin 12/)
    expect(troubleWords('slope', 'unread', slope, 'si')).toMatch(/from 10° to 63°/)
  })
})

it('a setting in words has no hole', () => {
  fc.assert(
    fc.property(asked, (a) => {
      for (const system of ['us', 'si'] as const)
        expect(settingWords(a, system)).toMatch(/^[A-Z](?!.*(undefined|NaN)).*\.$/)
    })
  )
})

it('what goes with the page opens every figure', () => {
  const { report, library, woods } = givenOf(reference)
  expect(woods.map((w) => w.id).sort()).toEqual(report.lines.map((l) => l.wood).sort())
  const text = JSON.stringify(report)
  for (const [, key] of text.matchAll(/"key":"([^"]+)"/g)) expect(library.sources[key ?? ''], key).toBeDefined()
  for (const [, id] of text.matchAll(/"formula":"([^"]+)"/g)) expect(library.formulas[id ?? ''], id).toBeDefined()
})
