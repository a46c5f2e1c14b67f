/** The drying clock: its stages, what it says, and its door. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { clockOf, monthOf } from '../../src/choice/clock/clock'
import { CLOCK_RANGES, readClock } from '../../src/choice/clock/door'
import { clockReport } from '../../src/choice/clock/report'
import type { Clock, ClockAsked, ClockJob } from '../../src/choice/clock/types'
import { INCH } from '../../src/data/units'
import { reference, sheet } from '../reference'

const base: ClockAsked = {
  wood: 'douglas-fir',
  breadth: 8 * INCH,
  depth: 8 * INCH,
  place: 'portland-or',
  exposure: 'heated',
  seasoning: 'green',
  felledMonth: 1,
  yardWeeks: 52,
  kilnWeeks: 7,
  shopWeeks: 8,
  heating: 'first-winter'
}
const jobOf = (change: Partial<ClockAsked> = {}): ClockJob => {
  const read = readClock({ ...base, ...change }, reference)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.job
}
const run = (change: Partial<ClockAsked> = {}): Clock => clockOf(jobOf(change), reference)
const moment = (clock: Clock, id: string) => {
  const found = clock.milestones.find((m) => m.id === id)
  if (!found) throw new Error(`no ${id}`)
  return found
}
const ids = (clock: Clock) => clock.milestones.map((m) => m.id)

describe('the stages of a job', () => {
  it('green into a heated house: felled, raised, closed in, heated, years on', () => {
    const clock = run()
    expect(ids(clock)).toEqual(['felled', 'raised', 'enclosed', 'heated', 'settled'])
    expect(moment(clock, 'raised').day).toBeCloseTo(8 * 7, 6)
    expect(moment(clock, 'heated').month).toBe(11)
  })
  it('under a roof or in a cold barn there is no heating, and outside no closing in', () => {
    expect(ids(run({ exposure: 'unheated' }))).toEqual(['felled', 'raised', 'enclosed', 'settled'])
    expect(ids(run({ exposure: 'roofed' }))).toEqual(['felled', 'raised', 'settled'])
    expect(ids(run({ exposure: 'weather' }))).toEqual(['felled', 'raised', 'settled'])
  })
  it('the yard, the kiln and the vacuum come first where there is one', () => {
    expect(moment(run({ seasoning: 'air' }), 'dried').day).toBeCloseTo(52 * 7, 6)
    expect(ids(run({ seasoning: 'rfv' }))[0]).toBe('dried')
  })
  it('a kiln brings the mean to what it is sold at, in the weeks it is given, with a drier shell', () => {
    for (const kilnWeeks of [4, 7, 20]) {
      const out = moment(run({ seasoning: 'kiln', kilnWeeks }), 'dried')
      expect(out.mean).toBeCloseTo(0.15, 2)
      // The last step may overshoot the day a little.
      expect(out.day / 7).toBeGreaterThan(kilnWeeks * 0.98)
      expect(out.day / 7).toBeLessThan(kilnWeeks * 1.1)
      expect(out.shell).toBeLessThan(out.core - 0.03)
    }
  })
  it('heating at once comes before the first winter, and that before the next year', () => {
    const day = (heating: string) => moment(run({ heating }), 'heated').day
    expect(day('at-once')).toBeLessThan(day('first-winter'))
    expect(day('next-year') - day('first-winter')).toBeCloseTo(365.25, 6)
  })
  it('enclosed in spring, the first heating waits for November', () => {
    for (const felledMonth of [1, 2, 4]) {
      expect(moment(run({ felledMonth, shopWeeks: 4 }), 'heated').month, `felled in ${felledMonth}`).toBe(11)
    }
  })
  it('enclosed in winter, the first heating is then', () => {
    const clock = run({ felledMonth: 10 })
    expect(moment(clock, 'heated').day).toBeCloseTo(moment(clock, 'enclosed').day, 6)
  })
})

describe('what is still to come', () => {
  it('all of it at the saw, less at each moment, and next to none where a vacuum dried it for a porch', () => {
    const clock = run()
    expect(moment(clock, 'felled').toCome).toBe(1)
    const shares = clock.milestones.map((m) => m.toCome)
    for (let i = 1; i < shares.length; i++) expect(shares[i]).toBeLessThanOrEqual(shares[i - 1] ?? 0)
    expect(moment(run({ seasoning: 'rfv', exposure: 'roofed', place: 'seattle-wa' }), 'raised').toCome).toBeLessThan(
      0.05
    )
  })
  it('across the timber at each moment: even at the saw, drier at the face than in the middle while it dries', () => {
    const clock = run()
    const [felled, ...later] = clock.milestones
    expect(new Set(felled?.profile.map((p) => p.moisture)).size).toBe(1)
    for (const { profile, mean, shell } of later) {
      const [face, middle] = [profile[0], profile.at(-1)]
      expect(face?.moisture).toBeLessThan(middle?.moisture ?? 0)
      expect(middle?.from).toBeGreaterThan(90)
      expect(mean).toBeGreaterThan(face?.moisture ?? 1)
      expect(shell).toBeGreaterThanOrEqual(face?.moisture ?? 1)
    }
  })
  it('the longer in the yard the less is left for the frame', () => {
    const left = (yardWeeks: number) => moment(run({ seasoning: 'air', yardWeeks }), 'raised').toCome
    expect(left(26)).toBeGreaterThan(left(52))
    expect(left(52)).toBeGreaterThan(left(156))
  })
  it('thicker timbers show it later', () => {
    const half = (inches: number) => run({ breadth: inches * INCH, depth: inches * INCH }).half ?? Infinity
    expect(half(4)).toBeLessThan(half(6))
    expect(half(6)).toBeLessThan(half(10))
  })
  it('the outside is furthest ahead in the first heated winter, not in the summer before', () => {
    const clock = run({ wood: 'eastern-white-pine', place: 'burlington-vt' })
    expect([11, 12, 1, 2, 3, 4]).toContain(monthOf(15 + clock.steepest.day))
    expect(clock.steepest.day).toBeGreaterThan(moment(clock, 'heated').day)
  })
})

describe('whatever is asked', () => {
  const any = fc.record({
    wood: fc.constantFrom(...reference.woods.keys()),
    place: fc.constantFrom(...reference.places.keys()),
    breadth: fc.double({ min: 50.8, max: 600, noNaN: true }),
    depth: fc.double({ min: 50.8, max: 600, noNaN: true }),
    exposure: fc.constantFrom('heated', 'unheated', 'roofed', 'weather'),
    seasoning: fc.constantFrom('green', 'air', 'kiln', 'rfv'),
    felledMonth: fc.integer({ min: 1, max: 12 }),
    yardWeeks: fc.integer({ min: 0, max: 520 }),
    kilnWeeks: fc.integer({ min: 1, max: 104 }),
    shopWeeks: fc.integer({ min: 0, max: 260 }),
    heating: fc.constantFrom('at-once', 'first-winter', 'next-year')
  })
  it('curves are finite, the band holds the mean, moments come in order, and sentences have no holes', () => {
    fc.assert(
      fc.property(any, (asked) => {
        const { curve, lines, says } = clockReport(jobOf(asked), reference)
        for (const list of [curve.mean, curve.low, curve.high, curve.shell, curve.core, curve.air]) {
          expect(list.length).toBe(curve.days.length)
          expect(list.every((m) => Number.isFinite(m) && m >= 0)).toBe(true)
        }
        for (let i = 1; i < curve.milestones.length; i++) {
          expect(curve.milestones[i]?.day).toBeGreaterThanOrEqual(curve.milestones[i - 1]?.day ?? 0)
        }
        expect(lines.length).toBe(curve.milestones.length)
        for (const s of says) {
          for (const [, name] of s.text.matchAll(/\{(\w+)\}/g)) expect(s.values).toHaveProperty(name ?? '')
        }
      }),
      { numRuns: 80 }
    )
  }, 60_000)
  it('the door names what it cannot read, and never throws', () => {
    const wild = fc.oneof(fc.double(), fc.string(), fc.constant(undefined), fc.integer())
    fc.assert(
      fc.property(
        fc.record(Object.fromEntries(Object.keys(base).map((k) => [k, fc.option(wild, { nil: undefined })]))),
        (change) => {
          const asked = { ...base, ...change } as unknown as ClockAsked
          const read = readClock(asked, reference)
          if (read.ok) expect(clockOf(read.job, reference).days.length).toBeGreaterThan(0)
          else expect(read.problems.length).toBeGreaterThan(0)
        }
      ),
      { numRuns: 300 }
    )
  })
  it.each(Object.entries(CLOCK_RANGES))(
    '%s: the ends of its range are in, beyond them is not',
    (field, [low, high]) => {
      const seasoning = field === 'kilnWeeks' ? 'kiln' : 'air'
      const ok = (value: number) => readClock({ ...base, seasoning, [field]: value }, reference).ok
      expect([ok(low), ok(high), ok(low - 1), ok(high + 1), ok(Number.NaN)]).toEqual([true, true, false, false, false])
    }
  )
})

describe('in the brief', () => {
  it('stands for the leading option, and agrees with its delivered moisture', () => {
    const brief = makeBrief(
      {
        project: 'great-room',
        role: 'structure',
        exposure: 'heated',
        place: 'burlington-vt',
        stands: 'w104',
        carries: 'truss'
      },
      { ...sheet, seasonings: sheet.seasonings.filter((s) => s.id === 'air') },
      reference
    )
    const lead = brief.lead
    const dried = brief.clock.lines.find((l) => l.id === 'dried')
    expect(lead?.option.seasoning).toBe('air')
    // The list is judged on a coarser grid: within half a point.
    expect(Math.abs(Number(dried?.mean.value) - Number(lead?.figures.moistureDelivered.value))).toBeLessThan(0.005)
  })
})
