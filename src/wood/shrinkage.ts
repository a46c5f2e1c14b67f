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

/** Moistures between which eq. 13-2 holds, percent. Source: wood-handbook-2010, eq. 13-2. */
const COEFFICIENT_RANGE = [6, 14] as const

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
    if (!inCoefficientRange(m)) throw new RangeError(`eq. 13-2 holds for 6 to 14 % moisture, not ${m}`)
  }
  return size * coefficient * (toPercent - fromPercent)
}

const inCoefficientRange = (percent: number): boolean =>
  percent >= COEFFICIENT_RANGE[0] && percent <= COEFFICIENT_RANGE[1]

/**
 * The dimensional-change coefficient of a direction, per percent of moisture, worked out from its total shrinkage: the
 * slope of eq. 13-3 at 10 %, the middle of the range. It gives the printed C_R and C_T wherever the table's row is for
 * the same wood. Source: derived (from wood-handbook-2010, eq. 13-2 and 13-3; checked against Table 13-5).
 */
export function changeCoefficient(total: number, fibreSaturation: number): number {
  const middle = (COEFFICIENT_RANGE[0] + COEFFICIENT_RANGE[1]) / 200
  return total / fibreSaturation / (1 - shrinkageFromGreen(total, middle, fibreSaturation)) / 100
}

export interface Change {
  /** Fraction of the size at the start; shrinkage positive, swelling negative. */
  readonly strain: number
  /** Which equation of the handbook it came by. */
  readonly equation: '4-9' | '13-2' | '13-3'
}

/**
 * Change of a dimension between two moistures, either way, by the equation whose range holds both: 4-9 from green, 13-2
 * within 6 to 14 %, else 13-3. Above fibre saturation nothing moves. The three differ by up to a twentieth, so a clock
 * that crosses a range should keep to `changeBetween`. Source: wood-handbook-2010, ch. 13 (which equation when).
 * @throws RangeError below zero moisture.
 */
export function dimensionChange(total: number, from: number, to: number, fibreSaturation: number): Change {
  const strain = changeBetween(total, from, to, fibreSaturation)
  if (from >= fibreSaturation) return { strain, equation: '4-9' }
  // 0.14 as percent is a hair above 14 in binary: to a millionth of a percent it is 14.
  const [first, last] = [from, to].map((m) => Math.round(m * 1e8) / 1e6) as [number, number]
  if (!inCoefficientRange(first) || !inCoefficientRange(last)) return { strain, equation: '13-3' }
  const coefficient = changeCoefficient(total, fibreSaturation)
  return { strain: -changeByCoefficient(1, coefficient, first, last), equation: '13-2' }
}
