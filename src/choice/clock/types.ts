/** The words of the drying clock: the job it runs, the curves and moments that come out, and what is shown of them. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Place, Wood } from '../../data/reference'
import type { Section } from '../../frame/values'
import type { Profile } from '../../wood/drying'
import type { Exposure } from '../../wood/service'

export const SEASONINGS = ['green', 'air', 'kiln', 'rfv'] as const
/** How the timber is dried before it comes. */
export type Seasoning = (typeof SEASONINGS)[number]

export interface ClockJob {
  readonly wood: Wood
  readonly section: Section
  readonly place: Place
  /** Where it will live. */
  readonly exposure: Exposure
  readonly seasoning: Seasoning
  /** Day of the year on which it is felled, 0 for the first of January. */
  readonly felledDay: number
  /** Weeks in the yard; air-dried only. */
  readonly yardWeeks: number
  /** Weeks in the kiln; kiln-dried only. */
  readonly kilnWeeks: number
  /** Mean moisture out of the kiln or the vacuum, fraction. */
  readonly dried: number
  /** Weeks under cover from the saw, yard or kiln until it is raised: cutting, and lying cut. */
  readonly shopWeeks: number
  readonly heating: Heating
}
export const HEATINGS = ['at-once', 'first-winter', 'next-year'] as const
export type Heating = (typeof HEATINGS)[number]

export const MOMENTS = ['felled', 'dried', 'raised', 'enclosed', 'heated', 'settled'] as const
export type Moment = (typeof MOMENTS)[number]

export interface Milestone {
  readonly id: Moment
  /** Days from felling. */
  readonly day: number
  /** Month of the year, 1 to 12. */
  readonly month: number
  readonly mean: number
  readonly low: number
  readonly high: number
  readonly shell: number
  readonly core: number
  /** Part of the shrinkage from green to the mean of service that is still to come, 0 to 1. */
  readonly toCome: number
  /** Across the thinner side, face to middle. */
  readonly profile: Profile
}

export interface Clock {
  /** Month of felling, 1 to 12. */
  readonly felledMonth: number
  readonly fibreSaturation: number
  /** Mean moisture in service. */
  readonly service: number
  /** Every fortnight from felling: days, and moisture as fractions. */
  readonly days: readonly number[]
  readonly mean: readonly number[]
  /** The mean, if it dries as the quickest and as the slowest of the published boards of this wood. */
  readonly low: readonly number[]
  readonly high: readonly number[]
  readonly shell: readonly number[]
  readonly core: readonly number[]
  /** What the air asks for. */
  readonly air: readonly number[]
  /** Part of the shrinkage that is still to come, as in a milestone. */
  readonly toCome: readonly number[]
  readonly milestones: readonly Milestone[]
  /** Days from the raising until half, and nine tenths, of what was then to come is made; null where it takes longer than shown. */
  readonly half: number | null
  readonly most: number | null
  /** The day, from the raising on, when the shell has shrunk furthest ahead of the core, and both their moistures. */
  readonly steepest: { readonly day: number; readonly shell: number; readonly core: number }
}

/** A clock as asked for: ids, mm, weeks, and the month of felling, 1 to 12. */
export interface ClockAsked {
  readonly wood: string
  readonly breadth: number
  readonly depth: number
  readonly place: string
  readonly exposure: string
  readonly seasoning: string
  readonly felledMonth: number
  readonly yardWeeks: number
  readonly kilnWeeks: number
  readonly shopWeeks: number
  readonly heating: string
}

export interface ClockLine {
  readonly id: Moment
  readonly label: string
  /** Month by name. */
  readonly month: string
  /** From felling. */
  readonly after: Quantity
  readonly mean: Quantity
  readonly shell: Quantity
  readonly core: Quantity
  readonly toCome: Quantity
}

export interface ClockReport {
  /** What was run, as the door reads it: a brief's own timber can be taken elsewhere and tried further. */
  readonly asked: ClockAsked
  readonly curve: Clock
  readonly lines: readonly ClockLine[]
  readonly says: readonly Sentence[]
}
