/** Stochastic multicriteria acceptability against a printed example, cases solved by hand, and exact areas. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  acceptability,
  firstShares,
  type Measure,
  samplingError,
  undominated,
  type WeightSpace,
  weightSpace
} from '../../src/choice/firm/acceptability'
import { rankOrderCentroid } from '../../src/choice/weights'

/** Standard normal quantile by halving the distribution function (Abramowitz and Stegun 26.2.17, to 1e-7). */
function normal(p: number): number {
  const below = (x: number) => {
    const t = 1 / (1 + 0.2316419 * Math.abs(x))
    const poly = [1.330274429, -1.821255978, 1.781477937, -0.356563782, 0.31938153].reduce((s, b) => s * t + b, 0)
    const tail = ((t * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI)) * poly
    return x > 0 ? 1 - tail : tail
  }
  let [low, high] = [-8, 8]
  for (let i = 0; i < 36; i++) {
    const middle = (low + high) / 2
    if (below(middle) < p) low = middle
    else high = middle
  }
  return low
}

describe('printed example: four options, six uncertain criteria, nothing known of the weights (lahdelma-salminen-2001)', () => {
  // Mean and standard deviation; the first criterion lognormal and more is better, the others normal and less is better.
  const printed: readonly (readonly (readonly [number, number])[])[] = [
    [
      [0, 0],
      [11.7, 2.5],
      [7.2, 1.45],
      [16.6, 3.27],
      [13.7, 1.89],
      [18.6, 1.79]
    ],
    [
      [0.086, 0.056],
      [9.2, 1.86],
      [10.6, 1.58],
      [21.2, 5.15],
      [14.3, 2.93],
      [18.3, 3.7]
    ],
    [
      [0.095, 0.044],
      [15.4, 2.65],
      [7.5, 1.48],
      [20.2, 3.78],
      [15, 3.21],
      [19.5, 2.6]
    ],
    [
      [0.113, 0.048],
      [5.5, 2.32],
      [15.7, 4.44],
      [12.8, 2.45],
      [11.2, 3.98],
      [31, 1.68]
    ]
  ]
  const scales = [
    [0.98, 1.23],
    [20.6, 1],
    [24.4, 4.4],
    [31.3, 8],
    [21.3, 3.4],
    [34.3, 11]
  ] as const
  const scores = printed.map((row) =>
    row.map(([mean, sd], k): Measure => {
      const [worst, best] = scales[k] ?? [0, 1]
      const value = (x: number) => ((k === 0 ? Math.exp(x) : x) - worst) / (best - worst)
      return sd === 0 ? value(mean) : (u) => value(mean + sd * normal(u))
    })
  )
  // Two printed decimals of a sampled figure: the tolerances are those printed with it; our own error (0.008) fits inside.
  const space = weightSpace(6, { order: null })
  const ours = acceptability(scores, space, 16384)
  it.each([
    ['F', [0.2, 0.28, 0.3, 0.22]],
    ['P', [0.25, 0.29, 0.27, 0.19]],
    ['S', [0.17, 0.25, 0.29, 0.3]],
    ['V', [0.39, 0.18, 0.15, 0.29]]
  ])('rank acceptabilities of %s', (name, ranks) => {
    for (const [r, share] of ranks.entries())
      expect(Math.abs((ours.ranks['FPSV'.indexOf(name)]?.[r] ?? 9) - share), `rank ${r + 1}`).toBeLessThanOrEqual(0.02)
  })
  it('confidence factors', () => {
    for (const [i, factor] of [0.48, 0.44, 0.34, 0.74].entries())
      expect(Math.abs((ours.confidence[i] ?? 9) - factor), `option ${i}`).toBeLessThanOrEqual(0.03)
  })
  it('central weights of the first', () => {
    for (const [k, w] of [0.08, 0.14, 0.23, 0.18, 0.16, 0.22].entries())
      expect(Math.abs((ours.central[0]?.[k] ?? 9) - w), `criterion ${k}`).toBeLessThanOrEqual(0.02)
  })
  it('a quarter of the samples: within its stated error of that', () => {
    const few = acceptability(scores, space, 4096)
    for (const key of ['share', 'confidence'] as const)
      for (const [i, share] of few[key].entries())
        expect(Math.abs((share ?? 9) - (ours[key][i] ?? 0)), `${key} ${i}`).toBeLessThan(few.error)
  })
})

describe('two criteria, solved by hand', () => {
  // Values at weight w of the first criterion: w, 1 - w and 0.6. First: A above 0.6, B below 0.4, C between.
  const scores = [
    [1, 0],
    [0, 1],
    [0.6, 0.6]
  ]
  it('no order', () => {
    const { ranks, central, confidence, holistic, error } = acceptability(scores, weightSpace(2, { order: null }))
    const expected = [
      [0.4, 0.1, 0.5],
      [0.4, 0.1, 0.5],
      [0.2, 0.8, 0]
    ]
    for (const [i, row] of expected.entries())
      for (const [r, share] of row.entries()) expect(Math.abs((ranks[i]?.[r] ?? 9) - share)).toBeLessThan(error / 8)
    for (const [i, w] of [0.8, 0.2, 0.5].entries()) expect(central[i]?.[0]).toBeCloseTo(w, 2)
    expect(confidence).toEqual([1, 1, 1])
    // Centroid meta-weights of three ranks, the first taken as 1: 1, 5/11, 2/11.
    expect(holistic[0]).toBeCloseTo(0.4 + (0.1 * 5) / 11 + (0.5 * 2) / 11, 2)
  })
  it('the first criterion at least as weighty: w runs from a half', () => {
    const { share, central } = acceptability(scores, weightSpace(2, { order: [0, 1] }))
    for (const [i, s] of [0.8, 0, 0.2].entries()) expect(share[i]).toBeCloseTo(s, 2)
    expect(central[0]?.[0]).toBeCloseTo(0.8, 2)
    expect(central[1]).toBeNull()
    expect(central[2]?.[0]).toBeCloseTo(0.55, 2)
  })
  it('a criterion that tells nothing weighs nothing; a doubled one shifts the weights', () => {
    expect(firstShares(scores, weightSpace(2, { order: null, matters: [false, true] })).share).toEqual([0, 1, 0])
    // Doubled and rescaled the weight is 2w/(1 + w), above 0.6 from w = 3/7 on and below 0.4 up to w = 1/4.
    const { share } = firstShares(scores, weightSpace(2, { order: null, factors: [2, 1] }))
    for (const [i, s] of [4 / 7, 1 / 4, 3 / 7 - 1 / 4].entries()) expect(share[i]).toBeCloseTo(s, 2)
  })
  it('a score anywhere from 0 to 1: shares, central weights and confidence by integration', () => {
    // A = (u, 0), B = (0, 0.5): A is first where u > (1 - w)/(2w), so for w > 1/3 with chance 1.5 - 1/(2w).
    const { share, central, confidence, error } = acceptability(
      [
        [[0, 1], 0],
        [0, 0.5]
      ],
      weightSpace(2, { order: null })
    )
    const first = 1 - Math.log(3) / 2
    const middle = 1 / 3 / first
    expect(Math.abs((share[0] ?? 9) - first)).toBeLessThan(error)
    expect(Math.abs((central[0]?.[0] ?? 9) - middle)).toBeLessThan(error)
    expect(Math.abs((confidence[0] ?? 9) - (1.5 - 1 / (2 * middle)))).toBeLessThan(error)
  })
})

describe('the space of weights', () => {
  it.each([2, 3, 4, 7])('%i in order: the corners keep it, and their mean is the rank-order centroid', (n) => {
    const order = Array.from({ length: n }, (_, k) => n - 1 - k)
    const space = weightSpace(n, { order })
    for (const corner of space) for (let k = 1; k < n; k++) expect(corner[k]).toBeGreaterThanOrEqual(corner[k - 1] ?? 9)
    for (const [rank, w] of rankOrderCentroid(n).entries())
      expect(space.reduce((s, corner) => s + (corner[n - 1 - rank] ?? 0) / n, 0)).toBeCloseTo(w, 12)
  })
  it('refuses an order that leaves one out or names one twice, and a space of nothing', () => {
    expect(() => weightSpace(3, { order: [0, 1] })).toThrow(RangeError)
    expect(() => weightSpace(2, { order: [0, 0] })).toThrow(RangeError)
    expect(() => weightSpace(2, { order: [0, 2] })).toThrow(RangeError)
    expect(() => weightSpace(2, { order: null, matters: [false, false] })).toThrow(RangeError)
  })
})

type Point = readonly [number, number]
/** Part of a convex polygon of (w1, w2) where a·w >= 0, w3 = 1 - w1 - w2. */
function clip(polygon: readonly Point[], a: readonly number[]): Point[] {
  const side = ([x, y]: Point) => (a[0] ?? 0) * x + (a[1] ?? 0) * y + (a[2] ?? 0) * (1 - x - y)
  return polygon.flatMap((p, i) => {
    const q = polygon[(i + 1) % polygon.length] ?? p
    const [s, t] = [side(p), side(q)]
    const cross: Point[] =
      s * t < 0 ? [[p[0] + ((q[0] - p[0]) * s) / (s - t), p[1] + ((q[1] - p[1]) * s) / (s - t)]] : []
    return s >= 0 ? [p, ...cross] : cross
  })
}
const area = (polygon: readonly Point[]) =>
  polygon.reduce((sum, [x, y], i) => {
    const [u, v] = polygon[(i + 1) % polygon.length] ?? [x, y]
    return sum + (x * v - u * y) / 2
  }, 0)
/** Exact first shares of three criteria: areas of the parts of the triangle of weights. */
const exactly = (scores: readonly (readonly number[])[], space: WeightSpace): number[] => {
  const whole = space.map((w): Point => [w[0] ?? 0, w[1] ?? 0])
  return scores.map((own) => {
    const part = scores.reduce(
      (left, other) =>
        clip(
          left,
          own.map((s, k) => s - (other[k] ?? 0))
        ),
      whole
    )
    return area(part) / area(whole)
  })
}

// Thousandths: what differs, differs by more than rounding.
const score = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000)
const matrix = (options: number, criteria: number) =>
  fc.array(fc.array(score, { minLength: criteria, maxLength: criteria }), { minLength: options, maxLength: options })

describe('sampling error', () => {
  it('three criteria: from 64 samples to 16,384, never further from the exact area than is stated', () => {
    fc.assert(
      fc.property(matrix(4, 3), fc.constantFrom(null, [0, 1, 2], [2, 0, 1]), (scores, order) => {
        fc.pre(new Set(scores.map(String)).size === 4)
        const space = weightSpace(3, { order })
        const exact = exactly(scores, space)
        for (const samples of [64, 256, 1024, 4096, 16384]) {
          const { share, error } = firstShares(scores, space, samples)
          expect(error).toBe(samplingError(samples))
          for (const [i, s] of share.entries()) expect(Math.abs(s - (exact[i] ?? 9)), `${samples}`).toBeLessThan(error)
        }
      }),
      { numRuns: 150, seed: 1 }
    )
  })
  it('seven criteria: 4,096 samples agree with 200,000 within what is stated', () => {
    fc.assert(
      fc.property(matrix(6, 7), fc.constantFrom(null, [0, 1, 2, 3, 4, 5, 6]), (scores, order) => {
        const space = weightSpace(7, { order })
        const { share, error } = firstShares(scores, space)
        const fine = firstShares(scores, space, 200_000).share
        for (const [i, s] of share.entries()) expect(Math.abs(s - (fine[i] ?? 9))).toBeLessThan(error)
      }),
      { numRuns: 12, seed: 2 }
    )
  })
})

describe('whatever the scores', () => {
  const space = weightSpace(5, { order: null })
  const ordered = weightSpace(5, { order: [3, 1, 4, 0, 2] })
  it('shares sum to one over options and over ranks; the same always comes out', () => {
    fc.assert(
      fc.property(matrix(6, 5), fc.constantFrom(space, ordered), (scores, weights) => {
        const a = acceptability(scores, weights, 256)
        const sum = (xs: readonly number[]) => xs.reduce((s, x) => s + x, 0)
        for (let i = 0; i < 6; i++) {
          expect(sum(a.ranks[i] ?? [])).toBeCloseTo(1, 12)
          expect(sum(a.ranks.map((row) => row[i] ?? 0))).toBeCloseTo(1, 12)
          const central = a.central[i]
          if (central) expect(sum(central)).toBeCloseTo(1, 12)
        }
        expect(acceptability(scores, weights, 256)).toEqual(a)
        // Leaving dominated options out changes nothing.
        const quick = firstShares(scores, weights, 256)
        for (const [i, s] of quick.share.entries()) expect(s).toBeCloseTo(a.share[i] ?? 9, 12)
      }),
      { numRuns: 60 }
    )
  })
  it('a dominated option is never first and has no central weights; alike in all, the earlier is first', () => {
    fc.assert(
      fc.property(
        matrix(4, 5),
        fc.array(fc.double({ min: 0.01, max: 0.5, noNaN: true }), { minLength: 5, maxLength: 5 }),
        (scores, less) => {
          const worse = (scores[0] ?? []).map((s, k) => s - (less[k] ?? 0))
          const all = [worse, ...scores, [...(scores[0] ?? [])]]
          for (const a of [firstShares(all, space, 256), acceptability(all, space, 256)]) {
            for (const i of [0, 5]) {
              expect(a.share[i]).toBe(0)
              expect(a.central[i]).toBeNull()
            }
          }
          expect(undominated(all)).not.toContain(0)
          expect(undominated(all)).not.toContain(5)
        }
      ),
      { numRuns: 60 }
    )
  })
  it('all scores times four: nothing changes', () => {
    fc.assert(
      fc.property(matrix(5, 5), (scores) => {
        const scaled = scores.map((row) => row.map((s) => 4 * s))
        expect(acceptability(scaled, ordered, 256)).toEqual(acceptability(scores, ordered, 256))
        expect(firstShares(scaled, space, 256)).toEqual(firstShares(scores, space, 256))
      }),
      { numRuns: 60 }
    )
  })
  it('an option with exact scores is first at its central weights', () => {
    fc.assert(
      fc.property(matrix(6, 5), fc.constantFrom(space, ordered), (scores, weights) => {
        const { central } = firstShares(scores, weights, 512)
        for (const [i, at] of central.entries()) {
          if (!at) continue
          const worth = scores.map((row) => row.reduce((s, x, k) => s + x * (at[k] ?? 0), 0))
          expect(worth[i]).toBeGreaterThanOrEqual(Math.max(...worth) - 1e-12)
        }
      }),
      { numRuns: 60 }
    )
  })
})
