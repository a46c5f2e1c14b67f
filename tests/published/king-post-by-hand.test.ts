/**
 * The truss of the size ladder's page worked through by hand, in pounds and inches, with the design values of NDS Supplement
 * Table 4D for Douglas Fir-Larch No. 1: 24 ft, 8 in 12, trusses 12 ft apart, 15 psf of roof up the slope, 40 psf of snow on the
 * ground. Nothing of the engine is used but the timber's weight. Where the two disagree by more than the rounding of unit
 * weights (0.2 %), the engine is wrong until shown otherwise.
 */
import { describe, expect, it } from 'vitest'
import { ladderReport } from '../../src/choice/ladder/report'
import type { LadderReport } from '../../src/choice/ladder/types'
import type { Quantity } from '../../src/data/quantity'
import { EXAMPLE } from '../../src/ui/size-ladder/at-build'
import { reference, sheet } from '../reference'

const found = ladderReport(EXAMPLE, reference, sheet)
if ('problems' in found) throw new Error('refused')
const report: LadderReport = found
const [rafter, tie, king] = report.chosen.parts

const near = (ours: number, byHand: number) => expect(Math.abs(ours / byHand - 1)).toBeLessThan(0.002)
const pounds = (q: Quantity | null | undefined) => Number(q?.value) / 4.4482216
const psi = (q: Quantity | undefined) => Number(q?.value) * 145.0377
const inches = (q: Quantity | null | undefined) => [q?.value ?? 0].flat().map((mm) => Math.round(mm / 25.4))
const check = (part: typeof rafter, name: RegExp) => part?.checks.find((c) => name.test(c.name))

// Beams and stringers (6 x 12), and posts and timbers (6 x 8, 6 x 6). psi.
const BS = { Fb: 1350, Fc: 925, Fv: 170, E: 1.6e6, Emin: 580_000 }
const PT = { Fb: 1200, Ft: 825, Fv: 170 }
const SNOW = 1.15

// Green Douglas-fir, lb/ft3, as the page's weight of a stick opens to.
const weight = report.lines.find((l) => l.wood === 'douglas-fir')?.heaviest?.weight
const density = Number(weight?.origin.inputs?.['wood with its water']?.value) / 16.01846

const slope = 8 / 12
const along = Math.sqrt(1 + slope ** 2)
const sin = slope / along
const cos = 1 / along
// lb/ft on plan: roof and snow, the rafter itself, and the king post's weight as if it all hung at the ridge.
const snow = 0.7 * 1 * 1 * 40 * 12
const lyingUp = 15 * along * 12 + density * ((6 * 12) / 144) * along + (2 * density * ((6 * 6) / 144) * 8) / 24
const roof = lyingUp + snow
const onTie = density * ((6 * 8) / 144)
const hung = onTie * 12
const apex = roof * 12 + hung
const thrust = apex / 2 / slope
const push = thrust * cos + (roof * 6 + apex / 2) * sin

describe('by hand: the 24 ft king-post truss in Douglas-fir', () => {
  it('is 6 x 12 in rafters, a 6 x 8 tie and a 6 x 6 king post', () => {
    expect([rafter, tie, king].map((p) => inches(p?.section))).toEqual([
      [6, 12],
      [6, 8],
      [6, 6]
    ])
  })
  it('push of a rafter’s foot, pull of the tie, pull of the king post', () => {
    near(pounds(rafter?.push), push)
    near(pounds(tie?.pull), thrust)
    near(pounds(king?.pull), hung)
  })

  /** NDS 3.9-3 with 3.7-1 for the column; a mortise of 2 in is cut out of the breadth where it bends. */
  function rafterUse(b: number, d: number, v: typeof BS, load: number, foot: number): number {
    const le = 12 * along * 12
    const FcE = (0.822 * v.Emin) / (le / d) ** 2
    const star = v.Fc * SNOW
    const a = (1 + FcE / star) / 1.6
    const Fc = star * (a - Math.sqrt(a * a - FcE / star / 0.8))
    const fc = foot / (b * d)
    const M = ((load * 12 ** 2) / 8) * 12
    const fb = M / (((b - 2) * d * d) / 6)
    return (fc / Fc) ** 2 + fb / (v.Fb * SNOW * (1 - fc / FcE))
  }
  it('rafter: push and bending together', () => near(Number(rafter?.used?.value), rafterUse(6, 12, BS, roof, push)))
  it('the next lighter, 8 x 8 in, is far past it', () => {
    // Fb 1,200, Fc 1,000 and Emin 580,000 psi for posts and timbers; its weight differs by that of 8 in2.
    const load = roof + (density * (64 - 72) * along) / 144
    const foot = push * (load / roof)
    const use = rafterUse(8, 8, { ...BS, Fb: 1200, Fc: 1000 }, load, foot)
    expect(use).toBeGreaterThan(1.5)
    expect(Math.abs(Number(rafter?.lighter?.values?.['used']?.value) / use - 1)).toBeLessThan(0.005)
  })
  it('rafter: shear across the grain at the foot, and sag with creep', () => {
    const shear = check(rafter, /^Shear/)
    near(psi(shear?.demand), (1.5 * roof * 6 * cos) / (6 * 12))
    near(psi(shear?.capacity), BS.Fv * SNOW)
    const length = 12 * along * 12
    const sag = (w: number) => (5 * ((w * cos * cos) / 12) * length ** 4) / (384 * BS.E * ((6 * 12 ** 3) / 12))
    near(Number(check(rafter, /live/)?.demand.value) / 25.4, sag(snow))
    near(Number(check(rafter, /creep/)?.demand.value) / 25.4, 2 * sag(lyingUp) + sag(snow))
    near(Number(check(rafter, /live/)?.capacity.value) / 25.4, length / 240)
  })
  it('tie: pull and bending together on what the mortise leaves', () => {
    const moment = ((onTie * 12 ** 2) / 8) * 12
    const use = thrust / (4 * 8) / (PT.Ft * SNOW) + moment / ((4 * 8 * 8) / 6) / (PT.Fb * SNOW)
    near(Number(tie?.used?.value), use)
  })
  it('king post: pull on what the mortise leaves, as a load that lies for good', () =>
    near(Number(king?.used?.value), hung / (4 * 6) / (PT.Ft * 0.9)))
  it('every check opens to its formula, its clause and the numbers that went into it', () => {
    for (const part of report.chosen.parts)
      for (const c of part.checks) {
        expect(reference.formulas[c.used.origin.formula ?? ''], c.name).toBeDefined()
        expect(c.clause).toMatch(/^(NDS|IBC)/)
        expect(Object.keys(c.used.origin.inputs ?? {}).length, c.name).toBeGreaterThanOrEqual(4)
      }
    const inputs = rafter?.checks[0]?.used.origin.inputs
    near(pounds(inputs?.['P']), push)
    near(psi(inputs?.['Fc']), BS.Fc)
    near(psi(inputs?.['fc']), push / 72)
  })
})
