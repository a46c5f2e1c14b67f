/**
 * Twist from spiral grain. Wood whose fibres wind round the stem turns along its length as the rings shrink. Angles and
 * turns in radians, lengths in mm, strains as fractions. A band, never a promise: no two sticks have the same grain.
 */
import { type Heart, PITH_CLEARANCE, seatInLog } from './section'

/** Slope of the grain against the stem's axis: greatest near the pith, falling outwards. */
export interface GrainProfile {
  /** At the pith, radians. */
  readonly atPith: number
  /** Distance from the pith at which it has fallen to 1/e of that, mm. */
  readonly fall: number
}

/** Slope of grain at a distance from the pith, radians. Source: derived (falling form ours; levels with the content). */
export function grainAngle(grain: GrainProfile, radius: number): number {
  return grain.atPith * Math.exp(-radius / grain.fall)
}

/** What a turn is per length, angle and distance, besides those: 2 s/(1 + s). */
const drive = (strain: number): number => (2 * strain) / (1 + strain)

/**
 * Turn of a thin shell about the pith over its length, radians: 2 L g s / (r (1 + s)).
 * Source: stevens-johnston-1960. It explains about two thirds of the twist that is seen (spruce-distortion).
 * @param angle slope of grain g, radians
 * @param radius distance from the pith r, mm, above zero
 * @param length L, mm
 * @param strain tangential shrinkage s, fraction
 * @throws RangeError where the radius is not above zero or the length or strain below it.
 */
export function shellTwist(angle: number, radius: number, length: number, strain: number): number {
  if (!(radius > 0 && length >= 0 && strain >= 0)) throw new RangeError('twist needs a radius, a length and a strain')
  return (length * angle * drive(strain)) / radius
}

/**
 * Turn of a piece that boxes the pith, radians. Each shell would turn by its own amount; bound together they turn by the
 * mean weighted with their stiffness in torsion, r3 dr, in a round of the same polar moment, R2 = (b2 + d2)/6.
 * Source: spruce-shells-2006, shells that twist together; the weights derived (their torques sum to nothing).
 */
export function boxedTwist(
  grain: GrainProfile,
  breadth: number,
  depth: number,
  length: number,
  strain: number
): number {
  if (!(breadth > 0 && depth > 0 && length >= 0 && strain >= 0)) throw new RangeError('twist needs sizes and a strain')
  const round = Math.sqrt((breadth * breadth + depth * depth) / 6)
  const x = round / grain.fall
  // Integral of g(r)/r times r3, from 0 to R, over that of r3.
  const sum = grain.fall ** 3 * (2 - Math.exp(-x) * (x * x + 2 * x + 2))
  return (length * drive(strain) * grain.atPith * sum) / (round ** 4 / 4)
}

/**
 * Turn of a piece free of heart centre, radians: a shell at the root mean square distance of its section from the pith.
 * Source: derived (shell by stevens-johnston-1960, its radius from the way the piece sits in its log).
 */
export function freeTwist(grain: GrainProfile, breadth: number, depth: number, length: number, strain: number): number {
  const middle = PITH_CLEARANCE + seatInLog(breadth, depth).radius / 2
  const radius = Math.sqrt(middle * middle + (breadth * breadth + depth * depth) / 12)
  return shellTwist(grainAngle(grain, radius), radius, length, strain)
}

export interface Twist {
  /** Turn of one end against the other, radians. */
  readonly value: number
  readonly low: number
  readonly high: number
}

/**
 * The band of twist of a timber as its rings shrink by `strain`, radians. The formula explains a share of the scatter that is
 * seen; the rest, one standard deviation of it either way, is the band, with how far the wood's shrinkage scatters as an
 * independent part: about two sticks of three fall inside.
 * Source: derived (residual of a fit that explains x: sqrt((1 - x)/x) of what it gives; independent parts add as squares).
 * @param explained share of the variation that the formula explains, above 0 to 1
 * @param shrinks coefficient of variation of the shrinkage, fraction
 */
export function twistOf(
  heart: Heart,
  grain: GrainProfile,
  section: readonly [number, number],
  length: number,
  strain: number,
  explained: number,
  shrinks: number
): Twist {
  if (!(explained > 0 && explained <= 1)) throw new RangeError(`a share explained lies above 0 to 1, not ${explained}`)
  const turn = heart === 'boxed' ? boxedTwist : freeTwist
  const value = turn(grain, section[0], section[1], length, strain)
  const scatter = Math.hypot(Math.sqrt((1 - explained) / explained), shrinks)
  return { value, low: value * Math.max(0, 1 - scatter), high: value * (1 + scatter) }
}

/**
 * How far a corner stands off when the other three of a twisted face touch a flat, mm: the face times the sine of the turn.
 * Beyond a quarter turn it stands off by the whole face. Source: derived.
 */
export function cornerOff(turn: number, face: number): number {
  return face * Math.sin(Math.min(turn, Math.PI / 2))
}
