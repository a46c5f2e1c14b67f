/** The job in the person's own answers: what the title block and the list of answers say. */
import type { Sentence } from '../../data/quantity'
import type { Facts } from '../facts'
import { askedQuestions } from '../questions'
import { ANSWERED, listed, quantity, sentence } from '../say'
import { type Answer, type JobLine, type Question, UNSURE } from '../types'

const ASSUMED = {
  mark: 'practice',
  sources: [{ key: 'common-practice', where: 'assumed, since you were not sure' }]
} as const

/** An answer in words, its number a quantity. */
export function answerSays(question: Question, answer: Answer, facts: Facts, assumed: boolean): Sentence {
  const origin = assumed ? ASSUMED : ANSWERED
  switch (question.kind) {
    case 'choice':
      return sentence(question.choices.find((c) => c.id === answer)?.label ?? '')
    case 'order': {
      if (!Array.isArray(answer)) return sentence('All alike')
      const label = (id: string) => question.choices.find((c) => c.id === id)?.label.toLowerCase() ?? id
      return sentence(`First: ${listed((answer as string[]).slice(0, 3).map(label))}`)
    }
    case 'place':
      return sentence(facts.place.name)
    case 'section':
      return Array.isArray(answer)
        ? sentence('{size}', { size: quantity('section', answer as unknown as readonly [number, number], origin) })
        : sentence('Worked out')
    case 'number': {
      if (typeof answer !== 'number') return sentence(question.none?.label ?? '')
      if (question.quantity === 'pitch') return sentence(`${Number((answer * 12).toFixed(1))} in 12`)
      if (question.quantity === 'count') return sentence(String(answer))
      return sentence('{value}', { value: quantity(question.quantity, answer, origin) })
    }
  }
}

/** Every question that matters here, with its answer or what was assumed. */
export function jobLines(facts: Facts): JobLine[] {
  return askedQuestions(facts.answers).map((q) => {
    const assumed = facts.assumed.includes(q.id)
    const answer = facts.answers[q.id] ?? facts.order ?? UNSURE
    return { question: q.id, label: q.label, says: answerSays(q, answer, facts, assumed), assumed }
  })
}

const PROJECT: Readonly<Record<string, string>> = {
  'great-room': 'Great room',
  house: 'Timber frame',
  barn: 'Barn',
  pavilion: 'Pavilion',
  porch: 'Porch',
  pergola: 'Pergola',
  beams: 'Beams'
}

export function titleOf(facts: Facts): Sentence {
  return sentence(`${PROJECT[String(facts.answers['project'])] ?? 'Timber frame'} near ${facts.place.name}`)
}
