/** The section on look and upkeep: what it says of each wood, and that its colours and its costs hang together. */
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { finishColours } from '../../src/choice/finish/looks'
import type { Answers } from '../../src/choice/types'
import { ROUGH_SWATCHES } from '../../src/ui/pictures/samples'
import { reference, sheet } from '../reference'

const briefOf = (answers: Answers, woods?: readonly string[], surface: 'full-sawn' | 'planed' = 'full-sawn') =>
  makeBrief(
    { role: 'looks', stands: 'none', stick: 2400, place: 'madison-wi', ...answers },
    { ...sheet, surface, woods: woods ? sheet.woods.filter((w) => woods.includes(w.species)) : sheet.woods },
    reference
  )
const finish = (...args: Parameters<typeof briefOf>) => briefOf(...args).finish
const words = (...args: Parameters<typeof briefOf>) =>
  finish(...args)
    .says.map((s) => s.text)
    .join(' ')
const lightness = (hex: string) => [1, 3, 5].reduce((sum, i) => sum + Number.parseInt(hex.slice(i, i + 2), 16), 0)

const SIX = ['white-oak', 'douglas-fir', 'western-redcedar', 'eastern-white-pine', 'southern-pine', 'western-hemlock']
const ALL = reference.finishes.flatMap((f) =>
  (['heated', 'unheated', 'roofed', 'weather'] as const).map((exposure) => ({ finish: f.id, exposure }))
)

describe('look and upkeep', () => {
  it.each(ALL)('$finish, $exposure: lead first, up to four woods, every finish in view', (answers) => {
    const brief = briefOf(answers, SIX)
    const { lines, views, chosen } = brief.finish
    expect(chosen).toBe(answers.finish)
    expect(lines[0]?.species).toBe((brief.lead ?? brief.woods[0]?.report)?.option.species)
    expect(lines.length).toBeLessThanOrEqual(4)
    expect(views.map((v) => v.id)).toEqual(reference.finishes.map((f) => f.id))
    for (const view of views) expect(view.looks.map((l) => l.species)).toEqual(lines.map((l) => l.species))
    const renewed = answers.finish !== 'grey'
    for (const line of lines) {
      expect(line.years !== null).toBe(renewed)
      expect(line.recoats !== null).toBe(renewed)
      for (const s of [line.takes, line.bleeds, line.dry]) expect(s.text).toMatch(/\.$/)
      const [first, over] = [Number(line.first?.value), Number(line.over?.low ?? line.over?.value)]
      expect(over).toBeGreaterThanOrEqual(first)
      expect(first > 0).toBe(renewed)
      expect(line.first?.origin.mark).toBe('placeholder')
    }
    if (brief.lead && brief.woods.filter((w) => w.in).length > 1) {
      const still = brief.woods.filter((w) => w.in)
      const least = Math.min(...still.map((w) => Number(w.report.figures.jobCost.value)))
      const cheapest = lines.find((l) => l.role?.includes('cheapest'))
      const report = still.find((w) => w.species === cheapest?.species)?.report
      expect(report?.figures.jobCost.value).toBe(least)
    }
    expect(brief.finish.caution[0]?.text).toMatch(/screen mislead.*sample finished on the wood itself/)
  })

  it('a pale finish on a dark heartwood is told to be out of reach, with both lightnesses', () => {
    const { says, views } = finish({ finish: 'pale', exposure: 'heated' }, ['redwood'])
    const told = says.find((s) => s.text.startsWith('Too dark'))
    expect(told?.values?.['own0']?.value).toBe(50)
    expect(told?.values?.['aim']?.value).toBe(78)
    expect(views.find((v) => v.id === 'pale')?.looks[0]?.reached).toBe(false)
    expect(words({ finish: 'dark', exposure: 'heated' }, ['redwood'])).not.toContain('Too dark')
  })
  it('agrees with the rules: what goes out as too dark is out of reach, and every wood within reach stays', () => {
    const woods = [...reference.woods.keys()].filter((id) => sheet.woods.some((w) => w.species === id))
    for (const id of woods) {
      const brief = briefOf({ finish: 'pale', exposure: 'heated' }, [id])
      const out = brief.options.some((o) => o.reasons.some((r) => r.rule === 'look-too-dark'))
      const reached = brief.finish.views.find((v) => v.id === 'pale')?.looks[0]?.reached
      if (out) expect(reached, id).toBe(false)
      if (reached) expect(out, id).toBe(false)
    }
  })

  it('years between coats: shorter in the weather than under a roof than indoors; a film by the group of its wood', () => {
    const years = (exposure: string, wood: string, id = 'painted') =>
      finish({ finish: id, exposure }, [wood]).lines[0]?.years
    const [weather, roofed] = [years('weather', 'western-redcedar'), years('roofed', 'western-redcedar')]
    expect(Number(weather?.low)).toBe(10.5)
    expect(weather?.high).toBe(15)
    expect(Number(roofed?.low)).toBeCloseTo(15.75, 9)
    expect(years('weather', 'douglas-fir')).toMatchObject({ low: 6, high: 10.5 })
    expect(years('weather', 'baldcypress')).toMatchObject({ low: 6, high: 15 })
    expect(years('heated', 'douglas-fir', 'clear')).toMatchObject({ low: 10, high: 20 })
    expect(years('weather', 'douglas-fir', 'clear')).toMatchObject({ low: 1, high: 3 })
  })
  it('a stain on planed faces lasts half as long as on sawn ones', () => {
    const at = (surface: 'full-sawn' | 'planed') =>
      finish({ finish: 'mid', exposure: 'weather' }, ['white-oak'], surface).lines[0]?.years
    expect(at('full-sawn')).toMatchObject({ low: 4, high: 8 })
    expect(at('planed')).toMatchObject({ low: 2, high: 4 })
  })
  it('upkeep that comes too late is called so; none at all, and grey is the honest finish', () => {
    const at = (upkeep: string, id = 'clear') => words({ finish: id, exposure: 'weather', upkeep }, ['white-oak'])
    expect(at('seldom')).toContain('comes too late')
    expect(at('regular')).toContain('just about enough')
    expect(at('none')).toContain('honest finish')
    expect(at('regular', 'painted')).not.toMatch(/too late|just about/)
  })

  it('what bleeds: pitch unless heat has set it, oils, tannin; and a primer under a pale coat', () => {
    const bleeds = (id: string, wood: string, exposure = 'weather') =>
      finish({ finish: id, exposure }, [wood]).lines[0]?.bleeds.text
    expect(bleeds('painted', 'western-redcedar')).toMatch(/extractives.*primer/)
    expect(bleeds('clear', 'western-redcedar')).not.toContain('primer')
    expect(bleeds('clear', 'port-orford-cedar')).toContain('oils')
    expect(bleeds('clear', 'western-hemlock', 'heated')).toBe('Nothing to speak of.')
    const pine = (seasoning: 'green' | 'rfv') => {
      const shop = {
        ...sheet,
        woods: sheet.woods.filter((w) => w.species === 'southern-pine'),
        seasonings: sheet.seasonings.filter((s) => s.id === seasoning)
      }
      const answers = {
        role: 'looks',
        stands: 'none',
        stick: 2400,
        place: 'madison-wi',
        finish: 'clear',
        exposure: 'heated'
      }
      return makeBrief(answers, shop, reference).finish.lines[0]?.bleeds.text
    }
    expect(pine('green')).toMatch(/resin/)
    expect(pine('rfv')).toContain('set its pitch')
  })

  it('dry enough when the clock says so: a film later than an oil on green timber, neither before the shell is there', () => {
    const at = (id: string) => {
      const shop = {
        ...sheet,
        woods: sheet.woods.filter((w) => w.species === 'white-oak'),
        seasonings: sheet.seasonings.filter((s) => s.id === 'green')
      }
      const answers = {
        role: 'looks',
        stands: 'none',
        stick: 4000,
        place: 'madison-wi',
        finish: id,
        exposure: 'heated'
      }
      return makeBrief(answers, shop, reference)
    }
    const weeks = (id: string) => Number(at(id).finish.lines[0]?.dry.values?.['after']?.value ?? 0)
    expect(weeks('painted')).toBeGreaterThan(weeks('clear'))
    const brief = at('painted')
    const { dry } = brief.finish.lines[0] as (typeof brief.finish.lines)[number]
    const raised = brief.clock.curve.milestones.find((m) => m.id === 'raised')?.day ?? 0
    const on = brief.clock.curve.days.indexOf(Number(dry.values?.['after']?.value) * 7 + raised)
    expect(brief.clock.curve.shell[on]).toBeLessThanOrEqual(Number(dry.values?.['needs']?.value))
    expect(brief.clock.curve.shell[on - 1]).toBeGreaterThan(Number(dry.values?.['needs']?.value))
  })

  it('later: grey where nothing is done outside, as it was where paint stands, darker indoors', () => {
    const look = (id: string, exposure: string, upkeep = 'none') =>
      finish({ finish: id, exposure, upkeep }, ['southern-pine']).views.find((v) => v.id === id)?.looks[0]
    expect(look('grey', 'weather')?.later.words).toMatch(/grey/)
    expect(look('clear', 'weather')?.later.hex).toBe(look('grey', 'weather')?.later.hex)
    expect(look('painted', 'roofed', 'regular')?.later.hex).toBe(look('painted', 'roofed')?.finished.hex)
    const indoors = look('clear', 'heated')
    expect(lightness(indoors?.later.hex ?? '')).toBeLessThan(lightness(indoors?.finished.hex ?? ''))
    const stained = look('dark', 'heated')
    const change = (l: typeof stained) => lightness(l?.finished.hex ?? '') - lightness(l?.later.hex ?? '')
    expect(change(stained)).toBeLessThan(change(indoors))
  })
})

it('the swatches of the questions before a wood is known are those that the model gives', () => {
  const woods = ['eastern-white-pine', 'western-redcedar', 'black-walnut']
  expect(ROUGH_SWATCHES.map((row) => row.colours)).toEqual(
    woods.map((id) => {
      const wood = reference.woods.get(id)
      return wood && finishColours(wood, reference)
    })
  )
})
