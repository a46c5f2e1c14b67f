/** Beams by superposition against textbook formulas, and against a frame solved by stiffness. N, mm, MPa. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkBeam } from '../../src/frame/beam'
import { combinations } from '../../src/frame/cases'
import { checkLoadedBeam, type LoadedBeam, middleMoment, supportForces } from '../../src/frame/loaded-beam'
import { seatedCompression } from '../../src/frame/seated-post'
import {
  largestDeflection,
  largestMoment,
  largestShear,
  momentAt,
  type PointLoad,
  reactions,
  type SpanLoad
} from '../../src/frame/span'
import { values } from './invented'
import { type Bar, solveFrame } from './plane-frame'

const L = 4000
const P = 10_000
const [E, I] = [11_000, 2e8]
const simple = (even: number, points: readonly PointLoad[] = []): SpanLoad => ({ span: L, even, points, held: 0 })

describe('textbook beams', () => {
  it('even load: w l2 / 8, w l / 2, 5 w l4 / (384 E I)', () => {
    expect(largestMoment(simple(3))).toBeCloseTo((3 * L * L) / 8, 3)
    expect(largestShear(simple(3))).toBeCloseTo((3 * L) / 2, 6)
    expect(largestDeflection(simple(3), E, I)).toBeCloseTo((5 * 3 * L ** 4) / (384 * E * I), 8)
  })
  it('load in the middle: P l / 4, P l3 / (48 E I)', () => {
    const load = simple(0, [{ at: L / 2, load: P }])
    expect(largestMoment(load)).toBeCloseTo((P * L) / 4, 3)
    expect(largestDeflection(load, E, I)).toBeCloseTo((P * L ** 3) / (48 * E * I), 8)
  })
  it('loads at the thirds: P l / 3, 23 P l3 / (648 E I)', () => {
    const load = simple(
      0,
      [L / 3, (2 * L) / 3].map((at) => ({ at, load: P }))
    )
    expect(largestMoment(load)).toBeCloseTo((P * L) / 3, 3)
    expect(largestDeflection(load, E, I)).toBeCloseTo((23 * P * L ** 3) / (648 * E * I), 8)
  })
  it('load off the middle, a > b: P a b / l, P a b (a + 2b) sqrt(3 a (a + 2b)) / (27 E I l)', () => {
    const [a, b] = [2700, 1300]
    const load = simple(0, [{ at: a, load: P }])
    expect(largestMoment(load)).toBeCloseTo((P * a * b) / L, 3)
    const most = (P * a * b * (a + 2 * b) * Math.sqrt(3 * a * (a + 2 * b))) / (27 * E * I * L)
    expect(largestDeflection(load, E, I)).toBeCloseTo(most, 8)
  })
  it('two equal spans: w l2 / 8 over the middle, 5/8 w l beside it, w l4 / 185 E I', () => {
    const load = { ...simple(3), held: middleMoment(L, 3, []) }
    expect(middleMoment(L, 3, [])).toBeCloseTo((3 * L * L) / 8, 6)
    expect(largestMoment(load)).toBeCloseTo((3 * L * L) / 8, 3)
    expect(largestShear(load)).toBeCloseTo((5 / 8) * 3 * L, 6)
    // Printed with three figures: 185 stands for 184.6.
    const ratio = (largestDeflection(load, E, I) * 185 * E * I) / (3 * L ** 4)
    expect(ratio).toBeGreaterThan(1)
    expect(ratio).toBeLessThan(1.005)
  })
  it('two equal spans, one loaded: 49 w l2 / 512 in it, 7/16 w l at its end, 0.0092 w l4 / (E I)', () => {
    const load = { ...simple(3), held: middleMoment(L, 3, []) / 2 }
    expect(largestMoment(load)).toBeCloseTo((49 / 512) * 3 * L * L, 3)
    expect(reactions(load)[0]).toBeCloseTo((7 / 16) * 3 * L, 6)
    expect((largestDeflection(load, E, I) * E * I) / (3 * L ** 4)).toBeCloseTo(0.0092, 4)
  })
  it('two equal spans, loads in their middles: 3 P l / 16 over the middle support', () => {
    expect(middleMoment(L, 0, [{ at: L / 2, load: P }])).toBeCloseTo((3 / 16) * P * L, 3)
  })
})

describe('any points, against the solved frame', () => {
  const points = fc.array(
    fc.record({ at: fc.integer({ min: 1, max: 39 }), load: fc.double({ min: 0, max: 3e4, noNaN: true }) }),
    { minLength: 1, maxLength: 4 }
  )
  const even = fc.double({ min: 0, max: 10, noNaN: true })
  const solved = (spans: 1 | 2, w: number, list: readonly PointLoad[]) => {
    const mirrored = spans === 2 ? list.map((p) => ({ at: 2 * L - p.at, load: p.load })) : []
    const all = [...list, ...mirrored]
    const stops = [...new Set([0, L, spans * L, ...all.map((p) => p.at)])].sort((a, b) => a - b)
    const bars: Record<string, Bar> = {}
    stops.slice(1).forEach((to, i) => {
      bars[`b${i}`] = { from: `${stops[i]}`, to: `${to}`, hinge: 'none', load: w }
    })
    const forces: Record<string, [number, number]> = {}
    for (const p of all) forces[`${p.at}`] = [0, (forces[`${p.at}`]?.[1] ?? 0) - p.load]
    const out = solveFrame({
      joints: Object.fromEntries(stops.map((x) => [`${x}`, [x, 0] as const])),
      bars,
      held: { '0': 'pin', [`${L}`]: 'roller', [`${spans * L}`]: 'roller' },
      forces
    })
    return stops.slice(1, stops.indexOf(L) + 1).map((x, i) => ({ x, moment: out[`b${i}`]?.moment[1] ?? Number.NaN }))
  }
  it.each([1, 2] as const)('%d span: the moment at every load and support', (spans) => {
    fc.assert(
      fc.property(even, points, (w, at) => {
        const list = at.map((p) => ({ at: p.at * 100, load: p.load }))
        const load = { span: L, even: w, points: list, held: spans === 2 ? middleMoment(L, w, list) : 0 }
        const most = Math.max(1, largestMoment(load))
        for (const { x, moment } of solved(spans, w, list)) {
          expect(Math.abs(momentAt(load, x) - moment)).toBeLessThan(1e-6 * most)
          expect(Math.abs(moment)).toBeLessThanOrEqual(most * (1 + 1e-6))
        }
      })
    )
  })
  it('no place of a fine walk is bent more than the largest moment says', () => {
    fc.assert(
      fc.property(even, points, (w, at) => {
        const load = simple(
          w,
          at.map((p) => ({ at: p.at * 100, load: p.load }))
        )
        const walk = Math.max(...Array.from({ length: 401 }, (_, i) => Math.abs(momentAt(load, i * 10))))
        expect(walk).toBeLessThanOrEqual(largestMoment(load) * (1 + 1e-9) + 1e-6)
      })
    )
  })
})

const beam = (change: Partial<LoadedBeam>): LoadedBeam => ({
  span: L,
  spans: 1,
  dead: 2,
  combinations: combinations([{ load: 4, duration: 'snow' }], []),
  points: [],
  unsupported: 0,
  liveRatio: 360,
  totalRatio: 240,
  unseasonedOrWet: false,
  mortise: 50,
  ...change
})

describe('checks of a loaded beam', () => {
  it('with an even load alone they are those of the plain beam, and of the brief', () => {
    const old = checkBeam({ ...beam({}), variable: [{ load: 4, duration: 'snow' }] }, [150, 300], values(1))
    const now = checkLoadedBeam(beam({}), [150, 300], values(1))
    expect(now.map((c) => c.id)).toEqual(old.map((c) => c.id))
    now.forEach((c, i) => {
      expect(c.ratio).toBeCloseTo(old[i]?.ratio ?? Number.NaN, 6)
    })
  })
  it('two spans: snow on one alone governs the sag, and bends it as the textbook says', () => {
    const one = checkLoadedBeam(beam({ spans: 2 }), [150, 300], values(1)).find((c) => c.id === 'deflection-live')
    expect(one?.demand).toBeCloseTo((0.009_155 * 4 * L ** 4) / (10_000 * ((150 * 300 ** 3) / 12)), 2)
  })
  it('two spans, live loads in their middles: one alone bends it by 13 P l / 64, more than both over the support', () => {
    const points = [{ at: L / 2, dead: 0, roof: P, floor: 0 }]
    const asked = beam({ spans: 2, dead: 0, points, combinations: combinations([{ load: 0, duration: 'snow' }], []) })
    const bending = checkLoadedBeam(asked, [150, 300], values(1))[0]
    expect(bending?.demand).toBeCloseTo(((13 / 64) * P * L) / ((100 * 300 ** 2) / 6), 6)
  })
  it('the middle of two spans takes 10/8 of a span’s load, an end at most 7/16 of the live and 3/8 of the dead', () => {
    const { end, middle } = supportForces(beam({ spans: 2 }))
    expect(middle).toBeCloseTo(1.25 * 6 * L, 6)
    expect(end).toBeCloseTo((7 / 16) * 4 * L + (3 / 8) * 2 * L, 6)
  })
  it('a thin deep beam held nowhere fails by slenderness, it does not throw', () => {
    const [only] = checkLoadedBeam(beam({ span: 9000, unsupported: 9000 }), [38, 400], values(1))
    expect(only?.id).toBe('slenderness')
    expect(only?.ratio).toBeGreaterThan(1)
  })
  it('a load at a point is never lighter than the same load spread evenly', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.9, noNaN: true }), (share) => {
        const ratio = (b: LoadedBeam) => checkLoadedBeam(b, [200, 300], values(1))[0]?.ratio ?? 0
        const none = { dead: 0, roof: 0, floor: 0 }
        const middle = { ...none, at: L / 2, dead: 2 * L * share }
        const spread = beam({ combinations: combinations([], []), dead: 2 * share })
        expect(ratio({ ...spread, dead: 0, points: [middle] })).toBeGreaterThan(ratio(spread))
      })
    )
  })
})

describe('a load off a post’s axis (nds, 15.4.1, recalled)', () => {
  it('by hand: fc 500, F’c 1000, e/d 1/6, F’b 1200, FcE 2000: 0.25 + 500 x 1.0585 / (1200 x 0.75) = 0.838', () =>
    expect(seatedCompression(500, 1000, 1 / 6, 1200, 2000)).toBeCloseTo(0.838, 3))
  it('is plain compression squared in the middle, and worse the farther off', () => {
    expect(seatedCompression(500, 1000, 0, 1200, 2000)).toBeCloseTo(0.25, 12)
    expect(seatedCompression(500, 1000, 0.2, 1200, 2000)).toBeGreaterThan(seatedCompression(500, 1000, 0.1, 1200, 2000))
    expect(seatedCompression(2000, 1000, 0, 1200, 2000)).toBeGreaterThan(1)
  })
})
