import type { Answer, Question } from '../../choice/types'
import type { Drafts } from '../../stores/drafts'
import type { System } from '../format/quantity'
import type { Known } from '../pictures/QuestionPicture'

export interface PlaceName {
  readonly id: string
  readonly name: string
}

/** What the engine, once it has come, tells the questions and their pictures. */
export interface Learnt {
  readonly places: readonly PlaceName[]
  readonly known: Known
}
export const NOTHING_KNOWN: Learnt = { places: [], known: {} }

export type QuestionOf<K extends Question['kind']> = Extract<Question, { kind: K }>

/** What every kind of control gets. Ids of the heading and the complaint stand in the page, to be pointed at. */
export interface FieldProps<Q extends Question = Question> {
  readonly question: Q
  readonly answer: Answer | undefined
  readonly drafts: Drafts
  readonly system: System
  readonly places: readonly PlaceName[]
  readonly invalid: boolean
  readonly onAnswer: (answer: Answer | undefined) => void
  readonly onDraft: (field: string, text: string | undefined) => void
  readonly onLeave: () => void
}

export const HEADING = 'question'
export const COMPLAINT = 'complaint'
export const NOT_SURE = 'Not sure'
