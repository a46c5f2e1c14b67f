/** A rectangular section in its log, about the pith: the log it needs, what its faces shrink, what its checks open. mm. */
import { driedPoint } from './polar'

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

/**
 * Mean shrinkage strain across a face. Free of heart centre it is read off the dried outline; boxed, where checks
 * upset any single figure, it is the mean of radial and tangential. Source: derived.
 * @returns strain across the breadth and across the depth, fractions
 */
export function faceStrain(
  heart: Heart,
  breadth: number,
  depth: number,
  radial: number,
  tangential: number
): { readonly breadth: number; readonly depth: number } {
  if (heart === 'boxed') {
    const mean = (radial + tangential) / 2
    return { breadth: mean, depth: mean }
  }
  // The breadth lies along the rings' tangent, the depth on a radius (the way it sits in the smaller log may be the
  // other; both are near the mean of the two strains and the larger movement is the one to plan for).
  const top = PITH_CLEARANCE
  const dry = (x: number, y: number) => driedPoint([x, y], radial, tangential, Math.PI / 2)
  const half = breadth / 2
  const widthAt = (y: number) => dry(half, y)[0] - dry(-half, y)[0]
  const meanWidth = (widthAt(top) + widthAt(top + depth / 2) * 4 + widthAt(top + depth)) / 6
  const heightAt = (x: number) => dry(x, top + depth)[1] - dry(x, top)[1]
  const meanHeight = (heightAt(-half) + heightAt(0) * 4 + heightAt(half)) / 6
  return { breadth: 1 - meanWidth / breadth, depth: 1 - meanHeight / depth }
}
