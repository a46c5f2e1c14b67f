/** The size ladder's address, what is typed on it, and what is said of what cannot be taken. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type LadderNumber, ladderRanges, readLadder } from '../../src/choice/ladder/door'
import { KINDS, type LadderAsked } from '../../src/choice/ladder/types'
import { bearsOf, livesOf, usesField } from '../../src/choice/ladder/uses'
import { EXAMPLE, givenOf } from '../../src/ui/size-ladder/at-build'
import { rangeOf } from '../../src/ui/size-ladder/bench'
import { linkOf, readLink } from '../../src/ui/size-ladder/link'
import { restingLoads, settleLoads } from '../../src/ui/size-ladder/points'
import { rangeWords, readField, textOf, troubleWords } from '../../src/ui/size-ladder/read'
import { SAWN, settingWords } from '../../src/ui/size-ladder/words'
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
    surface: fc.constantFrom(...reference.series.keys()),
    height: fc.integer({ min: 24, max: 360 }),
    points: fc.array(fc.tuple(fc.integer({ min: 0, max: 50_000 }), fc.double({ min: 0, max: 1, noNaN: true })), {
      maxLength: 4
    }),
    wood: fc.constantFrom(...reference.woods.keys())
  })
  .map(({ kind, inches, rise, which, where, psf, height, points, ...rest }): LadderAsked => {
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
      loads: '1234'.slice(0, points.length),
      ...restingLoads(inches[0] * 25.4),
      ...Object.fromEntries(
        points.flatMap(([pounds, share], i) => [
          [`point${i + 1}`, pounds * 4.448221615],
          [`at${i + 1}`, Math.round(share * inches[0]) * 25.4]
        ])
      )
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
          else
            expect(Math.abs(Number(back) - value)).toBeLessThanOrEqual(
              field.startsWith('at') ? 0.02 : 1e-4 * Math.max(1, value)
            )
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
  const FIELDS: readonly LadderNumber[] = ['span', 'width', 'slope', 'height', 'snow', 'point1', 'at1']
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
      const value = EXAMPLE[field]
      const back = readField(field, textOf(field, value, system), system)
      expect(Math.abs(Number(back) / value - 1)).toBeLessThan(0.02)
    }
  })
  it('a place on the span ends with the span', () => {
    const given = givenOf(reference)
    const beam = { ...EXAMPLE, kind: 'beam', span: 14 * 304.8 }
    expect(rangeOf('at2', beam, given.ranges)).toEqual({ least: 0, most: 14 * 304.8 })
    expect(rangeWords('at2', rangeOf('at2', beam, given.ranges), 'us')).toMatch(/to 14\sft/)
    // Where the span itself cannot be, its own trouble is told and no other.
    expect(rangeOf('at2', { ...beam, span: 0 }, given.ranges).most).toBe(60 * 304.8)
  })
  it('units that are spelled out count', () => {
    expect(readField('point1', '2,000 lb', 'si')).toBeCloseTo(8896.44, 1)
    expect(readField('point3', '9 kN', 'us')).toBeCloseTo(9000, 6)
    expect(readField('span', '24 ft 6 in', 'si')).toBeCloseTo(7467.6, 6)
    expect(readField('slope', '90 degrees', 'us')).toBeNull()
    expect(readField('point1', 'a ton', 'us')).toBeNull()
  })
  it('a refusal names the range', () => {
    const { span, slope } = ladderRanges('king', reference)
    expect(troubleWords('span', 'range', span, 'us')).toMatch(/from 4\sft to 60\sft/)
    expect(troubleWords('slope', 'unread', slope, 'us')).toMatch(/from 2\sin 12 to 24\sin 12/)
    expect(troubleWords('slope', 'unread', slope, 'si')).toMatch(/from 10° to 63°/)
  })
})

describe('loads at points', () => {
  it('a link of before, with one load and no place, has it at mid-span', () => {
    const read = readLink('beam/14.5x10ft/8in12/storage/40psf/heated/green/no1/full-sawn/white-oak/p1500lb', EXAMPLE)
    if (!read.ok) throw new Error(read.part)
    expect(read.asked.loads).toBe('1')
    expect(read.asked.at1).toBeCloseTo(7.25 * 304.8, 6)
    expect(read.asked.point1).toBeCloseTo(1500 * 4.448221615, 4)
  })
  it('a link has four at most', () => {
    const base = 'beam/14x10ft/8in12/storage/40psf/heated/green/no1/full-sawn/white-oak'
    expect(readLink(`${base}/p1lb/p2lb@1ft/p3lb@2ft/p4lb@3000mm`, EXAMPLE).ok).toBe(true)
    expect(readLink(`${base}/p1lb/p2lb/p3lb/p4lb/p5lb`, EXAMPLE)).toEqual({ ok: false, part: 'p5lb' })
    expect(readLink(`${base}/p1lb@2`, EXAMPLE)).toEqual({ ok: false, part: 'p1lb@2' })
  })
  it('those not in use wait within the span, those in use stay', () => {
    const asked = settleLoads({ ...EXAMPLE, kind: 'beam', span: 10 * 304.8, loads: '1', at1: 3000 })
    expect(asked.at1).toBe(3000)
    for (const at of [asked.at2, asked.at3, asked.at4]) expect(at > 0 && at < asked.span).toBe(true)
  })
})

it('every series has its name on the page', () => {
  expect(SAWN.map(([id]) => id).sort()).toEqual([...reference.series.keys()].sort())
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
