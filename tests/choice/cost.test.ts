import { describe, expect, test } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { judgeAll } from '../../src/choice/judge'
import type { Answers } from '../../src/choice/types'
import type { Quantity } from '../../src/data/quantity'
import { reference, sheet } from '../reference'
import { hall } from './jobs'

const value = (q: Quantity) => q.value as number
const allOf = (answers: Answers) => judgeAll(answers, sheet, reference).judged

describe('what it costs', () => {
  const brief = makeBrief(hall, sheet, reference)

  test('timber and the parts of the work add up to the whole, whose range is the sheet’s band', () => {
    const { bill, total } = brief.cost
    const sum = bill.reduce((all, line) => all + value(line.cost), 0)
    expect(bill.map((line) => line.name)).toEqual(['Timber', 'Joinery', 'Raising', 'Finish', 'Engineering', 'Freight'])
    expect(sum).toBeCloseTo(value(total as Quantity), 6)
    expect((total?.high ?? 0) / value(total as Quantity)).toBeCloseTo(1 + sheet.priceBandPercent / 100, 9)
  })

  test('what a wood adds is said of the timber and of the whole; where it needs no more timber it adds less to the whole', () => {
    const { woods } = brief.cost
    expect(woods.filter((line) => line.adds === null).length).toBe(1)
    const cheapest = woods.find((line) => line.adds === null)
    const volume = (option?: string) =>
      value(brief.woods.find((w) => w.report.option.id === option)?.report.figures.volume as Quantity)
    let dearer = 0
    for (const { option, adds, job } of woods) {
      expect(value(job)).toBeGreaterThanOrEqual(value(cheapest?.job as Quantity))
      if (adds === null) continue
      expect(value(adds.job)).toBeCloseTo(value(job) / value(cheapest?.job as Quantity) - 1, 9)
      if (volume(option) > volume(cheapest?.option) || value(adds.timber) <= 0) continue
      dearer++
      expect(value(adds.job)).toBeLessThan(value(adds.timber))
    }
    expect(dearer).toBeGreaterThan(0)
  })

  test('a sheet of real prices says that they are the shop’s own', () => {
    const own = makeBrief(hall, { ...sheet, placeholder: false }, reference)
    expect(own.cost.says.at(-1)?.text).toContain('this shop’s own')
    expect(own.cost.total?.origin.mark).toBe('seen')
    expect(brief.cost.total?.origin.mark).toBe('placeholder')
  })
})

describe('a sum for the frame', () => {
  const inWith = (budgetSum: number | string) => allOf({ ...hall, budgetSum }).filter((j) => j.in)
  const all = allOf(hall).filter((j) => j.in)
  const lows = all.map((j) => j.facts.bill.low).sort((p, q) => p - q)
  const middle = lows[Math.floor(lows.length / 2)] as number

  test('no sum, and none yet, rule out nothing', () => {
    expect(inWith('none').map((j) => j.facts.option.id)).toEqual(all.map((j) => j.facts.option.id))
  })

  test('what cannot come within it goes out, with the reason; what may come within it stays', () => {
    const left = inWith(middle)
    expect(left.length).toBeGreaterThan(0)
    expect(left.length).toBeLessThan(all.length)
    for (const j of left) expect(j.facts.bill.low).toBeLessThanOrEqual(middle)
    const out = allOf({ ...hall, budgetSum: middle }).filter((j) => !j.in && j.facts.bill.low > middle)
    for (const j of out) expect(j.fired.map((r) => r.id)).toContain('money-over')
  })

  test('exactly at the least is within it', () => {
    expect(inWith(lows[0] as number).length).toBe(lows.filter((low) => low === lows[0]).length)
  })

  test('where nothing comes within it nothing goes out for it, and the brief says so', () => {
    const sum = (lows[0] as number) / 2
    const left = inWith(sum)
    expect(left.length).toBe(all.length)
    for (const j of left) expect(j.fired.map((r) => r.id)).toContain('money-all-over')
    const brief = makeBrief({ ...hall, budgetSum: sum }, sheet, reference)
    expect(brief.lead).not.toBeNull()
    expect(brief.cost.says.some((s) => s.text.includes('over your sum'))).toBe(true)
    expect(brief.cautions.some((s) => s.text.includes('comes within your sum'))).toBe(true)
  })

  test('a sum that is ample is said to be so', () => {
    const brief = makeBrief({ ...hall, budgetSum: 4_000_000 }, sheet, reference)
    expect(brief.cost.says.some((s) => s.text.includes('within your sum of {sum}'))).toBe(true)
  })
})
