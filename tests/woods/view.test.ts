/** What stands on a wood's page: its figures agree with the engine's, and each names a source that exists. */
import { describe, expect, it } from 'vitest'
import type { Origin, Quantity } from '../../src/data/quantity'
import { compareWood } from '../../src/woods-pages/compare-data'
import { against, measureOf, woodOf } from '../../src/woods-pages/measure'
import { checkOf, faceOf, gapOf, logEndsOf } from '../../src/woods-pages/movement'
import { lineOf, rankOf, weightOf, yardOf } from '../../src/woods-pages/numbers'
import { proses } from '../../src/woods-pages/prose'
import { groupsOf } from '../../src/woods-pages/rows'
import { SIDE } from '../../src/woods-pages/sizes'
import { viewOf } from '../../src/woods-pages/view'
import { reference } from '../reference'

const measure = measureOf(reference)
const oak = woodOf('white-oak', measure)
const redwood = woodOf('redwood', measure)
const square = [SIDE, SIDE] as const

function originsIn(value: unknown): Origin[] {
  if (typeof value !== 'object' || value === null) return []
  const own = 'mark' in value && 'sources' in value ? [value as Origin] : []
  return [...own, ...Object.values(value).flatMap(originsIn)]
}

describe('a wood’s page', () => {
  it.each([...proses.keys()])('%s: every figure and statement has sources that exist', (id) => {
    const prose = proses.get(id)
    if (!prose) throw new Error(id)
    const { wood: _wood, other: _other, ...shown } = viewOf(prose, measure)
    const origins = originsIn(shown)
    expect(origins.length).toBeGreaterThan(20)
    for (const { sources, formula } of origins) {
      for (const { key } of sources) expect(Object.keys(reference.sources)).toContain(key)
      if (formula) expect(Object.keys(reference.formulas)).toContain(formula)
    }
  })
  it('holds each against Douglas-fir, and that against white pine', () => {
    expect(against(oak, measure).id).toBe('douglas-fir')
    expect(against(woodOf('douglas-fir', measure), measure).id).toBe('eastern-white-pine')
  })
  it('shows the same rows for every wood, so that they compare', () => {
    const labels = [...reference.woods.values()].map((w) =>
      groupsOf(w, measure).flatMap((g) => g.rows.map((r) => r.label))
    )
    for (const own of labels) expect(own).toEqual(labels[0])
  })
})

describe('its figures', () => {
  const value = (q: Quantity | null) => Number(q?.value)
  it('shrink by the linear rule: a boxed square loses the mean of both shrinkages', () => {
    const share = 1 - measure.room.mean / oak.fibreSaturation
    expect(value(faceOf(oak, square, 'boxed', measure))).toBeCloseTo(
      ((oak.radial + oak.tangential) / 2) * share * SIDE,
      6
    )
  })
  it('open a check by the missing angle in the driest month', () => {
    const share = 1 - measure.room.driest / oak.fibreSaturation
    expect(value(checkOf(oak, square, measure))).toBeCloseTo(Math.PI * SIDE * (oak.tangential - oak.radial) * share, 6)
  })
  it('put oak where a framer expects it beside redwood', () => {
    expect(value(gapOf(oak, SIDE, measure))).toBeGreaterThan(1.5 * value(gapOf(redwood, SIDE, measure)))
    expect(value(yardOf(oak, square, measure))).toBeGreaterThan(2 * value(yardOf(redwood, square, measure)))
    expect(value(weightOf(oak, square, true, measure))).toBeGreaterThan(value(weightOf(redwood, square, true, measure)))
  })
  it('dry a thicker piece slower', () => {
    const thick = yardOf(redwood, [SIDE * 1.25, SIDE * 1.25], measure)
    expect(value(thick)).toBeGreaterThan(value(yardOf(redwood, square, measure)))
  })
  it('rank only woods that carry the truss', () => {
    const ranks = [...reference.woods.values()].map((w) => [rankOf(w, measure), lineOf(w, measure)?.passes ?? false])
    for (const [rank, passes] of ranks) expect(rank !== null).toBe(passes)
    const places = ranks.flatMap(([rank]) => (typeof rank === 'number' ? [rank] : []))
    expect(new Set(places).size).toBe(places.length)
  })
  it('draw no point of a log end outside its log', () => {
    for (const end of logEndsOf(oak, square, measure))
      for (const [x, y] of end.after) expect(Math.hypot(x, y)).toBeLessThanOrEqual(end.logRadius + 1e-6)
  })
})

describe('a wood for a comparison', () => {
  it('brings the sources and formulas that its figures open to', () => {
    const { library, ...shown } = compareWood('white-oak', measure)
    for (const { sources, formula } of originsIn(shown)) {
      for (const { key } of sources) expect(Object.keys(library.sources)).toContain(key)
      if (formula) expect(Object.keys(library.formulas)).toContain(formula)
    }
  })
  it('is refused by a name that there is not', () => {
    expect(() => compareWood('ebony', measure)).toThrow(/ebony/)
  })
})
