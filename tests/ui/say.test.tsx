import { renderToString } from 'preact-render-to-string'
import { describe, expect, test } from 'vitest'
import type { Quantity, Sentence } from '../../src/data/quantity'
import type { Library } from '../../src/ui/say/library'
import { tell } from '../../src/ui/say/origin'
import { Say } from '../../src/ui/say/Say'
import { pieces, plainSentence } from '../../src/ui/say/sentence'

const gap: Quantity = {
  kind: 'gap',
  value: 4.8,
  origin: {
    mark: 'derived',
    sources: [{ key: 'handbook' }],
    formula: 'shrink',
    inputs: { face: { kind: 'section', value: [203, 305], origin: { mark: 'seen', sources: [] } } }
  }
}
const price: Quantity = { kind: 'money', value: 41234, origin: { mark: 'placeholder', sources: [{ key: 'shop' }] } }
const library: Library = {
  sources: { handbook: { title: 'A Handbook', edition: '3rd edition', year: 2021 } },
  formulas: { shrink: { name: 'Shrinkage', text: 'a × b', source: 'handbook', where: 'eq. 2', mark: 'seen' } }
}

describe('a sentence', () => {
  test('fills its placeholders and leaves the rest', () => {
    const s: Sentence = { text: 'It opens {gap}, at most.', values: { gap } }
    expect(pieces(s)).toEqual(['It opens ', gap, ', at most.'])
    expect(plainSentence(s, 'us').replaceAll('\u00a0', ' ')).toBe('It opens 3/16 in, at most.')
    expect(plainSentence(s, 'si').replaceAll('\u00a0', ' ')).toBe('It opens 5 mm, at most.')
  })

  test('braces without a value are somebody’s own text, and never a property of Object', () => {
    expect(plainSentence({ text: 'a {b} c {constructor}' }, 'us')).toBe('a {b} c {constructor}')
  })

  test('keeps a figure and the mark behind it on one line, and loses no letter by it', () => {
    const s: Sentence = { text: 'Opens {gap}, then {gap}. At {gap} it stays.', values: { gap } }
    const html = renderToString(<Say s={s} />)
    // Within the span that does not break, and nowhere else.
    expect(html.match(/<\/span>[,.]<\/span>/g)).toEqual(['</span>,</span>', '</span>.</span>'])
    expect(html).toContain('</span> then <span class="held">')
    expect(html).toContain('</span> At <span class="quantity">')
    expect(html).toMatch(/ it stays\.$/)
    expect(renderToString(<Say s={s} bare />)).not.toContain('held')
  })

  test('is safe with markup in it', () => {
    expect(renderToString(<Say s={{ text: '<img src=x> {gap}', values: { gap } }} />)).not.toContain('<img')
  })

  test('each figure is a button that opens a note of its own', () => {
    const html = renderToString(<Say s={{ text: '{a} and {b}', values: { a: gap, b: gap } }} />)
    const ids = [...html.matchAll(/popovertarget="([^"]+)"/g)].map((m) => m[1])
    expect(new Set(ids).size).toBe(2)
    for (const id of ids) expect(html).toContain(`id="${id}" class="source" popover="auto"`)
  })

  test('invented money carries its mark, once in a sentence', () => {
    const html = renderToString(<Say s={{ text: '{a} of {b}', values: { a: price, b: price } }} />)
    expect(html.match(/mark--placeholder/g)).toHaveLength(1)
  })
})

describe('where a number comes from', () => {
  test('formula, inputs, sources and mark in words', () => {
    const told = tell(gap.origin, library)
    expect(told.formula?.name).toBe('Shrinkage')
    expect(told.inputs.map(([name]) => name)).toEqual(['face'])
    expect(told.sources.map((s) => s.title)).toContain('A Handbook, 3rd edition, 2021')
    expect(told.mark).toBe('worked out here')
  })

  test('an unknown key is shown as it is, not lost', () => {
    expect(tell({ mark: 'memory', sources: [{ key: 'toString' }] }, library).sources[0]?.title).toBe('toString')
  })
})
