import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Quantity, QuantityKind } from '../../src/data/quantity'
import { fieldText, parseNumber } from '../../src/ui/format/field'
import type { NumberKind } from '../../src/ui/format/parse'
import { readNumber } from '../../src/ui/format/parse'
import { formatSi, formatUs, type System } from '../../src/ui/format/quantity'

const q = (kind: QuantityKind, value: Quantity['value'], low?: number, high?: number): Quantity => ({
  kind,
  value,
  ...(low === undefined ? {} : { low }),
  ...(high === undefined ? {} : { high }),
  origin: { mark: 'derived', sources: [] }
})
const both = (of: Quantity): [string, string] =>
  [formatUs(of), formatSi(of)].map((s) => s.replaceAll('\u00a0', ' ')) as [string, string]
const MM = 25.4

describe('a quantity is said as a carpenter would say it', () => {
  const cases: [string, Quantity, string, string][] = [
    ['gap', q('gap', 4.8), '3/16 in', '5 mm'],
    ['small gap', q('gap', 0.3), 'under 1/32 in', 'under 1 mm'],
    ['gap over an inch', q('gap', 1.25 * MM), '1 1/4 in', '32 mm'],
    ['gap with a spread', q('gap', 6, 4.7, 8), '3/16 to 5/16 in', '4.5 to 8 mm'],
    ['gap from next to nothing', q('gap', 2, 0.1, 3.2), 'up to 1/8 in', 'up to 3 mm'],
    ['section', q('section', [8 * MM, 12 * MM]), '8 × 12 in', '203 × 305 mm'],
    ['planed section', q('section', [7.5 * MM, 11.5 * MM]), '7 1/2 × 11 1/2 in', '191 × 292 mm'],
    ['span', q('span', 4876.8), '16 ft', '4.88 m'],
    ['span with inches', q('span', 5029.2), '16 ft 6 in', '5.03 m'],
    ['span with a spread', q('span', 4000, 3657.6, 4267.2), '12 to 14 ft', '3.66 to 4.27 m'],
    ['log', q('diameter', 18.8 * MM), '19 in', '480 mm'],
    ['moisture', q('moisture', 0.153), '15 %', '15 %'],
    ['moisture with a band, told where it opens', q('moisture', 0.15, 0.12, 0.18), '15 %', '15 %'],
    ['green moisture, which varies by tens', q('moisture', 1.109), '110 %', '110 %'],
    ['log diameter, never rounded down', q('diameter', 11.31 * 25.4), '12 in', '290 mm'],
    ['small percent', q('percent', 0.0234), '2.3 %', '2.3 %'],
    ['tiny percent', q('percent', 0.00034), '0.03 %', '0.03 %'],
    ['large percent', q('percent', 0.237), '24 %', '24 %'],
    ['snow', q('areaLoad', 1675.8), '35 psf', '1.68 kN/m²'],
    ['weight', q('mass', 450), '992 lb', '450 kg'],
    ['stress', q('stress', 11032), '1.6 million psi', '11,000 MPa'],
    ['board feet', q('volume', 12), '5,090 board feet', '12 m³'],
    ['money', q('money', 41234), '$41,200', '$41,200'],
    ['cents', q('pricePerVolume', 4.5 * 423.776), '$4.50 per board foot', '$1,910 per m³'],
    ['weeks', q('weeks', 6), '6 weeks', '6 weeks'],
    ['months', q('weeks', 22), 'about 5 months', 'about 5 months'],
    ['years', q('weeks', 104.4), '2 years', '2 years'],
    ['weeks, a spread', q('weeks', 30, 22, 35), '5 to 8 months', '5 to 8 months'],
    ['ratio', q('ratio', 0.8), '0.80', '0.80'],
    ['temperature', q('temperature', 20), '68 °F', '20 °C']
  ]
  test.each(cases)('%s', (_name, of, us, si) => {
    expect(both(of)).toEqual([us, si])
  })

  test('never says NaN, infinity or an empty string for a finite number', () => {
    const kinds: QuantityKind[] = [
      'gap',
      'section',
      'span',
      'diameter',
      'moisture',
      'percent',
      'areaLoad',
      'lineLoad',
      'force',
      'stress',
      'mass',
      'density',
      'temperature',
      'volume',
      'money',
      'pricePerVolume',
      'weeks',
      'years',
      'index',
      'ratio',
      'count',
      'angle'
    ]
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.double({ min: 0, max: 1e9, noNaN: true }), (kind, value) => {
        for (const text of both(q(kind, value))) {
          expect(text).not.toMatch(/NaN|Infinity|undefined|e\+/)
          expect(text).toMatch(/\d|at once/)
        }
      })
    )
  })
})

describe('a typed number is read kindly', () => {
  const cases: [string, NumberKind, System, number][] = [
    ['16', 'span', 'us', 4876.8],
    ['16.5', 'span', 'us', 5029.2],
    ['16\'6"', 'span', 'us', 5029.2],
    ['16’ 6”', 'span', 'us', 5029.2],
    ['16 ft 6 in', 'span', 'us', 5029.2],
    ['16 feet 6 1/2 inches', 'span', 'us', 5041.9],
    ['4,88', 'span', 'si', 4880],
    ['4.88 m', 'span', 'us', 4880],
    ['4880 mm', 'span', 'si', 4880],
    ['12', 'diameter', 'us', 304.8],
    ['11 1/2', 'diameter', 'us', 292.1],
    ['300', 'diameter', 'si', 300],
    ['35 psf', 'areaLoad', 'si', 35 * 47.880_258_98],
    ['1.7', 'areaLoad', 'si', 1700],
    ['8/12', 'pitch', 'us', 8 / 12],
    ['8 in 12', 'pitch', 'us', 8 / 12],
    ['45°', 'pitch', 'us', 1],
    ['45', 'pitch', 'si', 1],
    ['6', 'count', 'us', 6]
  ]
  test.each(cases)('%s as %s (%s)', (text, kind, system, si) => {
    const read = readNumber(text, kind, system)
    expect(read.ok && read.value).toBeCloseTo(si, 6)
  })

  test.each([
    '',
    'abc',
    '-5',
    '16 parsecs',
    '1e9',
    'NaN',
    'Infinity',
    '0x10',
    '1/0',
    '12 constructor',
    '16 ft 6 in 2',
    '<b>9</b>'
  ])('refuses %j, with the range in words', (text) => {
    const read = parseNumber(text, 'span', 'us', { min: 1828.8, max: 18288 })
    expect(read.ok).toBe(false)
    expect(!read.ok && read.says.replaceAll('\u00a0', ' ')).toContain('from 6 ft to 60 ft')
  })

  test('out of range says which way', () => {
    const range = { min: 1828.8, max: 18288 }
    expect(parseNumber('2', 'span', 'us', range)).toMatchObject({ ok: false, says: expect.stringContaining('smaller') })
    expect(parseNumber('900', 'span', 'us', range)).toMatchObject({
      ok: false,
      says: expect.stringContaining('larger')
    })
  })

  test('any text at all is read or refused, never thrown on', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 200 }),
        fc.constantFrom<NumberKind>('span', 'areaLoad', 'diameter', 'pitch', 'count', 'money'),
        fc.constantFrom<System>('us', 'si'),
        (text, kind, system) => {
          const read = parseNumber(text, kind, system, { min: 1, max: 1000 })
          if (read.ok) expect(Number.isFinite(read.value)).toBe(true)
          else expect(read.says).not.toBe('')
        }
      )
    )
  })

  test('a sum is read as people write it', () => {
    const read = (text: string) => readNumber(text, 'money', 'us')
    for (const text of ['45000', '$45,000', '45,000.00', '45.000', '45 000', "45'000", '45k', '$ 45 k', '45.000,00 €'])
      expect(read(text), text).toEqual({ ok: true, value: 45_000 })
    expect(read('38.500,5')).toEqual({ ok: true, value: 38_500.5 })
    for (const text of ['', '-5', 'a lot', '1,2,3', '45,00,0', '1e9', '4 5']) expect(read(text).ok, text).toBe(false)
  })

  test('what the field shows is read back as what it stood for, to the step it shows', () => {
    const step: Record<NumberKind, number> = {
      span: 12.71,
      diameter: 1.6,
      areaLoad: 24,
      pitch: 0.05,
      count: 0,
      money: 0.01
    }
    const top: Record<NumberKind, number> = {
      span: 20000,
      diameter: 900,
      areaLoad: 12000,
      pitch: 2,
      count: 60,
      money: 5e6
    }
    fc.assert(
      fc.property(
        fc.constantFrom<NumberKind>('span', 'areaLoad', 'diameter', 'pitch', 'count'),
        fc.constantFrom<System>('us', 'si'),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (kind, system, share) => {
          const whole = kind === 'count' || kind === 'money'
          const value = whole ? Math.round(share * top[kind]) : share * top[kind]
          const read = readNumber(fieldText(value, kind, system), kind, system)
          expect(read.ok).toBe(true)
          if (read.ok) expect(Math.abs(read.value - value)).toBeLessThanOrEqual(step[kind])
        }
      )
    )
  })

  test('showing and reading settles at once: a second round changes nothing', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<NumberKind>('span', 'areaLoad', 'diameter'),
        fc.constantFrom<System>('us', 'si'),
        fc.double({ min: 500, max: 20000, noNaN: true }),
        (kind, system, value) => {
          const once = fieldText(value, kind, system)
          const read = readNumber(once, kind, system)
          expect(read.ok && fieldText(read.value, kind, system)).toBe(once)
        }
      )
    )
  })
})
