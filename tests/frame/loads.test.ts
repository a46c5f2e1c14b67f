/** Loads on the frame: build-ups, snow on a slope and on one side, combinations. Published units where the rules are. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { content } from '../../src/data/content'
import { FOOT, PSF } from '../../src/data/units'
import { combinations, type Variable } from '../../src/frame/cases'
import { buildUp, oneSidedSnow, slopeFactor } from '../../src/frame/loads'
import { reference } from '../reference'

const { snow, layers, dead } = reference.loads
interface Dead {
  readonly id: string
  readonly psf: number
  readonly layers: readonly string[]
  readonly roundedUpPsf?: number
}
const builds = (content.loads as { dead: readonly Dead[] }).dead
const degrees = (angle: number) => Math.tan((angle * Math.PI) / 180)

describe('build-ups', () => {
  it.each(builds.map((b) => [b.id, b] as const))(
    'the total of %s is the sum of its layers and what a stated rounding adds',
    (id, b) => {
      const sum = buildUp(layers, b.layers) / PSF + (b.roundedUpPsf ?? 0)
      expect(sum).toBeCloseTo(b.psf, 9)
      expect(dead.get(id)?.pressure).toBeCloseTo(b.psf * PSF, 9)
    }
  )
  it('a rounding says why', () => {
    for (const b of (content.loads as { dead: readonly (Dead & { note?: string })[] }).dead)
      if (b.roundedUpPsf) expect(b.note).toMatch(/rounded up/)
  })
  it('an unknown layer is refused, nothing weighs nothing', () => {
    expect(() => buildUp(layers, ['planks-2', 'gold'])).toThrow(RangeError)
    expect(buildUp(layers, [])).toBe(0)
  })
  it('slate and standing seam shed snow, shingles and shakes do not', () => {
    for (const id of ['slate', 'metal']) expect(layers.get(id)?.slippery, id).toBe(true)
    for (const id of ['shingles', 'shakes', 'roofing-light']) expect(layers.get(id)?.slippery, id).toBe(false)
  })
})

describe('snow that a slope keeps (asce-7, 7.4, recalled)', () => {
  const kept = (angle: number, thermal: number, slides: boolean) =>
    slopeFactor(degrees(angle), thermal, slides, snow.slope)
  it.each([
    [30, 1.0, false, 1],
    [50, 1.0, false, 0.5],
    [5, 1.0, true, 1],
    [37.5, 1.0, true, 0.5],
    [45, 1.2, false, 1],
    [15, 1.2, true, 1],
    [42.5, 1.2, true, 0.5],
    [40, 1.1, true, 0.5],
    [70, 1.0, false, 0],
    [80, 1.2, true, 0]
  ] as const)('at %d degrees, C_t %d, slippery %s: %d', (angle, thermal, slides, want) =>
    expect(kept(angle, thermal, slides)).toBeCloseTo(want, 9)
  )
  it('never grows with the slope, slippery never keeps more, a colder roof never less', () => {
    const angle = fc.double({ min: 0, max: 89, noNaN: true })
    fc.assert(
      fc.property(angle, angle, fc.boolean(), (p, q, slides) => {
        const [low, high] = [Math.min(p, q), Math.max(p, q)]
        expect(kept(high, 1, slides)).toBeLessThanOrEqual(kept(low, 1, slides))
        expect(kept(p, 1, true)).toBeLessThanOrEqual(kept(p, 1, false))
        expect(kept(p, 1.2, slides)).toBeGreaterThanOrEqual(kept(p, 1, slides))
      })
    )
  })
  it('refuses a slope below zero, no number, and a thermal factor that it does not know', () => {
    expect(() => slopeFactor(-0.1, 1, false, snow.slope)).toThrow(RangeError)
    expect(() => slopeFactor(Number.NaN, 1, false, snow.slope)).toThrow(RangeError)
    expect(() => slopeFactor(0.5, 1.3, false, snow.slope)).toThrow(RangeError)
  })
})

describe('snow on one side (asce-7, 7.6.1, recalled)', () => {
  const side = (groundPsf: number, slope: number, runFt: number, panelFt = runFt) => {
    const found = oneSidedSnow(groundPsf * PSF, 28 * PSF, slope, runFt * FOOT, panelFt * FOOT, snow.oneSided)
    return found && { leeward: found.leeward / PSF, windward: found.windward / PSF }
  }
  it('up to 20 ft from eave to ridge all of the ground snow lies on one side, none on the other', () => {
    expect(side(40, 0.5, 20)).toEqual({ leeward: expect.closeTo(40, 9), windward: 0 })
  })
  it('on 25 ft, 40 psf, 6 on 12: a drift of 1.84 ft, 25 psf over 6.95 ft from the ridge, by hand', () => {
    const hd = 0.43 * Math.cbrt(25) * 50 ** 0.25 - 1.5
    expect(hd).toBeCloseTo(1.843, 3)
    const surcharge = (hd * (0.13 * 40 + 14)) / Math.sqrt(2)
    expect(surcharge).toBeCloseTo(25.0, 1)
    const length = (8 / 3) * hd * Math.sqrt(2)
    expect(length).toBeCloseTo(6.95, 2)
    const found = side(40, 6 / 12, 25)
    expect(found?.windward).toBeCloseTo(0.3 * 28, 9)
    // The even load that thrusts as much: the strip's moment about the foot is its load times 25 less half its length.
    const thrusts = (surcharge * length * (25 - length / 2)) / (25 * 12.5)
    expect(found?.leeward).toBeCloseTo(28 + thrusts, 6)
  })
  it('the even load bends a rafter at least as much as the strip that it stands for', () => {
    const run = 30
    const [slope, ground] = [6 / 12, 70]
    const hd = 0.43 * Math.cbrt(run) * (ground + 10) ** 0.25 - 1.5
    const strip = (hd * Math.min(30, 0.13 * ground + 14)) / Math.sqrt(2)
    const length = (8 / 3) * hd * Math.sqrt(2)
    const reaction = (strip * length * (run - length / 2)) / run
    const even = (side(ground, slope, run)?.leeward ?? 0) - 28
    expect((even * run * run) / 8).toBeGreaterThanOrEqual(reaction ** 2 / (2 * strip))
  })
  it('a shorter panel at the ridge is asked no less', () =>
    expect(side(40, 0.5, 25, 10)?.leeward ?? 0).toBeGreaterThan(side(40, 0.5, 25)?.leeward ?? 99))
  it('nothing is asked of nearly flat and of steep roofs, nor where there is no snow', () => {
    for (const inTwelve of [0, 0.4, 7.1, 24]) expect(side(40, inTwelve / 12, 15), `${inTwelve}`).toBeNull()
    for (const inTwelve of [0.5, 3, 7]) expect(side(40, inTwelve / 12, 15), `${inTwelve}`).not.toBeNull()
    expect(side(0, 0.5, 15)).toBeNull()
  })
  it('refuses what is no roof', () => {
    expect(() => side(-1, 0.5, 15)).toThrow(RangeError)
    expect(() => side(Number.NaN, 0.5, 15)).toThrow(RangeError)
    expect(() => side(40, 0.5, 0)).toThrow(RangeError)
  })
})

describe('combinations', () => {
  const roof: Variable[] = [
    { load: 20, duration: 'seven-days' },
    { load: 28, duration: 'snow' }
  ]
  const floor: Variable[] = [{ load: 40, duration: 'ten-years' }]
  it('roof and floor: D, D + L, D + each roof load, D + 0.75 of both; the shortest load sets the duration', () => {
    const all = combinations(roof, floor)
    const said = all.map((c) => `${c.name} ${c.share} ${c.roof?.load ?? 0} ${c.floor?.load ?? 0} ${c.duration}`)
    expect(said).toEqual([
      'D 0 0 0 permanent',
      'D + L 1 0 40 ten-years',
      'D + S 1 20 0 seven-days',
      'D + S 1 28 0 snow',
      'D + 0.75 L + 0.75 S 0.75 20 40 seven-days',
      'D + 0.75 L + 0.75 S 0.75 28 40 snow'
    ])
  })
  it('snow and roof live load are never added to each other', () => {
    for (const c of combinations(roof, [])) expect([0, 20, 28]).toContain(c.roof?.load ?? 0)
  })
})
