/** The words of the shop's half of a brief: what a framer reads before they ring anybody. Plain data. */
import type { Quantity, Sentence } from '../data/quantity'
import type { MemberId } from '../frame/job'
import type { Moment } from './clock/types'
import type { Criterion, JointLine } from './types'

/** One kind of stick, as it is ordered. Masses and volumes of one, unless they say otherwise. */
export interface CutLine {
  readonly id: MemberId | 'stick'
  readonly name: string
  readonly section: Quantity
  readonly length: Quantity
  readonly count: Quantity
  readonly each: Quantity
  /** Of all of them, before waste. */
  readonly all: Quantity
  /** Log at its small end, under bark, and its length. */
  readonly log: Quantity
  readonly logLength: Quantity
  readonly green: Quantity
  readonly delivered: Quantity
  readonly longest: boolean
  readonly heaviest: boolean
}

export interface PriceLine {
  readonly name: string
  readonly perVolume: Quantity
  readonly sum: Quantity
}

export interface CutList {
  readonly lines: readonly CutLine[]
  readonly net: Quantity
  readonly waste: Quantity
  /** What is bought: the amount that the brief's price is for. */
  readonly total: Quantity
  /** All sticks as delivered, waste left behind. */
  readonly load: Quantity
  readonly price: readonly PriceLine[]
  readonly cost: Quantity
  readonly moisture: Quantity
  readonly says: readonly Sentence[]
}

/** What one kind of stick does from delivery to where it lives: a range, by the seasons and by how dry it comes. */
export interface MoveLine {
  readonly id: MemberId | 'stick'
  readonly name: string
  readonly breadth: Quantity
  readonly breadthShare: Quantity
  readonly depth: Quantity
  readonly depthShare: Quantity
  /** Upper bound of the openings on a face; null free of heart centre. */
  readonly checks: Quantity | null
  /** A corner out of true over its length: the band. */
  readonly twist: Quantity
}

export interface SetOut {
  readonly name: string
  /** Pegs, distances, seats and steps, by name. */
  readonly sizes: readonly { readonly label: string; readonly value: Quantity }[]
  readonly says: Sentence
}

/** All that a shop needs of one option. */
export interface WoodDetail {
  readonly option: string
  readonly cutList: CutList
  readonly moves: readonly MoveLine[]
  readonly movesSay: readonly Sentence[]
  /** Gaps and housings; empty for the leading option, whose joints the brief's own part on movement holds. */
  readonly joints: readonly JointLine[]
  readonly setOut: readonly SetOut[]
}

export interface PlanLine {
  readonly id: string
  readonly label: string
  /** The month, if it is felled when the brief takes it to be. */
  readonly month: string
  readonly after: Quantity
  /** To the raising; null from there on. */
  readonly before: Quantity | null
  /** The line of the brief's drying clock that tells how wet it is then; null where nothing has changed since the line above. */
  readonly moment: Moment | null
  readonly says: Sentence
}

export interface UnsureLine {
  readonly label: string
  readonly assumed: Sentence
  /** What it could change; null where it was not weighed. */
  readonly says: Sentence | null
  readonly moves: boolean
}

export interface ClientDetail {
  readonly says: readonly Sentence[]
  readonly matters: readonly { readonly criterion: Criterion; readonly name: string; readonly weight: Quantity }[]
  readonly ordered: boolean
  readonly unsure: readonly UnsureLine[]
}

/** A question that a framer would ask, and what the brief answers. */
export interface AskedLine {
  readonly ask: string
  readonly says: Sentence
  /** `assumed` where any part of it was not answered; `idle` where the job does not raise it. */
  readonly state: 'answered' | 'assumed' | 'idle'
}

export interface ShopDetailReport {
  /** The leading option first, then the best of other woods; empty where the shop carries nothing. */
  readonly woods: readonly WoodDetail[]
  readonly plan: { readonly lines: readonly PlanLine[]; readonly says: readonly Sentence[] }
  readonly client: ClientDetail
  readonly asked: readonly AskedLine[]
}
