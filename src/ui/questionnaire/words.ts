/** An answer in words, for the overview and the paper form. */
import { type Answer, type Answers, type Question, UNSURE } from '../../choice/types'
import type { Drafts } from '../../stores/drafts'
import { fieldWords } from '../format/field'
import { inchesIn, MM_PER_INCH } from '../format/length'
import { NBSP, plain } from '../format/number'
import type { System } from '../format/quantity'
import { NOT_SURE, type PlaceName } from './field-props'

export function sectionWords([b, h]: readonly [number, number], system: System): string {
  return system === 'us'
    ? `${inchesIn(b / MM_PER_INCH)} × ${inchesIn(h / MM_PER_INCH)}${NBSP}in`
    : `${plain(b)} × ${plain(h)}${NBSP}mm`
}

const isPair = (answer: Answer): answer is readonly [number, number] =>
  Array.isArray(answer) && typeof answer[0] === 'number'

/** "baton-rouge-la" reads "Baton Rouge, LA" until the list of places has come. */
function placeWords(id: string, places: readonly PlaceName[]): string {
  const found = places.find((place) => place.id === id)
  if (found !== undefined) return found.name
  const parts = id.split('-').map((part) => part.charAt(0).toUpperCase() + part.slice(1))
  const state = parts.pop()?.toUpperCase()
  return `${parts.join(' ')}, ${state}`
}

export function answerWords(
  question: Question,
  answer: Answer | undefined,
  system: System,
  places: readonly PlaceName[]
): string {
  if (answer === undefined) return 'Not answered yet'
  if (answer === UNSURE) return NOT_SURE
  const none = 'none' in question ? question.none : undefined
  if (none !== undefined && answer === none.id) return none.label
  const label = (id: string): string =>
    'choices' in question ? (question.choices.find((c) => c.id === id)?.label ?? id) : id
  if (question.kind === 'order' && Array.isArray(answer)) {
    return answer.map((id, i) => `${i + 1}. ${label(String(id))}`).join('  ')
  }
  if (isPair(answer)) return sectionWords(answer, system)
  if (typeof answer === 'number')
    return question.kind === 'number' ? fieldWords(answer, question.quantity, system) : String(answer)
  return question.kind === 'place' ? placeWords(String(answer), places) : label(String(answer))
}

/** Answers as the picture should draw them: an order that is only begun shows its beginning. */
export function withDraft(answers: Answers, drafts: Drafts, question: Question): Answers {
  const begun = question.kind === 'order' && answers[question.id] === undefined ? drafts[question.id] : undefined
  return begun === undefined ? answers : { ...answers, [question.id]: begun.split(' ') }
}
