import { describe, expect, test } from 'vitest'
import { askedQuestions, QUESTIONS } from '../../src/choice/questions'
import type { Settled } from '../../src/choice/settle'
import { UNSURE } from '../../src/choice/types'
import { firstOpen, questionHash, readSpot, settleOn } from '../../src/ui/questionnaire/flow'
import { newsOf } from '../../src/ui/questionnaire/use-settled'
import { answerWords } from '../../src/ui/questionnaire/words'

const question = (id: string) => {
  const found = QUESTIONS.find((q) => q.id === id)
  if (found === undefined) throw new Error(id)
  return found
}

describe('the address of a question', () => {
  test('round trip for every question', () => {
    for (const q of QUESTIONS) expect(readSpot(questionHash(q.id))).toEqual({ at: 'question', id: q.id })
  })

  test('anything else is nowhere', () => {
    for (const hash of ['', '#', '#main', '#x=1']) expect(readSpot(hash)).toEqual({ at: 'none' })
  })

  test('a question that fell away leads to the next that is asked', () => {
    const asked = askedQuestions({ role: 'looks' })
    expect(asked.some((q) => q.id === 'span')).toBe(false)
    expect(settleOn('span', asked, QUESTIONS)?.id).toBe('count')
    expect(settleOn('nonsense', asked, QUESTIONS)?.id).toBe(asked[0]?.id)
  })

  test('coming back, the first open question', () => {
    expect(firstOpen(QUESTIONS, { project: 'barn' })?.id).toBe('role')
  })
})

describe('an answer in words', () => {
  test('for every question, “not sure” and nothing', () => {
    for (const q of QUESTIONS) {
      expect(answerWords(q, UNSURE, 'us', [])).toBe('Not sure')
      expect(answerWords(q, undefined, 'us', [])).toBe('Not answered yet')
    }
  })

  test('numbers in both systems, places by name before and after the list has come', () => {
    const text = (id: string, value: Parameters<typeof answerWords>[1], system: 'us' | 'si') =>
      answerWords(question(id), value, system, []).replaceAll('\u00a0', ' ')
    expect(text('span', 4876.8, 'us')).toBe('16 ft')
    expect(text('span', 4876.8, 'si')).toBe('4.88 m')
    expect(text('slope', 8 / 12, 'us')).toBe('8 in 12')
    expect(text('slope', 8 / 12, 'si')).toBe('34°')
    expect(text('size', [203.2, 304.8], 'us')).toBe('8 × 12 in')
    expect(text('size', 'none', 'us')).toBe('No, work it out')
    expect(text('place', 'baton-rouge-la', 'us')).toBe('Baton Rouge, LA')
    expect(text('place', 'st-paul-mn', 'us')).toBe('St Paul, MN')
  })
})

describe('what is announced of the woods', () => {
  const settled = (...woods: [string, boolean, boolean?][]): Settled => ({
    woods: woods.map(([short, is, lead]) => ({
      species: short,
      short,
      in: is,
      lead: lead ?? false,
      says: { text: '' }
    })),
    inCount: woods.filter(([, is]) => is).length,
    outCount: woods.filter(([, is]) => !is).length
  })

  test('what went out, what came back, who leads now', () => {
    expect(newsOf(settled(['oak', true, true], ['fir', true]), settled(['fir', true, true], ['oak', false]))).toBe(
      'Out: oak. fir now leads. 1 woods in, 1 out.'
    )
    expect(newsOf(settled(['oak', false], ['fir', true, true]), settled(['fir', true, true], ['oak', true]))).toBe(
      'Back in: oak. 2 woods in, 0 out.'
    )
  })

  test('nothing where nothing changed, or nothing was known before', () => {
    const same = settled(['oak', true, true])
    expect(newsOf(same, same)).toBe('')
    expect(newsOf(null, same)).toBe('')
  })
})
