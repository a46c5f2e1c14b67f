/** Dowels in double shear: printed values, and the yield theory solved a second way, by equilibrium of the dowel. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { INCH, PSI } from '../../src/data/units'
import { bearingAcrossGrain, bearingAlongGrain, type Dowel, doubleShear, reductionTerms } from '../../src/frame/dowel'
import { pegCapacity, pegStrength } from '../../src/frame/pegs'
import { reference } from '../reference'

const LB = 4.4482216152605
const ACROSS = Math.PI / 2
const psi = (mpa: number) => mpa / PSI
const rules = reference.joints

describe('dowel bearing (nds, 12.3.3)', () => {
  it('11,200 G along the grain: 5,600 psi for G 0.50', () => expect(psi(bearingAlongGrain(0.5))).toBeCloseTo(5600, 6))
  it('6,100 G^1.45 / sqrt(D) across it: 2,233 psi for G 0.50 under 1 in, 3,157 under 1/2 in', () => {
    expect(psi(bearingAcrossGrain(0.5, INCH))).toBeCloseTo(6100 * Math.exp(1.45 * Math.log(0.5)), 6)
    expect(psi(bearingAcrossGrain(0.5, INCH))).toBeCloseTo(2232.7, 0)
    expect(psi(bearingAcrossGrain(0.5, INCH / 2))).toBeCloseTo(3157.5, 0)
  })
  it('reduction terms: 4 and 3.2 along the grain, a quarter more across it (nds, Table 12.3.1B)', () => {
    expect(reductionTerms(0)).toEqual({ Im: 4, Is: 4, IIIs: 3.2, IV: 3.2 })
    const across = reductionTerms(ACROSS)
    expect(across.Im).toBeCloseTo(5, 12)
    expect(across.IV).toBeCloseTo(4, 12)
    expect(reductionTerms(ACROSS / 2).IIIs).toBeCloseTo(3.2 * 1.125, 12)
  })
})

describe('steel bolts in Douglas Fir-Larch, G 0.50, Fyb 45,000 psi (nds, Table 12F; recalled, printed to 10 lb)', () => {
  const bolt = (main: number, mainAngle: number, sideAngle: number) => {
    const bearing = (angle: number) => (angle ? bearingAcrossGrain(0.5, INCH / 2) : bearingAlongGrain(0.5))
    const modes = doubleShear({
      diameter: INCH / 2,
      bending: 45_000 * PSI,
      main: main * INCH,
      mainBearing: bearing(mainAngle),
      side: 1.5 * INCH,
      sideBearing: bearing(sideAngle),
      angle: Math.max(mainAngle, sideAngle)
    })
    return Math.min(...modes.map((m) => m.load)) / LB
  }
  it('1/2 in, 1.5 in main and sides, along the grain: 1,050 lb', () => expect(bolt(1.5, 0, 0)).toBeCloseTo(1050, -1))
  it('sides across the grain: 730 lb', () => expect(Math.abs(bolt(1.5, 0, ACROSS) - 730)).toBeLessThan(5))
  it('main across the grain: 470 lb', () => expect(Math.abs(bolt(1.5, ACROSS, 0) - 470)).toBeLessThan(5))
  it('3.5 in main: 1,230 lb', () => expect(Math.abs(bolt(3.5, 0, 0) - 1230)).toBeLessThan(5))
})

/** Where f crosses zero between low and high, by halving. */
function crossing(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high]
  for (let i = 0; i < 200; i++) {
    const mid = (a + b) / 2
    if (f(a) * f(mid) <= 0) b = mid
    else a = mid
  }
  return (a + b) / 2
}

/**
 * Force on one shear plane at yield, from equilibrium of a rigid-plastic dowel: bearing at its strength everywhere, hinges of
 * Fyb D^3 / 6. No formula of the standard is used.
 */
function byEquilibrium(d: Dowel) {
  const inMain = d.mainBearing * d.diameter // force per length
  const inSide = d.sideBearing * d.diameter
  const hinge = (d.bending * d.diameter ** 3) / 6
  // IIIs: turns in the wall about a point x from the plane, hinges in the tenon at z, where the shear is nil.
  const turning = crossing(
    (x) => {
      const z = (inSide * (2 * x - d.side)) / inMain
      const fromWall = inSide * x * (z + x / 2) - inSide * (d.side - x) * (z + (d.side + x) / 2)
      return fromWall - (inMain * z * z) / 2 - hinge
    },
    d.side / 2,
    d.side * 50
  )
  // IV: a hinge in each; between the two points of no shear the moment swings by two hinges.
  const both = crossing((p) => (p * p) / (2 * inSide) + (p * p) / (2 * inMain) - 2 * hinge, 0, inMain * 1e4)
  return {
    Im: (inMain * d.main) / 2,
    Is: inSide * d.side,
    IIIs: inSide * (2 * turning - d.side),
    IV: both
  }
}

describe('every mode against equilibrium', () => {
  it('agrees to a millionth over the range of pegs and bolts', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
    fc.assert(
      fc.property(
        fc.record({
          diameter: between(8, 31),
          bending: between(60, 310),
          main: between(30, 80),
          mainBearing: between(8, 60),
          side: between(30, 120),
          sideBearing: between(6, 60),
          angle: between(0, ACROSS)
        }),
        (dowel) => {
          const rd = reductionTerms(dowel.angle)
          const twice = byEquilibrium(dowel)
          for (const mode of doubleShear(dowel)) {
            // Two planes; the reduction term stands between yield and the reference value.
            expect((mode.load * rd[mode.id]) / (2 * twice[mode.id]), mode.id).toBeCloseTo(1, 6)
          }
        }
      )
    )
  })
})

describe('a 1 in white oak peg, specific gravity 0.73, in Douglas-fir, 0.50: by hand (tfec-1, recalled)', () => {
  const place = {
    tenon: 2 * INCH,
    wall: 3 * INCH,
    tenonGravity: 0.5,
    mortisedGravity: 0.5,
    tenonAngle: 0,
    mortisedAngle: ACROSS
  }
  const one = pegCapacity(rules, { diameter: INCH, gravity: 0.73 }, place, 'ten-years', false)
  const load = (id: string) => (one.modes.find((m) => m.id === id)?.load ?? 0) / LB
  it('strengths: 3,148 psi along, 2,529 across, 17,414 bending, 2,105 shear', () => {
    const of = (id: 'bearingAlong' | 'bearingAcross' | 'bending' | 'shear') =>
      psi(pegStrength(rules.strength[id], 0.73, 0.5))
    expect(of('bearingAlong')).toBeCloseTo(4770 * Math.exp(1.32 * Math.log(0.73)), 6)
    expect(of('bearingAcross')).toBeCloseTo(4900 * 0.73 * Math.sqrt(0.5), 6)
    expect(of('bending')).toBeCloseTo(24_850 * Math.exp(1.13 * Math.log(0.73)), 6)
    expect(of('shear')).toBeCloseTo((4850 * 0.73) / 2 ** 0.75, 6)
  })
  it('mode V: pi x 2,105 / 7 = 945 lb, and it governs', () => {
    expect(load('V')).toBeCloseTo((Math.PI * ((4850 * 0.73) / 2 ** 0.75)) / 7, 6)
    expect(one.mode).toBe('V')
    expect(one.load / LB).toBeCloseTo(944.8, 0)
  })
  it('mode Im: 1 x 2 x 3,148 / 5; Is: the wall bears no more than under steel, 2 x 1 x 3 x 2,233 / 5', () => {
    expect(load('Im')).toBeCloseTo((2 * 4770 * 0.73 ** 1.32) / 5, 6)
    expect(load('Is')).toBeCloseTo((6 * 6100 * 0.5 ** 1.45) / 5, 6)
  })
  it('snow adds 15 %, permanent load takes a tenth, wet service three tenths', () => {
    const at = (duration: 'snow' | 'permanent', wet: boolean) =>
      pegCapacity(rules, { diameter: INCH, gravity: 0.73 }, place, duration, wet).load / one.load
    expect(at('snow', false)).toBeCloseTo(1.15, 12)
    expect(at('permanent', false)).toBeCloseTo(0.9, 12)
    expect(at('snow', true)).toBeCloseTo(1.15 * 0.7, 12)
  })
  it('where V governs, the doubtful bending constant changes nothing', () => {
    const bent = { ...rules.strength.bending, stress: rules.strength.bending.stress * 0.7 }
    const other = { ...rules, strength: { ...rules.strength, bending: bent } }
    expect(one.bendingGoverns).toBe(false)
    expect(pegCapacity(other, { diameter: INCH, gravity: 0.73 }, place, 'ten-years', false).load).toBe(one.load)
  })
})
