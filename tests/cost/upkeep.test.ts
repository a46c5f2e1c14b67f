/** What a finish costs over 20 years. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { finishCost20 } from '../../src/cost/upkeep'

describe('finish over 20 years', () => {
  it('counts a coat at every interval before the last day', () => {
    expect(finishCost20(1000, { low: 5, high: 10 }, 0.6)).toEqual({
      recoats: { low: 1, high: 3 },
      cost: { low: 1600, high: 2800 }
    })
    expect(finishCost20(1000, { low: 20, high: 40 }, 0.6).recoats).toEqual({ low: 0, high: 0 })
    expect(finishCost20(1000, { low: 1, high: 1 }, 0).recoats).toEqual({ low: 19, high: 19 })
    expect(finishCost20(0, { low: 2, high: 3 }, 0.6).cost).toEqual({ low: 0, high: 0 })
  })
  it('never costs less than the first coat, nor less for shorter years, and goes with the first coat', () => {
    const years = fc.double({ min: 0.25, max: 40, noNaN: true })
    fc.assert(
      fc.property(years, years, years, fc.double({ min: 0, max: 2, noNaN: true }), (a, b, shorter, share) => {
        const interval = { low: Math.min(a, b), high: Math.max(a, b) }
        const got = finishCost20(500, interval, share)
        expect(got.cost.low).toBeGreaterThanOrEqual(500)
        expect(got.cost.high).toBeGreaterThanOrEqual(got.cost.low)
        expect(finishCost20(1000, interval, share).cost.high).toBeCloseTo(2 * got.cost.high, 6)
        const low = Math.min(interval.low, shorter)
        expect(finishCost20(500, { ...interval, low }, share).cost.high).toBeGreaterThanOrEqual(got.cost.high)
      })
    )
  })
  it('refuses what cannot be', () => {
    expect(() => finishCost20(-1, { low: 1, high: 2 }, 0.5)).toThrow(RangeError)
    expect(() => finishCost20(1, { low: 0, high: 2 }, 0.5)).toThrow(RangeError)
    expect(() => finishCost20(1, { low: 3, high: 2 }, 0.5)).toThrow(RangeError)
    expect(() => finishCost20(1, { low: 1, high: 2 }, Number.NaN)).toThrow(RangeError)
  })
})
