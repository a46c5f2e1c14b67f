/** Bands of what scatters. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inverselyScattered, widened } from '../../src/wood/scatter'

const band = fc
  .tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true })
  )
  .map((three) => three.sort((p, q) => p - q))
  .map(([low = 0, value = 0, high = 0]) => ({ low, value, high }))
const variation = fc.double({ min: 0, max: 0.6, noNaN: true })

describe('a band widened by independent scatter', () => {
  it('adds as squares: 3 and 4 make 5', () => {
    const wide = widened({ value: 10, low: 7, high: 13 }, 0.4)
    expect(wide.low).toBeCloseTo(5, 12)
    expect(wide.high).toBeCloseTo(15, 12)
  })
  it('holds the band that it came from, never falls below zero, and without scatter is that band', () => {
    fc.assert(
      fc.property(band, variation, (b, c) => {
        const wide = widened(b, c)
        expect(wide.value).toBe(b.value)
        expect(wide.low).toBeGreaterThanOrEqual(0)
        expect(wide.low).toBeLessThanOrEqual(b.low + 1e-12)
        expect(wide.high).toBeGreaterThanOrEqual(b.high - 1e-12)
        expect(widened(b, 0).low).toBeCloseTo(b.low, 12)
        expect(widened(b, 0).high).toBeCloseTo(b.high, 12)
      })
    )
  })
  it('refuses a band out of order and a scatter below zero', () => {
    expect(() => widened({ value: 1, low: 2, high: 3 }, 0.1)).toThrow(RangeError)
    expect(() => widened({ value: 2, low: 1, high: 3 }, -0.1)).toThrow(RangeError)
  })
})

describe('a sag by a stiffness that scatters', () => {
  it('a stick a quarter stiffer sags to four fifths, one a quarter springier to four thirds', () => {
    expect(inverselyScattered(12, 0.25)).toEqual({ value: 12, low: 12 / 1.25, high: 16 })
  })
  it('refuses a scatter of one or more', () => {
    expect(() => inverselyScattered(1, 1)).toThrow(RangeError)
  })
})
