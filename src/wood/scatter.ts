/** How timber scatters about the mean of its wood: bands of one standard deviation, in which two pieces of three lie. */
import type { Band } from './joints'

/**
 * A band widened by what single pieces differ in besides what it holds already. The two are independent (how a piece dries,
 * and how much its wood shrinks), so their parts add as squares; nothing falls below zero.
 * Source: derived (standard deviation of a sum of independent parts).
 * @param variation coefficient of variation of the value, fraction, not below zero
 * @throws RangeError where the band is out of order or the variation below zero.
 */
export function widened({ value, low, high }: Band, variation: number): Band {
  if (!(low <= value && value <= high))
    throw new RangeError(`a band runs from low to high, not ${low}, ${value}, ${high}`)
  if (!(variation >= 0)) throw new RangeError(`a variation must not be below zero, got ${variation}`)
  const own = variation * value
  return { value, low: Math.max(0, value - Math.hypot(value - low, own)), high: value + Math.hypot(high - value, own) }
}

/**
 * Band of what is in inverse proportion to a property that scatters, as a sag to stiffness: the stiffer piece gives the low
 * end, the springier the high. Source: derived (elastic line: sag as 1/E).
 * @param variation coefficient of variation of that property, fraction, from 0 to below 1
 * @throws RangeError for a variation outside that.
 */
export function inverselyScattered(value: number, variation: number): Band {
  if (!(variation >= 0 && variation < 1)) throw new RangeError(`a variation lies from 0 to below 1, not ${variation}`)
  return { value, low: value / (1 + variation), high: value / (1 - variation) }
}
