/** Answers of every kind for property tests, and what must never be found in a brief. */
import fc from 'fast-check'
import { QUESTIONS } from '../../src/choice/questions'
import type { Answer, Answers, Question } from '../../src/choice/types'
import { reference, sheet } from '../reference'

const places = [...reference.places.keys()]

/** A valid answer to a question. */
export function answerTo(q: Question): fc.Arbitrary<Answer> {
  switch (q.kind) {
    case 'choice':
      return fc.constantFrom(...q.choices.map((c) => c.id))
    case 'order':
      return fc.shuffledSubarray(
        q.choices.map((c) => c.id),
        { minLength: q.choices.length }
      )
    case 'place':
      return fc.constantFrom(...places)
    case 'number': {
      const number =
        q.quantity === 'count'
          ? fc.integer({ min: q.min, max: q.max })
          : fc.double({ min: q.min, max: q.max, noNaN: true })
      return q.none ? fc.oneof(number, fc.constant(q.none.id)) : number
    }
    case 'section': {
      const side = fc.double({ min: q.min, max: q.max, noNaN: true })
      const pair = fc.tuple(side, side).map(([a, b]): readonly [number, number] => [Math.min(a, b), Math.max(a, b)])
      return fc.oneof(pair, fc.constant(q.none.id))
    }
  }
}

/** Every question answered, validly. */
export const full: fc.Arbitrary<Answers> = fc.record(Object.fromEntries(QUESTIONS.map((q) => [q.id, answerTo(q)])))
export const few = {
  ...sheet,
  woods: sheet.woods.filter((w) => ['douglas-fir', 'western-redcedar'].includes(w.species))
}

/** Paths of numbers in plain data that are not finite. */
export function spoiled(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path]
  if (value === undefined || typeof value === 'function') return [`${path} is not plain data`]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([k, v]) => spoiled(v, `${path}.${k}`))
}

/** Placeholders of sentences that no value fills. */
export function unfilled(value: unknown): string[] {
  if (value === null || typeof value !== 'object') return []
  const own =
    'text' in value && typeof value.text === 'string'
      ? [...value.text.matchAll(/\{(\w+)\}/g)].map((m) => m[1] ?? '')
      : []
  const values = 'values' in value ? Object.keys((value.values as object | undefined) ?? {}) : []
  return [...own.filter((name) => !values.includes(name)), ...Object.values(value).flatMap(unfilled)]
}
