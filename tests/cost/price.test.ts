import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bill, priceParts } from '../../src/cost/price'
import type { Charge, ShopSheetContent } from '../../src/data/shop-schema'
import { BOARD_FOOT, FOOT, INCH } from '../../src/data/units'
import { sheet } from '../reference'

const shop: ShopSheetContent = {
  ...sheet,
  woods: [{ species: 'white-oak', perBoardFoot: 5 }],
  surface: 'full-sawn',
  freeOfHeartAddPercent: 40,
  planedAddPerBoardFoot: 0.75,
  longAddPercent: { aboveFt: 20, add: 10 },
  largeAddPercent: { aboveIn: 12, add: 20 },
  seasonings: [
    { id: 'green', addPerBoardFoot: 0, leadWeeks: 1 },
    { id: 'kiln', addPerBoardFoot: 1.5, leadWeeks: 1 }
  ],
  priceBandPercent: 20,
  rates: {
    joinery: { by: 'board-foot', value: 8 },
    raising: { by: 'sum', value: 2000 },
    finish: { by: 'timber-percent', value: 10 },
    engineering: { by: 'frame-percent', value: 6 },
    freight: { by: 'frame-percent', value: 4 }
  }
}
const stick = { freeTimes: 0, seasoning: 'green', length: 16 * FOOT, depth: 10 * INCH }
const perFoot = (total: number) => total * BOARD_FOOT

describe('price of a timber', () => {
  test('boxed, green, short and slender: the wood’s own price', () => {
    expect(perFoot(priceParts(shop, 'white-oak', stick).total)).toBeCloseTo(5, 9)
  })

  test('every addition, worked by hand: 5 + 40 % = 7; + 10 % = 7.70; + 20 % = 9.24; + 1.50 dried = 10.74', () => {
    const parts = priceParts(shop, 'white-oak', {
      freeTimes: 1,
      seasoning: 'kiln',
      length: 24 * FOOT,
      depth: 14 * INCH
    })
    expect(perFoot(parts.free)).toBeCloseTo(2, 9)
    expect(perFoot(parts.long)).toBeCloseTo(0.7, 9)
    expect(perFoot(parts.large)).toBeCloseTo(1.54, 9)
    expect(perFoot(parts.dried)).toBeCloseTo(1.5, 9)
    expect(perFoot(parts.total)).toBeCloseTo(10.74, 9)
  })

  test('planing is charged where the shop planes, and only there', () => {
    expect(perFoot(priceParts({ ...shop, surface: 'planed' }, 'white-oak', stick).planed)).toBeCloseTo(0.75, 9)
    expect(priceParts(shop, 'white-oak', stick).planed).toBe(0)
  })

  test('a wood’s own addition for free of heart stands in place of the sheet’s', () => {
    const own = { ...shop, woods: [{ species: 'white-oak', perBoardFoot: 5, freeOfHeartAddPercent: 100 }] }
    expect(perFoot(priceParts(own, 'white-oak', { ...stick, freeTimes: 1 }).total)).toBeCloseTo(10, 9)
  })

  test('just at the limits nothing is added, just above it is', () => {
    const at = (change: Partial<typeof stick>) => perFoot(priceParts(shop, 'white-oak', { ...stick, ...change }).total)
    expect(at({ length: 20 * FOOT, depth: 12 * INCH })).toBeCloseTo(5, 9)
    expect(at({ length: 20 * FOOT + 1 })).toBeCloseTo(5.5, 9)
    expect(at({ depth: 12 * INCH + 1 })).toBeCloseTo(6, 9)
  })

  test('a wood that the sheet does not carry has no price', () => {
    expect(() => priceParts(shop, 'black-locust', stick)).toThrow(RangeError)
  })
})

describe('the bill', () => {
  test('1,000 board feet at 5, worked by hand', () => {
    const it = bill(shop, 1000 * BOARD_FOOT, 5 / BOARD_FOOT)
    expect(it.timber).toBeCloseTo(5000, 6)
    expect(it.work.joinery).toBeCloseTo(8000, 6)
    expect(it.work.raising).toBe(2000)
    expect(it.work.finish).toBeCloseTo(500, 6)
    // Shares of the frame are of 5000 + 8000 + 2000 + 500 = 15,500.
    expect(it.work.engineering).toBeCloseTo(930, 6)
    expect(it.work.freight).toBeCloseTo(620, 6)
    expect(it.job).toBeCloseTo(17_050, 6)
    expect([it.low, it.high].map(Math.round)).toEqual([13_640, 20_460])
  })

  test('a part that the sheet leaves out is not in it', () => {
    const it = bill({ ...shop, rates: {} }, 1, 100)
    expect(it.work).toEqual({})
    expect(it.job).toBe(100)
  })

  test('timber and parts add up to the whole, and more timber never costs less', () => {
    const charge: fc.Arbitrary<Charge> = fc.record({
      by: fc.constantFrom('board-foot', 'timber-percent', 'frame-percent', 'sum'),
      value: fc.double({ min: 0, max: 300, noNaN: true })
    })
    const rates = fc.record({ joinery: charge, raising: charge, finish: charge, engineering: charge, freight: charge })
    const amount = fc.double({ min: 0.001, max: 50, noNaN: true })
    fc.assert(
      fc.property(rates, amount, amount, (given, p, q) => {
        const of = (volume: number) => bill({ ...shop, rates: given }, volume, 2000)
        const it = of(p)
        const parts = Object.values(it.work).reduce((sum, part) => sum + part, it.timber)
        expect(Math.abs(parts - it.job)).toBeLessThanOrEqual(1e-9 * it.job)
        expect(of(Math.max(p, q)).job).toBeGreaterThanOrEqual(of(Math.min(p, q)).job)
      })
    )
  })
})
