/** A post under a central load. N, mm, MPa. */
import { loadCases, type Variable } from './cases'
import { type Check, check, worse } from './check'
import { columnStabilityFactor, type Duration, loadDurationFactor, wetServiceFactors } from './factors'
import type { DesignValues, Section } from './values'

export interface Post {
  /** Height between points held sideways, mm, pinned at both ends: braces or walls hold the head. */
  readonly height: number
  readonly dead: number
  readonly variable: readonly Variable[]
  readonly wet: boolean
}

/** Largest slenderness of a column in service. Source: nds, 3.7.1.4. */
export const MAX_SLENDERNESS = 50

/**
 * Adjusted compression F_c' = F_c C_D C_M C_P. Source: nds, 3.7. C_F is 1 for timbers (nds-supplement-4d).
 * @param slenderness effective length over the side it bends about, at most 50
 */
export function adjustedCompression(
  values: DesignValues,
  slenderness: number,
  duration: Duration,
  wet: boolean
): number {
  const star =
    values.compression * loadDurationFactor(duration) * wetServiceFactors(wet, values.wetIncluded).compression
  return star * columnStabilityFactor(slenderness, star, values.elasticityMin)
}

/** Slenderness (nds, 3.7.1.4) and compression (nds, 3.7), the worse of permanent load alone and all load. */
export function checkPost(post: Post, section: Section, values: DesignValues): Check[] {
  const slenderness = post.height / section[0]
  const slender = check('slenderness', 'ratio', slenderness, MAX_SLENDERNESS, 'nds 3.7.1.4')
  if (slender.ratio > 1) return [slender]
  const area = section[0] * section[1]
  const cases = loadCases(post.dead, post.variable).map(({ load, duration }) =>
    check('compression', 'stress', load / area, adjustedCompression(values, slenderness, duration, post.wet), 'nds 3.7')
  )
  return [slender, worse(cases as [Check, ...Check[]])]
}
