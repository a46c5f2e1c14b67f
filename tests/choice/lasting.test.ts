/** The section "Will it last?": what it must tell of the leading wood, whatever the place, the exposure and the details. */
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import type { Answers } from '../../src/choice/types'
import { reference, sheet } from '../reference'

const brief = (answers: Answers, only?: string) => {
  const shop = only ? { ...sheet, woods: sheet.woods.filter((w) => w.species === only) } : sheet
  return makeBrief({ role: 'looks', stands: 'none', stick: 2400, ...answers }, shop, reference)
}
const texts = (answers: Answers, only?: string) => brief(answers, only).durability.says.map((s) => s.text)

describe('will it last', () => {
  const outdoors = (['roofed', 'weather'] as const).flatMap((exposure) =>
    (['sheltered', 'usual', 'holding'] as const).flatMap((details) =>
      ['las-vegas-nv', 'madison-wi', 'atlanta-ga'].map((place) => ({ exposure, details, place }))
    )
  )
  it.each(outdoors)('$exposure, $details, $place: use class, details, verdict, time, sapwood', (answers) => {
    const { durability, lead } = brief(answers, 'black-locust')
    const says = durability.says.map((s) => s.text)
    expect(lead?.option.species).toBe('black-locust')
    expect(says[0]).toContain(`use class ${durability.useClass}`)
    const told = reference.decay.details.find((d) => d.id === answers.details)
    expect(says[1]).toBe(told?.[answers.exposure])
    expect(says[2]).toMatch(/heartwood is of durability class \{class\} .* by the European matrix of 1994/)
    expect(says[3]).toMatch(/^Expect sound heartwood to last /)
    expect(says.some((s) => s.startsWith('All sapwood counts as class 5'))).toBe(true)
    for (const s of durability.says.slice(1)) expect(s.sources?.length ?? 0, s.text).toBeGreaterThan(0)
    expect(durability.water).toEqual({ details: answers.details, roofed: answers.exposure === 'roofed' })
  })
  it('field trials that bear on the place are told of the lead, others are not', () => {
    const weather = texts({ exposure: 'weather', place: 'madison-wi' }, 'western-redcedar').join(' ')
    expect(weather).toContain('decayed sooner than Douglas-fir')
    expect(weather).not.toContain('stakes failed')
    const wet = texts({ exposure: 'weather', place: 'madison-wi', details: 'holding' }, 'western-redcedar').join(' ')
    expect(wet).toContain('Its stakes failed')
    expect(wet).toContain('For scale, stakes of untreated heartwood')
  })
  it('indoors no details, no time, no picture of water', () => {
    for (const exposure of ['heated', 'unheated']) {
      const { durability } = brief({ exposure, place: 'madison-wi', details: 'holding' })
      expect(durability.water).toBeNull()
      expect(durability.says.length).toBe(1)
    }
  })
  it('never one year: what is expected is a span, a floor or words', () => {
    for (const life of [...reference.decay.aboveGround.steps, ...reference.decay.groundYears])
      expect(life.highYears === null || life.highYears - (life.lowYears ?? 0) >= 5, life.says).toBe(true)
  })
})
