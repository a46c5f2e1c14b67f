/** What the joints ask for beyond the sized timbers. */
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { joineryOf } from '../../src/choice/joinery/joinery'
import { joineryNeeds } from '../../src/choice/joinery/needs'
import { judgeAll } from '../../src/choice/judge'
import type { Answers } from '../../src/choice/types'
import { FOOT, INCH, PSF } from '../../src/data/units'
import { reference, sheet } from '../reference'

const hall: Answers = {
  role: 'structure',
  exposure: 'heated',
  place: 'burlington-vt',
  carries: 'truss',
  truss: 'king-struts',
  span: 26 * FOOT,
  spacing: 10 * FOOT,
  slope: 8 / 12,
  snow: 45 * PSF,
  postHeight: 10 * FOOT,
  stands: 'none'
}
const jobs: readonly Answers[] = [
  hall,
  { ...hall, truss: 'king' },
  { ...hall, truss: 'queen', span: 34 * FOOT },
  { ...hall, slope: 5 / 12 },
  { ...hall, span: 18 * FOOT, snow: 20 * PSF }
]
const each = jobs.flatMap((answers) => {
  const { judged, context } = judgeAll(answers, sheet, reference)
  return judged
    .filter((j) => j.in)
    .slice(0, 12)
    .map((j) => ({ o: j.facts, c: context }))
})
const works = (joints: ReturnType<typeof joineryOf>) => joints.every((j) => j.verdict === 'joinery')

describe('what the joints of a truss ask for', () => {
  it('with the sections it names every joint works in timber; where the joints work already it names none', () => {
    let asked = 0
    for (const { o, c } of each) {
      const needs = joineryNeeds(o, c)
      if (needs === null) continue
      expect(works(joineryOf(o, c, needs)), o.option.id).toBe(true)
      expect(Object.keys(needs).length === 0).toBe(works(joineryOf(o, c)))
      asked += Object.keys(needs).length
    }
    expect(asked).toBeGreaterThan(0)
  })

  it('a named section is stouter than the sized one, and of the shop’s own series', () => {
    for (const { o, c } of each)
      for (const [id, section] of Object.entries(joineryNeeds(o, c) ?? {})) {
        const sized = o.frame.members.find((m) => m.id === id)?.sized.section ?? [0, 0]
        expect(section[0] * section[1]).toBeGreaterThan(sized[0] * sized[1])
        const named = section.map((side) => Math.round(side / INCH))
        expect(sheet.sections.sizes.some(([b = 0, d = 0]) => b === named[0] && d === named[1])).toBe(true)
      }
  })

  it('says so in the brief, and that nothing of the shop would where nothing does', () => {
    const says = (answers: Answers, shop = sheet) =>
      makeBrief(answers, shop, reference)
        .sizes.says.map((s) => s.text)
        .join(' ')
    expect(says(hall)).toMatch(/would make them; or think of steel/)
    const few = {
      ...sheet,
      sections: {
        unit: 'in' as const,
        sizes: [
          [8, 8],
          [8, 10]
        ]
      }
    }
    expect(says(hall, few)).toMatch(/no section of this shop would make them/)
  })

  it('a settled size is left as it is', () => {
    const { judged, context } = judgeAll({ ...hall, size: [8 * INCH, 10 * INCH] }, sheet, reference)
    for (const j of judged.slice(0, 5)) expect(joineryNeeds(j.facts, context)).toEqual({})
  })
})
