/**
 * Plane shrinkage about the pith: wood shrinks by eR towards it and by eT round it. Left free of stress, the point
 * (r, theta) goes to r (1 - eR), theta (1 - eT)/(1 - eR). Source: derived. Lengths in mm; strains as fractions.
 */

/** x to the right, y downwards, mm. */
export type Point = readonly [number, number]

/** Where a point goes on drying, the direction `axis` (radians) from the pith held still. Source: derived. */
export function driedPoint(p: Point, radial: number, tangential: number, axis: number): Point {
  const r = Math.hypot(p[0], p[1])
  let turn = Math.atan2(p[1], p[0]) - axis
  while (turn <= -Math.PI) turn += 2 * Math.PI
  while (turn > Math.PI) turn -= 2 * Math.PI
  const angle = axis + (turn * (1 - tangential)) / (1 - radial)
  return [r * (1 - radial) * Math.cos(angle), r * (1 - radial) * Math.sin(angle)]
}
