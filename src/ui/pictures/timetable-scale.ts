/**
 * Where things lie on the timetable: weeks along the line, rows down the sheet, months on the scale, the key below.
 * Drawing units throughout; nothing about wood.
 */
import type { Schedule, ScheduleMark, ScheduleRow, ScheduleStage } from '../../choice/schedule/types'
import { plainSentence } from '../say/sentence'
import { wintersBetween } from './clock-scale'

export const SHEET = 360
export const LETTERS = 14
export const LEFT = 3
const RIGHT = SHEET - 9
export const BAR = 14
export const TOP = 34

const MONTH = 365.25 / 12
const NAMES = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']
/** Moments this many times further off than the rest are left to the sentences, so that the first months stay readable. */
const FURTHER = 1.5
/** Weeks within which two moments are drawn as one. */
const TOGETHER = 0.5

/** Letters of the condensed face are a little under half as wide as high. */
export const widthOf = (text: string): number => text.length * LETTERS * 0.46

/** The last week that is drawn. */
export function lastWeek({ rows, dateWeek }: Pick<Schedule, 'rows' | 'dateWeek'>): number {
  const marks = rows.flatMap((row) => row.marks)
  const near = marks.filter((m) => m.id === 'raised' || m.id === 'heated').map((m) => m.week)
  const core = Math.max(dateWeek ?? 0, ...near, 8)
  return 1.03 * Math.max(core, ...marks.map((m) => m.week).filter((week) => week <= core * FURTHER))
}

export const weekAt =
  (end: number) =>
  (week: number): number =>
    LEFT + (week / end) * (RIGHT - LEFT)

/** Winters as weeks from the order. */
export function winterWeeks(orderDay: number, end: number): (readonly [number, number])[] {
  // Told from the middle of January.
  const middle = orderDay - MONTH / 2
  return wintersBetween(1, middle, middle + 7 * end).map(([a, b]) => [(a - middle) / 7, (b - middle) / 7])
}

export interface Tick {
  readonly x: number
  /** null between those that there is room to name. */
  readonly label: string | null
}
/** Months by name where they were told, else counted from the order. */
export function monthTicks({ named, orderDay }: Pick<Schedule, 'named' | 'orderDay'>, end: number): Tick[] {
  const x = weekAt(end)
  const wide = x(MONTH / 7) - x(0)
  const step = [1, 2, 3, 6, 12].find((n) => n * wide >= LETTERS * 2.3) ?? 24
  const ticks: Tick[] = []
  for (let n = named ? Math.ceil(orderDay / MONTH - 1e-6) : 0; ; n++) {
    const week = (n * MONTH - (named ? orderDay : 0)) / 7
    if (week > end) return ticks
    const name = named ? (NAMES[((n % 12) + 12) % 12] ?? null) : n === 0 ? 'month 0' : String(n)
    const room =
      n % step === 0 && x(week) < RIGHT - LETTERS * 2 && (named || n === 0 || x(week) > widthOf('month 0') + 9)
    ticks.push({ x: x(week), label: room ? name : null })
  }
}

/** Its name, with a word where the brief puts it first. */
export const nameOf = (row: ScheduleRow): string => (row.first && row.in ? `${row.name}, advised` : row.name)

export interface PlacedRow {
  readonly row: ScheduleRow
  /** Feet of its name and of the words beside it: on one line where both fit, else on two. */
  readonly name: number
  readonly told: number
  /** Top of its bar. */
  readonly bar: number
}
export function placeRows(rows: readonly ScheduleRow[]): {
  readonly rows: readonly PlacedRow[]
  readonly foot: number
} {
  let y = TOP + 6
  const placed = rows.map((row) => {
    const long = Math.max(...(['us', 'si'] as const).map((system) => widthOf(plainSentence(row.short, system))))
    const name = y + LETTERS
    const told = widthOf(nameOf(row)) + long > RIGHT - LEFT - 10 ? name + LETTERS + 2 : name
    const bar = told + 5
    y = bar + (row.stages.length > 0 ? BAR + 6 : 1)
    return { row, name, told, bar }
  })
  return { rows: placed, foot: y + 3 }
}

/** The moments of a row that are drawn: apart from the raising, and not beyond the sheet. */
export function shownMarks({ marks }: ScheduleRow, end: number): readonly ScheduleMark[] {
  const raised = marks[0]?.week ?? 0
  return marks.filter((m) => m.id === 'raised' || (m.week > raised + TOGETHER && m.week <= end))
}

export interface KeyItem {
  readonly of: ScheduleStage | ScheduleMark
  readonly x: number
  readonly y: number
}
export const SAMPLE = 20
/** Everything that is drawn, once, in lines as wide as the sheet. */
export function placeKey(rows: readonly ScheduleRow[], end: number, top: number): readonly KeyItem[] {
  const all = [...rows.flatMap((row) => row.stages), ...rows.flatMap((row) => shownMarks(row, end))]
  const found = new Map(all.map((item) => [item.id, item] as const))
  let x = LEFT
  let y = top
  return [...found.values()].map((of) => {
    const wide = SAMPLE + 5 + widthOf(of.label)
    if (x + wide > SHEET && x > LEFT) {
      x = LEFT
      y += LETTERS + 6
    }
    const item = { of, x, y }
    x += wide + 12
    return item
  })
}
