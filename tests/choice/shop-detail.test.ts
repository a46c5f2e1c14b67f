/** The shop's half of a brief: movement by stick, joints set out, the plan in time, the client, the twenty questions. */
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { type Answers, UNSURE } from '../../src/choice/types'
import type { Quantity, Sentence } from '../../src/data/quantity'
import { FOOT, PSF } from '../../src/data/units'
import { reference, sheet } from '../reference'

const hall: Answers = {
  project: 'great-room',
  role: 'structure',
  exposure: 'heated',
  place: 'madison-wi',
  carries: 'truss',
  truss: 'king',
  span: 20 * FOOT,
  spacing: 10 * FOOT,
  count: 4,
  slope: 10 / 12,
  snow: 30 * PSF,
  postHeight: 10 * FOOT,
  stick: 'none',
  size: 'none',
  depthLimit: 'none',
  finish: 'clear',
  knots: 'some',
  checks: 'some',
  joints: 'small',
  resin: 'rather-not',
  stands: 'w52',
  waits: 'weeks',
  heating: 'first-winter',
  budget: 'fair',
  budgetSum: 'none',
  begins: 'winter',
  local: 'rather',
  order: ['movement', 'look', 'cost']
}
const of = (change: Answers = {}) => makeBrief({ ...hall, ...change }, sheet, reference)
const BRIEFS = [
  of(),
  of({ exposure: 'weather', details: 'usual', upkeep: 'none' }),
  of({ role: 'looks', stands: 'w6' }),
  makeBrief({}, sheet, reference)
]

const sentencesIn = (value: unknown): Sentence[] =>
  typeof value !== 'object' || value === null
    ? []
    : [...('text' in value ? [value as Sentence] : []), ...Object.values(value).flatMap(sentencesIn)]
const quantitiesIn = (value: unknown): Quantity[] =>
  typeof value !== 'object' || value === null
    ? []
    : [
        ...('kind' in value && 'origin' in value ? [value as Quantity] : []),
        ...Object.values(value).flatMap(quantitiesIn)
      ]

describe('in any brief', () => {
  it('sentences have no holes, figures are finite and open to a source', () => {
    for (const { detail } of BRIEFS) {
      for (const { text, values = {} } of sentencesIn(detail)) {
        const named = [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name)
        for (const name of named) expect(Object.keys(values), text).toContain(name)
        expect(text).not.toMatch(/undefined|NaN|\.\.|\s\s/)
      }
      for (const q of quantitiesIn(detail)) {
        expect([q.value].flat().every((n) => Number.isFinite(n))).toBe(true)
        expect(q.low ?? 0).toBeLessThanOrEqual(q.high ?? Number.POSITIVE_INFINITY)
        expect(q.origin.sources.length).toBeGreaterThan(0)
        for (const { key } of q.origin.sources) expect(Object.keys(reference.sources)).toContain(key)
      }
    }
  })
  it('the leading option comes first, each wood once, five at most', () => {
    for (const brief of BRIEFS) {
      const ids = brief.detail.woods.map((w) => w.option)
      expect(ids[0]).toBe((brief.lead ?? brief.woods[0]?.report)?.option.id)
      expect(new Set(ids.map((id) => id.split('/')[0])).size).toBe(ids.length)
      expect(ids.length).toBeLessThanOrEqual(5)
      for (const id of ids) expect(brief.woods.map((w) => w.report.option.id)).toContain(id)
    }
  })
  it('twenty questions, each answered, assumed by name, or said not to arise', () => {
    for (const { detail, job } of BRIEFS) {
      expect(detail.asked).toHaveLength(20)
      for (const { says, state } of detail.asked) {
        expect(says.text.length).toBeGreaterThan(2)
        if (state === 'idle') expect(says.text).toMatch(/does not arise/i)
      }
      expect(detail.asked.some((a) => a.state === 'assumed')).toBe(job.some((l) => l.assumed))
    }
  })
  it('weights sum to 1, weightiest first', () => {
    for (const { detail } of BRIEFS) {
      const weights = detail.client.matters.map((m) => Number(m.weight.value))
      expect(weights.reduce((s, w) => s + w, 0)).toBeCloseTo(1, 9)
      expect(weights).toEqual([...weights].sort((p, q) => q - p))
    }
  })
})

describe('movement by stick', () => {
  it('the main timber moves as the brief says of it', () => {
    const brief = of()
    const [first] = brief.detail.woods
    const main = brief.lead?.figures.section.value as readonly [number, number]
    const line = first?.cutList.lines.find((l) => String(l.section.value) === String(main))
    const moves = first?.moves.find((m) => m.id === line?.id)
    expect(Number(moves?.depth.value)).toBeCloseTo(Number(brief.lead?.figures.faceShrinkage.value), 9)
    expect(Number(moves?.breadth.value)).toBeCloseTo(Number(brief.lead?.figures.breadthShrinkage.value), 9)
    expect(Number(moves?.depthShare.value) * main[1]).toBeCloseTo(Number(moves?.depth.value), 9)
  })
  it('boxed heart has a bound on its checks, free of heart none', () => {
    for (const brief of BRIEFS)
      for (const wood of brief.detail.woods)
        for (const m of wood.moves) expect(m.checks === null, wood.option).toBe(wood.option.includes('/free/'))
  })
})

describe('joints set out', () => {
  it('a truss: step and what is left beyond it, pegs with four distances, bearings, and seats', () => {
    const labels = of().detail.woods[0]?.setOut.flatMap((s) => s.sizes.map((x) => x.label)) ?? []
    for (const label of [
      'Pegs',
      'Pegs, diameter',
      'Pegs to the tenon’s end',
      'Pegs to the loaded edge',
      'Step into the tie',
      'Tie beyond the step',
      'Seat needed'
    ])
      expect(labels).toContain(label)
  })
  it('nothing where nothing is carried', () => {
    expect(of({ role: 'looks' }).detail.woods[0]?.setOut).toEqual([])
  })
})

describe('the drying plan', () => {
  it('goes forward in time, counts back from the raising, and agrees with the clock', () => {
    for (const brief of BRIEFS) {
      const { lines } = brief.detail.plan
      const after = lines.map((l) => Number(l.after.value))
      expect(after).toEqual([...after].sort((p, q) => p - q))
      const raised = lines.find((l) => l.id === 'raised')
      for (const l of lines) {
        if (l.before) expect(Number(l.before.value) + Number(l.after.value)).toBeCloseTo(Number(raised?.after.value), 9)
        const clock = brief.clock.lines.find((c) => c.id === l.moment)
        if (l.moment) expect([Number(clock?.after.value), clock?.month]).toEqual([Number(l.after.value), l.month])
      }
      // Every moment of the clock has its step.
      expect(lines.flatMap((l) => l.moment ?? [])).toEqual(brief.clock.lines.map((l) => l.id))
    }
  })
})

describe('what is asked of the timber', () => {
  const told = (brief: ReturnType<typeof of>, ask: RegExp) => brief.detail.asked.find((a) => ask.test(a.ask))?.says
  it('is what the cut list says: logs, longest stick, amount and cost', () => {
    const brief = of()
    const cut = brief.detail.woods[0]?.cutList
    const most = (key: 'log' | 'length') => Math.max(...(cut?.lines ?? []).map((l) => Number(l[key].value)))
    const logs = told(brief, /What logs/)?.values
    expect(Number(logs?.['log']?.value)).toBe(most('log'))
    expect(Number(logs?.['stick']?.value)).toBe(most('length'))
    const worth = told(brief, /How much timber/)?.values
    expect(worth?.['total']?.value).toBe(brief.lead?.figures.volume.value)
    expect(worth?.['cost']?.value).toBe(brief.lead?.figures.timberCost.value)
    expect(told(brief, /lifted/)?.text).toMatch(/^The heaviest stick, the .* weighs about \{weight\}/)
  })
  it('joints: those that work, those that want steel, and none', () => {
    expect(told(of(), /joints work/)?.text).toMatch(/^Yes/)
    const wide = [20, 26, 30, 34, 38].map((ft) => of({ span: ft * FOOT, snow: 70 * PSF }))
    const texts = wide.map((brief) => told(brief, /joints work/)?.text ?? '')
    expect(texts.some((text) => /^Not all\. [A-Z].*: .*(steel|strap)/.test(text))).toBe(true)
    expect(told(of({ role: 'looks' }), /joints work/)?.text).toMatch(/^Does not arise/)
    expect(told(of({ span: 60 * FOOT, snow: 300 * PSF }), /joints work/)?.text).toMatch(/^Not worked out/)
  })
  it('says when nothing passes, and what nobody was asked', () => {
    const none = of({ span: 60 * FOOT, snow: 300 * PSF })
    expect(told(none, /Which wood/)?.text).toMatch(/^Nothing passes\. Nearest came /)
    expect(told(of(), /nobody asked/)?.text).toMatch(/crane/)
  })
})

describe('about the client', () => {
  it('lists every open question once, those that could change the choice first', () => {
    const { detail, job } = of({ checks: UNSURE, snow: UNSURE, knots: UNSURE })
    expect(detail.client.unsure.map((u) => u.label).sort()).toEqual(
      job
        .filter((l) => l.assumed)
        .map((l) => l.label)
        .sort()
    )
    const moves = detail.client.unsure.map((u) => u.moves)
    expect(moves).toEqual([...moves].sort((p, q) => Number(q) - Number(p)))
    expect(detail.client.says[0]?.text).toMatch(/^They left 3 questions open/)
  })
  it('nothing open: says so', () => {
    const { detail } = of()
    expect(detail.client.unsure).toEqual([])
    expect(detail.client.says[0]?.text).toMatch(/answered every question/)
    expect(detail.asked.at(-1)?.says.text).toMatch(/^Nothing is open/)
  })
})
