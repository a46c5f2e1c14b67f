/** The damped yearly swing, against plain solutions and against a grid stepped through the years. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { swingDepth, swingShare } from '../../src/wood/swing'

/**
 * Another way to the same figure: explicit finite differences on a quarter of the section, surface held at a sine, run until
 * the years repeat; the amplitude of the mean by its two Fourier parts over the last year.
 */
function byGrid(breadth: number, depth: number, diffusivity: number, cells = 20, years = 4): number {
  const dx = breadth / 2 / cells
  const dy = depth / 2 / cells
  const period = 365.25
  const steps = Math.ceil(period / (0.2 / (diffusivity * (1 / dx ** 2 + 1 / dy ** 2))))
  const dt = period / steps
  let u = Array.from({ length: cells }, () => new Float64Array(cells))
  let sine = 0
  let cosine = 0
  for (let step = 0; step < steps * years; step++) {
    const t = (step * 2 * Math.PI) / steps
    const surface = Math.sin(t)
    const next = u.map((row) => Float64Array.from(row))
    let total = 0
    for (let i = 0; i < cells; i++) {
      for (let j = 0; j < cells; j++) {
        const here = u[i]?.[j] ?? 0
        // Cell middles: the face lies half a cell beyond the last, the middle of the timber is a mirror.
        const right = i + 1 < cells ? (u[i + 1]?.[j] ?? 0) - here : 2 * (surface - here)
        const left = i > 0 ? (u[i - 1]?.[j] ?? 0) - here : 0
        const up = j + 1 < cells ? (u[i]?.[j + 1] ?? 0) - here : 2 * (surface - here)
        const down = j > 0 ? (u[i]?.[j - 1] ?? 0) - here : 0
        const value = here + diffusivity * dt * ((right + left) / dx ** 2 + (up + down) / dy ** 2)
        const row = next[i]
        if (row) row[j] = value
        total += here
      }
    }
    u = next
    if (step >= steps * (years - 1)) {
      sine += (total / cells ** 2) * Math.sin(t)
      cosine += (total / cells ** 2) * Math.cos(t)
    }
  }
  return (2 * Math.hypot(sine, cosine)) / steps
}

describe('share of a yearly swing that a section follows', () => {
  it.each([
    [100, 100, 3.5],
    [203, 203, 3.5],
    [152, 305, 3.5],
    [305, 305, 8]
  ])('%i x %i mm at %d mm2 a day: the series and the grid agree', (b, d, diffusivity) => {
    // The grid is good to a few in a thousand at twenty cells.
    expect(swingShare(b, d, diffusivity)).toBeCloseTo(byGrid(b, d, diffusivity), 2)
  })
  it('a wide slab gives tanh(z)/z of the text-book solution, z = (1 + i) a/depth', () => {
    const thick = 100
    const x = thick / 2 / swingDepth(3.5)
    // |tanh(x + ix)|2 = (cosh 2x - cos 2x)/(cosh 2x + cos 2x)
    const tanh = Math.sqrt((Math.cosh(2 * x) - Math.cos(2 * x)) / (Math.cosh(2 * x) + Math.cos(2 * x)))
    expect(swingShare(thick, 1e6, 3.5)).toBeCloseTo(tanh / (Math.SQRT2 * x), 3)
  })
  it('the depth that a year reaches grows as the square root of time and diffusivity', () => {
    expect(swingDepth(3.5)).toBeCloseTo(Math.sqrt((3.5 * 365.25) / Math.PI), 10)
    expect(swingDepth(14)).toBeCloseTo(2 * swingDepth(3.5), 10)
  })
  it('lies between 0 and 1; the larger the timber the less, the quicker the wood the more', () => {
    const side = fc.double({ min: 20, max: 600, noNaN: true })
    fc.assert(
      fc.property(side, side, fc.double({ min: 0.5, max: 20, noNaN: true }), (b, d, diffusivity) => {
        const share = swingShare(b, d, diffusivity)
        expect(share).toBeGreaterThan(0)
        expect(share).toBeLessThanOrEqual(1)
        expect(swingShare(d, b, diffusivity)).toBeCloseTo(share, 12)
        expect(swingShare(b * 1.1, d, diffusivity)).toBeLessThan(share)
        expect(swingShare(b, d, diffusivity * 1.1)).toBeGreaterThan(share)
      })
    )
  })
  it('refuses what cannot be', () => {
    for (const bad of [0, -1, Number.NaN]) {
      expect(() => swingShare(bad, 200, 3.5)).toThrow(RangeError)
      expect(() => swingShare(200, 200, bad)).toThrow(RangeError)
      expect(() => swingDepth(3.5, bad)).toThrow(RangeError)
    }
  })
})
