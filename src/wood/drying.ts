/**
 * How fast a timber dries in the yard: a first estimate from the published times for 1 in boards.
 * A board that takes `days` from green to 20 % in air of equilibrium E dries as M = E + (M0 - E) exp(-t/tau);
 * tau grows with thickness to a stated power; a square-edged timber loses water through both pairs of faces.
 * Source: fpl-gtr-117 (times for 4/4 boards), wengert-qa (power of thickness), derived (the form).
 */

export interface DryingRate {
  /** Green moisture, fraction. */
  readonly green: number
  /** Equilibrium in this yard, fraction. */
  readonly equilibrium: number
  /** Equilibrium that the published board times are taken to hold for, fraction. */
  readonly boardEquilibrium: number
  /** Days for a 1 in board from green to 20 %. */
  readonly boardDays: number
  /** Power of thickness; 1.58 from 60 days at 1 in and 180 days at 2 in. */
  readonly power: number
}

/** Moisture at which the published board times end. Source: fpl-gtr-117. */
const BOARD_TARGET = 0.2
const INCH = 25.4

/**
 * Days until the section's mean moisture falls e-fold towards equilibrium. Source: derived (see the head of this file).
 * @throws RangeError where green moisture is not above 20 %, or the board's yard not below it.
 */
export function dryingTimeConstant(rate: DryingRate, breadth: number, depth: number): number {
  const { green, boardEquilibrium, boardDays, power } = rate
  if (!(green > BOARD_TARGET && boardEquilibrium < BOARD_TARGET && boardDays > 0)) {
    throw new RangeError('drying rate needs green moisture above 20 % and a yard drier than 20 %')
  }
  const board = boardDays / Math.log((green - boardEquilibrium) / (BOARD_TARGET - boardEquilibrium))
  const through = (size: number) => board * (size / INCH) ** power
  return 1 / (1 / through(breadth) + 1 / through(depth))
}

/** Mean moisture after a time in the yard, fraction. Source: derived. */
export function moistureAfter(rate: DryingRate, breadth: number, depth: number, days: number): number {
  const tau = dryingTimeConstant(rate, breadth, depth)
  return rate.equilibrium + (rate.green - rate.equilibrium) * Math.exp(-Math.max(0, days) / tau)
}

/** Days in the yard until the mean moisture is `target`; Infinity where the yard is not that dry. Source: derived. */
export function daysToReach(rate: DryingRate, breadth: number, depth: number, target: number): number {
  if (target >= rate.green) return 0
  if (target <= rate.equilibrium) return Number.POSITIVE_INFINITY
  return (
    dryingTimeConstant(rate, breadth, depth) * Math.log((rate.green - rate.equilibrium) / (target - rate.equilibrium))
  )
}
