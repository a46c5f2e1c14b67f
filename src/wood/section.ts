/** A rectangular section in its log, about the pith: the log it needs, what its faces shrink, what its checks open. mm. */

export type Heart = 'boxed' | 'free'

/** Distance kept between the pith and the nearest face of a piece free of heart centre, mm. Source: common-practice. */
export const PITH_CLEARANCE = 12.7

/**
 * Small-end diameter under bark that a rectangle needs. Boxed: its diagonal. Free of heart centre: the lesser of its
 * two ways in the log. Source: derived (circle about the pith through the far corners).
 */
export function logDiameterNeeded(heart: Heart, breadth: number, depth: number): number {
  if (heart === 'boxed') return Math.hypot(breadth, depth)
  const far = (across: number, along: number) => 2 * Math.hypot(across + PITH_CLEARANCE, along / 2)
  return Math.min(far(breadth, depth), far(depth, breadth))
}

/** Angle by which a piece round the pith fails to close when dry, radians. Source: derived. */
export function missingAngle(radial: number, tangential: number): number {
  return (2 * Math.PI * (tangential - radial)) / (1 - radial)
}

/**
 * Upper bound of the sum of check openings on a face of a boxed piece, if one check takes all: mm.
 * Source: derived, 2 pi d (eT - eR) with d the distance from the pith to that face.
 */
export function checkOpening(toFace: number, radial: number, tangential: number): number {
  return 2 * Math.PI * toFace * (tangential - radial)
}

/** How a rectangle lies in its log: the side along the tangent of the rings at its middle, the side on a radius, mm. */
export interface Seat {
  readonly tangent: number
  readonly radius: number
  /** True where the depth is the side on the tangent. */
  readonly flat: boolean
}

/**
 * The way a piece free of heart centre sits in the smallest log that gives it, which is how it will be sawn: its longer
 * side along the tangent; a square with its depth on a radius. Source: derived (the lesser of the two diameters of `logDiameterNeeded`).
 */
export function seatInLog(breadth: number, depth: number): Seat {
  const far = (across: number, along: number) => Math.hypot(across + PITH_CLEARANCE, along / 2)
  const flat = far(breadth, depth) < far(depth, breadth)
  return flat ? { tangent: depth, radius: breadth, flat } : { tangent: breadth, radius: depth, flat }
}

/**
 * Share of the tangential strain in the mean strain of a side that lies square to a line through the pith. At a point of
 * the section the rings lie at a known angle, so the strain along that side is eR cos2 + eT sin2; this is the mean of the
 * sin2 over the whole section. The movement between two opposite faces is that mean: exactly so (to first order) free of
 * heart, where the field has no stress; with the pith inside for as long as no check opens, since stress that balances
 * itself leaves the mean alone. Taken along a face only it would count wood that the checks give back.
 * Source: derived (Gauss’s theorem on the plane polar field of polar.ts).
 * @param half half of the side, mm, above zero
 * @param near distance from the pith to the near edge of the section, square to the side; 0 for one that boxes the pith
 * @param far to its far edge, mm; half of the other side for one that boxes the pith
 */
export function tangentialShare(half: number, near: number, far: number): number {
  if (!(half > 0 && near >= 0 && far > near)) throw new RangeError('a section must have a size and lie off the pith')
  return (turned(half, far) - turned(half, near)) / (half * (far - near))
}

/** Integral of y2/(x2 + y2) over x to `half` and y to `far`, from the pith, mm2. */
const turned = (half: number, far: number): number =>
  (far * far * Math.atan2(half, far) + half * far - half * half * Math.atan2(far, half)) / 2

/**
 * Shares of the tangential strain across the breadth and across the depth of a piece that boxes the pith anywhere inside it:
 * the mean of its four quarters about the pith, by their area; they sum to 1. Source: derived.
 * @param reach distances from the pith to the left, right, upper and lower face, mm, none below zero
 */
export function boxedShares(reach: {
  readonly left: number
  readonly right: number
  readonly up: number
  readonly down: number
}): { readonly breadth: number; readonly depth: number } {
  const { left, right, up, down } = reach
  const sum = turned(left, up) + turned(right, up) + turned(left, down) + turned(right, down)
  const breadth = sum / ((left + right) * (up + down))
  return { breadth, depth: 1 - breadth }
}

/** Shares of the tangential strain across the breadth and across the depth of a piece; they sum to 1. Source: derived. */
export function faceShares(
  heart: Heart,
  breadth: number,
  depth: number
): { readonly breadth: number; readonly depth: number } {
  if (heart === 'boxed') {
    const breadthShare = tangentialShare(breadth / 2, 0, depth / 2)
    return { breadth: breadthShare, depth: 1 - breadthShare }
  }
  const { tangent, radius, flat } = seatInLog(breadth, depth)
  const share = tangentialShare(tangent / 2, PITH_CLEARANCE, PITH_CLEARANCE + radius)
  return flat ? { breadth: 1 - share, depth: share } : { breadth: share, depth: 1 - share }
}

/**
 * Mean shrinkage strain across the breadth and across the depth, fractions, from the angle of the rings where the piece
 * sits in its log: boxed about the pith, or free of heart centre the way that needs the smaller log.
 * Source: derived (see `tangentialShare`); between radial and tangential, and the two sum to their sum.
 */
export function faceStrain(
  heart: Heart,
  breadth: number,
  depth: number,
  radial: number,
  tangential: number
): { readonly breadth: number; readonly depth: number } {
  const share = faceShares(heart, breadth, depth)
  const strain = (s: number) => radial + s * (tangential - radial)
  return { breadth: strain(share.breadth), depth: strain(share.depth) }
}
