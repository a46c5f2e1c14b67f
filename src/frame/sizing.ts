/** The smallest section of a series that passes every check. */
import { type Check, worst } from './check'
import type { DesignValues, Section } from './values'

const NONE: Sized = { section: null, checks: [], governing: null, ratio: null, values: null }

export interface Sized {
  /** The section found, or null where none passes. */
  readonly section: Section | null
  /** Checks of the section found, or of the largest tried. */
  readonly checks: readonly Check[]
  readonly governing: Check | null
  /** That of the governing check; null where there is none. */
  readonly ratio: number | null
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
  let last = NONE
  for (const section of series) {
    const values = valuesFor(section)
    if (!values) continue
    const checks = checksFor(section, values)
    const governing = worst(checks)
    const ratio = governing?.ratio ?? null
    if (ratio !== null && ratio <= 1) return { section, checks, governing, ratio, values }
    last = { section: null, checks, governing, ratio, values }
  }
  return last
}

/**
 * A section that was found by its ratio alone; its checks are worked out when they are asked for, since few frames of many
 * are ever looked into. @param tried the section found, or the largest that fails @param ratio null where no section has values
 */
export function sizedBy(
  tried: Section | undefined,
  values: DesignValues | null,
  ratioFor: (section: Section, values: DesignValues) => number,
  checksFor: (section: Section, values: DesignValues) => Check[]
): Sized {
  if (!tried || !values) return NONE
  const ratio = ratioFor(tried, values)
  let found: readonly Check[] | undefined
  const checks = () => {
    found ??= checksFor(tried, values)
    return found
  }
  return {
    section: ratio <= 1 ? tried : null,
    get checks() {
      return checks()
    },
    get governing() {
      return worst(checks())
    },
    ratio,
    values
  }
}

/** The series as it is tried: by area, and of equal areas the deeper first. */
export function inTryingOrder(series: readonly Section[]): Section[] {
  return [...series].sort((p, q) => p[0] * p[1] - q[0] * q[1] || q[1] - p[1])
}
