/** What must hold of the twist of any timber. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxedTwist, cornerOff, freeTwist, grainAngle, shellTwist, twistOf } from '../../src/wood/twist'

const fraction = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const side = fraction(90, 500)
// Sections as they are sawn: at most three times as deep as broad.
const section = fc.tuple(side, fraction(1, 3)).map(([b, times]) => [b, b * times] as const)
const grain = fc.record({ atPith: fraction(0.005, 0.1), fall: fraction(40, 400) })
const strain = fraction(0.001, 0.12)

describe('twist', () => {
  it('free of heart never more than boxed', () => {
    fc.assert(
      fc.property(section, grain, strain, ([b, d], g, s) => {
        expect(freeTwist(g, b, d, 5000, s)).toBeLessThanOrEqual(boxedTwist(g, b, d, 5000, s))
      })
    )
  })
  it('longer, drier and steeper of grain twist more; a larger boxed timber less', () => {
    fc.assert(
      fc.property(section, grain, strain, fc.constantFrom(boxedTwist, freeTwist), ([b, d], g, s, turn) => {
        const base = turn(g, b, d, 4000, s)
        expect(turn(g, b, d, 4400, s)).toBeCloseTo(1.1 * base, 10)
        expect(turn(g, b, d, 4000, s * 1.1)).toBeGreaterThan(base)
        expect(turn({ ...g, atPith: g.atPith * 1.1 }, b, d, 4000, s)).toBeCloseTo(1.1 * base, 10)
        expect(turn(g, b * 1.1, d * 1.1, 4000, s)).toBeLessThan(base)
      })
    )
  })
  it('grain straightens outwards, and straight grain or dry wood does not turn', () => {
    const g = { atPith: 0.05, fall: 100 }
    expect(grainAngle(g, 0)).toBe(0.05)
    expect(grainAngle(g, 100)).toBeCloseTo(0.05 / Math.E, 12)
    expect(boxedTwist({ ...g, atPith: 0 }, 200, 200, 5000, 0.05)).toBe(0)
    expect(boxedTwist(g, 200, 200, 5000, 0)).toBe(0)
  })
  it('the band holds its middle and is nothing where all is explained', () => {
    const g = { atPith: 0.05, fall: 100 }
    const band = twistOf('boxed', g, [200, 200], 5000, 0.05, 0.66, 0)
    expect(band.low).toBeLessThan(band.value)
    expect(band.high).toBeGreaterThan(band.value)
    const sure = twistOf('boxed', g, [200, 200], 5000, 0.05, 1, 0)
    expect(sure.low).toBe(sure.high)
    // A fit that explains little leaves more than itself open: the low end is then nothing, not negative.
    expect(twistOf('boxed', g, [200, 200], 5000, 0.05, 0.3, 0).low).toBe(0)
  })
  it('a corner stands off by the face times the sine, at most by the face', () => {
    expect(cornerOff(Math.PI / 6, 200)).toBeCloseTo(100, 10)
    expect(cornerOff(0, 200)).toBe(0)
    expect(cornerOff(4, 200)).toBe(200)
  })
  it('refuses what cannot be', () => {
    const g = { atPith: 0.05, fall: 100 }
    expect(() => shellTwist(0.05, 0, 1000, 0.05)).toThrow(RangeError)
    expect(() => shellTwist(0.05, 50, -1, 0.05)).toThrow(RangeError)
    expect(() => boxedTwist(g, 0, 200, 1000, 0.05)).toThrow(RangeError)
    expect(() => boxedTwist(g, 200, 200, 1000, Number.NaN)).toThrow(RangeError)
    expect(() => twistOf('boxed', g, [200, 200], 1000, 0.05, 0, 0)).toThrow(RangeError)
  })
})
