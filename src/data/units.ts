/** Conversions from published units to SI, once, on the way in. Exact where the definition is exact. */
export const INCH = 25.4
export const FOOT = 304.8
/** psi to MPa. */
export const PSI = 0.006894757293168
/** lb/ft2 to Pa. */
export const PSF = 47.88025898033584
/** lb of force to N. */
export const POUND_FORCE = 4.4482216152605
/** lb to kg. */
export const POUND = 0.45359237
/** Board foot (144 in3) to m3. */
export const BOARD_FOOT = 144 * (INCH / 1000) ** 3
export const percent = (value: number): number => value / 100
export const toCelsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9
/** Standard gravity, m/s2. */
export const GRAVITY = 9.80665
