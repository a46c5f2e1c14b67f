/** Figures in notes are the engine's, with their origin; a wrong call, source or mark fails the build. */
import { describe, expect, it } from 'vitest'
import { INCH } from '../../src/data/units'
import { figureOf } from '../../src/notes/figures'
import { readNote } from '../../src/notes/note'
import { callOf } from '../../src/notes/parse'
import { TABLE_NAMES, tableOf } from '../../src/notes/tables'
import { equilibriumMoisture } from '../../src/wood/moisture'
import { checkOpening } from '../../src/wood/section'
import { reference, sheet } from '../reference'

const figure = (text: string) => figureOf(callOf(text), reference, sheet)
const value = (text: string) => Number(figure(text).quantity.value)

describe('figures', () => {
  it('shrinks a face as the handbook’s line does', () => {
    const oak = reference.woods.get('white-oak')
    if (!oak) throw new Error('no white oak')
    const expected = 8 * INCH * oak.tangential * (1 - 0.09 / oak.fibreSaturation)
    expect(value('shrink wood=white-oak way=tangential face=8 at=9')).toBeCloseTo(expected, 9)
    // Above fibre saturation nothing has moved.
    expect(value('shrink wood=white-oak way=radial face=8 at=40')).toBe(0)
  })
  it('gives the engine’s moisture, check and weight', () => {
    expect(value('emc f=70 rh=40')).toBeCloseTo(equilibriumMoisture((70 - 32) / 1.8, 0.4), 12)
    const { radial, tangential, fibreSaturation } = reference.woods.get('douglas-fir') as never as Record<
      'radial' | 'tangential' | 'fibreSaturation',
      number
    >
    const dried = 1 - 0.09 / fibreSaturation
    expect(value('checks wood=douglas-fir size=8x8 at=9')).toBeCloseTo(
      checkOpening(4 * INCH, radial * dried, tangential * dried),
      9
    )
    expect(value('weight wood=white-oak size=10x10 ft=20 at=15')).toBeLessThan(
      value('weight wood=white-oak size=10x10 ft=20')
    )
  })
  it('opens to a formula and what went into it', () => {
    const { quantity, plain } = figure('job gap wood=white-oak size=10x10 ft=18 place=columbus-oh')
    expect(plain).toBe(false)
    expect(quantity.origin.formula).toBe('gap')
    expect(Object.keys(quantity.origin.inputs ?? {})).toContain('length')
    expect(quantity.low).toBeLessThan(Number(quantity.value))
  })
  it('opens no size that the note chose itself', () => {
    expect(figure('size 8x10')).toMatchObject({ plain: true, quantity: { value: [8 * INCH, 10 * INCH] } })
  })
  it('keeps the source and mark of a published number', () => {
    expect(figure('fact 66 unit=% src=spruce-distortion where=abstract mark=seen').quantity).toMatchObject({
      value: 0.66,
      origin: { mark: 'seen', sources: [{ key: 'spruce-distortion', where: 'abstract' }] }
    })
  })
  it('divides one figure by another', () => {
    const ratio = value('times of="log heart:free size:8x8" over="log heart:boxed size:8x8"')
    expect(ratio).toBeCloseTo(value('log heart=free size=8x8') / value('log heart=boxed size=8x8'), 9)
  })
  it.each([
    ['nonsense wood=white-oak', /no figure/],
    ['constructor', /no figure/],
    ['strain wood=white-oak way=sideways at=9', /must be one of/],
    ['strain wood=no-wood way=radial at=9', /no wood/],
    ['strain wood=white-oak way=radial at=nine', /not a moisture/],
    ['strain wood=white-oak way=radial at=9 colour=red', /does not know colour/],
    ['log heart=boxed size=10x8', /not a section/],
    ['service place=atlantis lives=heated', /no place/],
    ['fact 3 unit=in src=no-source mark=seen', /no source/],
    ['fact 3 unit=furlong src=nds mark=seen', /not a fact/],
    ['clock half wood=white-oak size=16x16', /longer than the clock shows/]
  ])('refuses %s', (text, why) => expect(() => figure(text)).toThrow(why))
})

describe('tables', () => {
  it('refuses a table that is not known', () => {
    expect(() => tableOf(callOf('nothing'), reference, sheet)).toThrow(/no table/)
  })
  it('has a cell under every head', () => {
    for (const text of [
      'shrinkage woods=white-oak,douglas-fir face=8 at=9',
      'places places=tucson-az',
      'logs sizes=8x8',
      'bill project=ridge-hall',
      'useclasses',
      'finishes',
      'seasonings'
    ]) {
      const table = tableOf(callOf(text), reference, sheet)
      expect(TABLE_NAMES).toContain(text.split(' ')[0])
      expect(table.rows.length).toBeGreaterThan(0)
      for (const row of table.rows) expect(row.cells.length, text).toBe(table.head.length - 1)
    }
  })
  it('shares of a bill come to the whole', () => {
    const { rows } = tableOf(callOf('bill project=ridge-hall'), reference, sheet)
    const sum = rows.reduce((n, row) => n + Number((row.cells[0] as { value: number }).value), 0)
    expect(sum).toBeCloseTo(1, 9)
  })
})

describe('a note', () => {
  const library = { reference, sheet, glossary: {}, ids: ['other'] }
  const head = '---\ntitle: T\nsummary: S.\ngroup: wood\norder: 1\nsources: nds\nrelated: other\n---\n\n'
  const read = (body: string, front = head) => readNote('it', `${front}${body}`, library)
  it('is read, worked out and counted', () => {
    const note = read('Oak is {{total wood=white-oak way=radial}} [@nds 3.4 | seen].')
    expect(note).toMatchObject({ id: 'it', group: 'wood', order: 1, sources: ['nds'], related: ['other'] })
    expect(note.blocks[0]).toMatchObject({
      of: [
        { kind: 'text' },
        { kind: 'figure', quantity: { kind: 'percent' } },
        { kind: 'text' },
        { kind: 'cite', origin: { mark: 'seen', sources: [{ key: 'nds', where: '3.4' }] } },
        { kind: 'text', text: '.' }
      ]
    })
  })
  it.each([
    ['It opens 9 mm.', /stated by hand: 9/],
    ['## In 3 steps', /stated by hand/],
    ['It takes **three weeks**.', /stated by hand/],
    ['See [@no-key].', /no source "no-key"/],
    ['See [@nds 3.4].', /must say how/],
    ['See [@siau-1984 | seen].', /never read/],
    ['[There](/nowhere/)', /no page/],
    ['[There](/notes/nowhere/)', /no page/],
    ['{{nothing}}', /no figure "nothing"/]
  ])('refuses %s', (body, why) => expect(() => read(body)).toThrow(why))
  it('names its file where it is wrong, front matter and all', () => {
    expect(() => read('x', head.replace('nds', 'no-key'))).toThrow(/content\/notes\/it\.md: no source/)
    expect(() => read('x', head.replace('group: wood', 'group: other'))).toThrow(/content\/notes\/it\.md/)
    expect(() => read('x', head.replace('order: 1', 'order: 1\nmood: dark'))).toThrow(/mood/)
  })
})
