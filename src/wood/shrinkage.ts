/** Shrinkage and swelling with moisture. Strains and moisture are fractions; M above fibre saturation does nothing. */

/**
 * Shrinkage from green to moisture content M, as a fraction of the green size.
 * Source: wood-handbook-2021, eq. 4-9. Linear below fibre saturation; real curves flatten near it.
 * @param total shrinkage green to oven-dry in that direction, fraction
 * @param moisture M, fraction; at or above fibre saturation nothing has shrunk
 * @param fibreSaturation fraction
 */
export function shrinkageFromGreen(total: number, moisture: number, fibreSaturation: number): number {
  if (!(moisture >= 0)) throw new RangeError(`moisture must not be below zero, got ${moisture}`)
  return moisture >= fibreSaturation ? 0 : total * (1 - moisture / fibreSaturation)
}

/**
 * Change of a dimension between two moisture contents, as a fraction of the size it has at the first (shrinkage positive).
 * Source: wood-handbook-2010, eq. 13-3, written for any fibre saturation; with 0.30 it is the printed form.
 */
export function changeBetween(total: number, from: number, to: number, fibreSaturation: number): number {
  const before = shrinkageFromGreen(total, from, fibreSaturation)
  const after = shrinkageFromGreen(total, to, fibreSaturation)
  return (after - before) / (1 - before)
}

/**
 * Change of a dimension within 6 to 14 % moisture by the dimensional-change coefficient (swelling positive).
 * Source: wood-handbook-2010, eq. 13-2.
 * @param size dimension at the start
 * @param coefficient C_R or C_T, per percent of moisture
 * @param fromPercent moisture at the start, percent, 6 to 14
 * @param toPercent moisture at the end, percent, 6 to 14
 * @throws RangeError outside 6 to 14 %.
 */
export function changeByCoefficient(size: number, coefficient: number, fromPercent: number, toPercent: number): number {
  for (const m of [fromPercent, toPercent]) {
    if (!(m >= 6 && m <= 14)) throw new RangeError(`eq. 13-2 holds for 6 to 14 % moisture, not ${m}`)
  }
  return size * coefficient * (toPercent - fromPercent)
}
