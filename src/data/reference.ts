/** Content, validated and converted once to SI: what the engine is given. Moisture, strains and shares are fractions. */
import * as v from 'valibot'
import type { Origin } from './quantity'
import {
  type DesignValueContent,
  decaySchema,
  designValuesSchema,
  dryingSchema,
  finishesSchema,
  formulasSchema,
  indoorSchema,
  type JointsContent,
  jointsSchema,
  limitsSchema,
  loadsSchema,
  type Mark,
  type PlaceContent,
  placesSchema,
  regionsSchema,
  type SeasoningContent,
  type SeriesContent,
  type SpeciesContent,
  scatterSchema,
  seasoningsSchema,
  seriesSchema,
  sourcesSchema,
  speciesSchema,
  unsureSchema
} from './schema'
import { FOOT, INCH, PSF, PSI, percent, toCelsius } from './units'

export interface Sourced {
  readonly source: string
  readonly where?: string | undefined
  readonly mark: Mark
}

/** The origin of a group of numbers. */
export function originOf(group: Sourced): Origin {
  return {
    mark: group.mark,
    sources: [group.where ? { key: group.source, where: group.where } : { key: group.source }]
  }
}

export type TraitId = keyof SpeciesContent['traits']

/** Strength of small clear wood, MPa, where published. */
export interface ClearStrength {
  readonly rupture?: number | undefined
  readonly elasticity?: number | undefined
  readonly compression?: number | undefined
  readonly compressionPerp?: number | undefined
  readonly shear?: number | undefined
  readonly tensionPerp?: number | undefined
  readonly origin: Origin
}

/** What a field trial found of a wood, and whether that is better or worse than its class. */
export interface FieldTest {
  readonly says: string
  readonly setting: 'above-ground' | 'ground'
  readonly finds: 'better' | 'worse' | null
  readonly origin: Origin
}

export interface Wood {
  readonly id: string
  readonly name: string
  /** The name inside a sentence. */
  readonly said: string
  readonly short: string
  readonly botanical: string
  readonly kind: 'softwood' | 'hardwood'
  readonly summary: string
  readonly radial: number
  readonly tangential: number
  readonly shrinkageOrigin: Origin
  readonly fibreSaturation: number
  readonly fibreSaturationOrigin: Origin
  readonly greenHeartwood: number
  readonly greenWhole: number
  readonly greenOrigin: Origin
  readonly gravityGreen: number
  readonly gravityOrigin: Origin
  readonly strengthGreen: ClearStrength | null
  readonly durability: {
    readonly group: SpeciesContent['durability']['usGroup']
    readonly best: number
    readonly worst: number
    readonly fieldTests: readonly FieldTest[]
    readonly origin: Origin
  }
  readonly designGroup: string | null
  readonly designOrigin: Origin
  readonly airDays: { readonly min: number; readonly max: number; readonly origin: Origin }
  /** Times Siau's diffusion: fitted to `airDays`, with the factors that the slowest and quickest board ask for. */
  readonly drying: { readonly factor: number; readonly slowest: number; readonly quickest: number }
  readonly colour: { readonly L: number; readonly a: number; readonly b: number; readonly origin: Origin }
  /** After years of light indoors, where it is not what light does to most woods. */
  readonly aged: { readonly L: number; readonly a: number; readonly b: number } | null
  /** How well paint stays on it: group of three, 1 easiest, or an older one of five. */
  readonly paint: { readonly group: number | null; readonly older: number | null; readonly origin: Origin } | null
  /** Of the oils that creep out under a film; null where it has none. */
  readonly oils: Origin | null
  readonly supply: {
    readonly longest: number
    readonly largest: readonly [number, number]
    readonly log: number
    readonly freeOfHeart: SpeciesContent['supply']['freeOfHeart']
    readonly origin: Origin
  }
  readonly regions: readonly string[]
  readonly regionsOrigin: Origin
  readonly traits: Readonly<
    Record<TraitId, { readonly level: 0 | 1 | 2; readonly says: string | null; readonly origin: Origin }>
  >
  readonly cautions: readonly { readonly says: string; readonly origin: Origin }[]
}

/** Reference design values, MPa. */
export interface DesignRow {
  readonly group: string
  readonly sizeClass: 'BS' | 'PT' | 'any'
  readonly grade: Grade
  readonly bending: number
  readonly tension: number
  readonly shear: number
  readonly compressionPerp: number
  readonly compression: number
  readonly elasticity: number
  readonly elasticityMin: number
  /** Oven-dry specific gravity, for pegs and dowels; null where the table has none. */
  readonly gravity: number | null
  readonly wetIncluded: boolean
  readonly origin: Origin
}
export type Grade = 'Select Structural' | 'No.1' | 'No.2'

export interface Place {
  readonly id: string
  readonly name: string
  readonly state: string
  readonly lat: number
  readonly lon: number
  readonly temperatureF: readonly number[]
  readonly temperatureC: readonly number[]
  readonly wetDays: readonly number[]
  /** Mean of the morning and afternoon readings, fraction. */
  readonly humidity: readonly number[]
}

export interface Limit {
  readonly value: number
  readonly unit: string
  readonly about: string
  readonly origin: Origin
}

export type ScatterId = keyof v.InferOutput<typeof scatterSchema>
/** How far single pieces lie from the mean of their wood: a coefficient of variation, fraction. */
export interface Scatter {
  readonly of: number
  readonly origin: Origin
}

/** How a room is kept: set points in degrees C, the vapour that living in it adds, and caps on its humidity. */
export interface RoomAir {
  readonly heatedC: number
  readonly cooledC: number
  readonly coolAboveC: number
  /** Vapour pressure that the household adds when it is 0 degrees C or colder outside, Pa. */
  readonly gainPa: number
  /** Outdoor temperature from which windows are open and nothing is added, degrees C. */
  readonly noGainAboveC: number
  readonly heatedCap: number
  readonly cooledCap: number
}

export interface Reference {
  readonly woods: ReadonlyMap<string, Wood>
  readonly design: readonly DesignRow[]
  readonly places: ReadonlyMap<string, Place>
  readonly placesOrigin: Origin
  readonly regions: v.InferOutput<typeof regionsSchema>['regions']
  readonly regionsOrigin: Origin
  readonly sources: v.InferOutput<typeof sourcesSchema>
  readonly formulas: v.InferOutput<typeof formulasSchema>
  readonly limits: ReadonlyMap<string, Limit>
  /** Coefficients of variation, fractions, of what timber scatters in. */
  readonly scatter: Readonly<Record<ScatterId, Scatter>>
  /** Series of sections to choose from. */
  readonly series: ReadonlyMap<string, SeriesContent>
  readonly decay: v.InferOutput<typeof decaySchema>
  readonly seasonings: ReadonlyMap<SeasoningContent['id'], SeasoningContent>
  readonly drying: Drying
  readonly loads: Loads
  readonly joints: JointRules
  readonly finishes: v.InferOutput<typeof finishesSchema>
  readonly unsure: v.InferOutput<typeof unsureSchema>
  readonly room: RoomAir
  readonly roomOrigin: Origin
}

export interface KilnStep {
  /** Holds while the mean is above this, fraction. */
  readonly above: number
  readonly temperatureC: number
  readonly equilibrium: number
}

export interface Drying {
  /** Surface coefficients at 20 degrees C, mm a day, for specific gravity 1 and factor 1. */
  readonly pile: number
  readonly open: number
  readonly surfaceOrigin: Origin
  /** Id of a place by forest region. */
  readonly yards: Readonly<Record<string, string>>
  /** Schedules for woods easy, middling and hard to dry. */
  readonly kiln: readonly (readonly KilnStep[])[]
  readonly kilnOrigin: Origin
  readonly stages: v.InferOutput<typeof dryingSchema>['stages']
  readonly stagesOrigin: Origin
}

export interface Layer {
  readonly about: string
  readonly pressure: number
  /** Snow slides off it where nothing stops it. */
  readonly slippery: boolean
  readonly origin: Origin
}

export interface Loads {
  /** Pa, by id. */
  readonly dead: ReadonlyMap<string, { readonly about: string; readonly pressure: number; readonly origin: Origin }>
  readonly live: ReadonlyMap<string, { readonly about: string; readonly pressure: number; readonly origin: Origin }>
  /** What a build-up is made of, Pa, by id. */
  readonly layers: ReadonlyMap<string, Layer>
  readonly snow: v.InferOutput<typeof loadsSchema>['snow']
  readonly deflection: v.InferOutput<typeof loadsSchema>['deflection']
}

/** A peg's strength, MPa: times its specific gravity to a power, times the timber's to a power. */
export interface PegStrength {
  readonly stress: number
  readonly pegPower: number
  readonly timberPower: number
}

/** Peg distances of a row, in peg diameters. */
export interface DistanceRow {
  readonly kind: Wood['kind']
  readonly woods: readonly string[]
  /** From the peg to the face of the mortised timber that the pull is towards. */
  readonly edge: number
  /** From the peg to the end of the tenon. */
  readonly end: number
  readonly spacing: number
  readonly origin: Origin
}

/** What joints follow; lengths mm, angles radians. */
export interface JointRules {
  readonly peg: {
    /** The usual peg first, then the others, thinner first. */
    readonly diameters: readonly number[]
    readonly gravityLeast: number
    readonly origin: Origin
  }
  readonly pegWoods: readonly { readonly wood: string; readonly gravity: number; readonly origin: Origin }[]
  readonly strength: {
    readonly bearingAlong: PegStrength
    readonly bearingAcross: PegStrength
    readonly bending: PegStrength
    readonly shear: PegStrength
    readonly shearDivisor: number
    readonly origin: Origin
  }
  readonly service: { readonly wet: number; readonly origin: Origin }
  readonly distances: readonly DistanceRow[]
  /** From a peg to the side of its tenon, in diameters. */
  readonly tenonSide: { readonly diameters: number; readonly origin: Origin }
  readonly drawBore: {
    /** Offset over the peg's diameter. */
    readonly share: Readonly<Record<Wood['kind'], number>>
    readonly endDiameters: number
    readonly origin: Origin
  }
  readonly tenon: { readonly leastPegs: number; readonly origin: Origin }
  readonly housing: {
    readonly least: number
    readonly most: number
    readonly mostShare: number
    readonly origin: Origin
  }
  readonly endGrain: { readonly share: number; readonly origin: Origin }
  readonly step: {
    readonly least: number
    readonly gentle: number
    readonly gentleShare: number
    readonly steep: number
    readonly steepShare: number
    readonly planeSteps: number
    readonly origin: Origin
  }
  readonly plane: { readonly share: number; readonly origin: Origin }
  readonly notch: { readonly endShare: number; readonly origin: Origin }
}

/** Everything in `content/` as read from its files. */
export interface Content {
  readonly species: readonly unknown[]
  readonly designValues: unknown
  readonly places: unknown
  readonly regions: unknown
  readonly sources: unknown
  readonly formulas: unknown
  readonly limits: unknown
  readonly scatter: unknown
  readonly decay: unknown
  readonly seasonings: unknown
  readonly drying: unknown
  readonly loads: unknown
  readonly joints: unknown
  readonly finishes: unknown
  readonly indoor: unknown
  readonly series: unknown
  readonly unsure: unknown
}

function toWood(s: SpeciesContent, drying: Wood['drying'] | undefined): Wood {
  if (!drying) throw new Error(`no fitted drying of "${s.id}" in content/drying.json`)
  const clear = s.strengthGreen
  const heart = s.greenMoisture.heartwoodPercent ?? s.greenMoisture.wholePercent ?? 0
  // Some inventories print a whole-stem figure below both heartwood and sapwood, which cannot be: the drier part then stands.
  const least = Math.min(heart, s.greenMoisture.sapwoodPercent ?? heart)
  const whole = Math.max(s.greenMoisture.wholePercent ?? heart, least)
  const kPa = (n: number | undefined) => (n === undefined ? undefined : n / 1000)
  const traits = Object.fromEntries(
    Object.entries(s.traits).map(([id, t]) => [id, { level: t.level, says: t.says ?? null, origin: originOf(t) }])
  ) as Wood['traits']
  return {
    id: s.id,
    name: s.name,
    said: s.said,
    short: s.short,
    botanical: s.botanical,
    kind: s.kind,
    summary: s.summary,
    radial: percent(s.shrinkage.radialPercent),
    tangential: percent(s.shrinkage.tangentialPercent),
    shrinkageOrigin: originOf(s.shrinkage),
    fibreSaturation: percent(s.fibreSaturation.percent),
    fibreSaturationOrigin: originOf(s.fibreSaturation),
    greenHeartwood: percent(heart),
    greenWhole: percent(whole),
    greenOrigin: originOf(s.greenMoisture),
    gravityGreen: s.specificGravity.green,
    gravityOrigin: originOf(s.specificGravity),
    strengthGreen: clear
      ? {
          rupture: kPa(clear.ruptureKPa),
          elasticity: clear.elasticityMPa,
          compression: kPa(clear.compressionParallelKPa),
          compressionPerp: kPa(clear.compressionPerpendicularKPa),
          shear: kPa(clear.shearParallelKPa),
          tensionPerp: kPa(clear.tensionPerpendicularKPa),
          origin: originOf(clear)
        }
      : null,
    durability: {
      group: s.durability.usGroup,
      best: s.durability.classBest,
      worst: s.durability.classWorst,
      fieldTests: (s.durability.fieldTests ?? []).map((t) => ({
        says: t.says,
        setting: t.setting,
        finds: t.finds ?? null,
        origin: originOf(t)
      })),
      origin: originOf(s.durability)
    },
    designGroup: s.design.group,
    designOrigin: originOf(s.design),
    airDays: { min: s.airDrying.daysMin, max: s.airDrying.daysMax, origin: originOf(s.airDrying) },
    drying,
    colour: { L: s.colour.L, a: s.colour.a, b: s.colour.b, origin: originOf(s.colour) },
    aged: s.agedColour ? { L: s.agedColour.L, a: s.agedColour.a, b: s.agedColour.b } : null,
    paint: s.paint ? { group: s.paint.group, older: s.paint.older, origin: originOf(s.paint) } : null,
    oils: s.oils ? originOf(s.oils) : null,
    supply: {
      longest: s.supply.longestFt * FOOT,
      largest: [(s.supply.largestIn[0] ?? 0) * INCH, (s.supply.largestIn[1] ?? 0) * INCH],
      log: s.supply.largestLogIn * INCH,
      freeOfHeart: s.supply.freeOfHeart,
      origin: originOf(s.supply)
    },
    regions: s.grows.regions,
    regionsOrigin: originOf(s.grows),
    traits,
    cautions: s.cautions.map((c) => ({ says: c.says, origin: originOf(c) }))
  }
}

function toDesignRow(d: DesignValueContent): DesignRow {
  return {
    group: d.group,
    sizeClass: d.sizeClass,
    grade: d.grade,
    bending: d.bendingPsi * PSI,
    tension: d.tensionPsi * PSI,
    shear: d.shearPsi * PSI,
    compressionPerp: d.compressionPerpPsi * PSI,
    compression: d.compressionPsi * PSI,
    elasticity: d.elasticityPsi * PSI,
    elasticityMin: d.elasticityMinPsi * PSI,
    gravity: d.specificGravity,
    wetIncluded: d.wetIncluded,
    origin: originOf(d)
  }
}

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

function toJointRules(j: JointsContent): JointRules {
  const { peg, drawBore, housing, step, strength } = j
  const degrees = (n: number) => (n * Math.PI) / 180
  const toStrength = (p: JointsContent['strength']['bending']) => ({
    stress: p.psi * PSI,
    pegPower: p.pegPower,
    timberPower: p.timberPower
  })
  const others = peg.diametersIn.filter((d) => d !== peg.usualIn).sort((a, b) => a - b)
  return {
    peg: {
      diameters: [peg.usualIn, ...others].map((d) => d * INCH),
      gravityLeast: peg.gravityLeast,
      origin: originOf(peg)
    },
    pegWoods: j.pegWoods.map((p) => ({ wood: p.wood, gravity: p.gravity, origin: originOf(p) })),
    strength: {
      bearingAlong: toStrength(strength.bearingAlong),
      bearingAcross: toStrength(strength.bearingAcross),
      bending: toStrength(strength.bending),
      shear: toStrength(strength.shear),
      shearDivisor: strength.shearDivisor,
      origin: originOf(strength)
    },
    service: { wet: j.service.wet, origin: originOf(j.service) },
    distances: j.distances.map(({ kind, woods, edge, end, spacing, ...from }) => ({
      kind,
      woods,
      edge,
      end,
      spacing,
      origin: originOf(from)
    })),
    tenonSide: { diameters: j.tenonSide.diameters, origin: originOf(j.tenonSide) },
    drawBore: {
      share: { softwood: drawBore.softwoodIn / drawBore.pegIn, hardwood: drawBore.hardwoodIn / drawBore.pegIn },
      endDiameters: drawBore.endDiameters,
      origin: originOf(drawBore)
    },
    tenon: { leastPegs: j.tenon.leastPegs, origin: originOf(j.tenon) },
    housing: {
      least: housing.leastIn * INCH,
      most: housing.mostIn * INCH,
      mostShare: housing.mostShare,
      origin: originOf(housing)
    },
    endGrain: { share: j.endGrain.share, origin: originOf(j.endGrain) },
    step: {
      least: step.leastIn * INCH,
      gentle: degrees(step.gentleDegrees),
      gentleShare: step.gentleShare,
      steep: degrees(step.steepDegrees),
      steepShare: step.steepShare,
      planeSteps: step.planeSteps,
      origin: originOf(step)
    },
    plane: { share: j.plane.share, origin: originOf(j.plane) },
    notch: { endShare: j.notch.endShare, origin: originOf(j.notch) }
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
