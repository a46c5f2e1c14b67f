/** Own words on each wood: there for all of them, their own, and every figure in them given by the engine. */
import { describe, expect, it } from 'vitest'
import { told } from '../../src/woods-pages/figures'
import { measureOf, woodOf } from '../../src/woods-pages/measure'
import { proses, readProse } from '../../src/woods-pages/prose'
import { reference } from '../reference'

const measure = measureOf(reference)
const ids = [...reference.woods.keys()]
const textOf = (id: string): string =>
  proses
    .get(id)
    ?.parts.flatMap((p) => p.paragraphs)
    .join(' ') ?? ''
const sentencesOf = (id: string): string[] =>
  textOf(id)
    .replace(/\{\{[^}]*\}\}/g, '#')
    .split(/(?<=[.!?])\s+/)
    .map((s) => s.trim().toLowerCase())
const firstSaid = new Map<string, string>()
for (const id of ids) for (const s of sentencesOf(id)) if (!firstSaid.has(s)) firstSaid.set(s, id)

describe.each(ids)('%s', (id) => {
  it('has at least 150 words of its own', () => {
    expect(textOf(id).split(/\s+/).length).toBeGreaterThanOrEqual(150)
  })
  it('says no sentence that another page says', () => {
    for (const s of sentencesOf(id)) expect(firstSaid.get(s), s).toBe(id)
  })
  it('has every figure given by the engine, and its sources are in the bibliography', () => {
    const wood = woodOf(id, measure)
    for (const part of proses.get(id)?.parts ?? []) {
      for (const paragraph of part.paragraphs) {
        const { values = {} } = told(paragraph, wood, measure)
        for (const { origin } of Object.values(values)) {
          expect(origin.sources.length).toBeGreaterThan(0)
          for (const { key } of origin.sources) expect(Object.keys(reference.sources)).toContain(key)
          if (origin.formula) expect(Object.keys(reference.formulas)).toContain(origin.formula)
        }
      }
      for (const other of part.others) expect(ids, `${id}: ${other}`).toContain(other)
    }
  })
  it('types no figure with a unit that the engine could give', () => {
    const plain = textOf(id).replace(/\{\{[^}]*\}\}/g, '')
    // A piece is named by its sides and its length; whatever is measured of it comes from the engine.
    expect(plain).not.toMatch(/\d\s?(%|psi|lb|kg|mm|°)/)
  })
})

describe('a directive', () => {
  const fir = woodOf('douglas-fir', measure)
  it('becomes a figure of the wood, or of another', () => {
    const { text, values } = told('Opens by {{gapOf side=10}}, oak by {{gapOf side=10 wood=white-oak}}.', fir, measure)
    expect(text).toBe('Opens by {f1}, oak by {f2}.')
    expect(Number(values?.['f2']?.value)).toBeGreaterThan(Number(values?.['f1']?.value))
  })
  it.each([
    '{{nothing}}',
    '{{gapOf section=8x8}}',
    '{{gapOf side=wide}}',
    '{{gapOf wood=ebony}}',
    '{{sizeOf wood=giant-sequoia}}',
    '{{toString}}',
    '{{gapOf',
    '{{shareOf what=scent of=white-oak}}'
  ])('%s is refused', (text) => {
    expect(() => told(text, fir, measure)).toThrow()
  })
})

describe('a file of prose', () => {
  it.each([['## use practice\nWords.'], ['for: a\n\n## look practice\nWords.'], ['for: a\n\n## use hearsay\nWords.']])(
    '%s is refused',
    (text) => {
      expect(() => readProse('some-wood', text)).toThrow(/some-wood/)
    }
  )
})
