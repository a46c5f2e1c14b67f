/** From the order to a settled frame: that it agrees with the options, with the dates, and with the seasons. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { factsFrom } from '../../src/choice/facts'
import { type Judged, judgeAll } from '../../src/choice/judge'
import { scheduleOf } from '../../src/choice/schedule/schedule'
import type { Schedule, ScheduleRow } from '../../src/choice/schedule/types'
import type { Answers } from '../../src/choice/types'
import { yardCourse } from '../../src/choice/yard'
import { FOOT, INCH, PSF } from '../../src/data/units'
import { plainSentence } from '../../src/ui/say/sentence'
import { dayOfMean } from '../../src/wood/drying'
import { reference, sheet } from '../reference'
import { few, full } from './any-answers'

const rowOf = ({ rows }: Schedule, seasoning: string): ScheduleRow => {
  const row = rows.find((r) => r.seasoning === seasoning)
  if (!row) throw new Error(`no row ${seasoning}`)
  return row
}
const text = (row: ScheduleRow) => plainSentence(row.says, 'us').replace(/\u00a0/g, ' ')
const week = (row: ScheduleRow, id: string) => row.marks.find((m) => m.id === id)?.week ?? null
/** Every question answered, so that nothing has to be carried through. */
const HALL: Answers = {
  project: 'great-room',
  role: 'structure',
  exposure: 'heated',
  place: 'burlington-vt',
  carries: 'beam',
  span: 12 * FOOT,
  spacing: 8 * FOOT,
  count: 4,
  slope: 8 / 12,
  snow: 30 * PSF,
  postHeight: 9 * FOOT,
  stick: 'none',
  size: 'none',
  depthLimit: 'none',
  finish: 'mid',
  knots: 'some',
  checks: 'fine',
  joints: 'fine',
  resin: 'fine',
  stands: 'w52',
  waits: 'weeks',
  heating: 'first-winter',
  budget: 'fair',
  local: 'no-matter',
  order: ['movement', 'look', 'cost', 'durability', 'stoutness', 'time', 'local']
}
const hall = (change: Answers = {}, shop = few) => makeBrief({ ...HALL, ...change }, shop, reference).schedule

/** Whatever is answered and whichever way leads. */
function sound(schedule: Schedule, judged: readonly Judged[]) {
  for (const row of schedule.rows) {
    const own = judged.find((j) => j.facts.option.id === row.option)
    if (!own) throw new Error(row.option)
    const ready = Number(row.ready.value)
    expect(ready, row.option).toBeCloseTo(own.facts.readyWeeks, 9)
    expect(row.ready.low ?? ready).toBeLessThanOrEqual(ready + 1e-9)
    expect(row.ready.high ?? ready).toBeGreaterThanOrEqual(ready - 1e-9)
    expect(row.in).toBe(own.in)
    if (row.stages.length === 0) {
      expect(own.fired.some((r) => r.effect === 'out' && r.about === 'drying')).toBe(true)
      continue
    }
    let at = 0
    for (const stage of row.stages) {
      expect(stage.from).toBeCloseTo(at, 9)
      expect(stage.to).toBeGreaterThan(stage.from)
      at = stage.to
    }
    expect(row.stages.find((s) => s.id === 'joinery')?.to).toBeCloseTo(ready, 9)
    expect(week(row, 'raised')).toBeCloseTo(at, 6)
    for (const mark of row.marks) expect(mark.week).toBeGreaterThanOrEqual(at - 1e-6)
  }
}

describe('the schedule', () => {
  it('has a row for each way in which the shop dries timber, in the order of its sheet', () => {
    const { rows } = hall()
    expect(rows.map((r) => r.seasoning)).toEqual(sheet.seasonings.map((s) => s.id))
    expect(rows.filter((r) => r.first)).toHaveLength(1)
  })
  it('agrees with every option that it tells of, whatever is answered', () => {
    fc.assert(
      fc.property(full, fc.nat(), (answers, pick) => {
        const { judged, context } = judgeAll(answers, few, reference)
        const first = judged[pick % judged.length] as Judged
        // Any clock will do for the leading row: its marks are not asked about here.
        const { clock } = makeBrief(HALL, few, reference)
        const schedule = scheduleOf(first, judged, clock.curve, context)
        const others = { ...schedule, rows: schedule.rows.filter((r) => !r.first) }
        sound(others, judged)
        expect(schedule.rows.filter((r) => r.first)).toHaveLength(1)
      }),
      { numRuns: 25 }
    )
  }, 120_000)
  it('agrees with the leading option and its clock', () => {
    for (const begins of ['winter', 'spring', 'summer', 'autumn', 'unsure']) {
      const brief = makeBrief({ ...HALL, begins }, few, reference)
      sound(brief.schedule, judgeAll({ ...HALL, begins }, few, reference).judged)
      const first = brief.schedule.rows.find((r) => r.first)
      expect(first?.option).toBe(brief.lead?.option.id)
      expect(first?.ready.value).toBe(brief.lead?.figures.readyWeeks.value)
      const moment = (id: string) => brief.clock.curve.milestones.find((m) => m.id === id)?.day ?? 0
      expect((week(first as ScheduleRow, 'heated') ?? 0) - (week(first as ScheduleRow, 'raised') ?? 0)).toBeCloseTo(
        (moment('heated') - moment('raised')) / 7,
        9
      )
    }
  })
  it('shows the wait for a wood that the shop must ask for', () => {
    const woods = few.woods.map((w) => ({ ...w, onRequest: true }))
    const asked = hall({}, { ...few, woods })
    for (const row of asked.rows.filter((r) => r.stages.length > 0)) {
      expect(row.stages[0]?.id).toBe('asked')
      expect(row.stages[0]?.to).toBe(sheet.requestWeeks)
    }
  })
  it('leaves out what cannot be dried so, and says why', () => {
    const { rows } = hall({ size: [16 * INCH, 16 * INCH] })
    const kiln = rows.find((r) => r.seasoning === 'kiln')
    expect(kiln?.stages).toEqual([])
    expect(kiln && text(kiln)).toMatch(/^Kiln-dried: ruled out, too thick to dry through\.$/)
  })
})

describe('against the date', () => {
  /** Green is ready in its lead time and the joinery: six weeks are answered. */
  const green = (ready: number) => {
    const lead = sheet.seasonings.find((s) => s.id === 'green')?.leadWeeks ?? 0
    return rowOf(hall({ stands: 'w6' }, { ...few, joineryWeeks: ready - lead }), 'green')
  }
  it.each([
    [5.4, '1 week before your date', true],
    [5.6, 'on your date', true],
    [6, 'on your date', true],
    [6.5, 'on your date', true],
    [6.6, 'ruled out, too late', false],
    [8, '2 weeks after your date', false]
  ])('ready in %d of 6 weeks: %s', (ready, words, keeps) => {
    const row = green(ready)
    expect(text(row)).toContain(words)
    expect(row.in).toBe(keeps)
  })
  it('no hurry: no date, and nothing early or late', () => {
    const schedule = hall({ stands: 'none' })
    expect(schedule.dateWeek).toBeNull()
    for (const row of schedule.rows) expect(text(row)).not.toMatch(/your date/)
  })
  it('a later date gives the yard more time, never less, and leaves the others as they are', () => {
    const all = ['w13', 'w26', 'w52', 'w104', 'none'].map((stands) => {
      const { judged } = judgeAll({ ...HALL, stands }, few, reference)
      return new Map(judged.map((j) => [j.facts.option.id, j.facts]))
    })
    for (let i = 1; i < all.length; i++) {
      for (const [id, later] of all[i] ?? []) {
        const sooner = all[i - 1]?.get(id)
        if (!sooner) throw new Error(id)
        if (later.option.seasoning === 'air') {
          expect(later.yardWeeks, id).toBeGreaterThanOrEqual(sooner.yardWeeks - 1e-9)
          expect(later.readyWeeks, id).toBeGreaterThanOrEqual(sooner.readyWeeks - 1e-9)
        } else expect(later.readyWeeks, id).toBe(sooner.readyWeeks)
      }
    }
  })
  it('says when lying cut would carry it past the date', () => {
    const row = rowOf(hall({ stands: 'w26', waits: 'year' }), 'green')
    expect(text(row)).toMatch(/ready in 5 weeks.*before your date\. Lying cut, it would be raised .* after it\./)
    expect(text(rowOf(hall({ stands: 'w26', waits: 'weeks' }), 'green'))).not.toMatch(/Lying cut/)
  })
  it('a kiln that takes its longest can miss a date that it keeps on the average', () => {
    const kiln = rowOf(hall(), 'kiln')
    const ready = Number(kiln.ready.value)
    // So much more joinery that the middle is on the date.
    const slow = hall({}, { ...few, joineryWeeks: sheet.joineryWeeks + 52 - ready })
    expect(text(rowOf(slow, 'kiln'))).toMatch(/on your date, \d weeks? after it if it dries as slowly as it may/)
  })
})

describe('the season of felling', () => {
  it('left open is winter, and named only where it was told', () => {
    const told = makeBrief({ ...HALL, begins: 'winter' }, few, reference)
    for (const open of [HALL, { ...HALL, begins: 'unsure' }]) {
      const brief = makeBrief(open, few, reference)
      for (const part of ['options', 'lead', 'woods', 'clock', 'movement', 'sizes', 'cost'] as const)
        expect(brief[part], part).toEqual(told[part])
      expect(brief.schedule.named).toBe(false)
      expect(brief.schedule.rows.map((r) => r.stages)).toEqual(told.schedule.rows.map((r) => r.stages))
      for (const row of brief.schedule.rows) expect(text(row)).not.toMatch(/in (March|April|November)/)
    }
    expect(told.schedule.named).toBe(true)
  })
  it('is the month of the clock', () => {
    const months = { winter: 1, spring: 4, summer: 7, autumn: 10 }
    for (const [begins, month] of Object.entries(months)) {
      expect(factsFrom({ begins }, reference).felledMonth).toBe(month)
      expect(makeBrief({ ...HALL, begins }, few, reference).clock.curve.felledMonth).toBe(month)
    }
  })
  it('touches nothing but what lies in the yard', () => {
    const at = (begins: string) => judgeAll({ ...HALL, begins }, few, reference).judged.map((j) => j.facts)
    const winter = new Map(at('winter').map((o) => [o.option.id, o]))
    for (const o of at('summer').filter((o) => o.option.seasoning !== 'air')) {
      expect([o.delivered, o.readyWeeks, o.jobCost]).toEqual(
        [winter.get(o.option.id)].flatMap((w) => [w?.delivered, w?.readyWeeks, w?.jobCost])
      )
    }
  })
  it('red oak ties, 7 x 9 in, 85 to 50 %: 5 months piled in spring, twice as long in autumn (mathewson-1949)', () => {
    const oak = reference.woods.get('red-oak')
    if (!oak) throw new Error('no red oak')
    const months = (begins: string) => {
      const facts = factsFrom({ place: 'indianapolis-in', exposure: 'roofed', begins }, reference)
      const course = yardCourse(
        { ...oak, id: 'ties', greenWhole: 0.85 },
        [7 * INCH, 9 * INCH],
        150,
        0.5,
        facts,
        reference
      )
      return dayOfMean(course, 0.5) / (365.25 / 12)
    }
    expect(months('spring')).toBeGreaterThan(4)
    expect(months('spring')).toBeLessThan(6.5)
    expect(months('autumn')).toBeGreaterThan(1.5 * months('spring'))
    expect(months('autumn')).toBeLessThan(11)
  })
})
