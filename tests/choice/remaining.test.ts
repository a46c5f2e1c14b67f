/** When to stop: what is said of the questions left is held against judging each of their answers. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Remaining, remaining, triedAnswers } from '../../src/choice/firm/remaining'
import { effectOf } from '../../src/choice/firm/what-if'
import { judgeAll } from '../../src/choice/judge'
import { askedQuestions, questionOf } from '../../src/choice/questions'
import type { Answers } from '../../src/choice/types'
import { reference, sheet } from '../reference'
import { few, full } from './any-answers'

function now(answers: Answers, shop = few): Remaining {
  const steps = remaining(answers, shop, reference)
  let step = steps.next()
  while (!step.done) step = steps.next()
  return step.value
}
const best = (answers: Answers) => {
  const [first] = judgeAll(answers, few, reference).judged
  return first?.in ? first.facts : null
}
/** Some answers of a full set. */
const some = fc
  .tuple(full, fc.integer({ min: 0, max: 2 ** 27 - 1 }))
  .map(([all, mask]): Answers => Object.fromEntries(Object.entries(all).filter((_, i) => (mask >> i) & 1)))

describe('whatever has been answered', () => {
  it('a question that is said to change nothing changes the choice by none of its plausible answers, and one said to does', () => {
    let idle = 0
    let moving = 0
    fc.assert(
      fc.property(some, (answers) => {
        const base = best(answers)
        for (const { question, changes } of now(answers).left) {
          const q = questionOf(question)
          if (!q) throw new Error(question)
          const effects = triedAnswers(q, reference).map((answer) =>
            effectOf(base, best({ ...answers, [question]: answer }))
          )
          if (['size', 'price', 'nothing'].includes(changes)) {
            idle++
            for (const effect of effects) expect(['size', 'price', 'nothing'], question).toContain(effect)
          } else {
            moving++
            expect(effects, question).toContain(changes)
          }
          if (changes === 'nothing') expect(new Set([...effects, 'nothing']).size).toBe(1)
        }
      }),
      { numRuns: 25, seed: 3 }
    )
    expect(idle).toBeGreaterThan(20)
    expect(moving).toBeGreaterThan(5)
  }, 30_000)

  it('accounts for each question that is open once, and for no other', () => {
    fc.assert(
      fc.property(some, (answers) => {
        const { left, movers, mayStop } = now(answers)
        const open = askedQuestions(answers).filter((q) => answers[q.id] === undefined)
        expect(left.map((q) => q.question)).toEqual(open.map((q) => q.id))
        const told = movers.flatMap((g) => g.questions.map((q) => q.question))
        expect(new Set(told).size).toBe(told.length)
        if (mayStop) expect(told).toEqual([])
      }),
      { numRuns: 15, seed: 4 }
    )
  }, 30_000)
})

describe('in words', () => {
  it('nothing answered: many are left, several could change the wood, and one may not stop', () => {
    const { opens, movers, mayStop, closes } = now({}, sheet)
    expect(opens.text).toMatch(/^\d+ questions are left\.$/)
    expect(movers.some((g) => g.says.includes('the wood'))).toBe(true)
    expect(mayStop).toBe(false)
    expect(closes.text).not.toContain('stop')
  })
  it('all answered: says so', () => {
    fc.assert(
      fc.property(full, (answers) => {
        const { left, opens, mayStop } = now(answers)
        expect(left).toEqual([])
        expect(mayStop).toBe(true)
        expect(opens.text).toBe('Every question is answered.')
      }),
      { numRuns: 5 }
    )
  })
  it('one left that decides nothing: you can stop', () => {
    const answers: Answers = Object.fromEntries(
      askedQuestions({}).flatMap((q) => {
        const [first] = triedAnswers(q, reference)
        return q.id === 'project' || first === undefined ? [] : [[q.id, first]]
      })
    )
    const left = now(answers)
    expect(left.left.map((q) => q.question)).toContain('project')
    if (left.mayStop) expect(left.closes.text).toContain('You can stop here.')
  })
  it('is worked off a judging at a time, the same every time', () => {
    const steps = remaining({ exposure: 'heated' }, few, reference)
    let count = 0
    while (!steps.next().done) count++
    expect(count).toBeGreaterThan(20)
    expect(now({ exposure: 'heated' })).toEqual(now({ exposure: 'heated' }))
  })
})
