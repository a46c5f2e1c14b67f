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

/** Use class of the exposure. Source: en-335-2013. Details of the building can move it; this is the plain case. */
export function useClassOf(exposure: Exposure): UseClass {
  const classes: Record<Exposure, UseClass> = { heated: '1', unheated: '2', roofed: '3.1', weather: '3.2', ground: '4' }
  return classes[exposure]
}
