/** What must hold of any timber drying anywhere. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dryingWood } from '../../src/choice/yard'
import { transverseDiffusion } from '../../src/wood/diffusivity'
import { type Course, dayOfMean, dryingCourse, onDay, type Stage } from '../../src/wood/drying'
import { boardDays, fitFactor } from '../../src/wood/drying-fit'
import { equilibriumMoisture } from '../../src/wood/moisture'
import { reference } from '../reference'

const wood = fc.constantFrom(...reference.woods.values())
const place = fc.constantFrom(...reference.places.values())
const side = fc.double({ min: 50, max: 400, noNaN: true })
const yard = (of: { temperatureC: readonly number[]; humidity: readonly number[] }, days = 730): Stage => ({
  air: {
    temperatureC: of.temperatureC,
    equilibrium: of.temperatureC.map((t, i) => equilibriumMoisture(t, of.humidity[i] ?? 0))
  },
  days,
  surface: reference.drying.pile
})
const room: Stage = { air: { temperatureC: 21, equilibrium: 0.07 }, days: 730, surface: reference.drying.open }
const job = fc.record({ wood, place, breadth: side, depth: side, startDay: fc.integer({ min: 0, max: 365 }) })
type Job = typeof job extends fc.Arbitrary<infer T> ? T : never
const run = (j: Job, stages: readonly Stage[], change: { factor?: number; breadth?: number } = {}): Course =>
  dryingCourse({
    wood: { ...dryingWood(j.wood), factor: j.wood.drying.factor * (change.factor ?? 1) },
    breadth: change.breadth ?? j.breadth,
    depth: j.depth,
    moisture: j.wood.greenWhole,
    startDay: j.startDay,
    stages
  })
const some = { numRuns: 60 }

describe('a timber in the yard, then in a heated room', () => {
  it('loses what leaves through its faces, no more and no less', () => {
    fc.assert(
      fc.property(job, (j) => {
        const c = run(j, [yard(j.place), room])
        expect((c.mean[0] ?? 0) - c.lost).toBeCloseTo(c.mean.at(-1) ?? 0, 10)
      }),
      some
    )
  })
  it('stays between its green moisture and the driest air that it meets', () => {
    fc.assert(
      fc.property(job, (j) => {
        const stage = yard(j.place)
        const c = run(j, [stage, room])
        const driest = Math.min(0.07, ...(stage.air.equilibrium as readonly number[]))
        for (const list of [c.mean, c.shell, c.core]) {
          for (const m of list) {
            expect(m).toBeGreaterThan(driest - 0.002)
            expect(m).toBeLessThan(Math.max(j.wood.greenWhole, ...(stage.air.equilibrium as readonly number[])) + 0.002)
          }
        }
      }),
      some
    )
  })
  it('in a steady room every day is drier, the shell before the core, and it shrinks as it dries', () => {
    fc.assert(
      fc.property(job, (j) => {
        const c = run(j, [room])
        for (let i = 1; i < c.days.length; i++) {
          expect(c.mean[i]).toBeLessThanOrEqual((c.mean[i - 1] ?? 0) + 1e-9)
          expect(c.shrunk[i]).toBeGreaterThanOrEqual((c.shrunk[i - 1] ?? 0) - 1e-6)
          expect(c.shell[i]).toBeLessThanOrEqual((c.core[i] ?? 0) + 1e-3)
        }
      }),
      some
    )
  })
  it('thicker is slower, and a quicker wood quicker', () => {
    fc.assert(
      fc.property(job, (j) => {
        const mean = (c: Course) => c.mean.at(-1) ?? 0
        const as = mean(run(j, [room]))
        expect(mean(run(j, [room], { breadth: j.breadth * 1.15 }))).toBeGreaterThanOrEqual(as - 1e-4)
        expect(mean(run(j, [room], { factor: 1.2 }))).toBeLessThanOrEqual(as + 1e-4)
      }),
      some
    )
  })
  it('turned on its side it dries the same', () => {
    fc.assert(
      fc.property(job, (j) => {
        const a = run(j, [yard(j.place, 365)])
        const b = run({ ...j, breadth: j.depth, depth: j.breadth }, [yard(j.place, 365)])
        expect(b.mean.at(-1)).toBeCloseTo(a.mean.at(-1) ?? 0, 3)
        expect(b.shell.at(-1)).toBeCloseTo(a.shell.at(-1) ?? 0, 2)
      }),
      some
    )
  })
})

describe('reading a course', () => {
  const c = run(
    {
      wood: reference.woods.get('douglas-fir') as Job['wood'],
      place: reference.places.get('portland-or') as Job['place'],
      breadth: 203,
      depth: 203,
      startDay: 15
    },
    [room]
  )
  it('the day of a moisture has that moisture', () => {
    for (const m of [0.3, 0.25, 0.2]) expect(onDay(c, c.mean, dayOfMean(c, m))).toBeCloseTo(m, 9)
  })
  it('what is never reached is never; what it starts below is at once', () => {
    expect(dayOfMean(c, 0.01)).toBe(Number.POSITIVE_INFINITY)
    expect(dayOfMean(c, 5)).toBe(0)
  })
  it('ends each stage on its day, or sooner once dry enough', () => {
    const j = {
      wood: reference.woods.get('douglas-fir') as Job['wood'],
      place: reference.places.get('portland-or') as Job['place'],
      breadth: 203,
      depth: 203,
      startDay: 15
    }
    const staged = run(j, [
      { ...room, days: 100 },
      { ...room, untilMean: 0.2 }
    ])
    expect(staged.ends[0]).toBeCloseTo(100, 6)
    expect(staged.mean.at(-1)).toBeLessThanOrEqual(0.2)
    expect(staged.ends[1]).toBeLessThan(830)
  })
})

describe('diffusion and fit: what is refused', () => {
  it('moisture below zero, wood without hollows, stages and sizes that cannot be', () => {
    expect(() => transverseDiffusion(-0.1, 20, 0.5, 0.3)).toThrow(RangeError)
    expect(() => transverseDiffusion(0.3, 20, 1.3, 0.3)).toThrow(RangeError)
    const spec = {
      wood: { gravityGreen: 0.5, fibreSaturation: 0.3, factor: 0.4 },
      breadth: 200,
      depth: 200,
      moisture: 0.5,
      startDay: 0,
      stages: [room]
    }
    expect(() => dryingCourse({ ...spec, breadth: 0 })).toThrow(RangeError)
    expect(() => dryingCourse({ ...spec, moisture: -1 })).toThrow(RangeError)
    expect(() => dryingCourse({ ...spec, wood: { ...spec.wood, factor: 0 } })).toThrow(RangeError)
    expect(() => dryingCourse({ ...spec, stages: [{ ...room, days: Number.NaN }] })).toThrow(RangeError)
    expect(() => dryingCourse({ ...spec, stages: [{ ...room, surface: 0 }] })).toThrow(RangeError)
  })
  it('a board that is dry already, or a yard that never dries it', () => {
    const red = { gravityGreen: 0.56, fibreSaturation: 0.3 }
    expect(() => fitFactor(red, 0.15, room, { min: 10, max: 20 })).toThrow(RangeError)
    const bog: Stage = { ...room, air: { temperatureC: 10, equilibrium: 0.25 } }
    expect(() => fitFactor(red, 0.8, bog, { min: 10, max: 20 })).toThrow(RangeError)
  })
  it('the fit gives back the times that a known factor makes', () => {
    const spruce = reference.woods.get('red-spruce') as Job['wood']
    const stage = yard(reference.places.get('albany-ny') as Job['place'], 1500)
    const days = boardDays({ ...dryingWood(spruce), factor: 0.5 }, 0.5, stage)
    const found = fitFactor(spruce, 0.5, stage, { min: Math.min(...days), max: Math.max(...days) })
    expect(found.factor).toBeCloseTo(0.5, 2)
  })
  it('warmer and wetter wood passes moisture faster; denser wood slower', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.28, noNaN: true }),
        fc.double({ min: -20, max: 60, noNaN: true }),
        fc.double({ min: 0.28, max: 0.7, noNaN: true }),
        (m, t, g) => {
          const d = transverseDiffusion(m, t, g, 0.3)
          expect(transverseDiffusion(m + 0.02, t, g, 0.3)).toBeGreaterThan(d)
          expect(transverseDiffusion(m, t + 5, g, 0.3)).toBeGreaterThan(d)
          expect(transverseDiffusion(m, t, g + 0.02, 0.3)).toBeLessThan(d)
        }
      )
    )
  })
})
