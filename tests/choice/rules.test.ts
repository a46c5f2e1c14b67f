/** Over the whole set of rules: each is well formed, and each can speak. */

import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judgeAll } from '../../src/choice/judge'
import type { OptionFacts } from '../../src/choice/option-facts'
import { RULES } from '../../src/choice/rules'
import type { Answers } from '../../src/choice/types'
import { FOOT, INCH, PSF } from '../../src/data/units'
import { reference, sheet } from '../reference'

describe('rules', () => {
  it('ids are unique and every source resolves', () => {
    expect(new Set(RULES.map((r) => r.id)).size).toBe(RULES.length)
    for (const rule of RULES) {
      expect(rule.sources.length, rule.id).toBeGreaterThan(0)
      for (const s of rule.sources) expect(Object.keys(reference.sources), rule.id).toContain(s.key)
    }
  })

  const base: Answers = {
    role: 'structure',
    exposure: 'heated',
    place: 'madison-wi',
    carries: 'truss',
    span: 24 * FOOT,
    spacing: 10 * FOOT,
    snow: 40 * PSF,
    slope: 8 / 12,
    postHeight: 9 * FOOT,
    stands: 'w52',
    waits: 'weeks',
    joints: 'small',
    checks: 'some',
    resin: 'rather-not',
    knots: 'some',
    finish: 'mid',
    local: 'rather'
  }
  const jobs: readonly Answers[] = [
    base,
    { ...base, exposure: 'weather', carries: 'beam', span: 14 * FOOT, finish: 'clear', upkeep: 'none' },
    { ...base, exposure: 'weather', place: 'las-vegas-nv', carries: 'beam', span: 14 * FOOT },
    { ...base, exposure: 'roofed', carries: 'beam', span: 14 * FOOT },
    { ...base, exposure: 'weather', details: 'holding', carries: 'beam', span: 14 * FOOT },
    { ...base, exposure: 'ground', carries: 'beam', span: 8 * FOOT },
    { ...base, depthLimit: 8 * INCH },
    { ...base, size: [6 * INCH, 6 * INCH] },
    { ...base, role: 'looks', size: [16 * INCH, 24 * INCH], stick: 50 * FOOT },
    { ...base, stands: 'w6', waits: 'year', heating: 'at-once', joints: 'tight', checks: 'few' },
    { ...base, finish: 'pale', knots: 'clear', resin: 'never' },
    { ...base, finish: 'grey', local: 'must', place: 'honolulu-hi' },
    { ...base, budgetSum: 45_000 },
    { ...base, budgetSum: 500 }
  ]
  const spoken = new Map<string, number>()
  let options = 0
  for (const answers of jobs) {
    for (const j of judgeAll(answers, sheet, reference).judged) {
      options++
      for (const r of j.fired) spoken.set(r.id, (spoken.get(r.id) ?? 0) + 1)
    }
  }
  it.each(RULES.map((r) => r.id))('%s speaks for some option and stays silent for another', (id) => {
    expect(spoken.get(id) ?? 0).toBeGreaterThan(0)
    expect(spoken.get(id)).toBeLessThan(options)
  })
  it('what a rule says fits what it does', () => {
    for (const answers of jobs) {
      const { judged, context } = judgeAll(answers, sheet, reference)
      for (const j of judged) for (const r of j.fired) expect(r.says(j.facts, context).text, r.id).toMatch(/\.$/)
    }
  })
  it('a rule’s words stand in the engine alone, not in the UI', () => {
    const ui = readdirSync('src/ui', { recursive: true, encoding: 'utf8' })
      .filter((f) => /\.tsx?$/.test(f))
      .map((f) => readFileSync(`src/ui/${f}`, 'utf8'))
    for (const phrase of [
      'rots in the weather',
      'weeps pitch for years',
      'seldom had longer',
      'twist and shrink out of fit'
    ]) {
      expect(
        ui.some((text) => text.includes(phrase)),
        phrase
      ).toBe(false)
    }
  })
})

describe('boundaries', () => {
  const inWith = (answers: Answers, species: string) =>
    judgeAll(answers, sheet, reference).judged.some((j) => j.in && j.facts.option.species === species)
  it('a stick at the longest length is had, a foot more is not', () => {
    const looks: Answers = {
      role: 'looks',
      exposure: 'heated',
      place: 'boston-ma',
      size: [8 * INCH, 8 * INCH],
      stands: 'none'
    }
    expect(inWith({ ...looks, stick: 24 * FOOT }, 'white-oak')).toBe(true)
    expect(inWith({ ...looks, stick: 25 * FOOT }, 'white-oak')).toBe(false)
  })
  it('decay rules out by hazard: the same wood in the same weather stays in where it is dry', () => {
    const shed: Answers = {
      role: 'structure',
      exposure: 'weather',
      carries: 'beam',
      span: 10 * FOOT,
      spacing: 8 * FOOT,
      snow: 0
    }
    expect(inWith({ ...shed, place: 'atlanta-ga' }, 'eastern-hemlock')).toBe(false)
    expect(inWith({ ...shed, place: 'las-vegas-nv' }, 'eastern-hemlock')).toBe(true)
  })
})

describe('rot, by use class, hazard and class', () => {
  /** What the decay rules do with a wood: out, or what they caution. */
  const said = (species: string, answers: Answers) => {
    const j = judgeAll({ role: 'looks', ...answers }, sheet, reference).judged.find(
      (x) => x.facts.option.species === species
    )
    return (j?.fired ?? []).map((r) => r.id).filter((id) => id.startsWith('decay-') && !id.includes('field'))
  }
  const weather = (details: string, place = 'madison-wi') => ({ exposure: 'weather', place, details })
  const roofed = (details: string, place = 'madison-wi') => ({ exposure: 'roofed', place, details })

  it.each([
    // Madison is moderate: class 3.2 takes a middle class to 3; Douglas-fir is 3, larch 3.5
    ['douglas-fir', weather('usual'), ['decay-weather-watch', 'decay-sapwood']],
    ['western-larch', weather('usual'), ['decay-weather']],
    // class 3.1: none is out, from 3.5 on a caution
    ['western-larch', weather('sheltered'), ['decay-roofed']],
    ['douglas-fir', weather('sheltered'), ['decay-sapwood']],
    // class 4 off the ground: to 2.5
    ['white-oak', weather('holding'), ['decay-traps', 'decay-durable', 'decay-sapwood']],
    ['douglas-fir', weather('holding'), ['decay-weather', 'decay-sapwood']],
    // Atlanta is high: 3.2 to 2.5; shed rain to 3.5
    ['white-oak', weather('usual', 'atlanta-ga'), ['decay-durable', 'decay-sapwood']],
    ['douglas-fir', weather('usual', 'atlanta-ga'), ['decay-weather', 'decay-sapwood']],
    ['western-larch', weather('sheltered', 'atlanta-ga'), ['decay-roofed']],
    ['western-hemlock', weather('sheltered', 'atlanta-ga'), ['decay-weather']],
    // Las Vegas is low: nothing is out, traps are still named
    ['western-hemlock', weather('holding', 'las-vegas-nv'), ['decay-traps']],
    ['western-hemlock', weather('usual', 'las-vegas-nv'), ['decay-weather-watch']],
    // under a roof: class 2, 3.1, 3.2
    ['western-hemlock', roofed('sheltered'), []],
    ['western-hemlock', roofed('usual'), ['decay-roofed']],
    ['western-hemlock', roofed('holding'), ['decay-weather']],
    ['douglas-fir', roofed('holding'), ['decay-traps', 'decay-sapwood']]
  ] as const)('%s, %j', (species, answers, expected) => {
    expect(said(species, answers)).toEqual(expected)
  })
  it('a class range that straddles two verdicts carries both, one that does not carries one', () => {
    const { context, judged } = judgeAll({ role: 'looks', ...weather('holding', 'las-vegas-nv') }, sheet, reference)
    const traps = (species: string) => {
      const j = judged.find((x) => x.facts.option.species === species)
      return RULES.find((r) => r.id === 'decay-traps')?.says(j?.facts as OptionFacts, context).text ?? ''
    }
    expect(traps('white-oak')).toMatch(/usually enough at the better end .* not advised untreated at the worse/)
    expect(traps('western-redcedar')).toContain('is usually enough (')
  })
  it('field trials speak for the setting they were made in, and not indoors', () => {
    const field = (species: string, answers: Answers) => {
      const { judged } = judgeAll({ role: 'looks', place: 'madison-wi', ...answers }, sheet, reference)
      const j = judged.find((x) => x.facts.option.species === species)
      return (j?.fired ?? []).map((r) => r.id).filter((id) => id.startsWith('decay-field'))
    }
    expect(field('douglas-fir', { exposure: 'weather' })).toEqual(['decay-field-better'])
    expect(field('douglas-fir', { exposure: 'ground' })).toEqual(['decay-field-worse'])
    expect(field('western-redcedar', { exposure: 'roofed' })).toEqual(['decay-field-worse'])
    expect(field('red-oak', { exposure: 'weather' })).toEqual(['decay-field-better'])
    expect(field('red-oak', { exposure: 'ground' })).toEqual([])
    expect(field('white-oak', { exposure: 'weather' })).toEqual([])
    expect(field('western-redcedar', { exposure: 'unheated' })).toEqual([])
  })
})

describe('order', () => {
  it('putting cost first never makes the leader dearer than putting it last', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('madison-wi', 'seattle-wa', 'atlanta-ga'),
        fc.double({ min: 8 * FOOT, max: 20 * FOOT, noNaN: true }),
        (place, span) => {
          const cost = (order: readonly string[]) => {
            const first = judgeAll(
              { role: 'structure', exposure: 'heated', carries: 'beam', place, span, order },
              sheet,
              reference
            ).judged[0]
            return first?.in ? first.facts.timberCost : Number.POSITIVE_INFINITY
          }
          const rest = ['movement', 'durability', 'look', 'stoutness', 'time', 'local']
          expect(cost(['cost', ...rest])).toBeLessThanOrEqual(cost([...rest, 'cost']) + 1e-6)
        }
      ),
      { numRuns: 60 }
    )
  })
})
