/** A timber that is pushed and bent at once. */

/** Ratio that stands for a section pushed past buckling, where the formula has no meaning. */
export const BUCKLED = 99

/**
 * Compression with bending about the strong axis: (fc/F'c)^2 + fb/(F'b (1 - fc/FcE)), at most 1 passes.
 * Source: nds, 3.9.2 (eq. 3.9-3). Stresses in one unit; at or past the buckling stress it gives a ratio far above 1.
 */
export function compressionBending(fc: number, along: number, fb: number, bent: number, euler: number): number {
  if (fc >= euler) return BUCKLED
  return Math.min(BUCKLED, (fc / along) ** 2 + fb / (bent * (1 - fc / euler)))
}
