/** Decay: the climate's hazard, the use class, and how long heartwood of a durability class lasts in it. */
import type { Exposure } from './service'

/**
 * Each month's part of the climate index for decay above ground. Source: scheffer-1971.
 * @param temperatureF monthly mean, degrees F
 * @param wetDays mean number of days with at least 0.01 in of rain
 */
export function schefferMonths(temperatureF: readonly number[], wetDays: readonly number[]): number[] {
  return temperatureF.map((t, i) => (Math.max(0, t - 35) * Math.max(0, (wetDays[i] ?? 0) - 3)) / 30)
}

/** Climate index for decay above ground: the sum of its months. Source: scheffer-1971. Below 35 low, above 65 high. */
export function schefferIndex(temperatureF: readonly number[], wetDays: readonly number[]): number {
  return schefferMonths(temperatureF, wetDays).reduce((sum, part) => sum + part, 0)
}

export type Hazard = 'low' | 'moderate' | 'high'
export type UseClass = '1' | '2' | '3.1' | '3.2' | '4'

/** Hazard word for an index. Source: scheffer-1971 (limits passed in from `content/decay.json`). */
export function hazardOf(index: number, moderateFrom: number, highFrom: number): Hazard {
  return index < moderateFrom ? 'low' : index < highFrom ? 'moderate' : 'high'
}

/** How well water is kept off the wood and let go: caps and stand-off feet, the usual, or water that can stand. */
export type Details = 'sheltered' | 'usual' | 'holding'

const USE_CLASSES: Readonly<Record<Exposure, readonly [UseClass, UseClass, UseClass]>> = {
  heated: ['1', '1', '1'],
  unheated: ['2', '2', '2'],
  roofed: ['2', '3.1', '3.2'],
  weather: ['3.1', '3.2', '4'],
  ground: ['4', '4', '4']
}
const COLUMN: Readonly<Record<Details, 0 | 1 | 2>> = { sheltered: 0, usual: 1, holding: 2 }

/**
 * Use class of the exposure, moved one step by the details outdoors: what sheds water and dries is better off than the
 * plain case, what holds water worse. Class 4 off the ground is for wood that stays wet as if it stood in it.
 * Source: en-335-2013, use classes; din-68800 and common-practice for the steps.
 */
export function useClassOf(exposure: Exposure, details: Details = 'usual'): UseClass {
  return USE_CLASSES[exposure][COLUMN[details]]
}

/** Whether heartwood does without treatment, best first. */
export const VERDICTS = ['enough', 'usually', 'depends', 'treat-advised', 'treat'] as const
export type Verdict = (typeof VERDICTS)[number]
export type SufficiencyMatrix = Readonly<Record<'1' | '2' | '3' | '4', readonly Verdict[]>>

/**
 * Whether wood of a durability class, 1 to 5, is enough by nature in a use class. Source: en-460-1994, Table 1.
 * @throws RangeError for a class that is not a whole number from 1 to 5
 */
export function sufficiencyOf(matrix: SufficiencyMatrix, useClass: UseClass, durabilityClass: number): Verdict {
  const verdict = matrix[useClass.charAt(0) as '1' | '2' | '3' | '4'][durabilityClass - 1]
  if (!verdict) throw new RangeError(`durability class ${durabilityClass} is not a whole number from 1 to 5`)
  return verdict
}
