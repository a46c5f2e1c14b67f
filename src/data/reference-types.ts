/** What the engine is given: content in SI. Moisture, strains and shares are fractions. */
import type * as v from 'valibot'
import type { Origin } from './quantity'
import type {
  decaySchema,
  dryingSchema,
  finishesSchema,
  formulasSchema,
  loadsSchema,
  regionsSchema,
  SeasoningContent,
  SeriesContent,
  SpeciesContent,
  scatterSchema,
  sourcesSchema,
  unsureSchema
} from './schema'

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
