/** What the brief says of twist, joints and the seasons; the boundaries of their rules. */
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { housingNeeded, jointsOf, strainsAt } from '../../src/choice/joints'
import { type Judged, judgeAll } from '../../src/choice/judge'
import { grainOf } from '../../src/choice/option-facts'
import type { Answers } from '../../src/choice/types'
import { FOOT, INCH, PSF } from '../../src/data/units'
import { faceShares } from '../../src/wood/section'
import { cornerOff } from '../../src/wood/twist'
import { reference, sheet } from '../reference'

const beams: Answers = {
  role: 'structure',
  exposure: 'heated',
  place: 'madison-wi',
  carries: 'beam',
  span: 14 * FOOT,
  spacing: 8 * FOOT,
  snow: 30 * PSF,
  slope: 8 / 12,
  size: [8 * INCH, 8 * INCH],
  stick: 16 * FOOT
}
const limit = (id: string) => reference.limits.get(id)?.value ?? Number.NaN
const judged = (answers: Answers) => judgeAll(answers, sheet, reference)
const fired = (j: Judged | undefined) => j?.fired.map((r) => r.id) ?? []

describe('a post', () => {
  it('is taken turned the way that moves more: which way it is set is not known', () => {
    for (const { facts: o } of judged(beams).judged) {
      const [b] = o.section
      const { breadth, depth } = faceShares(o.option.heart, b, b)
      expect(o.postShare, o.option.id).toBe(Math.max(breadth, depth))
    }
    // Free of heart the two differ, so that the choice tells.
    const { breadth, depth } = faceShares('free', 8 * INCH, 8 * INCH)
    expect(Math.abs(breadth - depth)).toBeGreaterThan(0.1)
  })
})

describe('twist', () => {
  it('is cautioned from the limit on, and not below it, in any option', () => {
    let above = 0
    let below = 0
    for (const stick of [10, 16, 24])
      for (const j of judged({ ...beams, stick: stick * FOOT }).judged) {
        const off = cornerOff(j.facts.twist.high, j.facts.section[1])
        const over = off > limit('twist-caution') * INCH
        expect(fired(j).includes('movement-twist'), `${j.facts.option.id} ${off}`).toBe(over)
        if (over) above++
        else below++
      }
    expect(above).toBeGreaterThan(10)
    expect(below).toBeGreaterThan(10)
  })
  it('free of heart never more than boxed, in the same wood and dryness', () => {
    const all = new Map(judged(beams).judged.map((j) => [j.facts.option.id, j.facts]))
    for (const [id, o] of all) {
      if (o.option.heart !== 'free') continue
      const boxed = all.get(id.replace('/free/', '/boxed/'))
      if (boxed) expect(o.twist.high, id).toBeLessThanOrEqual(boxed.twist.high)
    }
  })
  it('a wood that the trade calls straight has the straighter grain', () => {
    const woods = [...reference.woods.values()]
    const grain = (level: number) => {
      const wood = woods.find((w) => w.traits.twist.level === level)
      return wood ? grainOf(wood, reference).atPith : Number.NaN
    }
    expect(grain(0)).toBeLessThan(grain(1))
    expect(grain(1)).toBeLessThan(grain(2))
  })
})

describe('joints', () => {
  const { judged: all, context: c } = judged(beams)
  it('the housed beam is the shoulder gap of every option, band and all', () => {
    for (const { facts: o } of all) {
      const { housed } = jointsOf(o, c.facts, reference)
      expect(housed.gap.value, o.option.id).toBeCloseTo(o.gap, 9)
      expect(housed.gap.low, o.option.id).toBeCloseTo(o.gapLow, 9)
      expect(housed.gap.high, o.option.id).toBeCloseTo(o.gapHigh, 9)
      expect(housed.housing, o.option.id).toBeCloseTo(housingNeeded(o, reference), 9)
    }
  })
  it('deep housings are cautioned from the limit on', () => {
    const wide = judged({ ...beams, role: 'looks', size: [14 * INCH, 16 * INCH], stick: 30 * FOOT }).judged
    const seen = new Set<boolean>()
    for (const j of [...wide, ...all]) {
      const over = housingNeeded(j.facts, reference) > limit('housing-deep') * INCH
      expect(fired(j).includes('movement-housing'), j.facts.option.id).toBe(over)
      seen.add(over)
    }
    expect(seen.size).toBe(2)
  })
  it('on delivery nothing has opened; drier on the way never opens less; in service it is the figure', () => {
    for (const { facts: o } of all.filter((j) => j.facts.option.seasoning === 'green')) {
      const madeAt = (moisture: number) => Math.max(0, 1 - moisture / o.wood.fibreSaturation)
      const gapAt = (made: number) => jointsOf(o, c.facts, reference, strainsAt(o, made, reference)).housed.gap.value
      expect(gapAt(madeAt(o.delivered)), o.option.id).toBe(0)
      let last = 0
      for (let m = o.delivered; m >= c.facts.service.mean; m -= 0.01) {
        expect(gapAt(madeAt(m))).toBeGreaterThanOrEqual(last)
        last = gapAt(madeAt(m))
      }
      expect(gapAt(madeAt(c.facts.service.mean)), o.option.id).toBeCloseTo(o.gap, 9)
    }
  })
  it('the brief lists them with their range and draws the shoulder; no rafter foot under a floor', () => {
    const roof = makeBrief(beams, sheet, reference)
    expect(roof.movement.joints.map((j) => j.id)).toEqual(['housed', 'girt', 'scarf', 'rafter'])
    for (const { gap, housing, id } of roof.movement.joints) {
      expect(gap.high ?? Number.NaN, id).toBeGreaterThan(Number(gap.value))
      expect(Number(housing.value), id).toBeGreaterThan(gap.high ?? Number.NaN)
    }
    const { shoulder } = roof.movement
    expect(shoulder.housing).toBeGreaterThan(shoulder.postShrinks + shoulder.beamShrinks)
    const floor = makeBrief({ ...beams, carries: 'floor', project: 'house' }, sheet, reference)
    expect(floor.movement.joints.map((j) => j.id)).toEqual(['housed', 'girt', 'scarf'])
  })
})

describe('seasons', () => {
  it('a whole timber follows less than half of the air, the larger the less', () => {
    const swing = (inches: number) => {
      const size = [inches * INCH, inches * INCH] as const
      return judged({ ...beams, size }).judged[0]?.facts.swingShare ?? Number.NaN
    }
    expect(swing(6)).toBeLessThan(0.5)
    expect(swing(12)).toBeLessThan(swing(8))
    expect(swing(8)).toBeLessThan(swing(6))
  })
  it('says so in the brief, and how far a boxed stick could turn', () => {
    const says = makeBrief(beams, sheet, reference).movement.says.map((s) => s.text)
    expect(says.some((s) => s.includes('{swing}') && s.includes('{reach}'))).toBe(true)
    expect(says.some((s) => s.includes('{boxed}') && s.includes('{free}') && s.includes('no promise'))).toBe(true)
  })
})
