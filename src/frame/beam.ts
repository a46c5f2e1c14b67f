/** A simple beam under uniform load: bending, shear, deflection. N, mm, MPa. */
import { type Check, check } from './check'
import {
  beamStabilityFactor,
  creepFactor,
  type Duration,
  effectiveLengthUniform,
  loadDurationFactor,
  sizeFactor
} from './factors'
import type { DesignValues, Section } from './values'

export interface UniformBeam {
  /** Clear span, mm. */
  readonly span: number
  /** Permanent line load, N/mm. */
  readonly dead: number
  /** Variable line load (snow, roof or floor), N/mm. */
  readonly live: number
  readonly liveDuration: Duration
  /** Distance between points held sideways, mm; 0 where planks or purlins hold the top edge. */
  readonly unsupported: number
  /** Permitted deflection as span over this, under live load and under all of it. */
  readonly liveRatio: number
  readonly totalRatio: number
  readonly unseasonedOrWet: boolean
  /** Share of the section left after joinery at the worst place in bending, 0 to 1. */
  readonly net: number
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

/**
 * Checks of a simple beam: bending (nds, 3.3), shear (nds, 3.4, load within a depth of the support left out), deflection
 * with creep on the permanent part (nds, 3.5.2). The worse of permanent load alone and all load governs strength.
 */
export function checkBeam(beam: UniformBeam, section: Section, values: DesignValues): Check[] {
  const [b, d] = section
  const { span } = beam
  const inertia = momentOfInertia(section)
  const modulus = sectionModulus(section) * beam.net
  const cases: readonly (readonly [number, Duration])[] = [
    [beam.dead, 'permanent'],
    [beam.dead + beam.live, beam.liveDuration]
  ]
  const bending = cases.map(([load, duration]) =>
    check(
      'bending',
      'stress',
      uniformMoment(load, span) / modulus,
      adjustedBending(values, section, duration, beam.unsupported),
      'nds 3.3'
    )
  )
  const shear = cases.map(([load, duration]) => {
    const force = load * Math.max(0, span / 2 - d)
    return check('shear', 'stress', (3 * force) / (2 * b * d), values.shear * loadDurationFactor(duration), 'nds 3.4')
  })
  const live = uniformDeflection(beam.live, span, values.elasticity, inertia)
  const dead = uniformDeflection(beam.dead, span, values.elasticity, inertia)
  const more = (list: Check[]) => list.reduce((a, c) => (c.ratio > a.ratio ? c : a))
  return [
    more(bending),
    more(shear),
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
