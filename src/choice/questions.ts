/**
 * The questions, as data: one list, in the order they are asked. The questionnaire draws any such list.
 * Numbers are answered in SI (mm, Pa, rise over run as a ratio); choices by their id; every question also takes
 * `unsure`, and the engine then carries the plausible values of `content/unsure.json`.
 */

import { loadQuestions } from './questions/load'
import { lookQuestions } from './questions/look'
import { placeQuestions } from './questions/place'
import { planQuestions } from './questions/plan'
import { useQuestions } from './questions/use'
import { weighQuestions } from './questions/weigh'
import type { Answers, Question, Stage } from './types'

export const STAGES: readonly { readonly id: Stage; readonly name: string }[] = [
  { id: 'use', name: 'The job' },
  { id: 'place', name: 'Where it lives' },
  { id: 'load', name: 'Span and load' },
  { id: 'look', name: 'Look and care' },
  { id: 'plan', name: 'Time and money' },
  { id: 'weigh', name: 'What matters' }
]

export const QUESTIONS: readonly Question[] = [
  ...useQuestions,
  ...placeQuestions,
  ...loadQuestions,
  ...lookQuestions,
  ...planQuestions,
  ...weighQuestions
]

/** The questions that matter to the answers so far, in order. */
export function askedQuestions(answers: Answers): Question[] {
  return QUESTIONS.filter((q) => q.when(answers))
}

export const questionOf = (id: string): Question | undefined => QUESTIONS.find((q) => q.id === id)
