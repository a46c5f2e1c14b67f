/** A notch on the tension side of a beam's end, and a timber hung from pegs: both may split along the grain. N, mm, MPa. */
import { type Duration, loadDurationFactor } from './factors'
import { refuse } from './joint-check'
import type { DesignValues } from './values'

export interface EndNotch {
  /** Shear that the notched end carries, N. */
  readonly capacity: number
  /** False where the notch takes more of the depth than is let in at an end. */
  readonly allowed: boolean
  /** Deepest notch let in, mm. */
  readonly deepest: number
}

/**
 * Shear of a beam notched on its tension side at the end: V'r = (2/3 F'v b dn) (dn / d)^2. Source: nds, 3.4.3.2.
 * The depth that a notch may take at an end: nds, 3.2.3 and 4.4.3 (recalled, in content).
 * @param left depth dn left above the notch, mm, above 0 and at most the depth
 * @param endShare most of the depth that a notch may take
 */
export function endNotch(
  values: DesignValues,
  breadth: number,
  depth: number,
  left: number,
  duration: Duration,
  endShare: number
): EndNotch {
  refuse({ breadth, depth, 'depth left': left, shear: values.shear })
  if (left > depth) throw new RangeError('a notch leaves no more than there was')
  const shear = values.shear * loadDurationFactor(duration)
  const deepest = endShare * depth
  return {
    capacity: (2 / 3) * shear * breadth * left * (left / depth) ** 2,
    allowed: depth - left <= deepest + 1e-6,
    deepest
  }
}

/** How far in from the end a joint must lie for the milder rule, in depths. Source: nds, 3.4.3.3. */
const FAR = 5

/**
 * How far pegs must lie from the face that they are pulled towards, so that the timber does not split along them, mm:
 * V'r = 2/3 F'v b de, and times (de / d)^2 within five depths of the end. Source: nds, 3.4.3.3 (recalled).
 * @param force shear in the timber beside the pegs, N, 0 and up
 * @param shear F'v, MPa @param breadth net of the mortise @param fromEnd from the joint to the nearer end, mm, 0 and up
 */
export function pegDepthNeeded(force: number, shear: number, breadth: number, depth: number, fromEnd: number): number {
  refuse({ shear, breadth, depth })
  if (!(force >= 0 && fromEnd >= 0)) throw new RangeError('force and distance must not be below zero')
  const plain = force / ((2 / 3) * shear * breadth)
  return fromEnd >= FAR * depth ? plain : Math.cbrt(plain * depth * depth)
}
