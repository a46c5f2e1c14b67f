/** The answers so far, kept across closed tabs, and what was said at the door when they were read back. */
import { atom } from 'nanostores'
import { readAnswers } from '../choice/answers'
import type { Answer, Answers } from '../choice/types'
import { saved } from './saved'

/** What the person should know about saved data that could not be read, or null. */
export const $notice = atom<string | null>(null)

const NOTHING: Answers = {}

export const $answers = saved<Answers>(
  'bentwise.answers.1',
  NOTHING,
  (input) => {
    const { answers, problems } = readAnswers(input)
    if (problems.length === 0) return { value: answers }
    const kept = Object.keys(answers).length
    const rest =
      kept === 0
        ? 'You can start afresh.'
        : `The other ${kept === 1 ? 'answer is' : `${kept} answers are`} as you left them.`
    return {
      value: answers,
      problem: `Part of what was saved on this device could not be read and was set aside: ${problems.map((p) => p.says).join(' ')} ${rest}`
    }
  },
  (says) => $notice.set(says)
)

export function setAnswer(question: string, answer: Answer | undefined): void {
  const { [question]: _old, ...rest } = $answers.get()
  $answers.set(answer === undefined ? rest : { ...rest, [question]: answer })
}
