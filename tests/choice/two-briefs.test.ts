/** Two briefs side by side. */
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { twoBriefs } from '../../src/choice/two-briefs'
import { type Answers, UNSURE } from '../../src/choice/types'
import { FOOT, PSF } from '../../src/data/units'
import { plainSentence } from '../../src/ui/say/sentence'
import { reference, sheet } from '../reference'

const porch: Answers = {
  project: 'porch',
  exposure: 'weather',
  details: 'usual',
  place: 'seattle-wa',
  carries: 'truss',
  span: 12 * FOOT,
  snow: 25 * PSF,
  order: ['durability', 'cost']
}
const brief = (change: Answers = {}) => makeBrief({ ...porch, ...change }, sheet, reference)
const text = (two: ReturnType<typeof twoBriefs>) => two.says.map((s) => plainSentence(s, 'us')).join(' ')
const differing = (two: ReturnType<typeof twoBriefs>) => two.answers.filter((r) => r.differs).map((r) => r.id)

describe('two briefs', () => {
  it('of the same answers: nothing differs, and that is said', () => {
    const two = twoBriefs(brief(), brief())
    expect([...two.answers, ...two.outcomes].filter((r) => r.differs)).toEqual([])
    expect(text(two)).toMatch(/Both come to .* Every answer is the same\.$/)
  })
  it('name the answers that differ, and only those', () => {
    const two = twoBriefs(brief(), brief({ span: 16 * FOOT, knots: 'clear' }))
    expect(differing(two).sort()).toEqual(['knots', 'span'])
    expect(text(two)).toMatch(/2 answers differ: clear span and knots\./)
  })
  it('an answer given is not the same as the same one assumed', () => {
    const two = twoBriefs(brief({ knots: 'some' }), brief({ knots: UNSURE }))
    expect(differing(two)).toEqual(['knots'])
    expect(two.answers.find((r) => r.id === 'knots')?.second?.text).toBe('Some are fine (assumed)')
  })
  it('a question that only one raises has a gap in the other, and stands where it is asked', () => {
    const two = twoBriefs(brief(), brief({ role: 'looks' }))
    expect(two.answers.find((r) => r.id === 'span')?.second).toBeNull()
    const turned = twoBriefs(brief({ role: 'looks' }), brief())
    expect(turned.answers.map((r) => r.id)).toEqual(two.answers.map((r) => r.id))
  })
  it('a shop’s name is only text, braces and all', () => {
    const odd = makeBrief(porch, { ...sheet, name: 'Oak {first} & {Sons}' }, reference)
    expect(text(twoBriefs(odd, brief()))).toContain(`two sheets: Oak {first} & {Sons}, and ${sheet.name}.`)
  })
  it('the cheaper is named rightly, whichever stands first', () => {
    const [small, large] = [brief(), brief({ span: 24 * FOOT, snow: 60 * PSF })]
    const cost = (b: typeof small) => Number(b.lead?.figures.jobCost.value)
    expect(cost(small)).toBeLessThan(cost(large))
    expect(text(twoBriefs(small, large))).toMatch(/The first is the cheaper/)
    expect(text(twoBriefs(large, small))).toMatch(/The second is the cheaper/)
  })
  it('how the one’s wood stands in the other; and where nothing passes', () => {
    const [weather, hall] = [brief(), brief({ exposure: 'heated', order: ['cost', 'movement'], budget: 'lowest' })]
    if (weather.lead?.option.species !== hall.lead?.option.species)
      expect(text(twoBriefs(weather, hall))).toMatch(/In the second, .* (comes in at no\. \d|is out)/)
    const none = brief({ span: 60 * FOOT, snow: 300 * PSF })
    expect(none.lead).toBeNull()
    expect(text(twoBriefs(weather, none))).toMatch(/Only the first comes to a wood/)
    expect(text(twoBriefs(none, none))).toMatch(/In neither does anything pass/)
  })
})
