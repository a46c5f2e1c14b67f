/** The words of the schedule: from the order to a settled frame, one row for each way of drying. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Seasoning } from '../clock/types'

export type ScheduleStageId = 'asked' | 'lead' | 'yard' | 'kiln' | 'vacuum' | 'joinery' | 'waits'
export interface ScheduleStage {
  readonly id: ScheduleStageId
  readonly label: string
  /** Weeks from the order. */
  readonly from: number
  readonly to: number
}

export type ScheduleMarkId = 'raised' | 'heated' | 'outside' | 'settled'
/** A moment from the raising on. */
export interface ScheduleMark {
  readonly id: ScheduleMarkId
  readonly label: string
  /** Weeks from the order. */
  readonly week: number
}

export interface ScheduleRow {
  /** `species/heart/seasoning` */
  readonly option: string
  readonly seasoning: Seasoning
  readonly name: string
  /** The option that the brief puts first. */
  readonly first: boolean
  readonly in: boolean
  /** One after the other, without a gap; none where the wood cannot be dried so. */
  readonly stages: readonly ScheduleStage[]
  /** Weeks from the order until it can be raised; as the option's own figure. */
  readonly ready: Quantity
  readonly marks: readonly ScheduleMark[]
  /** A few words beside the row. */
  readonly short: Sentence
  readonly says: Sentence
}

export interface Schedule {
  /** Day of the year of the order, 0 for the first of January; below 0 in the year before. */
  readonly orderDay: number
  /** Whether the months were told; where they were assumed, they are not to be named. */
  readonly named: boolean
  /** Weeks from the order to the client's date; null for no hurry. */
  readonly dateWeek: number | null
  readonly says: Sentence
  /** What its words mean. */
  readonly means: Sentence
  readonly rows: readonly ScheduleRow[]
}
