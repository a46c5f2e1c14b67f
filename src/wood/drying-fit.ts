/** The one factor of a wood, fitted so that a 1 in board dries in the published number of days, season by season. */
import { type DryingWood, dayOfMean, dryingCourse, type Stage } from './drying'

export interface BoardTimes {
  /** Days from green to 20 %: stacked in good weather, and stacked late in the year. */
  readonly min: number
  readonly max: number
}

export interface Fit {
  /** Middle: its quickest and slowest start of the year lie about the published pair evenly, by ratio. */
  readonly factor: number
  /** With it the slowest start takes the published longest. */
  readonly slowest: number
  /** With it the quickest start takes the published shortest. */
  readonly quickest: number
  /** Days of the quickest and the slowest start with the middle factor. */
  readonly days: BoardTimes
}

const INCH = 25.4
/** Moisture at which the published times end. Source: fpl-gtr-117. */
const BOARD_DRY = 0.2
const STARTS = 12
const YEAR = 365.25
/** Rates of drying and of the factor go nearly together, so a few corrections by the ratio find it to a thousandth. */
const CORRECTIONS = 12
const NEAR = 1e-3

/**
 * Days that a wide 1 in board takes from green to 20 % in the yard, by the month in which it is stacked.
 * Source: fpl-gtr-117 (the board and its end), derived (the course).
 */
export function boardDays(wood: DryingWood, green: number, yard: Stage): number[] {
  return Array.from({ length: STARTS }, (_, k) =>
    dayOfMean(
      dryingCourse({
        wood,
        breadth: INCH,
        depth: 1e6,
        moisture: green,
        startDay: ((k + 0.5) * YEAR) / STARTS,
        stages: [{ ...yard, untilMean: BOARD_DRY }]
      }),
      BOARD_DRY
    )
  )
}

/**
 * Fit the factor of a wood to the published range. Source: fpl-gtr-117 (the range), derived (the fit).
 * @param green moisture of the green board, fraction, above 20 %
 * @throws RangeError where the yard never dries the board to 20 %, or the board is not wetter than that.
 */
export function fitFactor(wood: Omit<DryingWood, 'factor'>, green: number, yard: Stage, published: BoardTimes): Fit {
  if (!(green > BOARD_DRY)) throw new RangeError('a board to be dried is wetter than 20 %')
  const times = (factor: number): BoardTimes => {
    const days = boardDays({ ...wood, factor }, green, yard)
    return { min: Math.min(...days), max: Math.max(...days) }
  }
  const solve = (figure: (t: BoardTimes) => number) => {
    let factor = 0.4
    for (let i = 0; i < CORRECTIONS; i++) {
      const found = figure(times(factor))
      if (!Number.isFinite(found)) throw new RangeError('the yard does not dry a board to 20 %')
      const ratio = found / figure(published)
      factor *= ratio
      if (Math.abs(ratio - 1) < NEAR) break
    }
    return factor
  }
  const factor = solve((t) => Math.sqrt(t.min * t.max))
  const ends = [factor, solve((t) => t.min), solve((t) => t.max)]
  return { factor, slowest: Math.min(...ends), quickest: Math.max(...ends), days: times(factor) }
}
