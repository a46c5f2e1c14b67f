/** Four joints: by hand, and what must hold of any. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Band, housedBeam, type JointMovement, rafterFoot, scarf, tenonedGirt } from '../../src/wood/joints'

const band = (low: number, value: number, high: number): Band => ({ low, value, high })
const across = band(0.03, 0.04, 0.05)
const along = band(0.0005, 0.001, 0.0015)
const margin = 3

const housed = (post: Band, lengthwise = along) =>
  housedBeam({ postSide: 200, beamDepth: 300, length: 4000, post, beam: post, along: lengthwise, margin })
const girt = (post: Band, lengthwise = along) =>
  tenonedGirt({
    postSide: 200,
    girtDepth: 300,
    length: 4000,
    pegFrom: 50,
    post,
    girt: post,
    along: lengthwise,
    margin
  })
const scarfed = (a: Band, lengthwise = along) =>
  scarf({ depth: 300, scarf: 1200, key: 40, across: a, along: lengthwise, margin })
const foot = (a: Band, lengthwise = along, slope = Math.PI / 4) =>
  rafterFoot({
    plateBreadth: 200,
    plateDepth: 180,
    rafterDepth: 240,
    notch: 60,
    slope,
    plate: a,
    rafter: a,
    along: lengthwise,
    margin
  })

describe('by hand', () => {
  it('a housed beam: half of the post and half of the length', () => {
    const j = housed(across)
    expect(j.gap.value).toBeCloseTo(100 * 0.04 + 2000 * 0.001, 12)
    expect(j.gap.low).toBeCloseTo(100 * 0.03 + 2000 * 0.0005, 12)
    expect(j.gap.high).toBeCloseTo(100 * 0.05 + 2000 * 0.0015, 12)
    expect(j.drop.value).toBeCloseTo(300 * 0.04, 12)
    expect(j.housing).toBeCloseTo(j.gap.high + 3, 12)
    expect(j.parts.map((p) => p.from)).toEqual(['post', 'length'])
  })
  it('a girt on pegs opens least by the wood before them, most as a housed beam', () => {
    const j = girt(across)
    expect(j.gap.low).toBeCloseTo(50 * 0.03, 12)
    expect(j.gap.value).toBeCloseTo(50 * 0.04 + 2000 * 0.001, 12)
    expect(j.gap.high).toBeCloseTo(housed(across).gap.high, 12)
    expect(j.drop.value).toBeCloseTo(150 * 0.04, 12)
  })
  it('a scarf of halves that shrink alike opens only by its key', () => {
    const alike = scarfed(across, band(0.001, 0.001, 0.001))
    expect(alike.gap.high).toBeCloseTo(40 * 0.05, 12)
    expect(scarfed(across).gap.high).toBeCloseTo(40 * 0.05 + 600 * 0.001, 12)
    expect(scarfed(across).drop.value).toBeCloseTo(12, 12)
  })
  it('a rafter foot at 45 degrees', () => {
    const j = foot(across)
    expect(j.drop.value).toBeCloseTo(180 * 0.04 + (180 / Math.cos(Math.PI / 4)) * 0.04, 12)
    expect(j.turn.value).toBeCloseTo(0.039, 12)
    expect(j.gap.value).toBeCloseTo(100 * 0.04 + (60 / Math.cos(Math.PI / 4)) * 0.039 * 0.5, 12)
  })
  it('the turn of the notch is what a square corner does under the same strains', () => {
    // The corner of seat and heel, mapped: x along the grain, y across it.
    const slope = 0.6
    const shrink = (x: number, y: number) => [x * (1 - along.value), y * (1 - across.value)] as const
    const seat = shrink(Math.cos(slope), -Math.sin(slope))
    const heel = shrink(-Math.sin(slope), -Math.cos(slope))
    const dot = seat[0] * heel[0] + seat[1] * heel[1]
    const corner = Math.acos(dot / (Math.hypot(...seat) * Math.hypot(...heel)))
    expect(corner).toBeGreaterThan(Math.PI / 2)
    // First order: strains of a few percent leave a few percent of the turn.
    expect(foot(across, along, slope).turn.value / (corner - Math.PI / 2)).toBeCloseTo(1, 1)
  })
})

describe('of any joint', () => {
  const strain = fc.double({ min: 0, max: 0.1, noNaN: true })
  const strains = fc
    .tuple(strain, strain, strain)
    .map((s) => [...s].sort((p, q) => p - q) as [number, number, number])
    .map(([low, value, high]) => band(low, value, high))
  const each: readonly ((a: Band, l: Band) => JointMovement)[] = [housed, girt, scarfed, foot]
  const lengthwise = strains.map((s) => band(s.low / 50, s.value / 50, s.high / 50))

  it('the band holds its middle, parts make up the gap, the housing is at least the gap', () => {
    fc.assert(
      fc.property(strains, lengthwise, fc.constantFrom(...each), (a, l, joint) => {
        const j = joint(a, l)
        for (const b of [j.gap, j.drop]) {
          expect(b.low).toBeLessThanOrEqual(b.value + 1e-12)
          expect(b.high).toBeGreaterThanOrEqual(b.value - 1e-12)
          expect(b.low).toBeGreaterThanOrEqual(0)
        }
        expect(j.parts.reduce((s, p) => s + p.band.value, 0)).toBeCloseTo(j.gap.value, 10)
        expect(j.housing).toBeGreaterThanOrEqual(j.gap.high)
      })
    )
  })
  it('drier is never a smaller gap or drop: all strains larger in one measure', () => {
    fc.assert(
      fc.property(
        strains,
        lengthwise,
        fc.constantFrom(...each),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (a, l, joint, more) => {
          const grow = (b: Band) => band(b.low * more, b.value * more, b.high * more)
          const [before, after] = [joint(a, l), joint(grow(a), grow(l))]
          for (const of of ['gap', 'drop'] as const)
            for (const end of ['low', 'value', 'high'] as const)
              expect(after[of][end]).toBeGreaterThanOrEqual(before[of][end] - 1e-9)
        }
      )
    )
  })
  it('nothing dries, nothing opens; the housing is then the margin', () => {
    const still = band(0, 0, 0)
    for (const joint of each) {
      const j = joint(still, still)
      expect([j.gap.high, j.drop.high]).toEqual([0, 0])
      expect(j.housing).toBe(margin)
    }
  })
  it('refuses what cannot be', () => {
    expect(() => housed(band(-0.01, 0, 0.01))).toThrow(RangeError)
    expect(() => housed(band(0, Number.NaN, 0.01))).toThrow(RangeError)
    expect(() =>
      housedBeam({ postSide: 0, beamDepth: 300, length: 4000, post: across, beam: across, along, margin })
    ).toThrow(RangeError)
    expect(() =>
      tenonedGirt({
        postSide: 200,
        girtDepth: 300,
        length: 4000,
        pegFrom: 101,
        post: across,
        girt: across,
        along,
        margin
      })
    ).toThrow(RangeError)
    expect(() => foot(across, along, 0)).toThrow(RangeError)
    expect(() => foot(across, along, Math.PI / 2)).toThrow(RangeError)
    expect(() =>
      rafterFoot({
        plateBreadth: 200,
        plateDepth: 180,
        rafterDepth: 60,
        notch: 60,
        slope: 0.5,
        plate: across,
        rafter: across,
        along,
        margin
      })
    ).toThrow(RangeError)
  })
})
