/** Weeks and years in words. */
import { NBSP, plain, range } from './number'

const WEEKS_PER_MONTH = 4.345
const WEEKS_PER_YEAR = 52.18

type Unit = 'week' | 'month' | 'year'

/** The unit that a number of weeks is best said in: weeks up to ten, months up to a year and a half, then years. */
function unitOf(weeks: number): Unit {
  if (weeks <= 10) return 'week'
  return weeks < 78 ? 'month' : 'year'
}

function count(weeks: number, unit: Unit): number {
  if (unit === 'week') return Math.round(weeks)
  if (unit === 'month') return Math.round(weeks / WEEKS_PER_MONTH)
  const years = weeks / WEEKS_PER_YEAR
  return years < 5 ? Math.round(years * 2) / 2 : Math.round(years)
}

const words = (n: number, unit: Unit): string => `${plain(n, 1)}${NBSP}${unit}${n === 1 ? '' : 's'}`

/** "6 weeks", "about 5 months", "2 years"; nought is "at once". */
export function weeksInWords(weeks: number): string {
  const unit = unitOf(weeks)
  const n = count(weeks, unit)
  if (n === 0) return 'at once'
  const exact = Math.abs(weeks / (unit === 'year' ? WEEKS_PER_YEAR : 1) - n) < 0.02
  return unit === 'week' || exact ? words(n, unit) : `about${NBSP}${words(n, unit)}`
}

/** "5 to 8 months": both ends in the unit of the longer one, so that they can be compared at a glance. */
export function weeksRange(low: number, high: number): string {
  const unit = unitOf(high)
  const from = count(low, unit)
  const to = count(high, unit)
  if (from === to) return weeksInWords(high)
  return `${plain(from, 1)} to ${words(to, unit)}`
}

export function yearsInWords(years: number): string {
  const n = years < 5 ? Math.round(years * 2) / 2 : Math.round(years)
  return words(n, 'year')
}

export function yearsRange(low: number, high: number): string {
  return `${range(plain(Math.round(low)), plain(Math.round(high)))}${NBSP}years`
}
