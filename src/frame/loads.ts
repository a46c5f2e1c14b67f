/** Loads on the frame, Pa on plan. */
import type { Loads } from '../data/reference'
import { FOOT, PSF } from '../data/units'

type Snow = Loads['snow']

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

/**
 * A build-up's weight: the sum of its layers, Pa on the slope or floor. Source: derived (sum).
 * @param layers the layers known, Pa @throws RangeError where a layer is not known
 */
export function buildUp(layers: ReadonlyMap<string, { readonly pressure: number }>, ids: readonly string[]): number {
  return ids.reduce((sum, id) => {
    const layer = layers.get(id)
    if (!layer) throw new RangeError(`no layer "${id}"`)
    return sum + layer.pressure
  }, 0)
}

const degrees = (slope: number): number => (Math.atan(slope) * 180) / Math.PI

/**
 * Share of the flat-roof snow that a slope keeps, C_s: all of it up to an angle, then less in a straight line to none.
 * Source: asce-7, 7.4 (fig. 7.4-1, recalled). @param slope rise over run @param thermal C_t
 * @param slides true only for slippery roofing with nothing in the way of the snow
 */
export function slopeFactor(slope: number, thermal: number, slides: boolean, rules: Snow['slope']): number {
  if (!(slope >= 0)) throw new RangeError('a slope must not be below zero')
  const row = rules.rows.find((r) => thermal <= r.thermalUpTo + 1e-9)
  if (!row) throw new RangeError(`no slope factor for a thermal factor of ${thermal}`)
  const from = slides ? row.slipperyDegrees : row.otherDegrees
  const left = (rules.noneLeftDegrees - degrees(slope)) / (rules.noneLeftDegrees - from)
  return Math.min(1, Math.max(0, left))
}

/** Snow on one side of a gable roof more than on the other, Pa on plan. */
export interface OneSided {
  readonly leeward: number
  readonly windward: number
}

/**
 * One-sided snow on a gable roof; null where the slope asks for none. Up to 20 ft from eave to ridge the whole ground
 * load lies on one side and none on the other. On wider roofs 0.3 p_s lies to windward, and p_s with a drift of height
 * h_d to leeward, as an even load h_d g / sqrt(S) over (8/3) h_d sqrt(S) from the ridge. That strip is given back as an even
 * load over the whole side that thrusts as much: its intensity times k (2 - k), k its share of `panel`; it bends no less.
 * Source: asce-7, 7.6.1 (recalled); the even load is ours.
 * @param ground p_g, Pa @param roof p_s, Pa @param run eave to ridge on plan, mm
 * @param panel plan length of the rafter's panel at the ridge, mm: the run where nothing props the rafter
 */
export function oneSidedSnow(
  ground: number,
  roof: number,
  slope: number,
  run: number,
  panel: number,
  rules: Snow['oneSided']
): OneSided | null {
  if (!(ground >= 0) || !(roof >= 0)) throw new RangeError('snow must not be below zero')
  if (!(run > 0) || !(panel > 0)) throw new RangeError('the run of a roof must be above zero')
  const rise = 12 * slope
  // 7 on 12 itself is within, whatever a division has left of it.
  if (!(rise >= rules.fromInTwelve - 1e-9) || rise > rules.toInTwelve + 1e-9 || ground === 0) return null
  if (run <= rules.narrowFt * FOOT) return { leeward: ground, windward: 0 }
  const psf = ground / PSF
  const drift = rules.driftFactor * Math.cbrt(run / FOOT) * (psf + rules.driftAddsPsf) ** 0.25 - rules.driftLessFt
  const density = Math.min(rules.densityMostPcf, rules.densityFactor * psf + rules.densityBasePcf)
  const flat = Math.sqrt(1 / slope)
  const share = Math.min(1, ((8 / 3) * drift * flat * FOOT) / panel)
  const surcharge = (drift * density * PSF) / flat
  return { leeward: roof + surcharge * share * (2 - share), windward: rules.windwardShare * roof }
}
