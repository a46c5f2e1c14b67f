/** What would change the choice: each line is held against the judging that it speaks of. */
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/choice/answers'
import { effectOf, whatIf, whatIfNow } from '../../src/choice/firm/what-if'
import { judgeAll } from '../../src/choice/judge'
import { questionOf } from '../../src/choice/questions'
import type { Answers } from '../../src/choice/types'
import { scenarios } from '../../src/data/content'
import { reference, sheet } from '../reference'

const few = {
  ...sheet,
  woods: sheet.woods.filter((w) =>
    ['douglas-fir', 'western-redcedar', 'white-oak', 'eastern-hemlock'].includes(w.species)
  )
}
const jobs = scenarios.map((s) => readAnswers((s as { answers: unknown }).answers, reference.places).answers)
const best = (answers: Answers) => {
  const [first] = judgeAll(answers, few, reference).judged
  return first?.in ? first.facts : null
}

describe('every single answer', () => {
  it.each(jobs.map((answers, i) => [i, answers] as const))(
    'job %d: a line is there if and only if its answer changes the choice',
    (_, answers) => {
      const list = whatIfNow(answers, few, reference)
      const base = best(answers)
      let held = 0
      for (const turn of list.turns) {
        for (const { question, words } of turn.when) {
          const q = questionOf(question)
          if (q?.kind !== 'choice') continue
          const choice = q.choices.find((c) => c.label === words)
          const after = best({ ...answers, [question]: choice?.id ?? '' })
          expect(effectOf(base, after), `${question} ${words}`).toBe(turn.effect)
          expect(['wood', 'heart', 'seasoning', 'size', 'none-passes']).toContain(turn.effect)
          if (after) expect(turn.says?.text.toLowerCase()).toContain(after.wood.said.toLowerCase())
          held++
        }
      }
      expect(held).toBeGreaterThan(2)
      for (const label of list.idle) expect(list.turns.some((t) => t.when.some((w) => w.label === label))).toBe(false)
    }
  )
})

describe('where it tips', () => {
  it('just beyond the number another choice comes first, and well within it the same', () => {
    let points = 0
    for (const answers of jobs) {
      const base = best(answers)
      for (const { question, says } of whatIfNow(answers, few, reference).tipping) {
        const at = Number(says.values?.['at']?.value)
        const now = Number(answers[question])
        const same = (value: number) =>
          ['size', 'price', 'nothing'].includes(effectOf(base, best({ ...answers, [question]: value })))
        expect(same(at), `${question} at ${at}`).toBe(false)
        // A hundredth of the number is how near it is found.
        expect(same(at > now ? at - 0.011 * now : at + 0.011 * now), `${question} before ${at}`).toBe(true)
        points++
      }
    }
    expect(points).toBeGreaterThan(0)
  })
})

describe('the list', () => {
  it('is the same every time, comes in small steps, and its sentences have no holes', () => {
    const [answers] = jobs
    if (!answers) throw new Error('no example')
    const list = whatIfNow(answers, few, reference)
    expect(whatIfNow(answers, few, reference)).toEqual(list)
    const steps = whatIf(answers, few, reference)
    let count = 0
    while (!steps.next().done) count++
    expect(count).toBeGreaterThan(40)
    for (const s of [...list.turns.map((t) => t.says), ...list.tipping.map((t) => t.says)]) {
      if (!s) continue
      const named = [...s.text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name)
      expect(Object.keys(s.values ?? {}).sort()).toEqual([...new Set(named)].sort())
    }
  })
  it('stands where nothing passes, or nothing is answered', () => {
    expect(whatIfNow({}, few, reference).turns.length).toBeGreaterThan(0)
    const none = whatIfNow(
      { exposure: 'ground', place: 'mobile-al' },
      { ...few, woods: few.woods.slice(0, 1) },
      reference
    )
    expect(none.turns.every((t) => t.effect !== 'none-passes')).toBe(true)
  })
})
