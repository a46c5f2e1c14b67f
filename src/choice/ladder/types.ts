/** The words of the size ladder: one job asked for, and what each wood needs for it. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Grade, Wood } from '../../data/reference'
import type { Mark, SeriesContent } from '../../data/schema'
import type { MemberKind } from '../../frame/member-spec'
import type { Drawn } from '../drawn'

export const KINDS: readonly MemberKind[] = [
  'king',
  'king-struts',
  'queen',
  'rafter',
  'ridge',
  'purlin',
  'beam',
  'joist',
  'post'
]
/** Roof build-ups, then uses of a floor: ids of `content/loads.json`. */
export const ROOFS = ['roof', 'roof-open', 'roof-slate', 'roof-tile'] as const
export const FLOORS = ['rooms', 'deck', 'storage'] as const
export type Bears = (typeof ROOFS)[number] | (typeof FLOORS)[number]
export const LIVES = ['heated', 'unheated', 'weather'] as const
export const DRYNESS = ['green', 'dry'] as const
/** Slots for loads at points, each with its weight and its place. */
export const SLOTS = ['1', '2', '3', '4'] as const
export type Slot = (typeof SLOTS)[number]
export type PointField = `point${Slot}`
export type PlaceField = `at${Slot}`
export const GRADES: Readonly<Record<string, Grade>> = { select: 'Select Structural', no1: 'No.1', no2: 'No.2' }

/** A job as asked for: ids, mm, rise over run, Pa, N. `point1` is a load, `at1` its distance from one end. */
export interface LadderAsked extends Readonly<Record<PointField | PlaceField, number>> {
  readonly kind: string
  /** Clear span; of a rafter its run; of a post the length of beam that it carries, mm. */
  readonly span: number
  /** Width carried: the spacing of what stands side by side, mm. */
  readonly width: number
  readonly slope: number
  /** Of a post between points held sideways, mm. */
  readonly height: number
  readonly bears: string
  /** On the ground, Pa. */
  readonly snow: number
  readonly lives: string
  readonly dryness: string
  readonly grade: string
  /** The series of sections: an id of `content/series.json`. */
  readonly surface: string
  /** The slots in use, such as "12"; empty for none. */
  readonly loads: string
  /** The wood that is looked into. */
  readonly wood: string
}

/** The same, read. Dry service but in the weather. */
export interface LadderJob extends Pick<LadderAsked, 'span' | 'width' | 'slope' | 'height' | 'snow'> {
  readonly kind: MemberKind
  readonly bears: Bears
  readonly lives: (typeof LIVES)[number]
  readonly unseasoned: boolean
  readonly grade: Grade
  readonly series: SeriesContent
  /** Loads at points, nearest to the end first: mm from it, N. */
  readonly points: readonly { readonly at: number; readonly load: number }[]
  readonly wood: Wood
  readonly asked: LadderAsked
}

export interface CheckRow {
  readonly name: string
  readonly demand: Quantity
  readonly capacity: Quantity
  readonly used: Quantity
  readonly clause: string
}

export interface Part {
  readonly name: string
  readonly pieces: number
  /** How many of what, how long, what goes along them: each figure opens. */
  readonly says: Sentence
  readonly length: Quantity
  /** null where no section of the series passes. */
  readonly section: Quantity | null
  readonly push: Quantity | null
  readonly pull: Quantity | null
  readonly used: Quantity | null
  readonly checks: readonly CheckRow[]
  /** The next lighter section and what it lacks. */
  readonly lighter: Sentence | null
}

export interface JointLine {
  readonly name: string
  /** False where steel, or larger timbers, must be thought of. */
  readonly joinery: boolean
  readonly says: Sentence
}

/** One wood on the ladder. */
export interface LadderLine {
  readonly wood: string
  readonly short: string
  readonly passes: boolean
  /** Of its stoutest timber; null where one of its timbers has no section that passes. */
  readonly section: Quantity | null
  /** "bending", "tie: pull and bending together"; empty where no section could be tried. */
  readonly governs: string
  readonly used: Quantity | null
  readonly lighter: { readonly section: Quantity; readonly lacks: string; readonly used: Quantity } | null
  readonly volume: Quantity | null
  readonly heaviest: { readonly weight: Quantity; readonly lift: Lift } | null
  /** null where its joints are not looked at; else whether joinery will do. */
  readonly joinery: boolean | null
  /** Where its strength comes from: read or recalled from the table, or derived from clear wood. */
  readonly values: Mark
}
export type Lift = 'two' | 'hoist' | 'crane'

/** The wood that is looked into. */
export interface LadderDetail {
  readonly wood: string
  readonly said: string
  readonly parts: readonly Part[]
  readonly joints: readonly JointLine[]
  /** Supports, bearing, weight, length and where its values come from. */
  readonly says: readonly Sentence[]
  /** What is impossible and what would make it possible; empty where it passes. */
  readonly ways: readonly Sentence[]
  /** null where a timber has no section. */
  readonly drawn: Drawn | null
}

export interface LadderReport {
  readonly asked: LadderAsked
  /** What it carries. */
  readonly loads: Sentence
  /** Leanest first; those without a section that passes last. */
  readonly lines: readonly LadderLine[]
  readonly says: readonly Sentence[]
  readonly chosen: LadderDetail
  readonly cautions: readonly Sentence[]
}
