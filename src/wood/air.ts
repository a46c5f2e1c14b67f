/** The air that a timber lives in: vapour pressure, and a heated room's humidity from the air outside. */
import type { RoomAir } from '../data/reference'

/**
 * Saturation vapour pressure over water (at or above 0 degrees C) or ice (below), Pa.
 * Source: iso-13788, annex E. Valid for -40 to 50 degrees C.
 */
export function saturationPressure(temperatureC: number): number {
  const T = temperatureC
  return T >= 0 ? 610.5 * Math.exp((17.269 * T) / (237.3 + T)) : 610.5 * Math.exp((21.875 * T) / (265.5 + T))
}

/**
 * Temperature and relative humidity inside, from the month's mean outside: the outdoor vapour plus the household's,
 * at room temperature. Source: iso-13788, 4.2 (moisture gain falling with outdoor temperature).
 * @param outdoorC monthly mean, degrees C
 * @param outdoorHumidity fraction
 */
export function roomHumidity(
  outdoorC: number,
  outdoorHumidity: number,
  room: RoomAir
): { readonly temperatureC: number; readonly humidity: number } {
  const cooled = outdoorC > room.heatedC
  const temperatureC =
    outdoorC > room.coolAboveC ? room.cooledC : Math.max(room.heatedC, Math.min(outdoorC, room.coolAboveC))
  const share = Math.min(1, Math.max(0, 1 - outdoorC / room.noGainAboveC))
  const vapour = saturationPressure(outdoorC) * outdoorHumidity + room.gainPa * share
  const humidity = vapour / saturationPressure(temperatureC)
  return { temperatureC, humidity: Math.min(humidity, cooled ? room.cooledCap : room.heatedCap) }
}
