/** Content, validated and converted once to SI: what the engine is given. Moisture, strains and shares are fractions. */
import * as v from 'valibot'
import { originOf } from './origin'
import type { Content, Drying, Place, Reference } from './reference-types'
import {
  decaySchema,
  designValuesSchema,
  dryingSchema,
  finishesSchema,
  formulasSchema,
  indoorSchema,
  jointsSchema,
  limitsSchema,
  loadsSchema,
  type PlaceContent,
  placesSchema,
  regionsSchema,
  scatterSchema,
  seasoningsSchema,
  seriesSchema,
  sourcesSchema,
  speciesSchema,
  unsureSchema
} from './schema'
import { toJointRules } from './to-joints'
import { toDesignRow, toWood } from './to-wood'
import { PSF, percent, toCelsius } from './units'

export { originOf, type Sourced } from './origin'
export type * from './reference-types'

const toScatter = (entries: v.InferOutput<typeof scatterSchema>): Reference['scatter'] =>
  Object.fromEntries(
    Object.entries(entries).map(([id, s]) => [id, { of: percent(s.percent), origin: originOf(s) }])
  ) as unknown as Reference['scatter']

function toDrying({ surface, yards, kiln, stages }: v.InferOutput<typeof dryingSchema>): Drying {
  return {
    pile: surface.pileMmADay,
    open: surface.openMmADay,
    surfaceOrigin: originOf(surface),
    yards: yards.by,
    kiln: kiln.steps.map((steps) =>
      steps.map((step) => ({
        above: percent(step.aboveMoisturePercent),
        temperatureC: step.temperatureC,
        equilibrium: percent(step.equilibriumPercent)
      }))
    ),
    kilnOrigin: originOf(kiln),
    stages,
    stagesOrigin: originOf(stages)
  }
}

function toPlace(p: PlaceContent): Place {
  return {
    id: p.id,
    name: p.name,
    state: p.state,
    lat: p.lat,
    lon: p.lon,
    temperatureF: p.tempF,
    temperatureC: p.tempF.map(toCelsius),
    wetDays: p.wetDays,
    humidity: p.humidityMorningPercent.map((am, i) => percent((am + (p.humidityAfternoonPercent[i] ?? am)) / 2))
  }
}

const byId = <T extends { id: string }>(items: readonly T[]): Map<T['id'], T> =>
  new Map(items.map((item) => [item.id, item]))

/**
 * Content to reference, refused with a ValiError where any file breaks its schema. Pure: reads nothing itself.
 */
export function buildReference(content: Content): Reference {
  const species = content.species.map((file) => v.parse(speciesSchema, file))
  const places = v.parse(placesSchema, content.places)
  const regions = v.parse(regionsSchema, content.regions)
  const limits = v.parse(limitsSchema, content.limits)
  const loads = v.parse(loadsSchema, content.loads)
  const indoor = v.parse(indoorSchema, content.indoor)
  const drying = v.parse(dryingSchema, content.drying)
  const pressures = (items: typeof loads.live) =>
    new Map(items.map((l) => [l.id, { about: l.about, pressure: l.psf * PSF, origin: originOf(l) }]))
  return {
    woods: byId(species.map((s) => toWood(s, drying.factors[s.id]))),
    design: v.parse(designValuesSchema, content.designValues).map(toDesignRow),
    places: byId(places.places.map(toPlace)),
    placesOrigin: originOf(places),
    regions: regions.regions,
    regionsOrigin: originOf(regions),
    sources: v.parse(sourcesSchema, content.sources),
    formulas: v.parse(formulasSchema, content.formulas),
    limits: new Map(
      Object.entries(limits).map(([id, l]) => [
        id,
        { value: l.value, unit: l.unit, about: l.about, origin: originOf(l) }
      ])
    ),
    scatter: toScatter(v.parse(scatterSchema, content.scatter)),
    series: byId(v.parse(seriesSchema, content.series)),
    decay: v.parse(decaySchema, content.decay),
    seasonings: byId(v.parse(seasoningsSchema, content.seasonings)),
    drying: toDrying(drying),
    loads: {
      dead: pressures(loads.dead),
      live: pressures(loads.live),
      layers: new Map(
        loads.layers.map((l) => [
          l.id,
          { about: l.about, pressure: l.psf * PSF, slippery: l.slippery === true, origin: originOf(l) }
        ])
      ),
      snow: loads.snow,
      deflection: loads.deflection
    },
    joints: toJointRules(v.parse(jointsSchema, content.joints)),
    finishes: v.parse(finishesSchema, content.finishes),
    unsure: v.parse(unsureSchema, content.unsure),
    room: {
      heatedC: indoor.heatedRoomC,
      cooledC: indoor.cooledRoomC,
      coolAboveC: indoor.coolAboveC,
      gainPa: indoor.moistureGainPaAtZeroC,
      noGainAboveC: indoor.noGainAboveC,
      heatedCap: percent(indoor.heatedHumidityCapPercent),
      cooledCap: percent(indoor.cooledHumidityCapPercent)
    },
    roomOrigin: originOf(indoor)
  }
}
