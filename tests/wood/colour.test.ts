/** Colour under a finish: what holds for every wood and every coat. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { opticsOf } from '../../src/choice/finish/looks'
import {
  type Finish,
  finishedColour,
  labOf,
  lightBelow,
  partsFor,
  reachable,
  reflectance,
  screenColour,
  shortOf,
  throughLayer,
  towards,
  worn
} from '../../src/wood/colour'
import { reference } from '../reference'

const woods = [...reference.woods.values()]
const finishes = new Map(reference.finishes.map((f) => [f.id, opticsOf(f)]))
const finishOf = (id: string) => finishes.get(id as 'clear') as Finish
const anyWood = fc.constantFrom(...woods.map((w) => w.colour))
const layer = fc.double({ min: 0, max: 2, noNaN: true })
const kx = fc.tuple(layer, layer, layer)
const parts = fc.double({ min: 0, max: 3, noNaN: true })

describe('a transparent layer', () => {
  it('more stain is never lighter, and no stain ever lighter than the bare wood', () => {
    fc.assert(
      fc.property(anyWood, kx, kx, parts, parts, (wood, coat, stain, p, q) => {
        const finish: Finish = { coat, stain, hides: 0, pigment: null }
        const [less, more] = [
          finishedColour(wood, finish, Math.min(p, q)),
          finishedColour(wood, finish, Math.max(p, q))
        ]
        expect(more.L).toBeLessThanOrEqual(less.L + 1e-6)
        expect(less.L).toBeLessThanOrEqual(wood.L + 1e-6)
      })
    )
  })
  it('two layers do as one of both, and none leaves the colour as it was', () => {
    fc.assert(
      fc.property(anyWood, kx, kx, (wood, one, two) => {
        const under = reflectance(wood)
        const both = throughLayer(throughLayer(under, one), two)
        const sum = throughLayer(under, [one[0] + two[0], one[1] + two[1], one[2] + two[2]])
        for (const i of [0, 1, 2] as const) expect(both[i]).toBeCloseTo(sum[i], 9)
        const same = labOf(throughLayer(under, [0, 0, 0]))
        expect(same.L).toBeCloseTo(wood.L, 3)
        expect(same.a).toBeCloseTo(wood.a, 2)
        expect(same.b).toBeCloseTo(wood.b, 2)
      })
    )
  })
  it('gives no light', () => {
    expect(() => throughLayer([0.5, 0.5, 0.5], [0, -0.1, 0])).toThrow(RangeError)
    expect(() => throughLayer([0.5, 0.5, 0.5], [0, Number.NaN, 0])).toThrow(RangeError)
  })
})

describe('the finishes of the reference', () => {
  it.each(woods.map((w) => [w.name, w] as const))('%s: clear darkens a little, stains stop at their aim', (_, wood) => {
    const own = wood.colour
    const clear = finishedColour(own, finishOf('clear'))
    expect(own.L - clear.L).toBeGreaterThan(2)
    expect(own.L - clear.L).toBeLessThan(8)
    for (const id of ['mid', 'dark'] as const) {
      const aim = reference.finishes.find((f) => f.id === id)?.targetL as number
      const stain = finishOf(id)
      const n = partsFor(own, stain, aim)
      const got = finishedColour(own, stain, n).L
      if (reachable(own, stain, aim)) expect(got).toBeCloseTo(aim, 3)
      else {
        expect(n).toBe(0)
        expect(got).toBeLessThan(aim)
        expect(shortOf(own, stain, aim)).toBeCloseTo(aim - got, 9)
      }
    }
    const painted = finishedColour(own, finishOf('painted'))
    expect(painted.L).toBeCloseTo(finishOf('painted').pigment?.L ?? 0, 3)
    expect(lightBelow(finishOf('painted'))).toBe(0)
  })
  it('white pigment may lighten a dark wood, yet not to a pale one', () => {
    const pale = finishOf('pale')
    const walnut = reference.woods.get('black-walnut')?.colour
    const pine = reference.woods.get('eastern-white-pine')?.colour
    if (!walnut || !pine) throw new Error('woods missing')
    expect(finishedColour(walnut, pale).L).toBeGreaterThan(walnut.L)
    expect(reachable(walnut, pale, 78)).toBe(false)
    expect(shortOf(walnut, pale, 78)).toBeGreaterThan(25)
    expect(reachable(pine, pale, 78, 5)).toBe(true)
  })
  it('worn to nothing leaves the wood, whole leaves the finish', () => {
    for (const finish of finishes.values())
      for (const { colour } of woods.slice(0, 8)) {
        expect(finishedColour(colour, worn(finish, 0), 1).L).toBeCloseTo(colour.L, 3)
        expect(finishedColour(colour, worn(finish, 1), 1).L).toBeCloseTo(finishedColour(colour, finish, 1).L, 9)
      }
  })
})

it('greying runs from the wood to grey and no further', () => {
  const grey = { L: 52, a: 1, b: 4 }
  const wood = { L: 70, a: 9, b: 26 }
  expect(towards(wood, grey, -1)).toEqual(wood)
  expect(towards(wood, grey, 5)).toEqual(grey)
  expect(towards(wood, grey, 0.5)).toEqual({ L: 61, a: 5, b: 15 })
})

it('says where a screen cannot follow', () => {
  for (const { colour } of woods) expect(screenColour(colour)).toMatchObject({ true: true })
  expect(screenColour({ L: 60, a: 90, b: 90 })).toMatchObject({
    true: false,
    hex: expect.stringMatching(/^#[0-9a-f]{6}$/)
  })
})
