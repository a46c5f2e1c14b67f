/** Any rectangle anywhere in a log. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { INCH } from '../../src/data/units'
import { dryPiece, type LogPiece, outsideBy } from '../../src/wood/log-end'
import { faceStrain } from '../../src/wood/section'
import { reference } from '../reference'

const fir = { radial: 0.048, tangential: 0.076, fibreSaturation: 0.3 }
const log = (change: Partial<LogPiece>): LogPiece => ({
  logDiameter: 20 * INCH,
  pith: [0, 0],
  left: -4 * INCH,
  top: -4 * INCH,
  breadth: 8 * INCH,
  depth: 8 * INCH,
  sapwood: INCH,
  ...change
})
const dried = (piece: LogPiece, from = 0.5, to = 0.08, exaggeration = 1) => {
  const result = dryPiece(piece, fir, from, to, exaggeration)
  if (!result.ok) throw new Error(result.why)
  return result.dried
}

describe('what a sawyer knows', () => {
  it('with the pith inside it is boxed and must check, most on the further face', () => {
    const middle = dried(log({}))
    expect(middle.boxed).toBe(true)
    expect(middle.missingAngle).toBeGreaterThan(0)
    const off = dried(log({ left: -3 * INCH, breadth: 8 * INCH }))
    expect(off.faces.right.check).toBeGreaterThan(off.faces.left.check)
  })
  it('free of heart it has no check, and the face towards the pith crowns while the far one hollows, or the reverse, but not both alike', () => {
    const free = dried(log({ top: 0.5 * INCH }))
    expect(free.boxed).toBe(false)
    for (const face of Object.values(free.faces)) expect(face.check).toBe(0)
    expect(Math.sign(free.faces.bottom.cup)).not.toBe(Math.sign(free.faces.top.cup))
    // Flat-sawn: the wide far face hollows away from the pith.
    expect(free.faces.bottom.cup).toBeGreaterThan(0)
  })
  it('flat across the rings shrinks more than along a radius', () => {
    const free = dried(log({ top: 0.5 * INCH }))
    const shrink = (f: { before: number; after: number }) => 1 - f.after / f.before
    expect(shrink(free.faces.bottom)).toBeGreaterThan(shrink(free.faces.right))
  })
  it('a piece set square on a radius stays square, one set off it goes out of square', () => {
    expect(dried(log({ top: 0.5 * INCH })).outOfSquare).toBeLessThan(0.01)
    expect(
      dried(log({ left: 0.5 * INCH, top: 0.5 * INCH, breadth: 5 * INCH, depth: 5 * INCH })).outOfSquare
    ).toBeGreaterThan(0.5)
  })
  it('agrees with the face strain that the brief uses', () => {
    const free = dried(log({ top: 12.7 }), 0.3, 0.08)
    const brief = faceStrain('free', 8 * INCH, 8 * INCH, free.radial, free.tangential)
    const mean =
      (1 - free.faces.top.after / free.faces.top.before + 1 - free.faces.bottom.after / free.faces.bottom.before) / 2
    expect(mean).toBeCloseTo(brief.breadth, 2)
  })
  it('boxed too, on both faces of a plank that is far from square', () => {
    const plank = dried(log({ left: -3 * INCH, breadth: 6 * INCH, top: -6 * INCH, depth: 12 * INCH }), 0.3, 0.08)
    const brief = faceStrain('boxed', 6 * INCH, 12 * INCH, plank.radial, plank.tangential)
    expect(1 - plank.faces.top.after / plank.faces.top.before).toBeCloseTo(brief.breadth, 10)
    expect(1 - plank.faces.right.after / plank.faces.right.before).toBeCloseTo(brief.depth, 10)
    expect(brief.breadth).toBeGreaterThan(brief.depth)
  })
  it('sapwood: none in the heart of a large log, all of it in a sliver under the bark', () => {
    expect(dried(log({ logDiameter: 40 * INCH })).sapwoodShare).toBe(0)
    expect(dried(log({ left: -INCH, top: 8.6 * INCH, breadth: 2 * INCH, depth: INCH })).sapwoodShare).toBeGreaterThan(
      0.5
    )
  })
})

describe('what is drawn', () => {
  it('larger as asked, but never so far that the outline folds over; the figures are never enlarged', () => {
    const beech = { radial: 0.055, tangential: 0.119, fibreSaturation: 0.3 }
    const at = (times: number) => {
      const result = dryPiece(log({}), beech, 0.6, 0, times)
      if (!result.ok) throw new Error(result.why)
      return result.dried
    }
    expect(at(2).drawnTimes).toBe(2)
    expect(at(10).drawnTimes).toBeLessThan(5)
    expect(at(10).faces).toEqual(at(1).faces)
  })
})

describe('wetter later than now', () => {
  const swollen = (piece: LogPiece) => dried(piece, 0.08, 0.2)
  it('every face grows, and dries back to what it was', () => {
    for (const piece of [log({}), log({ top: 0.5 * INCH })]) {
      const wet = swollen(piece)
      expect(wet.tangential).toBeLessThan(wet.radial)
      expect(wet.radial).toBeLessThan(0)
      for (const face of Object.values(wet.faces)) {
        expect(face.after).toBeGreaterThan(face.before)
        expect(face.check).toBe(0)
      }
      // Out and back: (1 - there) (1 - back) = 1, whatever the two moistures.
      expect((1 - wet.tangential) * (1 - dried(piece, 0.2, 0.08).tangential)).toBeCloseTo(1, 12)
    }
  })
  it('with the pith inside no angle is missing, and it is drawn without a check', () => {
    const wet = swollen(log({}))
    expect(wet.missingAngle).toBe(0)
    expect(wet.after).toHaveLength(wet.before.length)
    wet.after.forEach(([x, y], i) => {
      expect(Math.hypot(x, y)).toBeGreaterThan(Math.hypot(...(wet.before[i] as [number, number])))
    })
  })
})

describe('what is refused, and why', () => {
  const why = (piece: LogPiece, from = 0.5, to = 0.08, exaggeration = 1) => {
    const result = dryPiece(piece, fir, from, to, exaggeration)
    return result.ok ? 'ok' : result.why
  }
  it('a section larger than the log, by how much', () => {
    const big = log({ logDiameter: 10 * INCH })
    expect(why(big)).toBe('outside')
    expect(outsideBy(big)).toBeCloseTo((Math.hypot(4, 4) - 5) * INCH, 6)
  })
  it('a pith outside the log, sizes of nothing, moistures that cannot be', () => {
    expect(why(log({ pith: [11 * INCH, 0] }))).toBe('pith')
    expect(why(log({ breadth: 0 }))).toBe('size')
    expect(why(log({ logDiameter: Number.NaN }))).toBe('size')
    expect(why(log({}), -0.1)).toBe('moisture')
    expect(why(log({}), 0.5, 4)).toBe('moisture')
    expect(why(log({}), 0.5, 0.08, 0)).toBe('exaggeration')
  })
  it('more moisture than the wood can hold, and how much that is', () => {
    const ash = { ...fir, wettest: 0.46 }
    const run = (from: number, to: number) => dryPiece(log({}), ash, from, to)
    expect(run(0.46, 0.08).ok).toBe(true)
    expect(run(0.461, 0.08)).toEqual({ ok: false, why: 'moisture', most: 0.46 })
    expect(run(0.3, 0.461)).toEqual({ ok: false, why: 'moisture', most: 0.46 })
  })
  it('whatever comes, it answers and never throws', () => {
    const any = fc.oneof(fc.double(), fc.double({ min: -500, max: 500, noNaN: true }))
    fc.assert(
      fc.property(
        fc.record({
          logDiameter: any,
          pith: fc.tuple(any, any),
          left: any,
          top: any,
          breadth: any,
          depth: any,
          sapwood: any
        }),
        any,
        any,
        any,
        (piece, from, to, k) => {
          const result = dryPiece(piece, fir, from, to, k)
          if (result.ok)
            for (const [x, y] of result.dried.after) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true)
        }
      )
    )
  })
})

describe('in any wood, anywhere in the log', () => {
  const place = fc.record({
    wood: fc.constantFrom(...reference.woods.values()),
    left: fc.double({ min: -200, max: 50, noNaN: true }),
    top: fc.double({ min: -200, max: 50, noNaN: true }),
    breadth: fc.double({ min: 60, max: 150, noNaN: true }),
    depth: fc.double({ min: 60, max: 150, noNaN: true })
  })
  it('green to green nothing moves; drying never lengthens a face; drier never moves less', () => {
    fc.assert(
      fc.property(place, ({ wood, ...at }) => {
        const piece = log({ logDiameter: 900, ...at })
        const run = (to: number) => {
          const result = dryPiece(piece, wood, 0.6, to)
          if (!result.ok) throw new Error(result.why)
          return result.dried
        }
        const [still, damp, dry] = [run(0.5), run(0.15), run(0.08)]
        for (const id of ['top', 'right', 'bottom', 'left'] as const) {
          expect(still.faces[id].after).toBeCloseTo(still.faces[id].before, 9)
          expect(damp.faces[id].after).toBeLessThanOrEqual(damp.faces[id].before)
          expect(dry.faces[id].after).toBeLessThanOrEqual(damp.faces[id].after + 1e-9)
          expect(dry.faces[id].check).toBeGreaterThanOrEqual(damp.faces[id].check)
        }
      })
    )
  })
})
