/**
 * Which of the questions still to answer could change anything, and whether one may stop. Each is tried alone with every
 * plausible answer, the rest taken as the live list takes them; then all together, a few ways. In small steps, as `whatIf` is.
 */
import type { Sentence } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import type { ShopSheetContent } from '../../data/shop-schema'
import { factsFrom, plausibleAnswers } from '../facts'
import { leading } from '../leading'
import { askedQuestions } from '../questions'
import { sentence } from '../say'
import type { Steps } from '../steps'
import { type Answer, type Answers, CRITERIA, type Question } from '../types'
import { workOut } from '../work-out'
import { evenAt, evenSteps } from './even'
import { type ChangeEffect, EFFECTS, effectOf } from './what-if'

export interface LeftQuestion {
  readonly question: string
  readonly label: string
  /** The gravest that any one plausible answer to it does to the leading choice. */
  readonly changes: ChangeEffect
}

export interface LeftGroup {
  /** "could still change the wood" */
  readonly says: string
  readonly questions: readonly LeftQuestion[]
}

export interface Remaining {
  /** Questions asked but not answered; “not sure” is an answer. */
  readonly left: readonly LeftQuestion[]
  /** Those that could change the choice, by what they change, gravest first. */
  readonly movers: readonly LeftGroup[]
  /** True where no one of them, and no mixture that was tried, changes wood, cut or dryness. */
  readonly mayStop: boolean
  readonly opens: Sentence
  readonly closes: Sentence
}

/** Ways in which all that is left is tried together. */
const TOGETHER = 16

/** An answer is tried where it is offered as a choice or is carried as plausible. */
export function triedAnswers(question: Question, reference: Reference): readonly Answer[] {
  if (question.kind === 'order') return CRITERIA.map((first) => [first, ...CRITERIA.filter((other) => other !== first)])
  if (question.kind === 'choice') return question.choices.map((choice) => choice.id)
  const plausible = plausibleAnswers(reference, question.id).map(({ answer }) => answer)
  const none = 'none' in question && question.none ? [question.none.id] : []
  return [...new Set([...plausible, ...none])]
}

const MOVES: readonly ChangeEffect[] = ['none-passes', 'wood', 'heart', 'seasoning']

/** Work it off. Each step that is yielded has judged once. Deterministic; answers are taken as valid (see `readAnswers`). */
export function* remaining(answers: Answers, sheet: ShopSheetContent, reference: Reference): Steps<Remaining> {
  const best = (change: Answers) => leading({ ...answers, ...change }, sheet, reference)
  // Worked out whole and kept: changes of taste share its numbers.
  workOut(factsFrom(answers, reference), sheet, reference)
  const base = best({})
  yield
  const open = askedQuestions(answers)
    .filter((q) => answers[q.id] === undefined)
    .map((question) => ({ question, tried: triedAnswers(question, reference) }))
  const left: LeftQuestion[] = []
  for (const { question, tried } of open) {
    let changes: ChangeEffect = 'nothing'
    for (const answer of tried) {
      const effect = effectOf(base, best({ [question.id]: answer }))
      if (EFFECTS.indexOf(effect) < EFFECTS.indexOf(changes)) changes = effect
      yield
    }
    left.push({ question: question.id, label: question.label, changes })
  }
  let together = false
  if (!left.some((q) => MOVES.includes(q.changes)) && open.length > 1) {
    const steps = evenSteps(open.length)
    for (let n = 1; n <= TOGETHER && !together; n++) {
      const taken = open.flatMap(({ question, tried }, d) => {
        const answer = tried[Math.floor(evenAt(n, steps[d] ?? 0) * tried.length)]
        return answer === undefined ? [] : [[question.id, answer] as const]
      })
      together = MOVES.includes(effectOf(base, best(Object.fromEntries(taken))))
      yield
    }
  }
  return inWords(left, together)
}

function inWords(left: readonly LeftQuestion[], together: boolean): Remaining {
  const of = (...effects: ChangeEffect[]) => left.filter((q) => effects.includes(q.changes))
  const group = (says: string, questions: readonly LeftQuestion[]): LeftGroup[] =>
    questions.length > 0 ? [{ says, questions }] : []
  const movers = [
    ...group('could leave nothing that passes', of('none-passes')),
    ...group('could still change the wood', of('wood')),
    ...group('could change whether the heart is boxed', of('heart')),
    ...group('could change how dry it comes', of('seasoning'))
  ]
  const moving = movers.reduce((n, g) => n + g.questions.length, 0)
  const [sizes, price] = [of('size').length, of('price').length]
  const only = sizes > 0 && price > 0 ? 'sizes or price' : sizes > 0 ? 'sizes' : price > 0 ? 'the price' : null
  const rest = left.length - moving
  const mayStop = moving === 0 && !together
  const opens =
    left.length === 0
      ? 'Every question is answered.'
      : left.length === 1
        ? 'One question is left.'
        : `${left.length} questions are left.`
  const restWords =
    rest === 0
      ? ''
      : moving > 0
        ? `The other${rest === 1 ? '' : ` ${rest}`} ${rest === 1 ? 'changes' : 'change'} ${only ? `at most ${only}` : 'nothing'}.`
        : `${left.length === 1 ? 'It' : 'Alone, each of them'} changes ${only ? `at most ${only}` : 'nothing'}${together ? ', but together they could still change the choice' : ', not the choice'}.`
  const stop = mayStop && left.length > 0 ? 'You can stop here.' : ''
  return {
    left,
    movers,
    mayStop,
    opens: sentence(opens),
    closes: sentence([restWords, stop].filter(Boolean).join(' '))
  }
}
