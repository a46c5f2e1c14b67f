/** Moisture that wood comes to in air of a steady temperature and humidity. */

/**
 * Equilibrium moisture content of wood, as a fraction of its oven-dry mass.
 * Source: wood-handbook-2010, eq. 4-5.
 * @param temperatureC air temperature, degrees C; valid for -1 to 132 (30 to 270 F)
 * @param humidity relative humidity as a fraction; valid for 0.05 to 0.95
 * @throws RangeError outside 0 <= humidity <= 1 or where the temperature is not a number.
 * Between the valid range and those hard limits the equation is extrapolated: ask `emcIsExtrapolated`.
 */
export function equilibriumMoisture(temperatureC: number, humidity: number): number {
  if (!(humidity >= 0 && humidity <= 1)) throw new RangeError(`relative humidity must be 0 to 1, not ${humidity}`)
  if (!Number.isFinite(temperatureC)) throw new RangeError('temperature is not a number')
  const T = temperatureC
  const h = humidity
  const W = 349 + 1.29 * T + 0.0135 * T * T
  const K = 0.805 + 0.000736 * T - 0.00000273 * T * T
  const K1 = 6.27 - 0.00938 * T - 0.000303 * T * T
  const K2 = 1.91 + 0.0407 * T - 0.000293 * T * T
  const Kh = K * h
  const percent = (1800 / W) * (Kh / (1 - Kh) + (K1 * Kh + 2 * K1 * K2 * Kh * Kh) / (1 + K1 * Kh + K1 * K2 * Kh * Kh))
  return percent / 100
}

/** Whether `equilibriumMoisture` is asked outside the range that its source states (wood-handbook-2010, eq. 4-5). */
export function emcIsExtrapolated(temperatureC: number, humidity: number): boolean {
  return temperatureC < -1.2 || temperatureC > 132.3 || humidity < 0.05 || humidity > 0.95
}
