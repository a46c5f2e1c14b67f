/** What must hold of any timber: more load, more span, a weaker wood never gives less; wet is never stronger. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FOOT, INCH, PSF } from '../../src/data/units'
import { checkBeam } from '../../src/frame/beam'
import { worst } from '../../src/frame/check'
import { checkPost } from '../../src/frame/column'
import { beamStabilityFactor, columnStabilityFactor } from '../../src/frame/factors'
import { type FrameJob, sizeFrame } from '../../src/frame/job'
import { roofSnow } from '../../src/frame/loads'
import { inTryingOrder } from '../../src/frame/sizing'
import { type DesignValues, type Section, sizeClassOf } from '../../src/frame/values'
import { reference } from '../reference'

const values = (strength: number): DesignValues => ({
  bending: 9 * strength,
  tension: 5 * strength,
  shear: 1.1 * strength,
  compressionPerp: 4 * strength,
  compression: 6.5 * strength,
  elasticity: 10_000 * strength,
  elasticityMin: 3_700 * strength,
  wetIncluded: false,
  derived: false,
  origin: { mark: 'derived', sources: [] }
})
const series: Section[] = inTryingOrder(
  [6, 8, 10, 12].flatMap((b) =>
    [6, 8, 10, 12, 14, 16, 18].filter((d) => d >= b).map((d): Section => [b * INCH, d * INCH])
  )
)
const job = (change: Partial<FrameJob>): FrameJob => ({
  carries: 'beam',
  span: 14 * FOOT,
  spacing: 8 * FOOT,
  slope: 8 / 12,
  dead: 15 * PSF,
  variable: [{ load: 25 * PSF, duration: 'snow' }],
  form: 'king',
  queenAt: 1 / 3,
  oneSided: null,
  postHeight: 9 * FOOT,
  eave: 450,
  liveRatio: 240,
  totalRatio: 180,
  wet: false,
  unseasoned: false,
  mortise: 50,
  tieLeastDepth: 200,
  ends: 450,
  density: 500,
  ...change
})
/** Area of the main section, infinite where none passes. */
const need = (j: FrameJob, strength = 1): number => {
  const members = sizeFrame(j, series, series, () => values(strength)).filter((m) => m.id !== 'post')
  return Math.max(
    ...members.map((m) => (m.sized.section ? m.sized.section[0] * m.sized.section[1] : Number.POSITIVE_INFINITY))
  )
}
const carries = fc.constantFrom('beam', 'truss', 'floor') as fc.Arbitrary<FrameJob['carries']>
const span = fc.double({ min: 6 * FOOT, max: 30 * FOOT, noNaN: true })
const more = fc.double({ min: 1, max: 2, noNaN: true })

describe('sizing', () => {
  it('stronger is never bigger', () => {
    fc.assert(
      fc.property(carries, span, more, (c, s, k) => {
        expect(need(job({ carries: c, span: s }), k)).toBeLessThanOrEqual(need(job({ carries: c, span: s })))
      })
    )
  })
  it('a longer span is never smaller', () => {
    fc.assert(
      fc.property(carries, span, more, (c, s, k) => {
        expect(need(job({ carries: c, span: s * k }))).toBeGreaterThanOrEqual(need(job({ carries: c, span: s })))
      })
    )
  })
  it('more load is never smaller', () => {
    fc.assert(
      fc.property(carries, span, more, (c, s, k) => {
        expect(
          need(job({ carries: c, span: s, variable: [{ load: 25 * PSF * k, duration: 'snow' }] }))
        ).toBeGreaterThanOrEqual(need(job({ carries: c, span: s })))
      })
    )
  })
  it('wet or unseasoned is never stronger', () => {
    fc.assert(
      fc.property(carries, span, (c, s) => {
        const dry = need(job({ carries: c, span: s }))
        expect(need(job({ carries: c, span: s, wet: true }))).toBeGreaterThanOrEqual(dry)
        expect(need(job({ carries: c, span: s, unseasoned: true }))).toBeGreaterThanOrEqual(dry)
      })
    )
  })
  it('what it gives passes its own checks, and the next lighter section tried does not', () => {
    fc.assert(
      fc.property(span, (s) => {
        const [main] = sizeFrame(job({ span: s }), series, series, () => values(1))
        for (const c of main?.sized.checks ?? []) if (main?.sized.section) expect(c.ratio).toBeLessThanOrEqual(1)
        const at = series.findIndex((x) => Object.is(x, main?.sized.section))
        if (at > 0) {
          const lighter = sizeFrame(job({ span: s }), series.slice(0, at), series, () => values(1))[0]
          expect(lighter?.sized.section).toBeNull()
        }
      })
    )
  })
})

describe('checks of a beam against plain statics', () => {
  it('12 ft, 100 lb/ft, 6 x 8: bending stress M/S = 1,800 ft-lb over 64 in3 = 337.5 psi', () => {
    const load = (100 * 4.4482216152605) / FOOT
    const beam = {
      span: 12 * FOOT,
      dead: 0,
      variable: [{ load, duration: 'snow' }],
      unsupported: 0,
      liveRatio: 360,
      totalRatio: 240,
      unseasonedOrWet: false,
      mortise: 0
    } as const
    const bending = checkBeam(beam, [6 * INCH, 8 * INCH], values(1)).find((c) => c.id === 'bending')
    expect((bending?.demand ?? 0) / 0.006894757293168).toBeCloseTo(337.5, 1)
  })
  it('shear takes the whole load: 3/2 V over the area, V at the support', () => {
    const beam = {
      span: 2000,
      dead: 0,
      variable: [{ load: 10, duration: 'ten-years' }],
      unsupported: 0,
      liveRatio: 360,
      totalRatio: 240,
      unseasonedOrWet: false,
      mortise: 0
    } as const
    const shear = checkBeam(beam, [100, 200], values(1)).find((c) => c.id === 'shear')
    expect(shear?.demand).toBeCloseTo((1.5 * 10 * 1000) / 20_000, 10)
  })
})

describe('factors', () => {
  it('stability factors lie between 0 and 1 over their whole range', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 1000, max: 6000, noNaN: true }),
        (slenderness, stress, stiffness) => {
          const cp = columnStabilityFactor(slenderness, stress, stiffness)
          expect(cp > 0 && cp <= 1).toBe(true)
          const length = (slenderness ** 2 * 100 * 100) / 300
          const cl = beamStabilityFactor(length, 100, 300, stress, stiffness)
          expect(cl > 0 && cl <= 1).toBe(true)
        }
      )
    )
  })
  it('a beam too slender is refused, a post too slender fails', () => {
    expect(() => beamStabilityFactor(1e6, 50, 300, 9, 3700)).toThrow(RangeError)
    const post = { height: 51 * 100, dead: 1, variable: [], wet: false } as const
    expect(worst(checkPost(post, [100, 100], values(1)))?.id).toBe('slenderness')
  })
  it('negative snow is refused', () => expect(() => roofSnow(-1, 0.7, 1, 1)).toThrow(RangeError))
})

describe('design values', () => {
  it('a depth more than 2 in above the breadth makes a beam, else a post', () => {
    expect(sizeClassOf([8 * INCH, 10 * INCH])).toBe('PT')
    expect(sizeClassOf([8 * INCH, 12 * INCH])).toBe('BS')
  })
  it('a higher grade is never weaker, in any group and class', () => {
    for (const row of reference.design.filter((r) => r.grade === 'No.1')) {
      const better = reference.design.find(
        (r) => r.group === row.group && r.sizeClass === row.sizeClass && r.grade === 'Select Structural'
      )
      const worse = reference.design.find(
        (r) => r.group === row.group && r.sizeClass === row.sizeClass && r.grade === 'No.2'
      )
      for (const p of ['bending', 'tension', 'compression', 'elasticity'] as const) {
        if (better) expect(better[p], `${row.group} ${row.sizeClass} ${p}`).toBeGreaterThanOrEqual(row[p])
        if (worse) expect(worse[p], `${row.group} ${row.sizeClass} ${p}`).toBeLessThanOrEqual(row[p])
      }
    }
  })
})
