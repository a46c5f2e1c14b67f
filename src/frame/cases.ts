/** Load cases of allowable stress design: permanent load alone, and with each variable load in turn. */
import type { Duration } from './factors'

/** A variable load and the duration that goes with it; the unit is the caller's (N/mm or N or Pa). */
export interface Variable {
  readonly load: number
  readonly duration: Duration
}

/**
 * D, and D with each variable load; roof live load and snow are never added to each other.
 * Source: asce-7, 2.4.1 (combinations 1 to 3), nds, 2.3.2 (the shortest load sets the duration factor).
 */
export function loadCases(dead: number, variable: readonly Variable[]): readonly Variable[] {
  return [
    { load: dead, duration: 'permanent' },
    ...variable.map((v) => ({ load: dead + v.load, duration: v.duration }))
  ]
}

/** The largest of the variable loads, for deflection; 0 where there is none. */
export function largest(variable: readonly Variable[]): number {
  return variable.reduce((most, v) => Math.max(most, v.load), 0)
}
