/** A simple beam under uniform load: bending, shear, deflection. N, mm, MPa. */
import { largest, loadCases, type Variable } from './cases'
import { type Check, check, worse } from './check'
import {
  beamStabilityFactor,
  creepFactor,
  type Duration,
  effectiveLengthUniform,
  loadDurationFactor,
  sizeFactor,
  wetServiceFactors
} from './factors'
import type { DesignValues, Section } from './values'

export interface UniformBeam {
  /** Clear span, mm. */
  readonly span: number
  /** Permanent line load, N/mm. */
  readonly dead: number
  /** Variable line loads (snow, roof or floor), N/mm, each acting alone. */
  readonly variable: readonly Variable[]
  /** Distance between points held sideways, mm; 0 where planks or purlins hold the top edge. */
  readonly unsupported: number
  /** Permitted deflection as span over this, under live load and under all of it. */
  readonly liveRatio: number
  readonly totalRatio: number
  readonly unseasonedOrWet: boolean
  /** Breadth that a mortise takes where the beam is bent most, mm. */
  readonly mortise: number
}

/** Largest moment of a simple beam under uniform load, N mm. Source: derived (statics): w L^2 / 8. */
export function uniformMoment(load: number, span: number): number {
  return (load * span * span) / 8
}

/** Mid-span deflection of a simple beam under uniform load, mm. Source: derived (elastic line): 5 w L^4 / (384 E I). */
export function uniformDeflection(load: number, span: number, elasticity: number, inertia: number): number {
  return (5 * load * span ** 4) / (384 * elasticity * inertia)
}

export const sectionModulus = ([b, d]: Section): number => (b * d * d) / 6
export const momentOfInertia = ([b, d]: Section): number => (b * d ** 3) / 12

/**
 * Adjusted bending stress F_b'. Source: nds, 3.3 and Table 4.3.1.
 * @throws RangeError from the stability factor where the beam is too slender.
 */
export function adjustedBending(
  values: DesignValues,
  section: Section,
  duration: Duration,
  unsupported: number
): number {
  const star = values.bending * loadDurationFactor(duration) * sizeFactor(section[1])
  if (unsupported <= 0) return star
  const length = effectiveLengthUniform(unsupported, section[1])
  return star * beamStabilityFactor(length, section[0], section[1], star, values.elasticityMin)
}

/** What a mortise through the depth leaves of the breadth. Source: derived (net section; nds, 3.1.2). */
export const netSection = ([b, d]: Section, mortise: number): Section => [Math.max(b - mortise, 0.1 * b), d]

/**
 * Checks of a simple beam: bending on the net section (nds, 3.3), shear with all the load and no notch (nds, 3.4),
 * deflection with creep on the permanent part (nds, 3.5.2). The worst load case governs strength.
 */
export function checkBeam(beam: UniformBeam, section: Section, values: DesignValues): Check[] {
  const [b, d] = section
  const { span } = beam
  const inertia = momentOfInertia(section)
  const modulus = sectionModulus(netSection(section, beam.mortise))
  const cases = loadCases(beam.dead, beam.variable)
  const bending = cases.map(({ load, duration }) =>
    check(
      'bending',
      'stress',
      uniformMoment(load, span) / modulus,
      adjustedBending(values, section, duration, beam.unsupported),
      'nds 3.3'
    )
  )
  const shear = cases.map(({ load, duration }) =>
    check(
      'shear',
      'stress',
      (3 * load * span) / 2 / (2 * b * d),
      values.shear * loadDurationFactor(duration),
      'nds 3.4'
    )
  )
  const live = uniformDeflection(largest(beam.variable), span, values.elasticity, inertia)
  const dead = uniformDeflection(beam.dead, span, values.elasticity, inertia)
  return [
    worse(bending as [Check, ...Check[]]),
    worse(shear as [Check, ...Check[]]),
    check('deflection-live', 'gap', live, span / beam.liveRatio, 'ibc Table 1604.3'),
    check(
      'deflection-total',
      'gap',
      creepFactor(beam.unseasonedOrWet) * dead + live,
      span / beam.totalRatio,
      'nds 3.5.2'
    )
  ]
}

/**
 * Length of bearing that each end needs, mm, so that the fibres are not crushed. Source: nds, 3.10.2.
 * @param reaction N @param wet service above 19 % moisture
 */
export function bearingLength(reaction: number, breadth: number, values: DesignValues, wet: boolean): number {
  return reaction / (breadth * values.compressionPerp * wetServiceFactors(wet, values.wetIncluded).compressionPerp)
}
