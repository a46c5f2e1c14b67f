/** The first estimate of drying against what has been seen, its misfit said. */
import { describe, expect, it } from 'vitest'
import { chamberDays } from '../../src/choice/option-facts'
import { INCH } from '../../src/data/units'
import { daysToReach } from '../../src/wood/drying'
import { reference } from '../reference'

const rate = (id: string, green: number) => {
  const wood = reference.woods.get(id)
  if (!wood) throw new Error(id)
  const boardDays = (wood.airDays.min + wood.airDays.max) / 2
  return { green, equilibrium: 0.13, boardEquilibrium: 0.13, boardDays, power: 1.58 }
}
const seasoning = (id: 'kiln' | 'rfv') => {
  const found = reference.seasonings.get(id)
  if (!found) throw new Error(id)
  return found
}

describe('boards of 1 in (FPL-GTR-117): green to 20 % within the published days', () => {
  it.each([
    'douglas-fir',
    'eastern-white-pine',
    'eastern-hemlock',
    'white-oak',
    'red-oak',
    'yellow-poplar',
    'western-larch',
    'southern-pine'
  ])('%s', (id) => {
    const wood = reference.woods.get(id)
    const days = daysToReach(rate(id, wood?.greenWhole ?? 0), INCH, 1e6, 0.2)
    expect(days).toBeGreaterThanOrEqual(wood?.airDays.min ?? 0)
    expect(days).toBeLessThanOrEqual(wood?.airDays.max ?? 0)
  })
})

describe('two-inch boards: three times the days of one-inch ones (extension archive, good weather: 60 and 180 days)', () => {
  it('by the stated power', () => {
    const r = rate('yellow-poplar', 0.8)
    expect(daysToReach(r, 2 * INCH, 1e6, 0.2) / daysToReach(r, INCH, 1e6, 0.2)).toBeCloseTo(3, 1)
  })
})

describe('red oak ties, 7 x 9 in, from 85 to 50 % in 5 to 10 months (Mathewson and others 1949)', () => {
  it('the estimate errs to the slow side, by up to about double, as its formula says', () => {
    // Free water leaves faster than one exponential fitted to boards lets it: the later drying model is to mend this.
    const r = rate('red-oak', 0.85)
    const months = daysToReach(r, 7 * INCH, 9 * INCH, 0.5) / 30.4
    expect(months).toBeGreaterThan(10)
    expect(months).toBeLessThan(20)
    expect(reference.formulas['air-moisture']?.valid).toMatch(/slow side/)
  })
})

describe('kiln and vacuum', () => {
  it('6 x 8 in softwood cants take 4 to 6 weeks to 15 % (trade page)', () => {
    const weeks = chamberDays(seasoning('kiln'), 6 * INCH) / 7
    expect(weeks).toBeGreaterThanOrEqual(4)
    expect(weeks).toBeLessThanOrEqual(6)
  })
  it('6 in by radio-frequency vacuum: between thick squares (1 to 1.3 days) and boxed-heart posts of 150 mm (7 days)', () => {
    const days = chamberDays(seasoning('rfv'), 6 * INCH)
    expect(days).toBeGreaterThan(1)
    expect(days).toBeLessThan(7.1)
  })
})
