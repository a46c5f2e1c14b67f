/** A section in its log, against what was measured and against plain geometry. */
import { describe, expect, it } from 'vitest'
import { INCH } from '../../src/data/units'
import { driedPoint } from '../../src/wood/polar'
import { checkOpening, logDiameterNeeded, missingAngle } from '../../src/wood/section'
import { changeBetween } from '../../src/wood/shrinkage'

describe('logs that sections need', () => {
  it('8 x 8 boxed wants 11.3 in; free of heart with half an inch clear 18.8 in', () => {
    expect(logDiameterNeeded('boxed', 8 * INCH, 8 * INCH) / INCH).toBeCloseTo(11.3, 1)
    expect(logDiameterNeeded('free', 8 * INCH, 8 * INCH) / INCH).toBeCloseTo(18.8, 1)
  })
})

describe('a 16 x 16 in boxed-heart Douglas-fir post, kiln-dried to a 15 % core, kerfed to the heart', () => {
  it('the kerf, 1/4 in, was seen to open to nearly 1 in: the formula gives about 0.7 in more', () => {
    // Source: trade note (seen). The missing quarter-inch or so is the dry shell, which this one mean moisture leaves out.
    const strain = (total: number) => changeBetween(total, 0.3, 0.15, 0.3)
    const opening = checkOpening(8 * INCH, strain(0.048), strain(0.076)) / INCH
    expect(opening).toBeGreaterThan(0.6)
    expect(opening).toBeLessThan(0.8)
  })
})

describe('plane polar shrinkage about the pith', () => {
  it('a circle keeps its centre, shrinks by eR, and fails to close by the missing angle', () => {
    const [x, y] = driedPoint([0, 100], 0.04, 0.08, Math.PI / 2)
    expect(Math.hypot(x, y)).toBeCloseTo(96, 10)
    expect(missingAngle(0.04, 0.08)).toBeCloseTo((2 * Math.PI * 0.04) / 0.96, 12)
  })
  it('equal shrinkage both ways only scales', () => {
    const [x, y] = driedPoint([30, 40], 0.05, 0.05, Math.PI / 2)
    expect(x).toBeCloseTo(28.5, 10)
    expect(y).toBeCloseTo(38, 10)
  })
})
