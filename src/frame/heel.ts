/**
 * The foot of a rafter stepped into its tie: the face of the step halves the angle between the two, so both are pressed at half
 * of it to their grain. N, mm, MPa, radians.
 */
import type { JointRules } from '../data/reference'
import { adjustedBending, sectionModulus } from './beam'
import { type Duration, loadDurationFactor } from './factors'
import { governingCase, type JointCheck, jointCheck, passes, refuse } from './joint-check'
import { bearingAcross, bearingAlong, hankinson, type Piece } from './seat'

export interface HeelCase {
  /** Push along the rafter at its foot, N. */
  readonly rafter: number
  /** Pull in the tie, which is the thrust on the step, N. */
  readonly tie: number
  readonly duration: Duration
}

export interface HeelSpec {
  readonly cases: readonly HeelCase[]
  /** Slope of the rafter, above 0 and below a right angle. */
  readonly angle: number
  readonly rafter: Piece
  readonly tie: Piece
  /** Breadth that a tenon in the step takes out, mm; 0 where there is none. */
  readonly tenon: number
  /** Wood of the tie beyond the step, mm, or null where it may be as long as is needed. */
  readonly beyond: number | null
  readonly wet: boolean
}

export interface Heel {
  readonly possible: boolean
  readonly reason: 'step-too-deep' | 'tie-too-short' | 'tie-too-weak' | null
  /** Depth of the step that bears the push, square to the tie, mm, and the most that may be cut. */
  readonly step: number
  readonly deepest: number
  /** Wood that the tie needs beyond the step, mm. */
  readonly plane: number
  /** Part of the tie's depth that the step takes. */
  readonly lost: number
  readonly checks: readonly [JointCheck, ...JointCheck[]]
}

/**
 * Most of the tie's depth that a step may take: so much up to one angle, less from another on, in proportion between.
 * Source: din-1052, stepped joints (recalled). @param angle above 0 and below a right angle
 */
export function stepShare(rules: JointRules, angle: number): number {
  if (!(angle > 0 && angle < Math.PI / 2)) throw new RangeError(`a rafter's slope lies above 0 and below 90 degrees`)
  const { gentle, gentleShare, steep, steepShare } = rules.step
  const along = Math.min(1, Math.max(0, (angle - gentle) / (steep - gentle)))
  return gentleShare + (steepShare - gentleShare) * along
}

/**
 * Strength of a step's face at half the rafter's slope to the grain of both timbers, the weaker of the two, MPa.
 * Source: nds, 3.10.3.
 */
export function stepBearing(spec: Pick<HeelSpec, 'rafter' | 'tie' | 'angle' | 'wet'>, duration: Duration): number {
  const of = ({ values }: Piece) =>
    hankinson(bearingAlong(values, duration, spec.wet), bearingAcross(values, spec.wet), spec.angle / 2)
  return Math.min(of(spec.rafter), of(spec.tie))
}

/**
 * Wood needed beyond a step so that its thrust does not shear the block off, mm: thrust / (b share F'v); half of F'v, since
 * the plane is loaded from one end. Source: nds, Appendix E.3 (recalled), taken over to a step: derived.
 * @param thrust N, 0 and up @param breadth of the step, mm @param shear F'v, MPa
 */
export function planeNeeded(rules: JointRules, thrust: number, breadth: number, shear: number): number {
  refuse({ breadth, shear })
  if (!(thrust >= 0)) throw new RangeError('a thrust must not be below zero')
  return thrust / (breadth * rules.plane.share * shear)
}

/**
 * A rafter's foot in its tie. The push is taken square to the face, C cos(a/2), over b h / cos(a/2) of it. The step is as deep
 * as bearing asks, or deeper where the plane beyond would else be longer than the steps that may be counted. The tie pulls on
 * what the step leaves, bent by half the step since the thrust enters there. Source: derived (statics), with nds, 3.10.3, 3.9.1
 * and Appendix E.3; depth of the step and length counted: din-1052 (recalled).
 * @throws RangeError for a slope outside 0 to 90 degrees, forces below zero, no case, or a tenon as broad as the step
 */
export function rafterHeel(rules: JointRules, spec: HeelSpec): Heel {
  const { cases, angle, tie } = spec
  const breadth = Math.min(spec.rafter.section[0], tie.section[0]) - spec.tenon
  const depth = tie.section[1]
  refuse({ 'breadth of a step': breadth, depth })
  const deepest = stepShare(rules, angle) * depth
  const half = Math.cos(angle / 2) ** 2
  const thrust = governingCase(cases.map((c) => ({ load: c.tie, duration: c.duration })))
  const shear = tie.values.shear * loadDurationFactor(thrust.duration)
  const plane = planeNeeded(rules, thrust.load, breadth, shear)
  // The case that asks for the deepest step: part of the bearing strength knows no duration, so each is tried.
  if (!cases.every((c) => c.rafter >= 0)) throw new RangeError('a push must not be below zero')
  const depths = cases.map((c) => ({ ...c, asks: (c.rafter * half) / (breadth * stepBearing(spec, c.duration)) }))
  const worst = depths.reduce((a, c) => (c.asks > a.asks ? c : a))
  const step = Math.max(rules.step.least, worst.asks, plane / rules.step.planeSteps)
  const cut = Math.min(step, deepest)
  const left: readonly [number, number] = [tie.section[0] - spec.tenon, depth - cut]
  const pull = thrust.load / (left[0] * left[1])
  const bend = (thrust.load * cut) / 2 / sectionModulus(left)
  const time = loadDurationFactor(thrust.duration)
  const net = pull / (tie.values.tension * time) + bend / adjustedBending(tie.values, left, thrust.duration, 0)
  const checks: [JointCheck, ...JointCheck[]] = [
    jointCheck('step-depth', 'gap', step, deepest, 'din-1052'),
    jointCheck(
      'bearing-slope',
      'stress',
      (worst.rafter * half) / (breadth * cut),
      stepBearing(spec, worst.duration),
      'nds 3.10.3'
    ),
    jointCheck('tie-tension', 'ratio', net, 1, 'nds 3.9.1')
  ]
  const have = spec.beyond === null ? null : Math.min(spec.beyond, rules.step.planeSteps * cut)
  if (have !== null) {
    if (!(have >= 0)) throw new RangeError('wood beyond a step must not be below zero')
    const holds = have * breadth * rules.plane.share * shear
    checks.push(jointCheck('shear-plane', 'force', thrust.load, holds, 'nds E.3'))
  }
  const failed = (id: JointCheck['id']) => checks.some((c) => c.id === id && !passes(c))
  const reason = failed('step-depth')
    ? 'step-too-deep'
    : failed('shear-plane')
      ? 'tie-too-short'
      : failed('tie-tension')
        ? 'tie-too-weak'
        : null
  return { possible: reason === null, reason, step, deepest, plane, lost: cut / depth, checks }
}
