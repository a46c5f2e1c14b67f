/** The smallest section of a series that passes every check. */
import { type Check, worst } from './check'
import type { DesignValues, Section } from './values'

export interface Sized {
  /** The section found, or null where none passes. */
  readonly section: Section | null
  /** Checks of the section found, or of the largest tried. */
  readonly checks: readonly Check[]
  readonly governing: Check | null
  readonly values: DesignValues | null
}

/**
 * Try the series in order of area, then of depth, and take the first section that passes.
 * @param series actual sizes, mm
 * @param valuesFor design values for that section, or null where the wood has none
 * @param checksFor the checks of that section
 */
export function smallestSection(
  series: readonly Section[],
  valuesFor: (section: Section) => DesignValues | null,
  checksFor: (section: Section, values: DesignValues) => Check[]
): Sized {
  let last: Sized = { section: null, checks: [], governing: null, values: null }
  for (const section of series) {
    const values = valuesFor(section)
    if (!values) continue
    const checks = checksFor(section, values)
    const governing = worst(checks)
    if (governing && governing.ratio <= 1) return { section, checks, governing, values }
    last = { section: null, checks, governing, values }
  }
  return last
}

/** The series as it is tried: by area, and of equal areas the deeper first. */
export function inTryingOrder(series: readonly Section[]): Section[] {
  return [...series].sort((p, q) => p[0] * p[1] - q[0] * q[1] || q[1] - p[1])
}
