/** The door for answers: whatever comes in, only valid answers to known questions go on, and every refusal says why. */
import { FOOT, INCH, PSF } from '../data/units'
import { questionOf } from './questions'
import { type Answer, type Answers, type Question, UNSURE } from './types'

export interface Problem {
  /** Id of the question, or null where the whole is at fault. */
  readonly question: string | null
  readonly says: string
}

export type Checked = { readonly ok: true; readonly value: Answer } | { readonly ok: false; readonly says: string }

const refuse = (says: string): Checked => ({ ok: false, says })
const accept = (value: Answer): Checked => ({ ok: true, value })

/** Range of a number question in words, both unit systems. */
export function rangeInWords(q: Extract<Question, { kind: 'number' | 'section' }>): string {
  const { min, max } = q
  const quantity = q.kind === 'section' ? 'diameter' : q.quantity
  switch (quantity) {
    case 'span':
      return `${Math.round(min / FOOT)} to ${Math.round(max / FOOT)} ft (${(min / 1000).toFixed(1)} to ${(max / 1000).toFixed(1)} m)`
    case 'areaLoad':
      return `${Math.round(min / PSF)} to ${Math.round(max / PSF)} psf (${(min / 1000).toFixed(1)} to ${(max / 1000).toFixed(1)} kN/m²)`
    case 'diameter':
      return `${Math.round(min / INCH)} to ${Math.round(max / INCH)} in (${Math.round(min)} to ${Math.round(max)} mm)`
    case 'pitch':
      return `${Math.round(min * 12)} to ${Math.round(max * 12)} in 12`
    case 'money':
      return `$${min.toLocaleString('en-US')} to $${max.toLocaleString('en-US')}`
    case 'count':
      return `${min} to ${max}`
  }
}

/** A number at the edge of its range may miss it by rounding on the way through another unit. */
const EDGE = 1e-6
const inRange = (n: number, min: number, max: number) =>
  Number.isFinite(n) && n >= min - EDGE * Math.abs(min) && n <= max + EDGE * Math.abs(max)

/** Whether `value` answers `question`. Places are checked against `places` where given. Never throws. */
export function checkAnswer(
  question: Question,
  value: unknown,
  places?: ReadonlySet<string> | ReadonlyMap<string, unknown>
): Checked {
  if (value === UNSURE) return accept(UNSURE)
  switch (question.kind) {
    case 'choice':
      return typeof value === 'string' && question.choices.some((c) => c.id === value)
        ? accept(value)
        : refuse(`“${question.label}” has no such choice.`)
    case 'order': {
      const ids = question.choices.map((c) => c.id)
      const known =
        Array.isArray(value) &&
        value.length > 0 &&
        value.every((x) => ids.includes(x)) &&
        new Set(value).size === value.length
      if (!known) return refuse(`“${question.label}” needs each of its points at most once.`)
      const given = value as string[]
      return accept([...given, ...ids.filter((id) => !given.includes(id))])
    }
    case 'place':
      if (typeof value !== 'string' || value === '' || value.length > 80) return refuse('That place could not be read.')
      if (places && !places.has(value)) return refuse('That place is not in the list. Choose the nearest in weather.')
      return accept(value)
    case 'number': {
      if (question.none && value === question.none.id) return accept(question.none.id)
      if (typeof value !== 'number' || !Number.isFinite(value))
        return refuse(`“${question.label}” needs a number, ${rangeInWords(question)}.`)
      if (!inRange(value, question.min, question.max))
        return refuse(`“${question.label}” must be ${rangeInWords(question)}.`)
      if (question.quantity === 'count' && !Number.isInteger(value))
        return refuse(`“${question.label}” needs a whole number.`)
      return accept(value)
    }
    case 'section': {
      if (value === question.none.id) return accept(question.none.id)
      const pair =
        Array.isArray(value) &&
        value.length === 2 &&
        value.every((x) => typeof x === 'number' && inRange(x, question.min, question.max))
      if (!pair) return refuse(`“${question.label}” needs two sizes, each ${rangeInWords(question)}.`)
      const [p, q] = value as [number, number]
      return accept([Math.min(p, q), Math.max(p, q)])
    }
  }
}

/**
 * Answers from anywhere: a saved state, a link, a file. Bad ones are left out and named; the rest survive. Never throws.
 */
export function readAnswers(
  input: unknown,
  places?: ReadonlySet<string> | ReadonlyMap<string, unknown>
): { readonly answers: Answers; readonly problems: readonly Problem[] } {
  if (input === null || typeof input !== 'object' || Array.isArray(input)) {
    return { answers: {}, problems: [{ question: null, says: 'These answers could not be read.' }] }
  }
  const answers: Record<string, Answer> = {}
  const problems: Problem[] = []
  for (const [id, value] of Object.entries(input).slice(0, 200)) {
    const question = questionOf(id)
    if (!question) {
      problems.push({ question: null, says: `There is no question “${id.slice(0, 40)}”; its answer was left out.` })
      continue
    }
    const checked = checkAnswer(question, value, places)
    if (checked.ok) answers[id] = checked.value
    else problems.push({ question: id, says: checked.says })
  }
  return { answers, problems }
}
