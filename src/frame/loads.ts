/** Loads on the frame, Pa on plan. */

/**
 * Snow on a flat or low roof from snow on the ground: p_f = 0.7 C_e C_t I p_g, importance 1. No reduction for slope.
 * Source: asce-7, eq. 7.3-1. @param ground p_g, Pa, 0 and up
 */
export function roofSnow(ground: number, flatRoofFactor: number, exposure: number, thermal: number): number {
  if (!(ground >= 0)) throw new RangeError('ground snow must not be below zero')
  return flatRoofFactor * exposure * thermal * ground
}

/** Line load on a timber from an area load and the width it carries. Pa and mm give N/mm. Source: derived (statics). */
export function lineLoad(pressure: number, width: number): number {
  return (pressure * width) / 1e6
}
