/** The joints of the leading option: which there are, that they agree with the engine, and that their words have no holes. */
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { joineryOf } from '../../src/choice/joinery/joinery'
import { judgeAll } from '../../src/choice/judge'
import type { Answers } from '../../src/choice/types'
import { FOOT, PSF } from '../../src/data/units'
import { reference, sheet } from '../reference'

const hall: Answers = {
  project: 'great-room',
  role: 'structure',
  exposure: 'heated',
  place: 'burlington-vt',
  carries: 'truss',
  span: 24 * FOOT,
  spacing: 12 * FOOT,
  slope: 8 / 12,
  snow: 35 * PSF,
  postHeight: 10 * FOOT,
  stands: 'w104'
}
const joinery = (change: Answers = {}) => makeBrief({ ...hall, ...change }, sheet, reference).sizes.joinery
const ids = (change: Answers = {}) => joinery(change).map((line) => line.id)

describe('which joints', () => {
  it('a truss: heel, foot and head of the king post, and its seat where posts carry it', () => {
    expect(ids()).toEqual(['heel', 'king-foot', 'king-head', 'post-top'])
    expect(ids({ postHeight: 'none' })).toEqual(['heel', 'king-foot', 'king-head'])
  })
  it('a beam: on its post and housed; nothing where it carries nothing', () => {
    expect(ids({ carries: 'beam', span: 14 * FOOT })).toEqual(['post-top', 'housed'])
    expect(ids({ role: 'looks' })).toEqual([])
  })
})

describe('what they say', () => {
  it('every figure that a sentence names is there, and none beside', () => {
    for (const change of [{}, { carries: 'beam', span: 14 * FOOT }, { slope: 0.3, snow: 60 * PSF }] as Answers[]) {
      for (const { says, steel, used } of joinery(change)) {
        const named = [...says.text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name)
        expect(Object.keys(says.values ?? {}).sort()).toEqual([...new Set(named)].sort())
        if (!steel && used) expect(Number(used.value)).toBeLessThanOrEqual(1 + 1e-9)
      }
    }
  })
  it('a low roof pushes its rafters out of the tie: steel is named, in the table and above it', () => {
    const brief = makeBrief({ ...hall, span: 20 * FOOT, slope: 4 / 12, snow: 50 * PSF }, sheet, reference)
    const heel = brief.sizes.joinery.find((line) => line.id === 'heel')
    expect(heel?.steel).toBe(true)
    expect(heel?.says.text).toMatch(/steel/)
    expect(brief.sizes.says.some((s) => /Not every joint/.test(s.text))).toBe(true)
  })
  it('more snow pushes harder, never less', () => {
    const push = (psf: number) => Number(joinery({ snow: psf * PSF })[0]?.force.value)
    expect(push(60)).toBeGreaterThan(push(30))
  })
  it('holds for every option that passes, in any wood', () => {
    const { judged, context } = judgeAll(hall, sheet, reference)
    for (const j of judged) {
      const joints = joineryOf(j.facts, context)
      expect(joints.length, j.facts.option.id).toBe(j.facts.frame.passes ? 4 : 0)
      for (const joint of joints) expect(joint.verdict === 'steel').toBe(joint.reason !== null)
    }
  })
})

describe('one figure for one thing', () => {
  it('the heel carries the pull that the brief gives the tie, and the drawing shows it', () => {
    const { sizes } = makeBrief(hall, sheet, reference)
    const tie = sizes.drawn?.parts.find((part) => part.id === 'tie')
    const heel = sizes.joinery.find((line) => line.id === 'heel')
    expect(Number(heel?.force.value)).toBeCloseTo(Number(tie?.pull?.value), 6)
  })
})
