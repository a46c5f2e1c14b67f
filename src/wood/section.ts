/**
 * A rectangular section in its log, and the shape it dries to.
 * Wood shrinks by eR towards the pith and by eT round it. Left free of stress, the point (r, theta) goes to
 * r (1 - eR), theta (1 - eT)/(1 - eR). Source: derived (plane polar shrinkage about the pith).
 * Lengths in mm about the pith, y downwards; strains as fractions.
 */

export type Heart = 'boxed' | 'free'
export type Point = readonly [number, number]

export interface SectionShape {
  readonly heart: Heart
  readonly logRadius: number
  readonly before: readonly Point[]
  readonly after: readonly Point[]
}

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
 * Upper bound of the sum of check openings on the nearest face of a boxed piece, if one check takes all: mm.
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

/** Where a point goes on drying, the direction `axis` (radians) from the pith held still. Source: derived. */
export function driedPoint(p: Point, radial: number, tangential: number, axis: number): Point {
  const r = Math.hypot(p[0], p[1])
  let turn = Math.atan2(p[1], p[0]) - axis
  while (turn <= -Math.PI) turn += 2 * Math.PI
  while (turn > Math.PI) turn -= 2 * Math.PI
  const angle = axis + (turn * (1 - tangential)) / (1 - radial)
  return [r * (1 - radial) * Math.cos(angle), r * (1 - radial) * Math.sin(angle)]
}

const STEPS = 24

/** Points round a rectangle, starting at the middle of its lower side so that a boxed piece can open there. */
function outline(left: number, top: number, breadth: number, depth: number): Point[] {
  const right = left + breadth
  const bottom = top + depth
  const middle = left + breadth / 2
  const corners: Point[] = [
    [middle, bottom],
    [left, bottom],
    [left, top],
    [right, top],
    [right, bottom],
    [middle, bottom]
  ]
  const points: Point[] = []
  for (let side = 0; side + 1 < corners.length; side++) {
    const [x0, y0] = corners[side] as Point
    const [x1, y1] = corners[side + 1] as Point
    for (let i = 0; i < STEPS; i++) points.push([x0 + ((x1 - x0) * i) / STEPS, y0 + ((y1 - y0) * i) / STEPS])
  }
  return points
}

/**
 * Outline of a section before and after drying, in its log. A boxed piece is drawn with one check to the pith from
 * the middle of its lower face taking the whole missing angle: the worst single check, an upper bound.
 * Source: derived. `exaggeration` multiplies both strains, for drawing only.
 * @throws RangeError where a size is not above zero or a strain is not in 0 to 0.3.
 */
export function sectionShape(spec: {
  readonly heart: Heart
  readonly breadth: number
  readonly depth: number
  readonly radial: number
  readonly tangential: number
  readonly exaggeration?: number
}): SectionShape {
  const { heart, breadth, depth } = spec
  const scale = spec.exaggeration ?? 1
  const radial = spec.radial * scale
  const tangential = spec.tangential * scale
  if (!(breadth > 0 && depth > 0)) throw new RangeError('section sizes must be above zero')
  if (!(radial >= 0 && tangential >= radial && tangential < 0.6)) throw new RangeError('shrinkage out of range')
  const logRadius = logDiameterNeeded(heart, breadth, depth) / 2
  if (heart === 'free') {
    // Stand the piece in the log the way that needs the smaller log; drawn below the pith either way.
    const flat = Math.hypot(depth + PITH_CLEARANCE, breadth / 2) <= Math.hypot(breadth + PITH_CLEARANCE, depth / 2)
    const [b, d] = flat ? [breadth, depth] : [depth, breadth]
    const before = outline(-b / 2, PITH_CLEARANCE, b, d)
    return { heart, logRadius, before, after: before.map((p) => driedPoint(p, radial, tangential, Math.PI / 2)) }
  }
  const before = outline(-breadth / 2, -depth / 2, breadth, depth)
  const shrink = (1 - tangential) / (1 - radial)
  const gap = 2 * Math.PI * (1 - shrink)
  const after = before.map((p, i): Point => {
    const r = Math.hypot(p[0], p[1]) * (1 - radial)
    // Angle from straight down, 0 to 2 pi the way the outline runs (through the left side).
    let turn = Math.atan2(p[1], p[0]) - Math.PI / 2
    if (turn < 0 || (i === 0 && turn !== 0)) turn += 2 * Math.PI
    const angle = Math.PI / 2 + gap / 2 + turn * shrink
    return [r * Math.cos(angle), r * Math.sin(angle)]
  })
  const lip = (depth / 2) * (1 - radial)
  const end: Point = [lip * Math.cos(Math.PI / 2 - gap / 2), lip * Math.sin(Math.PI / 2 - gap / 2)]
  return { heart, logRadius, before, after: [...after, end, [0, 0]] }
}
