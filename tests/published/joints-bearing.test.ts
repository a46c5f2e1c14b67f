/** Seats, steps, notches and net tenons against printed examples and against sums done by hand. */
import { describe, expect, it } from 'vitest'
import { INCH, PSI } from '../../src/data/units'
import { planeNeeded, rafterHeel, stepBearing, stepShare } from '../../src/frame/heel'
import { endNotch, pegDepthNeeded } from '../../src/frame/notch'
import { bearingAreaFactor, hankinson, housedSeat, type Piece, postTop } from '../../src/frame/seat'
import { pegsFor, pegsThatFit } from '../../src/frame/tenon'
import type { DesignValues, Section } from '../../src/frame/values'
import { reference } from '../reference'

const LB = 4.4482216152605
const rules = reference.joints
/** Douglas Fir-Larch No.1, posts and timbers, psi: nds-supplement-4d. */
const values = (change: Partial<DesignValues> = {}): DesignValues => ({
  bending: 1200 * PSI,
  tension: 825 * PSI,
  shear: 170 * PSI,
  compressionPerp: 625 * PSI,
  compression: 1000 * PSI,
  elasticity: 1.6e6 * PSI,
  elasticityMin: 580_000 * PSI,
  wetIncluded: false,
  derived: false,
  origin: { mark: 'seen', sources: [] },
  ...change
})
const piece = (b: number, d: number, change?: Partial<DesignValues>): Piece => ({
  section: [b * INCH, d * INCH] as Section,
  values: values(change)
})
const degrees = (n: number) => (n * Math.PI) / 180

describe('bearing, AWC Structural Wood Design Examples E1.5a: 1.5 x 5.5 in, Fc-perp 425 psi', () => {
  it('C_b 1.25 for a bearing 1.5 in long: 3,506 lb become 4,383 lb', () => {
    expect(bearingAreaFactor(1.5 * INCH, 12 * INCH)).toBeCloseTo(1.25, 12)
    const plain = 425 * 1.5 * 5.5
    expect(plain).toBeCloseTo(3506, 0)
    expect(plain * bearingAreaFactor(1.5 * INCH, 12 * INCH)).toBeCloseTo(4383, 0)
  })
  it('no factor near the end or from 6 in on (nds, 3.10.4)', () => {
    expect(bearingAreaFactor(1.5 * INCH, 2.9 * INCH)).toBe(1)
    expect(bearingAreaFactor(6 * INCH, 12 * INCH)).toBe(1)
    expect(bearingAreaFactor(5.9 * INCH, 3 * INCH)).toBeGreaterThan(1)
  })
  it('the same through a seat: 5.5 in broad, in from the end, 4,383 lb need 1.5 in', () => {
    const beam = piece(5.5, 12, { compressionPerp: 425 * PSI })
    const seat = postTop(rules, {
      cases: [{ load: 425 * 1.5 * 5.5 * 1.25 * LB, duration: 'ten-years' }],
      beam,
      post: piece(5.5, 5.5),
      tenon: 0,
      wet: false,
      fromEnd: 24 * INCH
    })
    expect(seat.needed / INCH).toBeCloseTo(1.5, 6)
  })
})

describe('Hankinson (nds, 3.10.3)', () => {
  it('meets both ends, and at 45 degrees is the harmonic mean', () => {
    expect(hankinson(10, 4, 0)).toBeCloseTo(10, 12)
    expect(hankinson(10, 4, Math.PI / 2)).toBeCloseTo(4, 12)
    expect(hankinson(10, 4, degrees(45))).toBeCloseTo(2 / (1 / 10 + 1 / 4), 12)
  })
})

describe('a housed beam by hand: 8 x 12 on an 8 x 8, 6,000 lb of snow', () => {
  const of = (load: number, wet = false) =>
    housedSeat(rules, {
      cases: [{ load: load * LB, duration: 'snow' }],
      beam: piece(8, 12),
      post: piece(8, 8),
      tenon: 0,
      wet,
      fromEnd: 0
    })
  it('6,000 / (8 x 625) = 1.2 in across the grain; end grain would need 0.87', () => {
    expect(of(6000).needed / INCH).toBeCloseTo(1.2, 9)
    expect(of(6000).possible).toBe(true)
    expect(of(6000).length / INCH).toBeCloseTo(1.2, 9)
  })
  it('a small load still gets the least housing of 1/2 in', () => expect(of(500).length / INCH).toBeCloseTo(0.5, 9))
  it('9,000 lb would need 1.8 in: too deep a housing', () => {
    expect(of(9000).possible).toBe(false)
    expect(of(9000).reason).toBe('housing-too-deep')
  })
  it('soft end grain governs: 6,000 / (8 x 0.75 x 1.15 x 400), three quarters of Fc*', () => {
    const post = piece(8, 8, { compression: 400 * PSI })
    const seat = housedSeat(rules, {
      cases: [{ load: 6000 * LB, duration: 'snow' }],
      beam: piece(8, 12),
      post,
      tenon: 0,
      wet: false,
      fromEnd: 0
    })
    expect(seat.needed / INCH).toBeCloseTo(6000 / (8 * 0.75 * 1.15 * 400), 9)
  })
  it('wet wood needs half as much again: 1 / 0.67', () =>
    expect(of(5000, true).needed / of(5000).needed).toBeCloseTo(1 / 0.67, 9))
})

describe('end notch (own sum in the engineering notes): 6 x 10, 5.5 x 9.5 in, F’v 170 psi, 7.5 in left', () => {
  const at = (left: number) =>
    endNotch(values(), 5.5 * INCH, 9.5 * INCH, left * INCH, 'ten-years', rules.notch.endShare)
  it('2,914 lb; 5,922 without a notch', () => {
    expect(at(7.5).capacity / LB).toBeCloseTo(2914, 0)
    expect(at(9.5).capacity / LB).toBeCloseTo(5922, 0)
  })
  it('a quarter of the depth is let in, and no more', () => {
    expect(at(7.5).allowed).toBe(true)
    expect(at(7.125).allowed).toBe(true)
    expect(at(7).allowed).toBe(false)
  })
  it('a notch that leaves nothing, or more than there was, is refused', () => {
    expect(() => at(0)).toThrow(RangeError)
    expect(() => at(10)).toThrow(RangeError)
  })
})

describe('pegs hung in a timber (nds, 3.4.3.3)', () => {
  const shear = 170 * PSI
  it('far from the end: 1,360 lb over 2/3 x 170 x 6 in need 2 in; near it, the cube root of 2 x 10 x 10', () => {
    const at = (fromEnd: number) => pegDepthNeeded(1360 * LB, shear, 6 * INCH, 10 * INCH, fromEnd * INCH) / INCH
    expect(at(50)).toBeCloseTo(2, 6)
    expect(at(49)).toBeCloseTo(200 ** (1 / 3), 6)
  })
})

describe('a net section in tension (own sum in the engineering notes): 19.25 in2 of Douglas-fir No.1, snow', () => {
  it('carries 18,263 lb, here as a tenon 3.5 x 7.5 in with two 1 in pegs', () => {
    const plan = pegsFor(
      { ...rules, peg: { ...rules.peg, diameters: [INCH] } },
      {
        cases: [{ load: 18_263 * LB, duration: 'snow' }],
        wood: { id: 'yellow-poplar', kind: 'hardwood', gravity: 0.5 },
        pegGravity: 0.73,
        tenoned: piece(7.5, 7.5),
        width: 7.5 * INCH,
        thickness: 3.5 * INCH,
        mortised: piece(8, 12),
        fromEnd: 100 * INCH,
        shearShare: 0,
        drawBored: false,
        wet: false
      }
    )
    expect(plan.pegs).toBe(2)
    expect(plan.checks.find((c) => c.id === 'tenon-tension')?.ratio).toBeCloseTo(1, 4)
    expect(plan.reason).toBe('tenon-full')
  })
  it('an 8 in tenon holds three 1 in pegs at 1.5, 2.5 and 2.5 diameters, a 2.9 in one none', () => {
    expect(pegsThatFit(8 * INCH, INCH, 1.5, 2.5)).toBe(3)
    expect(pegsThatFit(7.9 * INCH, INCH, 1.5, 2.5)).toBe(2)
    expect(pegsThatFit(3 * INCH, INCH, 1.5, 2.5)).toBe(1)
    expect(pegsThatFit(2.9 * INCH, INCH, 1.5, 2.5)).toBe(0)
  })
})

describe('relish by hand (nds, Appendix E): two 1 in pegs, tenon 2 x 5.5 in, 1,500 lb under snow', () => {
  const end = (shear: number, tension: number) =>
    pegsFor(
      { ...rules, peg: { ...rules.peg, diameters: [INCH] } },
      {
        cases: [{ load: 1500 * LB, duration: 'snow' }],
        wood: { id: 'douglas-fir', kind: 'softwood', gravity: 0.5 },
        pegGravity: 0.73,
        tenoned: piece(6, 6, { shear: shear * PSI, tension: tension * PSI }),
        width: 5.5 * INCH,
        thickness: 2 * INCH,
        mortised: piece(8, 12),
        fromEnd: 100 * INCH,
        shearShare: 0,
        drawBored: false,
        wet: false
      }
    ).distances.end / INCH
  it('the distance of the wood, 2 in, where shear asks for less', () => expect(end(170, 825)).toBeCloseTo(2, 9))
  it('rows: 1,500 / (2 x 69 x 2) = 5.43 in', () => expect(end(60, 825)).toBeCloseTo(1500 / (2 * 69 * 2), 6))
  it('the block between the pegs: (1,500 - 172.5 x 2 x 1.5) / (69 x 2) = 7.12 in where tension gives little', () =>
    expect(end(60, 150)).toBeCloseTo((1500 - 172.5 * 3) / 138, 6))
})

describe('a rafter’s step by hand: 8 x 8 at 40 degrees into an 8 x 12 tie, 2 in tenon, 12,000 lb push under snow', () => {
  const push = 12_000
  const thrust = push * Math.cos(degrees(40))
  const heel = rafterHeel(rules, {
    cases: [{ rafter: push * LB, tie: thrust * LB, duration: 'snow' }],
    angle: degrees(40),
    rafter: piece(8, 8),
    tie: piece(8, 12),
    tenon: 2 * INCH,
    beyond: 20 * INCH,
    wet: false
  })
  // At 20 degrees: 1,150 x 625 / (1,150 sin2 + 625 cos2).
  const sloped = (1150 * 625) / (1150 * Math.sin(degrees(20)) ** 2 + 625 * Math.cos(degrees(20)) ** 2)
  const bears = (push * Math.cos(degrees(20)) ** 2) / (6 * sloped)
  const plane = thrust / (6 * 0.5 * 170 * 1.15)
  it('face: Hankinson at 20 degrees', () => {
    expect(
      stepBearing({ rafter: piece(8, 8), tie: piece(8, 12), angle: degrees(40), wet: false }, 'snow') / PSI
    ).toBeCloseTo(sloped, 6)
  })
  it('wood beyond: 9,193 lb over 6 in x 97.75 psi = 15.7 in', () => {
    expect(heel.plane / INCH).toBeCloseTo(plane, 6)
    expect(plane).toBeCloseTo(15.67, 2)
  })
  it('step: the more of bearing and an eighth of the plane; here the plane', () => {
    expect(bears).toBeCloseTo(1.67, 1)
    expect(heel.step / INCH).toBeCloseTo(Math.max(bears, plane / 8), 6)
  })
  it('where shear is strong, bearing sets the step: push cos2 20 / (6 in x the face)', () => {
    const strong = rafterHeel(rules, {
      cases: [{ rafter: push * LB, tie: thrust * LB, duration: 'snow' }],
      angle: degrees(40),
      rafter: piece(8, 8),
      tie: piece(8, 12, { shear: 400 * PSI }),
      tenon: 2 * INCH,
      beyond: null,
      wet: false
    })
    expect(strong.step / INCH).toBeCloseTo(bears, 6)
    expect(strong.checks.find((c) => c.id === 'bearing-slope')?.ratio).toBeCloseTo(1, 9)
  })
  it('the tie: pull on 6 x what is left, and half a step of leverage', () => {
    const left = 12 - heel.step / INCH
    const ft = thrust / (6 * left)
    const fb = (thrust * (heel.step / INCH)) / 2 / ((6 * left * left) / 6)
    expect(heel.checks.find((c) => c.id === 'tie-tension')?.ratio).toBeCloseTo(
      ft / (825 * 1.15) + fb / (1200 * 1.15),
      6
    )
  })
  it('holds, and takes under a quarter of the tie', () => {
    expect(heel.possible).toBe(true)
    expect(heel.lost).toBeLessThan(0.25)
  })
  it('a step may take a quarter up to 50 degrees, a sixth from 60, between between (din-1052, recalled)', () => {
    expect(stepShare(rules, degrees(20))).toBe(0.25)
    expect(stepShare(rules, degrees(50))).toBeCloseTo(0.25, 12)
    expect(stepShare(rules, degrees(55))).toBeCloseTo((0.25 + 1 / 6) / 2, 3)
    expect(stepShare(rules, degrees(70))).toBeCloseTo(1 / 6, 3)
  })
  it('shear plane in its own words: half of F’v', () => {
    expect(planeNeeded(rules, 1000 * LB, 5 * INCH, 100 * PSI) / INCH).toBeCloseTo(4, 9)
  })
})
