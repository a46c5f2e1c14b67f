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

/** A combination in which a roof load and a floor load act whole, in part, or not at all. */
export interface Combination {
  readonly name: 'D' | 'D + L' | 'D + S' | 'D + 0.75 L + 0.75 S'
  /** The roof load that acts (roof live load or snow), with the share taken of it; null where none acts. */
  readonly roof: Variable | null
  readonly floor: Variable | null
  /** Share taken of both, 0 to 1. */
  readonly share: number
  /** That of the shortest load in it. */
  readonly duration: Duration
}

/**
 * D; D with each floor load; D with each roof load; D with 0.75 of both. S stands for snow or roof live load, never both.
 * Source: asce-7, 2.4.1 (combinations 1 to 4), nds, 2.3.2.
 */
export function combinations(roof: readonly Variable[], floor: readonly Variable[]): readonly Combination[] {
  return [
    { name: 'D', roof: null, floor: null, share: 0, duration: 'permanent' },
    ...floor.map((f) => ({ name: 'D + L', roof: null, floor: f, share: 1, duration: f.duration }) as const),
    ...roof.map((r) => ({ name: 'D + S', roof: r, floor: null, share: 1, duration: r.duration }) as const),
    ...roof.flatMap((r) =>
      floor.map(
        // Snow and roof live load are always shorter than the floor's ten years.
        (f) => ({ name: 'D + 0.75 L + 0.75 S', roof: r, floor: f, share: 0.75, duration: r.duration }) as const
      )
    )
  ]
}
