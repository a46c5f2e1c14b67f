/** What must hold of any joint: denser, longer, drier and more never carry less; what cannot be is refused. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FOOT, INCH, PSF, PSI } from '../../src/data/units'
import type { Duration } from '../../src/frame/factors'
import { rafterHeel } from '../../src/frame/heel'
import { jointsFor, jointWood } from '../../src/frame/joinery'
import type { Joint } from '../../src/frame/joint'
import { pegCapacity, pegStrength } from '../../src/frame/pegs'
import { hankinson, housedSeat, type Piece, postTop } from '../../src/frame/seat'
import { type PeggedTenon, pegsFor } from '../../src/frame/tenon'
import { trussParts } from '../../src/frame/truss-forces'
import type { TrussFrame } from '../../src/frame/truss-joints'
import type { DesignValues, Section } from '../../src/frame/values'
import { reference } from '../reference'

const rules = reference.joints
const LB = 4.4482216152605
const values = (strength = 1): DesignValues => ({
  bending: 8 * strength,
  tension: 5 * strength,
  shear: 1.1 * strength,
  compressionPerp: 4 * strength,
  compression: 6.5 * strength,
  elasticity: 10_000,
  elasticityMin: 3_700,
  wetIncluded: false,
  derived: false,
  origin: { mark: 'derived', sources: [] }
})
const piece = (b: number, d: number, strength = 1): Piece => ({
  section: [b * INCH, d * INCH] as Section,
  values: values(strength)
})
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const durations = fc.constantFrom<Duration>('permanent', 'ten-years', 'snow', 'seven-days')
const diameter = fc.constantFrom(...rules.peg.diameters)
const place = (timber: number, tenon = 50, wall = 75) => ({
  tenon,
  wall,
  tenonGravity: timber,
  mortisedGravity: timber,
  tenonAngle: 0,
  mortisedAngle: Math.PI / 2
})
const tenon = (change: Partial<PeggedTenon> = {}): PeggedTenon => ({
  cases: [{ load: 4000, duration: 'snow' }],
  wood: { id: 'douglas-fir', kind: 'softwood', gravity: 0.5 },
  pegGravity: 0.73,
  tenoned: piece(8, 8),
  width: 8 * INCH,
  thickness: 2 * INCH,
  mortised: piece(8, 12),
  fromEnd: 12 * FOOT,
  shearShare: 0.5,
  drawBored: true,
  wet: false,
  ...change
})
const pull = (load: number) => [{ load, duration: 'snow' as const }]

describe('a peg', () => {
  it('of denser wood, thicker, or in denser timber is never weaker', () => {
    fc.assert(
      fc.property(
        diameter,
        between(0.57, 0.85),
        between(0.3, 0.75),
        between(1, 1.3),
        durations,
        (d, peg, timber, k, t) => {
          const at = (gp: number, gt: number, dia = d) =>
            pegCapacity(rules, { diameter: dia, gravity: gp }, place(gt), t, false).load
          const plain = at(peg, timber)
          expect(at(peg * k, timber)).toBeGreaterThanOrEqual(plain * (1 - 1e-12))
          expect(at(peg, timber * k)).toBeGreaterThanOrEqual(plain * (1 - 1e-12))
          expect(at(peg, timber, Math.max(...rules.peg.diameters))).toBeGreaterThanOrEqual(plain * (1 - 1e-12))
        }
      )
    )
  })
  it('in thicker wood is never weaker, in wet service never stronger', () => {
    fc.assert(
      fc.property(between(25, 90), between(25, 150), between(1, 2), durations, (t, wall, k, time) => {
        const at = (a: number, b: number, wet = false) =>
          pegCapacity(rules, { diameter: INCH, gravity: 0.73 }, place(0.45, a, b), time, wet).load
        expect(at(t * k, wall)).toBeGreaterThanOrEqual(at(t, wall) * (1 - 1e-12))
        expect(at(t, wall * k)).toBeGreaterThanOrEqual(at(t, wall) * (1 - 1e-12))
        expect(at(t, wall, true)).toBeLessThan(at(t, wall))
      })
    )
  })
  it('governs by its least mode, and says when its bending does', () => {
    fc.assert(
      fc.property(between(10, 90), between(10, 150), between(0.3, 0.75), (t, wall, timber) => {
        const one = pegCapacity(rules, { diameter: INCH, gravity: 0.73 }, place(timber, t, wall), 'ten-years', false)
        expect(one.load).toBeCloseTo(Math.min(...one.modes.map((m) => m.load)), 9)
        expect(one.bendingGoverns).toBe(['IIIs', 'IV'].includes(one.mode))
      })
    )
    // A stout tenon in thin walls bears on the walls; a thin tenon in stout walls bears on the tenon.
    const mode = (t: number, wall: number) =>
      pegCapacity(rules, { diameter: INCH, gravity: 0.73 }, place(0.45, t, wall), 'ten-years', false).mode
    expect(mode(90, 12)).toBe('Is')
    expect(mode(12, 90)).toBe('Im')
    expect(mode(50, 70)).toBe('V')
  })
  it('of light wood, or thinner or thicker than the rules cover, is refused', () => {
    const at = (d: number, g: number) => () =>
      pegCapacity(rules, { diameter: d, gravity: g }, place(0.5), 'snow', false)
    expect(at(INCH, 0.56)).toThrow(RangeError)
    expect(at(INCH, Number.NaN)).toThrow(RangeError)
    expect(at(INCH / 2, 0.7)).toThrow(RangeError)
    expect(at(1.5 * INCH, 0.7)).toThrow(RangeError)
    expect(() => pegStrength(rules.strength.shear, 0.7, 0)).toThrow(RangeError)
    expect(() => hankinson(5, 3, 2)).toThrow(RangeError)
  })
})

describe('pegs for a pull', () => {
  it('more pull never takes fewer pegs of a size; past what the tenon holds, joinery will not carry it', () => {
    const usual = { ...rules, peg: { ...rules.peg, diameters: [INCH] } }
    fc.assert(
      fc.property(between(0, 40_000), between(1, 3), (load, k) => {
        const light = pegsFor(usual, tenon({ cases: pull(load) }))
        const heavy = pegsFor(usual, tenon({ cases: pull(load * k) }))
        expect(heavy.pegs).toBeGreaterThanOrEqual(light.pegs)
        if (!light.possible) expect(heavy.possible).toBe(false)
        for (const p of [light, heavy]) {
          expect(p.pegs).toBeLessThanOrEqual(p.fit)
          expect(p.possible).toBe(p.checks.every((c) => c.ratio <= 1 + 1e-9))
          expect(p.possible).toBe(p.reason === null)
        }
      })
    )
    expect(pegsFor(usual, tenon({ cases: pull(60_000) })).reason).toBe('tenon-full')
  })
  it('another peg adds its own capacity until the tenon is full', () => {
    const need = (load: number) => pegsFor(rules, tenon({ cases: pull(load) }))
    const each = need(0).one.load
    expect(need(0).pegs).toBe(rules.tenon.leastPegs)
    expect(need(1.99 * each).pegs).toBe(2)
    expect(need(2.01 * each).pegs).toBe(3)
    expect(need(3.01 * each).pegs === 3 && need(3.01 * each).diameter === INCH).toBe(false)
  })
  it('when the usual size does not hold, another is tried', () => {
    const narrow = pegsFor(rules, tenon({ width: 2.5 * INCH, cases: pull(500) }))
    expect(narrow.diameter).toBeCloseTo(0.75 * INCH, 9)
    expect(narrow.possible).toBe(true)
  })
  it('says why it fails: too narrow, breaks, too shallow', () => {
    expect(pegsFor(rules, tenon({ width: 2 * INCH })).reason).toBe('tenon-too-narrow')
    expect(pegsFor(rules, tenon({ tenoned: { ...piece(8, 8), values: { ...values(), tension: 0.1 } } })).reason).toBe(
      'tenon-breaks'
    )
    const shallow = tenon({
      mortised: piece(4, 5),
      wood: { id: 'eastern-white-pine', kind: 'softwood', gravity: 0.36 }
    })
    expect(pegsFor(rules, { ...shallow, cases: pull(100) }).reason).toBe('timber-too-shallow')
  })
  it('the relish is never less than the distance of the wood, four diameters where draw-bored', () => {
    fc.assert(
      fc.property(between(0, 12_000), fc.boolean(), (load, drawBored) => {
        const { distances, diameter: d } = pegsFor(rules, tenon({ cases: pull(load), drawBored }))
        expect(distances.end).toBeGreaterThanOrEqual((drawBored ? 4 : 2) * d - 1e-9)
        expect(distances.edge).toBeGreaterThanOrEqual(2.5 * d - 1e-9)
        expect(distances.tenon).toBeCloseTo(distances.edge + distances.end, 9)
        expect(distances.drawBore).toBeCloseTo(drawBored ? d / 8 : 0, 9)
      })
    )
  })
  it('each peg’s relish holds its part of the pull (nds, E.3), and a weaker wood needs as much or more', () => {
    fc.assert(
      fc.property(between(0, 8_000), between(0.3, 1), (load, k) => {
        const at = (s: number) =>
          pegsFor(rules, tenon({ cases: pull(load), tenoned: piece(8, 8, s), mortised: piece(8, 12, s) }))
        const p = at(1)
        expect(p.distances.end * p.pegs * 1.1 * 1.15 * 2 * INCH).toBeGreaterThanOrEqual(load * (1 - 1e-9))
        const weak = at(k)
        if (weak.pegs === p.pegs && weak.diameter === p.diameter)
          expect(weak.distances.tenon).toBeGreaterThanOrEqual(p.distances.tenon - 1e-9)
      })
    )
  })
  it('impossible input is refused', () => {
    expect(() => pegsFor(rules, tenon({ cases: [] }))).toThrow(RangeError)
    expect(() => pegsFor(rules, tenon({ cases: pull(-1) }))).toThrow(RangeError)
    expect(() => pegsFor(rules, tenon({ cases: pull(Number.NaN) }))).toThrow(RangeError)
    expect(() => pegsFor(rules, tenon({ thickness: 8 * INCH }))).toThrow(RangeError)
    expect(() => pegsFor(rules, tenon({ width: 0 }))).toThrow(RangeError)
    expect(() => pegsFor(rules, tenon({ shearShare: 2 }))).toThrow(RangeError)
    expect(() => pegsFor(rules, tenon({ fromEnd: -1 }))).toThrow(RangeError)
  })
})

const step = (push: number, change: Partial<Parameters<typeof rafterHeel>[1]> = {}) =>
  rafterHeel(rules, {
    cases: [{ rafter: push, tie: push * Math.cos(0.6), duration: 'snow' }],
    angle: 0.6,
    rafter: piece(8, 8),
    tie: piece(8, 12),
    tenon: 2 * INCH,
    beyond: 12 * INCH,
    wet: false,
    ...change
  })
const ratio = (h: ReturnType<typeof rafterHeel>, id: string) => h.checks.find((c) => c.id === id)?.ratio ?? Number.NaN

describe('a rafter’s step', () => {
  it('wood beyond: longer is never weaker, and no more is counted than eight steps', () => {
    fc.assert(
      fc.property(between(1000, 60_000), between(50, 900), between(1, 3), (push, beyond, k) => {
        const short = step(push, { beyond })
        const long = step(push, { beyond: beyond * k })
        expect(ratio(long, 'shear-plane')).toBeLessThanOrEqual(ratio(short, 'shear-plane') + 1e-12)
        if (short.possible) expect(long.possible).toBe(true)
        const counted = rules.step.planeSteps * Math.min(long.step, long.deepest)
        expect(ratio(step(push, { beyond: 1e6 }), 'shear-plane')).toBeCloseTo(long.plane / counted, 9)
      })
    )
  })
  it('harder push or wet wood never asks for less, stronger wood never for more', () => {
    fc.assert(
      fc.property(between(1000, 60_000), between(1, 2), (push, k) => {
        const plain = step(push)
        expect(step(push * k).step).toBeGreaterThanOrEqual(plain.step)
        expect(step(push * k).plane).toBeGreaterThanOrEqual(plain.plane)
        expect(step(push, { wet: true }).step).toBeGreaterThanOrEqual(plain.step)
        expect(step(push, { rafter: piece(8, 8, k), tie: piece(8, 12, k) }).step).toBeLessThanOrEqual(plain.step)
      })
    )
  })
  it('a step that is let in bears its push, whatever the push', () => {
    fc.assert(
      fc.property(between(10, 200_000), (push) => {
        const h = step(push, { beyond: null })
        if (h.step <= h.deepest) expect(ratio(h, 'bearing-slope')).toBeLessThanOrEqual(1 + 1e-9)
        else expect(h.reason).toBe('step-too-deep')
        expect(h.plane).toBeLessThanOrEqual(rules.step.planeSteps * h.step * (1 + 1e-9))
      })
    )
  })
  it('says why it fails', () => {
    expect(step(1000).possible).toBe(true)
    expect(step(500_000).reason).toBe('step-too-deep')
    expect(step(30_000, { beyond: INCH }).reason).toBe('tie-too-short')
    const weak: Piece = { section: piece(8, 12).section, values: { ...values(), tension: 0.2 } }
    expect(step(30_000, { tie: weak, beyond: null }).reason).toBe('tie-too-weak')
  })
  it('impossible slopes, forces and sizes are refused', () => {
    for (const angle of [0, -0.1, Math.PI / 2, Number.NaN]) expect(() => step(1000, { angle })).toThrow(RangeError)
    expect(() => step(-1)).toThrow(RangeError)
    expect(() => step(1000, { cases: [{ rafter: -5, tie: 5, duration: 'snow' }] })).toThrow(RangeError)
    expect(() => step(1000, { tenon: 8 * INCH })).toThrow(RangeError)
    expect(() => step(1000, { beyond: -1 })).toThrow(RangeError)
    expect(() => step(1000, { cases: [] })).toThrow(RangeError)
  })
})

describe('a seat', () => {
  const spec = (load: number, strength = 1, wet = false) => ({
    cases: [{ load, duration: 'snow' as const }],
    beam: piece(8, 12, strength),
    post: piece(8, 8, strength),
    tenon: 0,
    wet,
    fromEnd: 0
  })
  it('more load, weaker or wetter wood never needs less', () => {
    fc.assert(
      fc.property(between(100, 60_000), between(1, 3), (load, k) => {
        for (const make of [housedSeat, postTop]) {
          const plain = make(rules, spec(load))
          expect(make(rules, spec(load * k)).needed).toBeGreaterThanOrEqual(plain.needed)
          expect(make(rules, spec(load, 1 / k)).needed).toBeGreaterThanOrEqual(plain.needed)
          expect(make(rules, spec(load, 1, true)).needed).toBeGreaterThan(plain.needed)
          expect(plain.possible).toBe(plain.checks.every((c) => c.ratio <= 1 + 1e-9))
        }
      })
    )
  })
  it('impossible input is refused', () => {
    expect(() => housedSeat(rules, spec(-1))).toThrow(RangeError)
    expect(() => postTop(rules, { ...spec(100), tenon: 8 * INCH })).toThrow(RangeError)
    expect(() => housedSeat(rules, { ...spec(100), cases: [] })).toThrow(RangeError)
    expect(() => housedSeat(rules, { ...spec(100), fromEnd: -1 })).toThrow(RangeError)
  })
})

/** Forces of a king post without struts, both sides loaded alike. */
const kingPost = (span: number, pitch: number, roof: number, tie: number) => {
  const parts = trussParts('king', { span, pitch, queenAt: 0 }, { left: roof, right: roof, tie })
  const push = (id: string) => parts.find((p) => p.id === id)?.push ?? Number.NaN
  return { rafter: push('rafter'), tie: -push('tie'), kingPost: -push('king-post') }
}

describe('the joints of a frame', () => {
  const frame = (span: number, snow: number, change: Partial<TrussFrame> = {}): TrussFrame => {
    const pitch = 8 / 12
    const dead = (15 * PSF * 8 * FOOT * Math.hypot(1, pitch)) / 1e6
    const tie = (30 * LB) / FOOT
    const at = (load: number, duration: Duration) => ({
      ...kingPost(span, pitch, load, tie),
      duration,
      reaction: ((load + tie) * span) / 2
    })
    return {
      kind: 'king-post',
      cases: [at(dead, 'permanent'), at(dead + (snow * PSF * 8 * FOOT) / 1e6, 'snow')],
      span,
      angle: Math.atan(pitch),
      rafter: piece(8, 10),
      tie: piece(8, 12),
      king: piece(8, 8),
      post: piece(8, 8),
      beyond: null,
      ...change
    }
  }
  const setting = { pegGravity: 0.73, tenon: 2 * INCH, drawBored: true, wet: false }
  const oak = { id: 'white-oak', kind: 'hardwood', gravity: 0.73 } as const
  const sound = (joints: readonly Joint[]) => {
    for (const j of joints) {
      expect(j.verdict === 'steel', j.id).toBe(j.reason !== null)
      if (j.governing) {
        expect(j.checks, j.id).toContain(j.governing)
        expect(Math.max(...j.checks.map((c) => c.ratio)), j.id).toBe(j.governing.ratio)
        expect(j.governing.ratio > 1 + 1e-9, j.id).toBe(j.verdict === 'steel')
      }
      for (const n of [j.force, ...Object.values(j.sizes)]) expect(Number.isFinite(n) && n >= 0, j.id).toBe(true)
      for (const s of j.origin.sources) expect(Object.keys(reference.sources), j.id).toContain(s.key)
    }
  }
  it('a truss has its heel, the king post’s foot and head, and its seat where a post stands', () => {
    const joints = jointsFor(rules, frame(24 * FOOT, 30), oak, setting)
    expect(joints.map((j) => j.id)).toEqual(['heel', 'king-foot', 'king-head', 'post-top'])
    expect(joints.every((j) => j.verdict === 'joinery')).toBe(true)
    sound(joints)
    expect(joints[1]?.cautions).toContain('peg-strength-recalled')
    expect(joints[1]?.origin.mark).toBe('memory')
    expect(jointsFor(rules, frame(24 * FOOT, 30, { post: null }), oak, setting).map((j) => j.id)).not.toContain(
      'post-top'
    )
  })
  it('whatever the span and snow, each joint says what it means; more snow never turns steel back to joinery', () => {
    fc.assert(
      fc.property(between(10, 60), between(0, 300), between(1, 3), (span, snow, k) => {
        const light = jointsFor(rules, frame(span * FOOT, snow), oak, setting)
        const heavy = jointsFor(rules, frame(span * FOOT, snow * k), oak, setting)
        sound(light)
        sound(heavy)
        for (const [i, j] of light.entries()) if (j.verdict === 'steel') expect(heavy[i]?.verdict, j.id).toBe('steel')
      })
    )
  })
  it('by hand: forces of 2,000, 4,000 and 9,000 lb under snow in 8 in timbers at 45 degrees, 2 in tenons', () => {
    const lb = {
      rafter: 6000 * LB,
      tie: 4000 * LB,
      kingPost: 2000 * LB,
      reaction: 9000 * LB,
      duration: 'snow'
    } as const
    const held = frame(24 * FOOT, 30, { cases: [lb], angle: Math.PI / 4 })
    const fir = { id: 'douglas-fir', kind: 'softwood', gravity: 0.5 } as const
    const joints = new Map(jointsFor(rules, held, fir, setting).map((j) => [j.id, j]))
    const of = (id: Joint['id'], size: keyof Joint['sizes']) => (joints.get(id)?.sizes[size] ?? Number.NaN) / INCH
    const shear = (1.1 * 1.15) / PSI
    // The tie would split along the pegs: half the pull over 2/3 F'v of its 6 in net.
    const split = 1000 / ((2 / 3) * shear * 6)
    expect(of('king-foot', 'peg-edge')).toBeCloseTo(Math.max(2.5, split), 6)
    const thin = jointsFor(rules, { ...held, tie: piece(8, 12, 0.2) }, fir, setting).find((j) => j.id === 'king-foot')
    expect((thin?.sizes['peg-edge'] ?? 0) / INCH).toBeCloseTo(split / 0.2, 6)
    // Contact of a plumb cut, and the weaker of king post across and rafter at 45 degrees: harmonic mean of its two.
    const contact = 10 * Math.SQRT2
    const across = 4 / PSI
    expect(of('king-head', 'contact')).toBeCloseTo(contact, 6)
    expect(joints.get('king-head')?.governing?.ratio).toBeCloseTo(4000 / (6 * contact) / across, 6)
    // What hangs shears the head in two planes of 8 in at half of F'v.
    expect(of('king-head', 'head')).toBeCloseTo(1000 / (8 * 0.5 * shear), 6)
    // Seat of 8 in, 6 in broad beside the tenon.
    expect(joints.get('post-top')?.governing?.ratio).toBeCloseTo(9000 / (6 * 8) / across, 6)
    expect(of('post-top', 'seat-needed')).toBeCloseTo(9000 / (6 * across), 6)
  })
  it('a load that no tenon holds is said plainly', () => {
    const held = frame(24 * FOOT, 30)
    const cases = held.cases.map((c) => ({ ...c, kingPost: 20_000 * LB }))
    const foot = jointsFor(rules, { ...held, cases }, oak, setting).find((j) => j.id === 'king-foot')
    expect(foot?.verdict).toBe('steel')
    expect(foot?.reason).toBe('tenon-full')
    expect(foot?.pegs?.count).toBe(foot?.pegs?.fit)
  })
  it('a beam may stand on its post or be housed in it', () => {
    const beam = { kind: 'beam', beam: piece(8, 12), post: piece(8, 8) } as const
    const at = (load: number) => jointsFor(rules, { ...beam, cases: pull(load) }, oak, setting)
    expect(at(20_000).map((j) => [j.id, j.verdict])).toEqual([
      ['post-top', 'joinery'],
      ['housed', 'joinery']
    ])
    expect(at(60_000).map((j) => j.verdict)).toEqual(['joinery', 'steel'])
    sound(at(20_000))
    sound(at(60_000))
    sound(at(1e6))
  })
  it('every wood of the library has a specific gravity for its joints: the table’s, or its own, which is lower', () => {
    for (const wood of reference.woods.values()) {
      const { gravity } = jointWood(wood, reference.design)
      expect(gravity > 0.25 && gravity < 0.9, wood.id).toBe(true)
    }
    const fir = reference.woods.get('douglas-fir')
    expect(fir && jointWood(fir, reference.design).gravity).toBe(0.5)
    const locust = reference.woods.get('black-locust')
    expect(locust && jointWood(locust, reference.design).gravity).toBe(locust?.gravityGreen)
  })
})
