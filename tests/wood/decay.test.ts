/** Use class by details, the sufficiency matrix and the spans of life: boundaries, and what can only go one way. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sufficiencyOf, type UseClass, useClassOf, VERDICTS } from '../../src/wood/decay'
import { expectedLife } from '../../src/wood/lasting'
import { reference } from '../reference'

const { sufficiency, dry, aboveGround, groundYears } = reference.decay
const lives = { dry, aboveGround, ground: groundYears }
const CLASSES = [1, 2, 3, 4, 5]
const USES: readonly UseClass[] = ['1', '2', '3.1', '3.2', '4']
const HAZARDS = ['low', 'moderate', 'high'] as const

describe('use class', () => {
  it.each([
    ['roofed', ['2', '3.1', '3.2']],
    ['weather', ['3.1', '3.2', '4']],
    ['heated', ['1', '1', '1']],
    ['unheated', ['2', '2', '2']],
    ['ground', ['4', '4', '4']]
  ] as const)('%s: sheltered, usual, holding', (exposure, expected) => {
    expect((['sheltered', 'usual', 'holding'] as const).map((d) => useClassOf(exposure, d))).toEqual(expected)
    expect(useClassOf(exposure)).toBe(expected[1])
  })
})

describe('sufficiency', () => {
  it('a more durable wood, or a milder use class, is never given a worse verdict', () => {
    const rank = (use: UseClass, cls: number) => VERDICTS.indexOf(sufficiencyOf(sufficiency.byUseClass, use, cls))
    for (const [i, use] of USES.entries())
      for (const cls of CLASSES) {
        if (cls > 1) expect(rank(use, cls - 1), `${use} ${cls}`).toBeLessThanOrEqual(rank(use, cls))
        const milder = USES[i - 1]
        if (milder) expect(rank(milder, cls), `${use} ${cls}`).toBeLessThanOrEqual(rank(use, cls))
      }
  })
  it.each([0, 6, 2.5, Number.NaN, -1])('there is no class %d', (cls) => {
    expect(() => sufficiencyOf(sufficiency.byUseClass, '3.1', cls)).toThrow(RangeError)
    for (const use of ['3.2', '4'] as const) {
      expect(() => expectedLife(lives, use, 'low', cls, 3)).toThrow(RangeError)
      expect(() => expectedLife(lives, use, 'low', 1, cls)).toThrow(RangeError)
    }
  })
})

describe('expected life', () => {
  const years = (use: UseClass, hazard: (typeof HAZARDS)[number], best: number, worst: number) => {
    const [low, high] = expectedLife(lives, use, hazard, best, worst)
    return [low.lowYears ?? Number.POSITIVE_INFINITY, high.highYears ?? Number.POSITIVE_INFINITY] as const
  }
  it('never one year, never upside down; milder climate, milder use or better class never shorten it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0, 1, 2, 3, 4),
        fc.constantFrom(0, 1, 2),
        fc.constantFrom(...CLASSES),
        fc.constantFrom(...CLASSES),
        (u, h, a, b) => {
          const use = USES[u] as UseClass
          const hazard = HAZARDS[h] as 'low'
          const [best, worst] = [Math.min(a, b), Math.max(a, b)]
          const [low, high] = years(use, hazard, best, worst)
          if (Number.isFinite(low)) expect(high - low).toBeGreaterThanOrEqual(5)
          const better = (other: readonly [number, number]) => {
            expect(other[0]).toBeGreaterThanOrEqual(low)
            expect(other[1]).toBeGreaterThanOrEqual(high)
          }
          if (best > 1) better(years(use, hazard, best - 1, worst - 1))
          if (h > 0) better(years(use, HAZARDS[h - 1] as 'low', best, worst))
          // From the ground to the air only the upper end is held to it: the trials above ground ended sooner.
          const milder = USES[u - 1]
          if (milder && use !== '4') better(years(milder, hazard, best, worst))
          if (use === '4') expect(years('3.2', hazard, best, worst)[1]).toBeGreaterThanOrEqual(high)
        }
      )
    )
  })
  it('the ends of the scale hold whatever falls past them', () => {
    expect(years('3.2', 'high', 5, 5)).toEqual([0, 7])
    expect(years('3.1', 'low', 1, 1)).toEqual([20, Number.POSITIVE_INFINITY])
  })
})
