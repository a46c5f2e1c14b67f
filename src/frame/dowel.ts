/** Yield of one dowel in double shear: two walls of a mortise hold a tenon between them. N, mm, MPa. */
import { INCH, PSI } from '../data/units'
import { refuse } from './joint-check'

export type YieldModeId = 'Im' | 'Is' | 'IIIs' | 'IV'
export interface YieldMode<Id extends string = YieldModeId> {
  readonly id: Id
  /** Reference design value of one dowel in that mode, N. */
  readonly load: number
}

export interface Dowel {
  readonly diameter: number
  /** Bending yield strength of the dowel, MPa. */
  readonly bending: number
  /** Length in the main member (the tenon) and bearing strength there. */
  readonly main: number
  readonly mainBearing: number
  /** Length in each side member (a wall of the mortise) and bearing strength there. */
  readonly side: number
  readonly sideBearing: number
  /** Largest angle of load to grain in any member, radians, 0 to a right angle. */
  readonly angle: number
}

/**
 * Bearing strength of wood under a dowel along the grain, MPa: 11,200 G psi. Source: nds, 12.3.3.
 * @param gravity oven-dry specific gravity
 */
export function bearingAlongGrain(gravity: number): number {
  refuse({ 'specific gravity': gravity })
  return 11_200 * gravity * PSI
}

/**
 * Bearing strength of wood under a dowel across the grain, MPa: 6,100 G^1.45 / sqrt(D) psi, D in inches.
 * Source: nds, 12.3.3. @param diameter mm
 */
export function bearingAcrossGrain(gravity: number, diameter: number): number {
  refuse({ 'specific gravity': gravity, diameter })
  return ((6100 * gravity ** 1.45) / Math.sqrt(diameter / INCH)) * PSI
}

/**
 * Reduction terms R_d by mode: 4 K, 3.2 K, with K = 1 + 0.25 (angle / 90 degrees). Source: nds, Table 12.3.1B.
 * @param angle largest angle of load to grain, radians, 0 to a right angle
 */
export function reductionTerms(angle: number): Readonly<Record<YieldModeId, number>> {
  if (!(angle >= 0 && angle <= Math.PI / 2 + 1e-9)) throw new RangeError('load to grain lies from 0 to 90 degrees')
  const k = 1 + (0.25 * angle) / (Math.PI / 2)
  return { Im: 4 * k, Is: 4 * k, IIIs: 3.2 * k, IV: 3.2 * k }
}

/**
 * Reference lateral design value of a dowel in double shear, each mode; the least governs. Source: nds, 12.3.1
 * (equations 12.3-7 to 12.3-10). The printed terms hold for dowels of 1/4 to 1 in; tfec-1 uses them for pegs up to 1 1/4 in.
 * @throws RangeError for a diameter outside 1/4 to 1 1/4 in, or sizes and strengths not above zero
 */
export function doubleShear(dowel: Dowel): readonly [YieldMode, YieldMode, YieldMode, YieldMode] {
  const { diameter: d, bending, main, mainBearing, side, sideBearing } = dowel
  refuse({ bending, 'length in the tenon': main, 'bearing in the tenon': mainBearing })
  refuse({ 'length in a wall': side, 'bearing in a wall': sideBearing })
  if (!(d >= 0.25 * INCH - 1e-6 && d <= 1.25 * INCH + 1e-6)) throw new RangeError('a dowel is 1/4 to 1 1/4 in thick')
  const rd = reductionTerms(dowel.angle)
  const re = mainBearing / sideBearing
  const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + (2 * bending * (2 + re) * d * d) / (3 * mainBearing * side * side))
  return [
    { id: 'Im', load: (d * main * mainBearing) / rd.Im },
    { id: 'Is', load: (2 * d * side * sideBearing) / rd.Is },
    { id: 'IIIs', load: (2 * k3 * d * side * mainBearing) / ((2 + re) * rd.IIIs) },
    { id: 'IV', load: ((2 * d * d) / rd.IV) * Math.sqrt((2 * mainBearing * bending) / (3 * (1 + re))) }
  ]
}
