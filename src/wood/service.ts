/** Moisture of a timber in service, from the place's climate and from where in the building the timber lives. */

import type { RoomAir } from '../data/reference'
import { roomHumidity } from './air'
import { equilibriumMoisture } from './moisture'

export type Exposure = 'heated' | 'unheated' | 'roofed' | 'weather' | 'ground'

export interface MonthlyAir {
  /** Mean temperature, degrees C, January to December. */
  readonly temperatureC: readonly number[]
  /** Mean relative humidity, fraction. */
  readonly humidity: readonly number[]
}

export interface ServiceMoisture {
  /** Outdoors under cover, month by month, fraction. */
  readonly outdoor: readonly number[]
  /** Where the timber lives, month by month, fraction. */
  readonly months: readonly number[]
  /** Temperature of the air there, month by month, degrees C. */
  readonly temperatureC: readonly number[]
  readonly mean: number
  readonly driest: number
  readonly wettest: number
}

/** What rain and wet ground add to the moisture of outdoor air: no published closed form, so these are stated inputs. */
export interface Wetting {
  /** Points added to the outdoor equilibrium by rain on an open timber, fraction. */
  readonly weatherAdds: number
  /** Moisture of the outer wood after days of rain, fraction. */
  readonly weatherWettest: number
}

/**
 * Monthly and mean moisture in service. Indoors from the room's air; outdoors under cover from the outdoor air;
 * in the weather the same plus a stated addition (what stands above ground contact moves so too).
 * Source: wood-handbook-2010, eq. 4-5 (equilibrium), ch. 13 (service moisture from the place's climate).
 */
export function serviceMoisture(air: MonthlyAir, exposure: Exposure, room: RoomAir, wetting: Wetting): ServiceMoisture {
  const outdoor = air.temperatureC.map((t, i) => equilibriumMoisture(t, air.humidity[i] ?? 0))
  const rooms =
    exposure === 'heated' ? air.temperatureC.map((t, i) => roomHumidity(t, air.humidity[i] ?? 0, room)) : null
  const months = outdoor.map((emc, i) => {
    if (exposure === 'weather' || exposure === 'ground') return emc + wetting.weatherAdds
    const inside = rooms?.[i]
    return inside ? equilibriumMoisture(inside.temperatureC, inside.humidity) : emc
  })
  const mean = months.reduce((sum, m) => sum + m, 0) / months.length
  // In the weather a dry spell takes an open timber down to the air's own equilibrium, and rain takes it up.
  const weather = exposure === 'weather' || exposure === 'ground'
  return {
    outdoor,
    months,
    temperatureC: rooms?.map((r) => r.temperatureC) ?? air.temperatureC,
    mean,
    driest: Math.min(...(weather ? outdoor : months)),
    wettest: weather ? Math.max(wetting.weatherWettest, ...months) : Math.max(...months)
  }
}
