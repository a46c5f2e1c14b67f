/** What must hold of any wood in any air. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roomHumidity, saturationPressure } from '../../src/wood/air'
import { sectionShape } from '../../src/wood/log-end'
import { emcIsExtrapolated, equilibriumMoisture } from '../../src/wood/moisture'
import { faceStrain, logDiameterNeeded } from '../../src/wood/section'
import { changeBetween, shrinkageFromGreen } from '../../src/wood/shrinkage'
import { densityAt } from '../../src/wood/weight'
import { reference } from '../reference'

const fraction = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const wood = fc.constantFrom(...reference.woods.values())
const side = fraction(100, 500)

describe('moisture', () => {
  // Near freezing and very dry the printed table is level in temperature; the second claim starts at 10 C.
  it('damper air makes damper wood, warmer air drier wood', () => {
    fc.assert(
      fc.property(fraction(10, 50), fraction(0.05, 0.94), fraction(0.001, 0.01), (t, h, dh) => {
        expect(equilibriumMoisture(t, h + dh)).toBeGreaterThan(equilibriumMoisture(t, h))
        expect(equilibriumMoisture(t + 1, h)).toBeLessThanOrEqual(equilibriumMoisture(t, h) + 1e-9)
      })
    )
  })
  it('refuses humidity that cannot be, and knows where it extrapolates', () => {
    for (const h of [-0.1, 1.1, Number.NaN]) expect(() => equilibriumMoisture(20, h)).toThrow(RangeError)
    expect(() => equilibriumMoisture(Number.POSITIVE_INFINITY, 0.5)).toThrow(RangeError)
    expect(emcIsExtrapolated(-10, 0.5)).toBe(true)
    expect(emcIsExtrapolated(20, 0.5)).toBe(false)
  })
  it('a heated room is never damper than its cap, and pressure rises with temperature', () => {
    fc.assert(
      fc.property(fraction(-35, 40), fraction(0.05, 1), (t, h) => {
        const room = roomHumidity(t, h, reference.room)
        expect(room.humidity).toBeGreaterThan(0)
        expect(room.humidity).toBeLessThanOrEqual(0.6)
        expect(saturationPressure(t + 1)).toBeGreaterThan(saturationPressure(t))
      })
    )
  })
})

describe('shrinkage', () => {
  it('drier never shrinks less', () => {
    fc.assert(
      fc.property(wood, fraction(0, 0.4), fraction(0, 0.1), (w, m, less) => {
        const drier = Math.max(0, m - less)
        expect(shrinkageFromGreen(w.tangential, drier, w.fibreSaturation)).toBeGreaterThanOrEqual(
          shrinkageFromGreen(w.tangential, m, w.fibreSaturation)
        )
      })
    )
  })
  it('there and back again is no change, and two steps are one', () => {
    fc.assert(
      fc.property(wood, fraction(0, 0.35), fraction(0, 0.35), (w, a, b) => {
        const there = changeBetween(w.radial, a, b, w.fibreSaturation)
        const back = changeBetween(w.radial, b, a, w.fibreSaturation)
        expect((1 - there) * (1 - back)).toBeCloseTo(1, 10)
      })
    )
  })
  it('refuses moisture below zero', () => expect(() => shrinkageFromGreen(0.07, -0.01, 0.3)).toThrow(RangeError))
})

describe('a section in its log', () => {
  it('free of heart needs the larger log, and both hold their corners', () => {
    fc.assert(
      fc.property(side, side, (b, d) => {
        expect(logDiameterNeeded('free', b, d)).toBeGreaterThan(logDiameterNeeded('boxed', b, d))
        for (const heart of ['boxed', 'free'] as const) {
          const { before, logRadius } = sectionShape({ heart, breadth: b, depth: d, radial: 0.03, tangential: 0.06 })
          for (const [x, y] of before) expect(Math.hypot(x, y)).toBeLessThanOrEqual(logRadius + 1e-6)
        }
      })
    )
  })
  it('the strain of a face lies between radial and tangential', () => {
    fc.assert(
      fc.property(wood, side, side, fc.constantFrom('boxed' as const, 'free' as const), (w, b, d, heart) => {
        const s = faceStrain(heart, b, d, w.radial, w.tangential)
        for (const e of [s.breadth, s.depth]) {
          expect(e).toBeGreaterThanOrEqual(w.radial - 0.01)
          expect(e).toBeLessThanOrEqual(w.tangential + 0.01)
        }
      })
    )
  })
  it('no shrinkage, no change of outline; a boxed piece opens with it', () => {
    const still = sectionShape({ heart: 'free', breadth: 200, depth: 300, radial: 0, tangential: 0 })
    for (const [i, p] of still.after.entries()) {
      expect(p[0]).toBeCloseTo(still.before[i]?.[0] ?? Number.NaN, 9)
      expect(p[1]).toBeCloseTo(still.before[i]?.[1] ?? Number.NaN, 9)
    }
    const boxed = sectionShape({ heart: 'boxed', breadth: 200, depth: 200, radial: 0.03, tangential: 0.06 })
    // From the pith out to one lip of the check, round, and back to the other.
    const first = boxed.after[1]
    const lip = boxed.after.at(-1)
    expect(Math.hypot((first?.[0] ?? 0) - (lip?.[0] ?? 0), (first?.[1] ?? 0) - (lip?.[1] ?? 0))).toBeCloseTo(
      2 * Math.PI * 100 * 0.03,
      0
    )
  })
  it('refuses sizes and strains that cannot be', () => {
    expect(() => sectionShape({ heart: 'boxed', breadth: 0, depth: 200, radial: 0.03, tangential: 0.06 })).toThrow(
      RangeError
    )
    expect(() => sectionShape({ heart: 'boxed', breadth: 200, depth: 200, radial: 0.08, tangential: 0.06 })).toThrow(
      RangeError
    )
  })
})

describe('weight', () => {
  it('wetter is heavier', () => {
    fc.assert(
      fc.property(wood, fraction(0, 1.5), (w, m) => {
        expect(densityAt(w.gravityGreen, m + 0.01)).toBeGreaterThan(densityAt(w.gravityGreen, m))
      })
    )
  })
})
