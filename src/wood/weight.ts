/** Density at a moisture content. */

/**
 * Density of wood with its water, kg/m3. Source: simpson-1993, eq. 5 (G at moisture M from green specific gravity).
 * @param specificGravityGreen oven-dry mass over green volume
 * @param moisture fraction, 0 and up; above fibre saturation (0.30) the volume is green
 */
export function densityAt(specificGravityGreen: number, moisture: number): number {
  if (!(moisture >= 0)) throw new RangeError(`moisture must not be below zero, got ${moisture}`)
  const a = Math.max(0, (0.3 - moisture) / 0.3)
  const specificGravity = specificGravityGreen / (1 - 0.265 * a * specificGravityGreen)
  return 1000 * specificGravity * (1 + moisture)
}
