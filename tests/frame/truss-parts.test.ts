/** Sections are searched by one number; the checks in words have to come to the same. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { INCH } from '../../src/data/units'
import { PARTS, type TrussForm } from '../../src/frame/truss-forces'
import { checkPart, partRatio, type TrussJob } from '../../src/frame/truss-parts'
import type { DesignValues, Section } from '../../src/frame/values'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const jobs: fc.Arbitrary<TrussJob> = fc.record({
  form: fc.constantFrom<TrussForm>('king', 'king-struts', 'queen'),
  shape: fc.record({ span: between(3000, 18_000), pitch: between(0.2, 1.5), queenAt: between(0.2, 0.42) }),
  dead: between(0.5, 8),
  tieDead: between(0, 4),
  roof: fc.tuple(between(0.5, 8), between(0, 20)).map(
    ([live, snow]) =>
      [
        { load: live, duration: 'seven-days' },
        { load: snow, duration: 'snow' }
      ] as const
  ),
  floor: fc
    .option(between(0.5, 10), { nil: null })
    .map((load) => (load ? [{ load, duration: 'ten-years' } as const] : [])),
  oneSided: fc.option(fc.record({ leeward: between(1, 25), windward: between(0, 5) }), { nil: null }),
  wet: fc.boolean(),
  unseasonedOrWet: fc.boolean(),
  liveRatio: fc.constant(240),
  totalRatio: fc.constant(180),
  floorLiveRatio: fc.constant(360),
  floorTotalRatio: fc.constant(240),
  mortise: fc.constant(2 * INCH)
})
const sections: fc.Arbitrary<Section> = fc
  .tuple(between(100, 450), between(100, 450))
  .map(([p, q]) => [Math.min(p, q), Math.max(p, q)])
const own = fc.record({ roof: between(0, 2), tie: between(0, 1), straining: between(0, 1) })
const VALUES: DesignValues = {
  bending: 8.3,
  tension: 5.7,
  shear: 1.17,
  compressionPerp: 4.3,
  compression: 6.9,
  elasticity: 11_000,
  elasticityMin: 4000,
  wetIncluded: false,
  derived: false,
  origin: { mark: 'derived', sources: [] }
}

it('every part of any truss: the number is the greatest ratio of its checks, and enough of it tells pass from fail', () => {
  let failed = 0
  let passed = 0
  fc.assert(
    fc.property(jobs, sections, own, (job, section, weights) => {
      for (const id of PARTS[job.form]) {
        const checks = checkPart(job, id, weights, section, VALUES)
        const worst = Math.max(...checks.map((c) => c.ratio))
        expect(partRatio(job, id, weights, section, VALUES), id).toBe(worst)
        expect(partRatio(job, id, weights, section, VALUES, 1) > 1, id).toBe(worst > 1)
        if (worst > 1) failed++
        else passed++
      }
    }),
    { numRuns: 500 }
  )
  expect(failed).toBeGreaterThan(100)
  expect(passed).toBeGreaterThan(100)
})
