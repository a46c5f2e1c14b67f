/** Reference design values of a wood for a section and grade: tabulated where there is a row, derived where there is none. */

import type { Origin } from '../data/quantity'
import type { ClearStrength, DesignRow, Grade } from '../data/reference'
import { INCH } from '../data/units'
import type { TemperatureFactors } from './factors'

/** MPa. `derived` is true where no table holds the wood and the values come from small clear specimens. */
export interface DesignValues {
  readonly bending: number
  readonly tension: number
  readonly shear: number
  readonly compressionPerp: number
  readonly compression: number
  readonly elasticity: number
  readonly elasticityMin: number
  /** The printed values hold for wet service already. */
  readonly wetIncluded: boolean
  readonly derived: boolean
  readonly origin: Origin
}

/** Strength ratios and divisors of the ASTM route, from `content/limits.json`. */
export interface DerivationFactors {
  readonly ratio: Readonly<Record<Grade, number>>
  /** Share of the derived strength that is taken, 0 to 1. */
  readonly caution: number
  readonly origin: Origin
}

/** Actual sizes, mm: shorter side, then longer side. */
export type Section = readonly [number, number]

export type SizeClass = 'BS' | 'PT'

/** Beams and stringers have a depth more than 2 in above their breadth; posts and timbers do not. Source: nds-supplement-4d. */
export function sizeClassOf([breadth, depth]: Section): SizeClass {
  return depth - breadth > 2 * INCH + 1e-6 ? 'BS' : 'PT'
}

/** The row for a group, grade and section, or null. */
export function tabulated(
  rows: readonly DesignRow[],
  group: string,
  grade: Grade,
  section: Section
): DesignValues | null {
  const wanted = sizeClassOf(section)
  const row = rows.find(
    (r) => r.group === group && r.grade === grade && (r.sizeClass === wanted || r.sizeClass === 'any')
  )
  return row ? { ...row, derived: false } : null
}

/**
 * Indicative design values from the strength of small clear green wood: 5 % exclusion (mean less 1.645 coefficients of
 * variation), divided by 2.1 (bending, shear) or 1.9 (compression), times the grade's strength ratio, the depth factor
 * to 12 in, and a share for caution. Returns null where bending, shear, compression or stiffness are not published.
 * Source: astm-d2555 (clear wood), astm-d245 (divisors, ratios). Coefficients of variation: wood-handbook-2010, Table 5-6.
 * Valid for timbers of 5 x 5 in and larger; an indication, not a design value.
 */
export function derivedValues(
  clear: ClearStrength | null,
  grade: Grade,
  factors: DerivationFactors
): DesignValues | null {
  if (!clear?.rupture || !clear.elasticity || !clear.compression || !clear.shear) return null
  const lower = (mean: number, variation: number) => mean * (1 - 1.645 * variation)
  const ratio = factors.ratio[grade]
  const depthFactor = (2 / 12) ** (1 / 9)
  const { caution } = factors
  const bending = (lower(clear.rupture, 0.16) / 2.1) * depthFactor * ratio * caution
  const elasticity = clear.elasticity * 0.94 * (grade === 'No.2' ? 0.8 : 1) * caution
  return {
    bending,
    tension: 0.55 * bending,
    shear: (lower(clear.shear, 0.14) / 2.1) * 0.5 * caution,
    compressionPerp: (clear.compressionPerp ?? clear.compression * 0.1) / 1.67,
    compression: (lower(clear.compression, 0.18) / 1.9) * Math.min(1, ratio + 0.15) * caution,
    elasticity,
    elasticityMin: elasticityMin(elasticity),
    wetIncluded: false,
    derived: true,
    origin: { mark: 'derived', sources: [...clear.origin.sources, ...factors.origin.sources] }
  }
}

/** Stiffness for stability of visually graded timber. Source: nds, Appendix D.4: E (1 - 1.645 COV) 1.03 / 1.66, COV 0.25. */
export function elasticityMin(elasticity: number): number {
  return (elasticity * (1 - 1.645 * 0.25) * 1.03) / 1.66
}

/** Values of wood that is held hot. Source: nds, 2.3.3 (C_t on every reference value). */
export function atTemperature(values: DesignValues, ct: TemperatureFactors): DesignValues {
  const { strength, tensionAndStiffness } = ct
  if (strength === 1 && tensionAndStiffness === 1) return values
  return {
    ...values,
    bending: values.bending * strength,
    shear: values.shear * strength,
    compression: values.compression * strength,
    compressionPerp: values.compressionPerp * strength,
    tension: values.tension * tensionAndStiffness,
    elasticity: values.elasticity * tensionAndStiffness,
    elasticityMin: values.elasticityMin * tensionAndStiffness
  }
}
