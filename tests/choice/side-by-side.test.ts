/** Two options side by side, and options on two figures: held against the judging, and against brute force. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { comparison } from '../../src/choice/firm/comparison'
import { sideBySide } from '../../src/choice/firm/side-by-side'
import { AXES, efficient, tradeOff } from '../../src/choice/firm/trade-off'
import { judgeAll } from '../../src/choice/judge'
import { type Answers, CRITERIA } from '../../src/choice/types'
import type { Quantity } from '../../src/data/quantity'
import { FOOT, PSF } from '../../src/data/units'
import { reference, sheet } from '../reference'
import { few, full, spoiled, unfilled } from './any-answers'

const job: Answers = {
  role: 'structure',
  exposure: 'roofed',
  place: 'madison-wi',
  carries: 'beam',
  span: 14 * FOOT,
  spacing: 8 * FOOT,
  snow: 30 * PSF,
  stands: 'w52',
  local: 'prefer',
  order: ['durability', 'cost', 'movement', 'look', 'stoutness', 'time', 'local']
}
const judging = judgeAll(job, sheet, reference)
const [lead, second] = judging.judged
if (!lead || !second) throw new Error('no options')

describe('side by side', () => {
  it('points add up to what one leads by, and stand weightiest first', () => {
    for (const other of judging.judged.slice(1, 40)) {
      const { points } = sideBySide(lead, other, judging)
      const sum = points.reduce((s, p) => s + (p.better === 'a' ? 1 : -1) * Number(p.by.value), 0)
      const silent = CRITERIA.filter((id) => !points.some((p) => p.criterion === id))
      const rest = silent.reduce((s, id) => s + 100 * judging.weights[id] * (lead.scores[id] - other.scores[id]), 0)
      expect(sum + rest).toBeCloseTo(100 * (lead.total - other.total), 8)
      const by = points.map((p) => Number(p.by.value))
      expect(by).toEqual([...by].sort((p, q) => q - p))
    }
  })
  it('turned round, figures, points and reasons change sides', () => {
    const one = sideBySide(lead, second, judging)
    const two = sideBySide(second, lead, judging)
    expect(two.a).toEqual(one.b)
    expect(two.figures.map(({ a, b }) => [b, a])).toEqual(one.figures.map(({ a, b }) => [a, b]))
    expect(two.points.map((p) => p.better)).toEqual(
      one.points.map((p) => (p.better === null ? null : p.better === 'a' ? 'b' : 'a'))
    )
  })
  it('one that is ruled out brings the reason; with itself there is nothing between', () => {
    const out = judging.judged.find((j) => !j.in)
    if (!out) throw new Error('nothing is out')
    const { a, b } = sideBySide(lead, out, judging)
    expect([a.in, b.in]).toEqual([true, false])
    expect(b.against.length).toBe(out.fired.filter((r) => r.effect === 'out').length)
    const self = sideBySide(lead, lead, judging)
    expect(self.says.map((s) => s.text)).toEqual([expect.stringContaining('Little separates them')])
    expect(self.points.every((p) => p.better === null)).toBe(true)
  })
  it('a shop’s options can all be asked for, the cheapest is the cheapest, and strangers give nothing', () => {
    const c = comparison(job, sheet, reference)
    expect(c.options.length).toBe(judging.judged.length)
    const price = (id: string | null) => judging.judged.find((j) => j.facts.option.id === id)?.facts.jobCost
    for (const j of judging.judged.filter((x) => x.in)) expect(price(c.cheapest)).toBeLessThanOrEqual(j.facts.jobCost)
    expect(c.pair('no/such/wood', lead.facts.option.id)).toBeNull()
  })
  it('whatever the answers: plain data, sentences without holes', () => {
    fc.assert(
      fc.property(full, fc.nat(), fc.nat(), (answers, i, k) => {
        const own = judgeAll(answers, few, reference)
        const at = (n: number) => own.judged[n % own.judged.length] ?? lead
        const pair = sideBySide(at(i), at(k), own)
        expect(spoiled(pair)).toEqual([])
        expect(unfilled(pair)).toEqual([])
      }),
      { numRuns: 40 }
    )
  })
})

const coordinate = fc.integer({ min: 0, max: 12 })
const plane = fc.array(fc.tuple(coordinate, coordinate), { maxLength: 40 })

describe('efficient points', () => {
  it('are those that brute force finds', () => {
    fc.assert(
      fc.property(plane, (points) => {
        const brute = points.map(([x, y]) => !points.some(([u, v]) => u <= x && v <= y && (u < x || v < y)))
        expect(efficient(points)).toEqual(brute)
      })
    )
  })
  it('none of nothing, one of one, all of equals', () => {
    expect(efficient([])).toEqual([])
    expect(efficient([[3, 4]])).toEqual([true])
    expect(
      efficient([
        [1, 1],
        [1, 1],
        [2, 1],
        [1, 2]
      ])
    ).toEqual([true, true, false, false])
  })
})

describe('the trade-off', () => {
  const value = (q: Quantity) => (typeof q.value === 'number' ? q.value : q.value[0] * q.value[1])
  it.each(AXES.flatMap((x) => AXES.filter((y) => y !== x).map((y) => [x, y] as const)))(
    '%s against %s: the front falls, holds every efficient point, and words fit it',
    (x, y) => {
      const t = tradeOff(judging.judged, lead.facts.option.id, [x, y], judging.context)
      if (!t) throw new Error('nothing passes')
      expect(t.points.length).toBe(judging.judged.filter((j) => j.in).length)
      const firsts = t.front.flatMap((g) => g[0] ?? [])
      for (const [i, p] of firsts.entries()) {
        const next = firsts[i + 1]
        if (next) {
          expect(value(next.x)).toBeGreaterThan(value(p.x))
          expect(value(next.y)).toBeLessThan(value(p.y))
        }
      }
      expect(t.front.flat().length).toBe(t.points.filter((p) => p.efficient).length)
      for (const p of t.points) for (const at of p.at) expect(at >= 0 && at <= 1).toBe(true)
      const told = t.says.map((s) => s.text).join(' ')
      expect(told.includes('The choice of this brief is one of them')).toBe(t.points.some((p) => p.lead && p.efficient))
      expect(unfilled(t)).toEqual([])
      expect(spoiled(t)).toEqual([])
    }
  )
  it('where nothing passes there is none', () => {
    expect(
      tradeOff(
        judging.judged.filter((j) => !j.in),
        null,
        ['jobCost', 'section'],
        judging.context
      )
    ).toBeNull()
  })
})
