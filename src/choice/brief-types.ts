/** The Brief: what the whole job comes to, as plain data. */
import type { Quantity, Sentence } from '../data/quantity'
import type { Details } from '../wood/decay'
import type { ClockReport } from './clock/types'
import type { ShopDetailReport } from './detail-types'
import type { Drawn } from './drawn'
import type { JoineryLine } from './joinery/says'
import type { Schedule } from './schedule/types'
import type {
  Answers,
  CostReport,
  Criterion,
  FinishReport,
  JobLine,
  JointLine,
  Judgement,
  LogEnd,
  OpenQuestion,
  OptionReport,
  Shoulder,
  WeightReport,
  WoodLine
} from './types'

export interface Brief {
  readonly version: 1
  /** Names the shop sheet that the options and prices came from, and whether its prices are invented. */
  readonly shop: {
    readonly name: string
    readonly contact: string | null
    readonly placeholder: boolean
    readonly note: string | null
    /** The shop's own words: plain text, not sentences of ours. */
    readonly cautions: readonly string[]
  }
  readonly answers: Answers
  readonly title: Sentence
  readonly job: readonly JobLine[]
  /** null when everything is ruled out. */
  readonly lead: OptionReport | null
  readonly runnerUp: OptionReport | null
  readonly headline: Sentence
  readonly summary: readonly Sentence[]
  readonly difference: readonly Sentence[]
  readonly sure: {
    readonly firstIn: number
    readonly of: number
    readonly says: Sentence
    readonly settle: readonly OpenQuestion[]
    /** null where nothing passes. */
    readonly weights: WeightReport | null
  }
  readonly why: readonly Sentence[]
  readonly woods: readonly WoodLine[]
  /** Every option of the shop, judged, in the order of merit; a ruled-out option keeps all its reasons. */
  readonly options: readonly Judgement[]
  readonly weights: Readonly<Record<Criterion, number>>
  readonly sizes: {
    readonly demanded: boolean
    readonly says: readonly Sentence[]
    /** Joints of the leading option’s frame. */
    readonly joinery: readonly JoineryLine[]
    /** Its frame with pushes and pulls; null where it carries nothing. */
    readonly drawn: Drawn | null
  }
  readonly movement: {
    readonly says: readonly Sentence[]
    readonly logEnds: readonly LogEnd[]
    readonly joints: readonly JointLine[]
    readonly shoulder: Shoulder
  }
  readonly climate: {
    readonly place: string
    readonly months: readonly { readonly outdoor: number; readonly service: number }[]
    readonly says: readonly Sentence[]
  }
  /** Moisture from felling to years after the raising. */
  readonly clock: ClockReport
  /** Every way of drying the leading wood, from the order to a settled frame, against the client’s date. */
  readonly schedule: Schedule
  readonly durability: {
    readonly says: readonly Sentence[]
    readonly hazard: Quantity
    readonly months: readonly number[]
    readonly useClass: string
    /** Where rain comes near: what the details do with it; null indoors and in the ground. */
    readonly water: { readonly details: Details; readonly roofed: boolean } | null
  }
  readonly finish: FinishReport
  readonly cost: CostReport
  readonly cautions: readonly Sentence[]
  readonly ask: { readonly framer: readonly Sentence[]; readonly engineer: readonly Sentence[] }
  /** For the shop: cut list, movement, joints, drying plan, and what is known of the client. */
  readonly detail: ShopDetailReport
}
