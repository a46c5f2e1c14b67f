/** How fast moisture moves across the grain: Siau's model of bound-water diffusion through cells and lumens. */

const GAS_CONSTANT = 8.314
const KELVIN = 273.15
const SECONDS_A_DAY = 86_400
const MM2_A_M2 = 1e6

/**
 * Coefficient of transverse moisture diffusion, mm2 a day, with moisture as the driving force.
 * D = Dbt / ((1 - a^2)(1 - a)), Dbt = 7e-6 exp(-(38500 - 290 M)/(R T)) m2/s, a^2 = 1 - G (0.667 + 0.01 M), M in percent.
 * Source: siau-1984, transport in wood, transverse diffusion (recalled). Above fibre saturation M is held at it.
 * Valid for 0 to 70 degrees C and green specific gravity 0.25 to 0.75.
 * @param moisture fraction
 * @throws RangeError where the cells would have no hollow left (specific gravity too high) or moisture is below zero.
 */
export function transverseDiffusion(
  moisture: number,
  temperatureC: number,
  specificGravityGreen: number,
  fibreSaturation: number
): number {
  if (!(moisture >= 0)) throw new RangeError(`moisture must not be below zero, got ${moisture}`)
  const percent = 100 * Math.min(moisture, fibreSaturation)
  const kelvin = temperatureC + KELVIN
  const bound = 7e-6 * Math.exp(-(38_500 - 290 * percent) / (GAS_CONSTANT * kelvin))
  const hollow = 1 - specificGravityGreen * (0.667 + 0.01 * percent)
  if (!(hollow > 0 && hollow < 1)) throw new RangeError(`no wood has specific gravity ${specificGravityGreen}`)
  const a = Math.sqrt(hollow)
  return (bound / ((1 - hollow) * (1 - a))) * SECONDS_A_DAY * MM2_A_M2
}
