/** Numbers that are kept from one judging to the next are those that would be worked out afresh. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { factsFrom } from '../../src/choice/facts'
import { frameOf, seriesOf, valuesOf } from '../../src/choice/frame-for'
import { type Judging, judgeAll } from '../../src/choice/judge'
import { QUESTIONS } from '../../src/choice/questions'
import type { Answers } from '../../src/choice/types'
import { workOut } from '../../src/choice/work-out'
import { reference, sheet } from '../reference'
import { answerTo, few, full } from './any-answers'

/** One sheet for all runs, so that what is kept piles up; another, alike but new, has nothing kept. */
const known = { ...few }

/** What a judging holds, less the functions that a check shows its inputs by. */
const plain = ({ judged }: Judging): unknown =>
  JSON.parse(JSON.stringify(judged.map((j) => [j.facts, j.in, j.scores, j.total])))

const change = fc.constantFrom(...QUESTIONS).chain((q) => answerTo(q).map((answer): Answers => ({ [q.id]: answer })))

it('whatever is asked before, and whatever one answer is changed', () => {
  fc.assert(
    fc.property(full, fc.array(change, { minLength: 6, maxLength: 6 }), (answers, changes) => {
      for (const one of [{}, ...changes]) {
        const job = { ...answers, ...one }
        const kept = judgeAll(job, known, reference)
        const fresh = judgeAll(job, { ...few }, reference)
        expect(plain(kept)).toEqual(plain(fresh))
      }
    }),
    { numRuns: 30 }
  )
}, 30_000)

it('a frame free of heart centre that is shared with the boxed one is the one that it would be sized to by itself', () => {
  let shared = 0
  fc.assert(
    fc.property(full, (answers) => {
      const facts = factsFrom(answers, reference)
      const series = seriesOf(sheet)
      const frames = new Map(workOut(facts, { ...sheet }, reference).map((o) => [o.option.id, o.frame]))
      for (const species of ['douglas-fir', 'white-oak', 'eastern-white-pine', 'western-redcedar']) {
        const wood = reference.woods.get(species)
        const frame = frames.get(`${species}/free/kiln`)
        if (!wood || !frame) throw new Error(`no ${species}`)
        if (frame === frames.get(`${species}/boxed/kiln`)) shared++
        const own = frameOf(facts, reference, sheet, wood, 'free', false, series)
        expect(JSON.stringify(frame)).toBe(JSON.stringify(own))
      }
    }),
    { numRuns: 60 }
  )
  expect(shared).toBeGreaterThan(0)
})

it('design values of one wood follow the reference that is asked, though it shares its woods with another', () => {
  const wood = reference.woods.get('black-locust')
  const caution = reference.limits.get('derived-hardwood')
  if (!wood || !caution) throw new Error('no black locust')
  const bolder = {
    ...reference,
    limits: new Map([...reference.limits, ['derived-hardwood', { ...caution, value: caution.value / 2 }]])
  }
  const bending = (from: typeof reference) => valuesOf(wood, 'No.1', from)([200, 200])?.bending ?? 0
  expect(bending(reference)).toBeGreaterThan(0)
  expect(bending(bolder)).toBeCloseTo(bending(reference) / 2, 9)
})
