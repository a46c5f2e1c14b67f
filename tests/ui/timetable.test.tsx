/** The timetable: months on its scale, what is drawn of a row, and that nothing leaves the sheet. */
import { render } from 'preact-render-to-string'
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import type { Answers } from '../../src/choice/types'
import { INCH } from '../../src/data/units'
import { goesOn, Timetable, timetableSays } from '../../src/ui/pictures/Timetable'
import {
  lastWeek,
  monthTicks,
  placeKey,
  SHEET,
  shownMarks,
  weekAt,
  winterWeeks
} from '../../src/ui/pictures/timetable-scale'
import { few } from '../choice/any-answers'
import { reference } from '../reference'

const schedule = (change: Answers = {}) =>
  makeBrief({ exposure: 'heated', place: 'burlington-vt', stands: 'w52', ...change }, few, reference).schedule

describe('the scale', () => {
  it('counts months from the order until the season is told, then names them', () => {
    const labels = (at: Parameters<typeof monthTicks>[0]) => monthTicks(at, 60).map((t) => t.label)
    expect(labels({ named: false, orderDay: 0 }).filter(Boolean)).toEqual(['month 0', '4', '6', '8', '10', '12'])
    // Ordered on the first of October of the year before: 92 days before January.
    expect(labels({ named: true, orderDay: -92 }).filter(Boolean).slice(0, 3)).toEqual(['Nov', 'Jan', 'Mar'])
  })
  it('a winter lies on its months', () => {
    const [first] = winterWeeks(0, 104)
    expect(first?.[0]).toBeCloseTo(0, 9)
    // January and February.
    expect(first?.[1]).toBeCloseTo(((365.25 / 12) * 2) / 7, 6)
  })
  it('reaches the date and every raising, and leaves far moments to the list', () => {
    const of = schedule()
    const end = lastWeek(of)
    expect(end).toBeGreaterThan(52)
    for (const row of of.rows) for (const m of row.marks) if (m.id === 'raised') expect(m.week).toBeLessThan(end)
    expect(goesOn(of)).toBe(of.rows.some((row) => row.marks.some((m) => m.week > end)))
    expect(weekAt(end)(end)).toBeLessThanOrEqual(SHEET)
  })
})

describe('the picture', () => {
  it('has the date, every row by name, and a key to all that is drawn', () => {
    const of = schedule({ begins: 'spring' })
    const html = render(<Timetable of={of} />)
    for (const row of of.rows) expect(html).toContain(row.name)
    expect(html).toContain('your date')
    const key = placeKey(of.rows, lastWeek(of), 0)
    for (const { of: item, x } of key) {
      expect(html).toContain(item.label)
      expect(x).toBeLessThan(SHEET)
    }
    const drawn = of.rows.flatMap((row) => [...row.stages, ...shownMarks(row, lastWeek(of))]).map((item) => item.id)
    expect(new Set(key.map(({ of: item }) => item.id))).toEqual(new Set(drawn))
    expect(html).not.toMatch(/NaN|Infinity|style=/)
  })
  it('draws no date where there is no hurry, and no bar for what cannot be dried so', () => {
    const of = schedule({ stands: 'none', size: [16 * INCH, 16 * INCH] })
    expect(render(<Timetable of={of} />)).not.toContain('your date')
    expect(timetableSays(of)).toMatch(/Kiln-dried ruled out/)
  })
})
