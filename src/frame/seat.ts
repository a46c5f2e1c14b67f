/** Bearing seats: a beam's end on the shelf of a housing in its post, or on the top of the post. N, mm, MPa. */
import type { JointRules } from '../data/reference'
import { INCH } from '../data/units'
import type { Variable } from './cases'
import { type Duration, loadDurationFactor, wetServiceFactors } from './factors'
import { governingCase, type JointCheck, jointCheck, passes, refuse } from './joint-check'
import type { DesignValues, Section } from './values'

export interface Piece {
  readonly section: Section
  readonly values: DesignValues
}

/**
 * Hankinson: strength at an angle between that along the grain and that across it. Source: nds, 3.10.3 (and 12.3.4).
 * @param angle between load and grain, radians, 0 to a right angle
 */
export function hankinson(along: number, across: number, angle: number): number {
  refuse({ 'strength along the grain': along, 'strength across the grain': across })
  if (!(angle >= 0 && angle <= Math.PI / 2 + 1e-9)) throw new RangeError('load to grain lies from 0 to 90 degrees')
  return (along * across) / (along * Math.sin(angle) ** 2 + across * Math.cos(angle) ** 2)
}

/**
 * Bearing area factor C_b: (lb + 3/8 in) / lb for bearings shorter than 6 in that lie 3 in or more from the end, else 1.
 * Source: nds, 3.10.4. @param length lb along the grain, mm @param fromEnd from the bearing to the nearer end, mm, 0 and up
 */
export function bearingAreaFactor(length: number, fromEnd: number): number {
  refuse({ 'bearing length': length })
  if (!(fromEnd >= 0)) throw new RangeError('a bearing lies on its timber')
  return length < 6 * INCH && fromEnd >= 3 * INCH ? (length + 0.375 * INCH) / length : 1
}

/** Bearing strength across the grain F'c-perp, MPa; no duration factor. Source: nds, 3.10.2 and Table 4.3.1. */
export function bearingAcross(values: DesignValues, wet: boolean): number {
  return values.compressionPerp * wetServiceFactors(wet, values.wetIncluded).compressionPerp
}

/** Bearing strength on end grain F*c, MPa. Source: nds, 3.10.1: all factors but C_P. */
export function bearingAlong(values: DesignValues, duration: Duration, wet: boolean): number {
  return values.compression * loadDurationFactor(duration) * wetServiceFactors(wet, values.wetIncluded).compression
}

export interface Seat {
  readonly possible: boolean
  readonly reason: 'housing-too-deep' | 'seat-too-small' | null
  /** Depth of the housing or length of the seat that carries the load, along the beam, mm. */
  readonly needed: number
  /** The least housing or the one needed, if that is more; for a post's top, what there is. */
  readonly length: number
  readonly most: number
  readonly checks: readonly [JointCheck, ...JointCheck[]]
}

interface Bearing {
  readonly cases: readonly Variable[]
  readonly beam: Piece
  readonly post: Piece
  /** Breadth that a tenon takes out of the seat, mm; 0 where none does. */
  readonly tenon: number
  readonly wet: boolean
  /** From the seat to the nearer end of the beam, mm; 0 where the beam ends on it. */
  readonly fromEnd: number
}

/** Lengths that the two timbers need, and the checks of a seat of a given length. */
function onSeat(rules: JointRules, spec: Bearing) {
  const { beam, post, wet } = spec
  const breadth = Math.min(beam.section[0], post.section[0]) - spec.tenon
  refuse({ 'breadth of a seat': breadth })
  const most = spec.cases.reduce((a, c) => Math.max(a, c.load), 0)
  const { load, duration } = governingCase(spec.cases)
  const across = bearingAcross(beam.values, wet)
  const along = rules.endGrain.share * bearingAlong(post.values, duration, wet)
  const acrossAt = (length: number) => across * bearingAreaFactor(length, spec.fromEnd)
  // (lb + 3/8) b F = R where the area factor holds; else lb b F = R.
  const plain = most / (breadth * across)
  const eased = plain - 0.375 * INCH
  const acrossNeed = spec.fromEnd >= 3 * INCH && plain < 6 * INCH ? Math.max(eased, 0) : plain
  return {
    needed: Math.max(acrossNeed, load / (breadth * along)),
    checks: (length: number): readonly [JointCheck, JointCheck] => [
      jointCheck('bearing-across', 'stress', most / (breadth * length), acrossAt(length), 'nds 3.10.2'),
      jointCheck('bearing-along', 'stress', load / (breadth * length), along, 'nds 3.10.1')
    ]
  }
}

/**
 * A beam housed into the side of a post by its full breadth: how deep the housing must be so that neither the beam's underside
 * nor the end grain of its shelf is crushed. What a tenon below carries is left out. Source: nds, 3.10.1 and 3.10.2;
 * the depths that are cut are trade practice (common-practice).
 * @throws RangeError for loads below zero, no load case, or a tenon as broad as the seat
 */
export function housedSeat(rules: JointRules, spec: Bearing): Seat {
  const { needed, checks } = onSeat(rules, spec)
  const most = Math.min(rules.housing.most, rules.housing.mostShare * spec.post.section[1])
  const length = Math.min(Math.max(needed, rules.housing.least), most)
  const depth = jointCheck('housing-depth', 'gap', Math.max(needed, rules.housing.least), most, 'practice')
  const possible = passes(depth)
  return {
    possible,
    reason: possible ? null : 'housing-too-deep',
    needed,
    length,
    most,
    checks: [depth, ...checks(length)]
  }
}

/**
 * A beam across the top of a post: the post's side along the beam is the seat, less its tenon. Source: nds, 3.10.1, 3.10.2 and
 * 3.10.4 where the seat lies in from the beam's end.
 * @throws RangeError for loads below zero, no load case, or a tenon as broad as the seat
 */
export function postTop(rules: JointRules, spec: Bearing): Seat {
  const { needed, checks } = onSeat(rules, spec)
  const length = spec.post.section[0]
  const both = checks(length)
  const possible = both.every(passes)
  return { possible, reason: possible ? null : 'seat-too-small', needed, length, most: length, checks: both }
}
