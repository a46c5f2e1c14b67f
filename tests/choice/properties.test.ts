/** What must hold whatever is asked: nothing that a person, a link or a saved state brings can throw or spoil a number. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readAnswers } from '../../src/choice/answers'
import { makeBrief } from '../../src/choice/brief'
import { judgeAll } from '../../src/choice/judge'
import { askedQuestions, QUESTIONS } from '../../src/choice/questions'
import { settle } from '../../src/choice/settle'
import { type Answers, CRITERIA } from '../../src/choice/types'
import { rankOrderCentroid } from '../../src/choice/weights'
import { decodeLink, encodeLink } from '../../src/shop/link'
import { reference, sheet } from '../reference'
import { answerTo, few, full, spoiled } from './any-answers'

/** Some answered, some not sure, some missing. */
const partial = fc.record(
  Object.fromEntries(
    QUESTIONS.map((q) => [
      q.id,
      fc.oneof({ weight: 3, arbitrary: answerTo(q) }, { weight: 1, arbitrary: fc.constant('unsure') })
    ])
  ),
  { requiredKeys: [] }
) as fc.Arbitrary<Answers>
/** Anything at all, with the names of questions sprinkled in. */
const garbage = fc.oneof(
  fc.anything(),
  fc.dictionary(fc.oneof(fc.constantFrom(...QUESTIONS.map((q) => q.id)), fc.string()), fc.anything()),
  fc.record(Object.fromEntries(QUESTIONS.map((q) => [q.id, fc.oneof(answerTo(q), fc.anything())])), {
    requiredKeys: []
  })
)

describe('the door', () => {
  it('10,000 answer sets from nowhere: never a throw, only valid answers go on, each refusal says why', () => {
    fc.assert(
      fc.property(garbage, (input) => {
        const { answers, problems } = readAnswers(input, reference.places)
        expect(readAnswers(answers, reference.places)).toEqual({ answers, problems: [] })
        for (const p of problems) expect(p.says.length).toBeGreaterThan(5)
      }),
      { numRuns: 10_000 }
    )
  })
  it('10,000 links from nowhere: never a throw, and a refusal in words', { timeout: 30_000 }, () => {
    const link = fc.oneof(
      fc.string(),
      fc.string({ maxLength: 9000, minLength: 100 }),
      fc.tuple(fc.constantFrom('0', '1', '2', ''), fc.base64String(), fc.string()).map((parts) => parts.join('.')),
      garbage.map((g) => encodeLink(g as Answers)).filter((s) => s.length < 8000),
      fc.tuple(partial, fc.nat(), fc.string({ maxLength: 3 })).map(([a, at, patch]) => {
        const whole = encodeLink(a)
        const i = at % whole.length
        return whole.slice(0, i) + patch + whole.slice(i + patch.length)
      })
    )
    fc.assert(
      fc.property(link, (fragment) => {
        const read = decodeLink(fragment, { places: reference.places })
        if (read.ok) expect(readAnswers(read.answers, reference.places).problems).toEqual([])
        else expect(read.says.length).toBeGreaterThan(10)
      }),
      { numRuns: 10_000 }
    )
  })
  it('a link brings back exactly the answers that went in', () => {
    fc.assert(
      fc.property(partial, (answers) => {
        const read = decodeLink(`#${encodeLink(answers)}`, { places: reference.places })
        expect(read).toEqual({ ok: true, answers, problems: [] })
      }),
      { numRuns: 1000 }
    )
  })
  it('a link cut anywhere is refused', () => {
    fc.assert(
      fc.property(partial, fc.nat(), (answers, n) => {
        const whole = encodeLink(answers)
        expect(decodeLink(whole.slice(0, n % whole.length)).ok).toBe(false)
      }),
      { numRuns: 500 }
    )
  })
})

describe('the brief', () => {
  it('open answers are carried without harm, and the same answers always give the same brief', () => {
    fc.assert(
      fc.property(partial, (answers) => {
        const brief = makeBrief(answers, few, reference)
        expect(spoiled(brief)).toEqual([])
        expect(JSON.parse(JSON.stringify(brief))).toEqual(makeBrief(answers, few, reference))
        expect(brief.sure.firstIn).toBeLessThanOrEqual(brief.sure.of)
      }),
      { numRuns: 150 }
    )
  }, 120_000)
  it('accounts for every wood of the shop, once', () => {
    fc.assert(
      fc.property(full, (answers) => {
        const brief = makeBrief(answers, sheet, reference)
        expect(brief.woods.map((w) => w.species).sort()).toEqual(sheet.woods.map((w) => w.species).sort())
        expect(brief.options.length).toBe(sheet.woods.length * 8)
        for (const o of brief.options) {
          expect(o.in, o.option.id).toBe(!o.reasons.some((r) => r.effect === 'out'))
          for (const r of o.reasons) expect(r.says.sources?.length ?? 0, `${o.option.id} ${r.rule}`).toBeGreaterThan(0)
        }
        for (const w of brief.woods)
          if (!w.in)
            expect(
              w.report.reasons.some((r) => r.effect === 'out'),
              w.species
            ).toBe(true)
        const { woods, inCount, outCount } = settle(answers, sheet, reference)
        expect(inCount + outCount).toBe(woods.length)
        if (brief.lead) expect(woods.find((w) => w.lead)?.species).toBe(brief.lead.option.species)
      }),
      { numRuns: 150 }
    )
  }, 120_000)
  it('scores stay between 0 and 1, weights sum to 1', () => {
    fc.assert(
      fc.property(full, (answers) => {
        const { judged, weights } = judgeAll(answers, few, reference)
        expect(CRITERIA.reduce((s, c) => s + weights[c], 0)).toBeCloseTo(1, 10)
        for (const j of judged)
          for (const c of CRITERIA) expect(j.scores[c] >= 0 && j.scores[c] <= 1, `${j.facts.option.id} ${c}`).toBe(true)
      }),
      { numRuns: 300 }
    )
  })
})

describe('details against water', () => {
  const kinds = ['sheltered', 'usual', 'holding'] as const
  const base = full.map((answers) => ({ ...answers, role: 'looks' }) as Answers)
  it('better details: never a worse use class, never a lower durability score, never a wood put out by rot', () => {
    fc.assert(
      fc.property(base, fc.constantFrom('roofed', 'weather'), fc.constantFrom(0, 1), (answers, exposure, i) => {
        const judge = (details: string) => judgeAll({ ...answers, exposure, details }, sheet, reference)
        const good = judge(kinds[i] ?? '')
        const poor = judge(kinds[i + 1] ?? '')
        const order = ['1', '2', '3.1', '3.2', '4']
        expect(order.indexOf(good.context.facts.useClass)).toBeLessThan(order.indexOf(poor.context.facts.useClass))
        for (const p of poor.judged) {
          const g = good.judged.find((j) => j.facts.option.id === p.facts.option.id)
          expect(g?.scores.durability, p.facts.option.id).toBeGreaterThanOrEqual(p.scores.durability)
          const rots = (j: typeof p | undefined) => j?.fired.some((r) => r.id === 'decay-weather')
          if (!rots(p)) expect(rots(g), p.facts.option.id).toBe(false)
        }
      }),
      { numRuns: 60 }
    )
  })
  it('where no rain comes near, the answer is idle', () => {
    for (const exposure of ['heated', 'unheated', 'ground'])
      for (const details of kinds)
        expect(judgeAll({ exposure, details }, few, reference).judged).toEqual(
          judgeAll({ exposure, details: 'usual' }, few, reference).judged
        )
  })
  it('left open, it is taken as usual', () => {
    for (const exposure of ['roofed', 'weather'])
      expect(judgeAll({ exposure }, few, reference).judged).toEqual(
        judgeAll({ exposure, details: 'usual' }, few, reference).judged
      )
  })
})

describe('questions', () => {
  it('each is asked for some answers, and none is asked that the answers make idle', () => {
    expect(new Set(QUESTIONS.map((q) => q.id)).size).toBe(QUESTIONS.length)
    const asked = new Set(
      [{}, { role: 'looks' }, { exposure: 'weather' }].flatMap((a) => askedQuestions(a).map((q) => q.id))
    )
    expect([...asked].sort()).toEqual(QUESTIONS.map((q) => q.id).sort())
    expect(askedQuestions({ role: 'looks' }).map((q) => q.id)).not.toContain('snow')
    expect(askedQuestions({ carries: 'floor' }).map((q) => q.id)).not.toContain('slope')
    expect(askedQuestions({ exposure: 'heated' }).map((q) => q.id)).not.toContain('upkeep')
    expect(askedQuestions({ exposure: 'weather' }).map((q) => q.id)).not.toContain('heating')
    for (const exposure of ['heated', 'unheated', 'ground', 'unsure'])
      expect(
        askedQuestions({ exposure }).map((q) => q.id),
        exposure
      ).not.toContain('details')
  })
  it('each has plausible values for "not sure", and every one of them is a valid answer', () => {
    for (const q of QUESTIONS) {
      if (q.kind === 'order') continue
      expect(reference.unsure[q.id], q.id).toBeDefined()
    }
  })
})

describe('rank-order centroid weights (printed values, roc-weights; five and six by hand from the formula)', () => {
  it.each([
    [3, [0.6111, 0.2778, 0.1111]],
    [4, [0.5208, 0.2708, 0.1458, 0.0625]],
    [5, [0.4567, 0.2567, 0.1567, 0.09, 0.04]],
    [6, [0.4083, 0.2417, 0.1583, 0.1028, 0.0611, 0.0278]]
  ])('n = %i', (n, printed) => {
    const ours = rankOrderCentroid(n)
    for (const [i, w] of printed.entries()) expect(ours[i]).toBeCloseTo(w, 4)
  })
})
