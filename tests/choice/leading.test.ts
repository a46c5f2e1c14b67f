/** The leading option found by ruling others out early is the one that a whole judging puts first. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { factsFrom } from '../../src/choice/facts'
import { judgeAll } from '../../src/choice/judge'
import { leading } from '../../src/choice/leading'
import { RULES } from '../../src/choice/rules'
import { workOut } from '../../src/choice/work-out'
import { reference, sheet } from '../reference'
import { full } from './any-answers'

const plain = (o: unknown): unknown => JSON.parse(JSON.stringify(o))

describe('the leading option', () => {
  it('is the first of all as judged, number for number, kept or not, or none where all are out', () => {
    let none = 0
    let some = 0
    fc.assert(
      fc.property(full, fc.boolean(), (answers, kept) => {
        const own = { ...sheet }
        if (kept) workOut(factsFrom(answers, reference), own, reference)
        const [first] = judgeAll(answers, { ...sheet }, reference).judged
        const lead = leading(answers, own, reference)
        expect(plain(lead)).toEqual(plain(first?.in ? first.facts : null))
        if (lead) some++
        else none++
      }),
      { numRuns: 150 }
    )
    expect(some).toBeGreaterThan(10)
    expect(none).toBeGreaterThan(10)
  }, 60_000)

  it('needs no drying, movement or price for most that is ruled out', () => {
    const early = RULES.filter((rule) => rule.early)
    expect(early.length).toBeGreaterThan(8)
    for (const rule of early) expect(rule.effect, rule.id).toBe('out')
  })
})
