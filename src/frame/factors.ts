/** Adjustment factors for sawn timbers, allowable stress design. One function a clause; N, mm, MPa. */

/** What the shortest load in a combination is. */
export type Duration = 'permanent' | 'ten-years' | 'snow' | 'seven-days'

const LOAD_DURATION: Readonly<Record<Duration, number>> = {
  permanent: 0.9,
  'ten-years': 1.0,
  snow: 1.15,
  'seven-days': 1.25
}
/** Load duration factor C_D. Source: nds, Table 2.3.2. Not on E, E_min or compression perpendicular. */
export function loadDurationFactor(shortest: Duration): number {
  return LOAD_DURATION[shortest]
}

/** Wet service factors C_M for timbers (moisture above 19 % in service). Source: nds-supplement-4d. */
export function wetServiceFactors(
  wet: boolean,
  wetIncluded: boolean
): { readonly compression: number; readonly compressionPerp: number } {
  return wet && !wetIncluded ? { compression: 0.91, compressionPerp: 0.67 } : { compression: 1, compressionPerp: 1 }
}

/** Size factor C_F on bending for depths over 12 in. Source: nds, 4.3.6.2. @param depth mm */
export function sizeFactor(depth: number): number {
  return depth > 304.8 ? (304.8 / depth) ** (1 / 9) : 1
}

/**
 * Effective length for lateral stability, uniform load on a single span. Source: nds, Table 3.3.3.
 * @param unsupported distance between points held sideways, mm
 */
export function effectiveLengthUniform(unsupported: number, depth: number): number {
  return unsupported / depth < 7 ? 2.06 * unsupported : 1.63 * unsupported + 3 * depth
}

/**
 * Effective length for lateral stability where loads stand at points: all at mid-span, or anywhere. Source: nds, Table 3.3.3.
 * @param unsupported distance between points held sideways, mm
 */
export function effectiveLengthPoints(unsupported: number, depth: number, central: boolean): number {
  const slender = unsupported / depth
  if (central) return slender < 7 ? 1.8 * unsupported : 1.37 * unsupported + 3 * depth
  if (slender < 7) return 2.06 * unsupported
  return slender <= 14.3 ? 1.63 * unsupported + 3 * depth : 1.84 * unsupported
}

/**
 * Beam stability factor C_L. Source: nds, 3.3.3 (eq. 3.3-6). 1 where depth does not exceed breadth.
 * @param effectiveLength le, mm
 * @param bendingStar reference bending times all factors but C_L, MPa
 * @throws RangeError where the slenderness ratio exceeds 50.
 */
export function beamStabilityFactor(
  effectiveLength: number,
  breadth: number,
  depth: number,
  bendingStar: number,
  elasticityMin: number
): number {
  if (depth <= breadth) return 1
  const slenderness = Math.sqrt((effectiveLength * depth) / (breadth * breadth))
  if (slenderness > 50) throw new RangeError(`slenderness ratio ${slenderness.toFixed(1)} exceeds 50 (nds, 3.3.3.7)`)
  const critical = (1.2 * elasticityMin) / slenderness ** 2
  const a = (1 + critical / bendingStar) / 1.9
  return a - Math.sqrt(a * a - critical / bendingStar / 0.95)
}

/** Critical buckling stress of a column F_cE, MPa. Source: nds, 3.7.1.5. @param slenderness le/d, at most 50 */
export function eulerStress(elasticityMin: number, slenderness: number): number {
  return (0.822 * elasticityMin) / slenderness ** 2
}

/** Column stability factor C_P, c = 0.8 for sawn timber. Source: nds, 3.7.1.5. @param compressionStar MPa */
export function columnStabilityFactor(slenderness: number, compressionStar: number, elasticityMin: number): number {
  const c = 0.8
  const ratio = eulerStress(elasticityMin, slenderness) / compressionStar
  const a = (1 + ratio) / (2 * c)
  return a - Math.sqrt(a * a - ratio / c)
}

/** Creep factor on the long-term part of deflection. Source: nds, 3.5.2: 1.5 seasoned, 2.0 unseasoned or wet. */
export function creepFactor(unseasonedOrWet: boolean): number {
  return unseasonedOrWet ? 2 : 1.5
}

/** Share of strength and of stiffness that is left in the heat. */
export interface TemperatureFactors {
  /** Bending, shear, compression along and across the grain. */
  readonly strength: number
  /** Tension, E and Emin. */
  readonly tensionAndStiffness: number
}

/**
 * Temperature factor C_t for wood that is held hot for long. Source: nds, Table 2.3.3: none up to 100 degrees F (37.8 C).
 * @param temperatureC sustained temperature, degrees C, up to 65.6 (150 F)
 * @throws RangeError above that
 */
export function temperatureFactors(temperatureC: number, wet: boolean): TemperatureFactors {
  if (!(temperatureC <= 65.6)) throw new RangeError(`C_t is given up to 65.6 degrees C, not for ${temperatureC}`)
  if (temperatureC <= 37.8) return { strength: 1, tensionAndStiffness: 1 }
  const warm = temperatureC <= 51.7
  return { strength: wet ? (warm ? 0.7 : 0.5) : warm ? 0.8 : 0.7, tensionAndStiffness: 0.9 }
}
