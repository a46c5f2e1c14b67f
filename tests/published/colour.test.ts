/** Colour against published pairs, and against what light and weather were measured to do to wood. */
import { describe, expect, it } from 'vitest'
import { agedColour, silverGrey } from '../../src/choice/finish/looks'
import type { Wood } from '../../src/data/reference'
import { labOf, reflectance, screenColour, towards } from '../../src/wood/colour'
import { reference } from '../reference'

describe('CIELAB and sRGB', () => {
  // The primaries of sRGB (IEC 61966-2-1) in CIELAB under D65, as every colour reference prints them, to two decimals.
  it.each([
    ['#ff0000', 53.24, 80.09, 67.2],
    ['#00ff00', 87.73, -86.18, 83.18],
    ['#0000ff', 32.3, 79.19, -107.86],
    ['#ffffff', 100, 0, 0],
    ['#000000', 0, 0, 0],
    // Mid grey, code 119, is the sRGB grey nearest to L* 50.
    ['#777777', 50.03, 0, 0]
  ])('%s', (hex, L, a, b) => {
    expect(screenColour({ L, a, b }).hex).toBe(hex)
    const value = (i: number) => Number.parseInt(hex.slice(i, i + 2), 16) / 255
    const linear = (x: number) => (x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4)
    const lab = labOf([linear(value(1)), linear(value(3)), linear(value(5))])
    // Printed with slightly different white points: a tenth at the most saturated.
    expect(lab.L).toBeCloseTo(L, 1)
    expect(Math.abs(lab.a - a)).toBeLessThan(0.1)
    expect(Math.abs(lab.b - b)).toBeLessThan(0.1)
  })
  it('mean light reflected at L* 50 is 18.4 %', () => {
    const [r, g, b] = reflectance({ L: 50, a: 0, b: 0 })
    expect(0.2126 * r + 0.7152 * g + 0.0722 * b).toBeCloseTo(0.1842, 3)
  })
})

/** A wood of that colour and of none of its own in old age. */
const fresh = (L: number, a: number, b: number) => ({ colour: { L, a, b }, aged: null }) as unknown as Wood

describe('light indoors', () => {
  // Acta Facultatis Xylologiae Zvolen 62(2), 2020: under a lamp for 150 min pine fell from 84 to 74.6, its a* rose from 4.5 to 8.7;
  // beech fell from 72 to 65, a* 6.4 to 9.1. The b* of both fresh woods is ours, so b* is not compared. A lamp is not a room: to 2.
  it.each([
    ['Scots pine', fresh(84, 4.5, 22), 74.6, 8.7],
    ['European beech', fresh(72, 6.4, 20), 65, 9.1]
  ])('%s darkens and reddens as measured', (_, wood, L, a) => {
    const aged = agedColour(wood, reference)
    expect(Math.abs(aged.L - L)).toBeLessThan(2)
    expect(Math.abs(aged.a - a)).toBeLessThan(2)
  })
  it('spruce comes to what it is fitted to', () => {
    const { L, a, b } = agedColour(fresh(83, 4, 20), reference)
    expect([L, a, b].map(Math.round)).toEqual([73, 8, 30])
  })
  it('walnut alone turns lighter', () => {
    for (const wood of reference.woods.values()) {
      const turned = agedColour(wood, reference).L - wood.colour.L
      if (wood.id === 'black-walnut') expect(turned).toBeGreaterThan(0)
      else expect(turned, wood.name).toBeLessThan(0)
    }
  })
})

describe('weather', () => {
  // USGS Spectral Library 7, cedar shakes fresh, slight, medium and high weathering: L 42.3 to 42.5, a 14.1 to 1.6, b 25.9 to 8.0.
  const measured = [
    { L: 42.3, a: 14.1, b: 25.9 },
    { L: 42.9, a: 8.3, b: 19.2 },
    { L: 36.9, a: 5.1, b: 12.7 },
    { L: 42.5, a: 1.6, b: 8 }
  ] as const
  it('takes the colour from cedar as it was measured: redness before yellowness, a and b near the straight line to grey', () => {
    const grey = silverGrey(reference)
    for (const step of measured.slice(1)) {
      const share = (measured[0].a - step.a) / (measured[0].a - grey.a)
      const { b } = towards(measured[0], grey, share)
      // Patches of one shake differ by as much.
      expect(Math.abs(b - step.b)).toBeLessThan(4)
    }
  })
  it('leaves less chroma at every step, and grey at the end', () => {
    const cedar = reference.woods.get('western-redcedar')?.colour
    if (!cedar) throw new Error('western redcedar missing')
    const chroma = [0, 0.25, 0.5, 0.75, 1].map((s) => {
      const { a, b } = towards(cedar, silverGrey(reference), s)
      return Math.hypot(a, b)
    })
    for (const [i, c] of chroma.slice(1).entries()) expect(c).toBeLessThan(chroma[i] as number)
    expect(chroma.at(-1)).toBeLessThan(Math.hypot(measured[3].a, measured[3].b) + 1)
  })
})

describe('paintability', () => {
  // Wood Handbook, Table 16-1.
  it.each([
    ['baldcypress', 2],
    ['western-redcedar', 1],
    ['douglas-fir', 3],
    ['southern-pine', 3],
    ['western-hemlock', 2],
    ['white-oak', 3],
    ['yellow-poplar', 1],
    ['black-walnut', 2]
  ])('%s: group %i', (id, group) => {
    expect(reference.woods.get(id)?.paint?.group).toBe(group)
  })
})
