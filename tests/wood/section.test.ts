/** How the rings lie across a face: the closed share against counting, and against the dried outline. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { INCH } from '../../src/data/units'
import { driedPoint } from '../../src/wood/polar'
import {
  boxedShares,
  faceShares,
  faceStrain,
  logDiameterNeeded,
  PITH_CLEARANCE,
  seatInLog,
  tangentialShare
} from '../../src/wood/section'
import { reference } from '../reference'

const side = fc.double({ min: 100, max: 500, noNaN: true })

/** Mean of sin2 over the section by its middles of small squares. */
function counted(half: number, near: number, far: number, n = 200): number {
  let sum = 0
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const x = ((i + 0.5) / n) * half
      const y = near + ((j + 0.5) / n) * (far - near)
      sum += (y * y) / (x * x + y * y)
    }
  }
  return sum / (n * n)
}

describe('share of the tangential strain', () => {
  it.each([
    [100, 0, 100],
    [75, 0, 150],
    [150, 0, 75],
    [100, 12.7, 212.7],
    [150, 12.7, 112.7]
  ])('half %d, from %d to %d mm: closed form and counting agree', (half, near, far) => {
    expect(tangentialShare(half, near, far)).toBeCloseTo(counted(half, near, far), 4)
  })
  it('a boxed square is half and half; the broad side of a boxed plank is nearly radial', () => {
    expect(faceShares('boxed', 200, 200).breadth).toBeCloseTo(0.5, 12)
    expect(faceShares('boxed', 100, 1000).depth).toBeLessThan(0.15)
  })
  it('boxed off its middle: four quarters, and in the middle what the piece’s sides give', () => {
    const middle = boxedShares({ left: 75, right: 75, up: 150, down: 150 })
    expect(middle.breadth).toBeCloseTo(faceShares('boxed', 150, 300).breadth, 12)
    // The pith almost in a corner: one quarter is nearly all there is.
    expect(boxedShares({ left: 0.01, right: 150, up: 0.01, down: 300 }).breadth).toBeCloseTo(counted(150, 0, 300), 3)
    const off = boxedShares({ left: 50, right: 100, up: 150, down: 150 })
    const byCount = (counted(50, 0, 150) * 50 + counted(100, 0, 150) * 100) / 150
    expect(off.breadth).toBeCloseTo(byCount, 3)
  })
  it('refuses a section of nothing or one across the pith', () => {
    expect(() => tangentialShare(0, 0, 10)).toThrow(RangeError)
    expect(() => tangentialShare(10, 10, 10)).toThrow(RangeError)
    expect(() => tangentialShare(10, -1, 10)).toThrow(RangeError)
  })
})

describe('strain of the faces', () => {
  it('between radial and tangential, both together their sum, in any wood', () => {
    const wood = fc.constantFrom(...reference.woods.values())
    fc.assert(
      fc.property(wood, side, side, fc.constantFrom('boxed' as const, 'free' as const), (w, b, d, heart) => {
        const s = faceStrain(heart, b, d, w.radial, w.tangential)
        for (const e of [s.breadth, s.depth]) {
          expect(e).toBeGreaterThanOrEqual(w.radial)
          expect(e).toBeLessThanOrEqual(w.tangential)
        }
        expect(s.breadth + s.depth).toBeCloseTo(w.radial + w.tangential, 12)
      })
    )
  })
  it('free of heart the piece sits the way that needs the smaller log: its longer side round the rings', () => {
    fc.assert(
      fc.property(side, side, (b, d) => {
        const seat = seatInLog(b, d)
        // Sides that differ in their last digit only may lie either way.
        expect(seat.tangent).toBeCloseTo(Math.max(b, d), 9)
        expect(2 * Math.hypot(seat.radius + PITH_CLEARANCE, seat.tangent / 2)).toBeCloseTo(
          logDiameterNeeded('free', b, d),
          9
        )
      })
    )
    const s = faceStrain('free', 6 * INCH, 12 * INCH, 0.03, 0.06)
    expect(s.depth).toBeGreaterThan(s.breadth)
  })
  it('free of heart it is what the dried outline does, but for the square of the strain', () => {
    for (const [b, d] of [
      [200, 200],
      [150, 300],
      [100, 300],
      [300, 400]
    ] as const) {
      const [radial, tangential] = [0.03, 0.05]
      const { tangent, radius, flat } = seatInLog(b, d)
      const dry = (x: number, y: number) => driedPoint([x, y], radial, tangential, Math.PI / 2)
      // Mean width and height of the outline, by many chords.
      const n = 400
      let width = 0
      let height = 0
      for (let i = 0; i < n; i++) {
        const y = PITH_CLEARANCE + ((i + 0.5) / n) * radius
        width += (dry(tangent / 2, y)[0] - dry(-tangent / 2, y)[0]) / n
        const x = ((i + 0.5) / n - 0.5) * tangent
        height += (dry(x, PITH_CLEARANCE + radius)[1] - dry(x, PITH_CLEARANCE)[1]) / n
      }
      const ours = faceStrain('free', b, d, radial, tangential)
      expect(Math.abs(1 - width / tangent - (flat ? ours.depth : ours.breadth))).toBeLessThan(tangential ** 2 / 2)
      expect(Math.abs(1 - height / radius - (flat ? ours.breadth : ours.depth))).toBeLessThan(tangential ** 2 / 2)
    }
  })
})
