/** Ranges of a whole brief: in order, and set without false digits. */
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import type { Answers } from '../../src/choice/types'
import type { Quantity } from '../../src/data/quantity'
import { FOOT } from '../../src/data/units'
import { formatSi, formatUs } from '../../src/ui/format/quantity'
import { reference, sheet } from '../reference'
import { hall } from './jobs'

const floor: Answers = { ...hall, carries: 'floor', span: 16 * FOOT, floorUse: 'rooms' }
const porch: Answers = { ...hall, exposure: 'weather', carries: 'beam', span: 14 * FOOT }

const isQuantity = (v: object): v is Quantity => 'kind' in v && 'value' in v && 'origin' in v

/** Every quantity in plain data, with its path. */
function quantities(value: unknown, path = ''): [string, Quantity][] {
  if (value === null || typeof value !== 'object') return []
  const own: [string, Quantity][] = isQuantity(value) ? [[path, value]] : []
  return [...own, ...Object.entries(value).flatMap(([k, v]) => quantities(v, `${path}.${k}`))]
}

/**
 * What may carry more than three figures: sizes as sold and lengths as answered (exact to the fraction or the inch), what
 * was counted one by one, and a price off the sheet, which is stated to the cent.
 */
const EXACT: ReadonlySet<Quantity['kind']> = new Set(['section', 'span', 'count', 'pricePerVolume'])

/** Significant figures of a number as set: noughts before and behind do not count, behind a point they do. */
function figures(text: string): number {
  const plain = text.replace(/,/g, '')
  const digits = plain.includes('.') ? plain.replace('.', '').replace(/^0+/, '') : plain.replace(/^0+|0+$/g, '')
  return digits.length
}

const briefs: [string, Answers][] = [
  ['a hall', hall],
  ['a floor', floor],
  ['a porch', porch],
  ['nothing answered', {}]
]

describe.each(briefs)('the brief of %s', (_, answers) => {
  const brief = makeBrief(answers, sheet, reference)
  const all = quantities(brief)

  it('has every range in order: low, value, high', () => {
    expect(all.length).toBeGreaterThan(500)
    for (const [path, q] of all) {
      const value = typeof q.value === 'number' ? q.value : q.value[0]
      expect(q.low ?? value, `${path} low`).toBeLessThanOrEqual(value + 1e-9 * Math.abs(value))
      expect(q.high ?? value, `${path} high`).toBeGreaterThanOrEqual(value - 1e-9 * Math.abs(value))
    }
  })

  it('says no number to more than three figures, in either system', () => {
    for (const [path, q] of all) {
      if (EXACT.has(q.kind)) continue
      for (const text of [formatUs(q), formatSi(q)])
        for (const [number] of text.matchAll(/\d[\d,]*(?:\.\d+)?/g))
          expect(figures(number), `${path}: ${text}`).toBeLessThanOrEqual(3)
    }
  })

  it('carries the scatter of shrinkage, of the sheet’s prices and of drying to what it leads with', () => {
    const { lead } = brief
    if (!lead) throw new Error('nothing leads')
    const { faceShrinkage, breadthShrinkage, shoulderGap, timberCost, jobCost } = lead.figures
    const c = reference.scatter.shrinkage.of
    for (const q of [faceShrinkage, breadthShrinkage]) {
      const value = q.value as number
      expect(q.high ?? 0).toBeGreaterThanOrEqual(value * (1 + c) - 1e-9)
      expect(q.low ?? value).toBeLessThanOrEqual(value * (1 - c) + 1e-9)
    }
    expect(shoulderGap.high ?? 0).toBeGreaterThan(shoulderGap.value as number)
    const band = sheet.priceBandPercent / 100
    for (const q of [timberCost, jobCost]) {
      expect((q.low ?? 0) / (q.value as number)).toBeCloseTo(1 - band, 9)
      expect((q.high ?? 0) / (q.value as number)).toBeCloseTo(1 + band, 9)
    }
    for (const { report } of brief.woods) {
      const { readyWeeks: q } = report.figures
      if (report.option.seasoning === 'kiln') expect(q.high ?? 0).toBeGreaterThan(q.low ?? 0)
      if (report.option.seasoning === 'green') expect(q.low).toBeUndefined()
    }
  })
})

it('the sag of a beam is a range by the scatter of stiffness, about the sag that was checked', () => {
  const brief = makeBrief(floor, sheet, reference)
  const sag = brief.sizes.says.find((s) => s.values?.['sag'])?.values?.['sag']
  const checked = brief.lead?.members.find((m) => m.id === 'beam')?.checks.find((k) => k.id === 'deflection-total')
  const c = reference.scatter.elasticity.of
  expect(sag?.value).toBe(checked?.demand.value)
  expect((sag?.low ?? 0) * (1 + c)).toBeCloseTo(sag?.value as number, 9)
  expect((sag?.high ?? 0) * (1 - c)).toBeCloseTo(sag?.value as number, 9)
})
