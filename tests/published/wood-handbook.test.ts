/** The engine against printed tables and worked examples of the Wood Handbook. */
import { describe, expect, it } from 'vitest'
import { factsFrom } from '../../src/choice/facts'
import { equilibriumMoisture } from '../../src/wood/moisture'
import {
  changeBetween,
  changeByCoefficient,
  changeCoefficient,
  dimensionChange,
  shrinkageFromGreen
} from '../../src/wood/shrinkage'
import { densityAt } from '../../src/wood/weight'
import { reference } from '../reference'
import coefficients from './dimensional-change.json'
import table from './emc-table.json'

describe('Wood Handbook FPL-GTR-190, Table 4-2: equilibrium moisture content', () => {
  // Printed to 0.1; the handbook's own equation differs from its table by up to 0.07 before rounding.
  it(`every one of ${table.cells.length} cells within 0.1`, () => {
    expect(table.cells.length).toBeGreaterThan(300)
    for (const [f = 0, rh = 0, printed = 0] of table.cells) {
      const ours = 100 * equilibriumMoisture(((f - 32) * 5) / 9, rh / 100)
      expect(Math.abs(ours - printed), `${f} F, ${rh} %: ${ours.toFixed(2)} against ${printed}`).toBeLessThanOrEqual(
        0.1
      )
    }
  })
})

describe('Wood Handbook FPL-GTR-190, ch. 13: a flat-sawn white fir board, 232 mm wide, from 8 to 11 %', () => {
  it('eq. 13-2 with C_T 0.00245 swells it by 1.7 mm to 233.7 mm (printed to 0.1 mm)', () => {
    const change = changeByCoefficient(232, 0.00245, 8, 11)
    expect(change).toBeCloseTo(1.7, 1)
    expect(232 + change).toBeCloseTo(233.7, 1)
  })
  it('eq. 13-3 from the total shrinkage of 7.0 % gives the same within a fifth of a millimetre', () => {
    // The two equations are the handbook's own alternatives; 13-2 is fitted to 6-14 %, 13-3 runs from green.
    expect(-232 * changeBetween(0.07, 0.08, 0.11, 0.3)).toBeCloseTo(1.7, 0)
    expect(Math.abs(-232 * changeBetween(0.07, 0.08, 0.11, 0.3) - 1.7)).toBeLessThan(0.2)
  })
  it('eq. 13-2 refuses moisture outside 6 to 14 %', () => {
    expect(() => changeByCoefficient(232, 0.00245, 5, 11)).toThrow(RangeError)
    expect(() => changeByCoefficient(232, 0.00245, 8, 15)).toThrow(RangeError)
  })
})

describe('Wood Handbook FPL-GTR-190, Table 13-5: coefficients of dimensional change', () => {
  // Rows of the table that stand for another wood or group than our shrinkage values: their coefficients are the group's.
  const groups: Readonly<Record<string, string>> = {
    'red-oak': 'red oak, commercial',
    'white-oak': 'white oak, commercial',
    hickory: 'hickory, true',
    'grand-fir': 'the row of white fir'
  }
  const rows = coefficients.rows as [string, number, string, number, string][]
  const derived = (id: string, fibreSaturation = reference.woods.get(id)?.fibreSaturation ?? 0) => {
    const { radial, tangential } = reference.woods.get(id) ?? { radial: 0, tangential: 0 }
    return [changeCoefficient(radial, fibreSaturation), changeCoefficient(tangential, fibreSaturation)] as const
  }
  const own = rows.filter(([id]) => !(id in groups) && id !== 'black-locust')
  // Printed to 0.00001; the widest miss is a rounding of the shrinkage that went in.
  it.each(own)('%s: C_R %d (%s), C_T %d (%s) follow from its total shrinkage', (id, radial, _a, tangential) => {
    const [r, t] = derived(id)
    expect(Math.abs(r - radial)).toBeLessThanOrEqual(0.000011)
    expect(Math.abs(t - tangential)).toBeLessThanOrEqual(0.000011)
  })
  it('most of the table, and at least ten of it read in a copy', () => {
    expect(own.length).toBeGreaterThan(30)
    expect(own.filter(([, , a, , b]) => a === 'seen' && b === 'seen').length).toBeGreaterThanOrEqual(6)
  })
  it('black locust is printed for a fibre saturation of 30 %; it has 22', () => {
    const row = rows.find(([id]) => id === 'black-locust')
    const [r, t] = derived('black-locust', 0.3)
    expect(r).toBeCloseTo(row?.[1] ?? 0, 5)
    expect(t).toBeCloseTo(row?.[3] ?? 0, 5)
    expect(derived('black-locust')[1]).toBeGreaterThan(1.3 * (row?.[3] ?? 0))
  })
  it('rows of a group lie within a sixth of ours', () => {
    for (const [id, radial, , tangential] of rows.filter(([name]) => name in groups)) {
      const [r, t] = derived(id)
      expect(Math.abs(r / radial - 1), id).toBeLessThan(0.18)
      expect(Math.abs(t / tangential - 1), id).toBeLessThan(0.18)
    }
  })
})

describe('which equation of ch. 13 holds', () => {
  it('13-2 within 6 to 14 %, 13-3 outside, 4-9 from green; swelling is negative', () => {
    const fir = (from: number, to: number) => dimensionChange(0.07, from, to, 0.3)
    expect(fir(0.06, 0.14).equation).toBe('13-2')
    expect(fir(0.14, 0.06).equation).toBe('13-2')
    expect(fir(0.0599, 0.14).equation).toBe('13-3')
    expect(fir(0.14001, 0.06).equation).toBe('13-3')
    expect(fir(0.3, 0.08).equation).toBe('4-9')
    expect(fir(0.08, 0.3).equation).toBe('13-3')
    expect(fir(0.08, 0.11).strain).toBeLessThan(0)
    expect(fir(0.11, 0.08).strain).toBeGreaterThan(0)
    expect(fir(0.5, 0.08).strain).toBe(shrinkageFromGreen(0.07, 0.08, 0.3))
    expect(fir(0.5, 0.4).strain).toBe(0)
  })
  it('the worked example by way of it: 232 mm swell by 1.7 mm', () => {
    const change = dimensionChange(0.07, 0.08, 0.11, 0.3)
    expect(change.equation).toBe('13-2')
    expect(-232 * change.strain).toBeCloseTo(1.7, 1)
  })
  it('13-2 and 13-3 differ by less than a twentieth of the movement where both hold', () => {
    for (const wood of reference.woods.values()) {
      for (const [from, to] of [
        [0.14, 0.06],
        [0.06, 0.14],
        [0.12, 0.08]
      ] as const) {
        const by = (total: number) => changeBetween(total, from, to, wood.fibreSaturation)
        const near = dimensionChange(wood.tangential, from, to, wood.fibreSaturation).strain
        expect(Math.abs(near / by(wood.tangential) - 1), wood.id).toBeLessThan(0.05)
      }
    }
  })
  it('refuses moisture below zero', () => expect(() => dimensionChange(0.07, 0.1, -0.01, 0.3)).toThrow(RangeError))
})

describe('Wood Handbook FPL-GTR-282, eq. 4-9', () => {
  it('shrinkage is all of it oven-dry, half of it at half of fibre saturation, none above', () => {
    expect(shrinkageFromGreen(0.076, 0, 0.3)).toBeCloseTo(0.076, 12)
    expect(shrinkageFromGreen(0.076, 0.15, 0.3)).toBeCloseTo(0.038, 12)
    expect(shrinkageFromGreen(0.076, 0.45, 0.3)).toBe(0)
  })
})

describe('Density, against weights printed for timbers (FPL Technical Note 218, air-dry at 12 %)', () => {
  // Whole pounds per cubic foot; the note rounds, and its stock is older than today's specific gravities. Redwood is left
  // out: the note weighed old growth (28), our numbers are those of the young growth that is sold (25).
  const printed: readonly (readonly [string, number])[] = [
    ['douglas-fir', 34],
    ['western-redcedar', 23],
    ['eastern-white-pine', 25],
    ['western-hemlock', 29],
    ['white-oak', 47],
    ['red-oak', 44],
    ['yellow-poplar', 28],
    ['white-ash', 42]
  ]
  it.each(printed)('%s weighs about %i lb/ft3', (id, pounds) => {
    const wood = reference.woods.get(id)
    const ours = densityAt(wood?.gravityGreen ?? 0, 0.12) / 16.01846
    expect(Math.abs(ours - pounds), `${ours.toFixed(1)} against ${pounds}`).toBeLessThanOrEqual(0.1 * pounds)
  })
})

describe('Wood Handbook FPL-GTR-190, fig. 13-1: service moisture of interior woodwork', () => {
  const indoors = (place: string) => 100 * factsFrom({ exposure: 'heated', place }, reference).service.mean
  it('8 % over most of the United States', () => {
    const typical = [
      'madison-wi',
      'boston-ma',
      'albany-ny',
      'minneapolis-st-paul-mn',
      'seattle-wa',
      'st-louis-mo',
      'charleston-wv',
      'pittsburgh-pa'
    ]
    for (const place of typical) expect(Math.abs(indoors(place) - 8), place).toBeLessThanOrEqual(1)
  })
  it('6 % in the dry south-west', () => {
    // Phoenix and Tucson come out a point higher: the model lets summer rain-season air in and cools it.
    for (const place of ['las-vegas-nv', 'albuquerque-nm', 'reno-nv', 'el-paso-tx'])
      expect(Math.abs(indoors(place) - 6), place).toBeLessThanOrEqual(1)
    for (const place of ['phoenix-az', 'tucson-az'])
      expect(Math.abs(indoors(place) - 6), place).toBeLessThanOrEqual(1.5)
  })
  it('11 % on the damp southern coasts', () => {
    for (const place of ['new-orleans-la', 'galveston-tx', 'miami-fl', 'mobile-al'])
      expect(Math.abs(indoors(place) - 11), place).toBeLessThanOrEqual(1)
  })
})
