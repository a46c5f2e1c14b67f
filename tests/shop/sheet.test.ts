/** The shop sheet as it is written, checked, kept as a file and opened again. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sampleShop } from '../../src/data/content'
import { SHEET } from '../../src/data/shop-schema'
import { GET } from '../../src/pages/data/shop-sheet.schema.json'
import { readSheet } from '../../src/shop/sheet/door'
import {
  BLANK,
  type Draft,
  draftOf,
  inventedIn,
  withField,
  withOwnPrices,
  withSeries
} from '../../src/shop/sheet/draft'
import { LARGEST_FILE, readSheetFile, sheetFile } from '../../src/shop/sheet/file'
import { readDraft } from '../../src/shop/sheet/read'
import { readSizes, sizesText, toggleSize } from '../../src/shop/sizes'
import { reference, sheet } from '../reference'

const known = new Set(reference.woods.keys())
const nameOf = (id: string) => reference.woods.get(id)?.name ?? id
const read = (draft: Draft) => readDraft(draft, nameOf, 10)
const set = (draft: Draft, fields: Readonly<Record<string, string>>) =>
  Object.entries(fields).reduce((d, [field, text]) => withField(d, field, text), draft)

/** What a framer types who begins from nothing. */
const FILLED = set(BLANK, {
  name: 'Invented framers',
  'wood.white-oak': 'on',
  'wood.white-oak.price': '4.90',
  'rate.joinery.value': '9',
  'rate.raising.value': '2,50'
})
const wordsFor = (field: string, text: string, draft: Draft = FILLED) => {
  const { sheet: made, problems } = read(withField(draft, field, text))
  expect(made, `${field} = ${text}`).toBeNull()
  return problems.filter((p) => p.field === field).map((p) => p.says)
}

describe('from nothing', () => {
  it('only the name, a wood, its price and two rates are asked', () => {
    const { sheet: none, problems } = read(BLANK)
    expect(none).toBeNull()
    expect(problems.map((p) => p.field).sort()).toEqual(['name', 'rate.joinery.value', 'rate.raising.value', 'woods'])
    expect(problems.every((p) => p.missing)).toBe(true)
    const { sheet: made } = read(FILLED)
    expect(made).toMatchObject({
      name: 'Invented framers',
      placeholder: false,
      woods: [{ species: 'white-oak', perBoardFoot: 4.9 }],
      rates: { joinery: { by: 'board-foot', value: 9 }, raising: { by: 'board-foot', value: 2.5 } }
    })
    expect(readSheet(made).ok).toBe(true)
  })
  it('a wood that is unticked keeps its price for when it comes back', () => {
    const off = set(FILLED, { 'wood.white-oak': '' })
    expect(read(off).problems.map((p) => p.field)).toEqual(['woods'])
    expect(read(withField(off, 'wood.white-oak', 'on')).sheet?.woods[0]?.perBoardFoot).toBe(4.9)
  })
})

describe('a field that cannot be taken says so, with its range', () => {
  it.each([
    ['wood.white-oak.price', '-1', /from 0 to 1,000 per board foot/],
    ['wood.white-oak.price', '4900', /from 0 to 1,000 per board foot/],
    ['wood.white-oak.price', 'dear', /could not read that.*such as 4\.20/],
    ['wood.white-oak.price', '', /Type a number/],
    ['wood.white-oak.longest', '400', /from 4 to 120 ft/],
    ['wood.white-oak.largest', '12', /two sides in inches, such as 12x16/],
    ['wood.white-oak.largest', '1x12', /from 2 to 36 in/],
    ['wood.white-oak.note', 'x'.repeat(121), /At most 120 characters; these are 121/],
    ['name', '', /Type the name/],
    ['name', 'a\u202eb', /invisible control character/],
    ['name', 'x'.repeat(81), /At most 80 characters/],
    ['note', 'x'.repeat(601), /At most 600/],
    ['cautions', 'a\n'.repeat(9), /At most 8 cautions; these are 9/],
    ['cautions', 'x'.repeat(161), /number 1 has 161/],
    ['sizes', '8y8', /“8y8” is not a section.*8x10/],
    ['sizes', '1x8', /each side has to be from 2 to 36 in/],
    ['sizes', '', /at least one section/],
    ['band', '91', /from 0 to 90\u00a0% up or down/],
    ['waste', '301', /from 0 to 300\u00a0%/],
    ['season.green.weeks', '-1', /from 0 to 520 weeks/],
    ['rate.joinery.value', '', /Type a number/],
    ['longAbove', '2', /from 4 to 120 ft/],
    ['largeAbove', '60', /from 2 to 36 in/]
  ])('%s, %#', (field, text, says) => {
    const words = wordsFor(field, text)
    expect(words.length).toBe(1)
    expect(words[0]).toMatch(says)
  })
  it('an unusual price is only pointed out', () => {
    const draft = set(FILLED, {
      'wood.red-oak': 'on',
      'wood.red-oak.price': '5',
      'wood.redwood': 'on',
      'wood.redwood.price': '50'
    })
    const { sheet: made, cautions } = read(draft)
    expect(made).not.toBeNull()
    expect(cautions.map((c) => c.field)).toEqual(['wood.redwood.price'])
    expect(cautions[0]?.says).toMatch(/More than 10 times/)
    expect(read(withField(draft, 'wood.redwood.price', '49')).cautions).toEqual([])
    expect(read(withField(draft, 'wood.redwood.price', '0.4')).cautions[0]?.says).toMatch(/tenth/)
    expect(read(withField(draft, 'wood.redwood.price', '0')).cautions[0]?.says).toMatch(/Nothing at all/)
  })
})

describe('from the sample', () => {
  const draft = draftOf(sheet, known)
  it('comes back as the sheet it was', () => {
    expect(read(draft)).toMatchObject({ sheet, problems: [], cautions: [] })
  })
  it('stays a placeholder until every price was replaced', () => {
    let now = draft
    const fields = inventedIn(draft)
    expect(fields.length).toBeGreaterThan(sheet.woods.length)
    for (const field of fields) {
      expect(read(now).sheet?.placeholder, field).toBe(true)
      now = withField(now, field, now[field] ?? '')
    }
    expect(read(now).sheet?.placeholder).toBe(false)
  })
  it('or until the framer says so, or carries none of those woods and rates', () => {
    expect(read(withOwnPrices(draft)).sheet?.placeholder).toBe(false)
    const few = set(draft, {
      ...Object.fromEntries(sheet.woods.map((w) => [`wood.${w.species}`, ''])),
      'wood.white-ash': 'on',
      'wood.white-ash.price': '5',
      ...Object.fromEntries(
        ['joinery', 'raising', 'finish', 'engineering', 'freight'].map((r) => [`rate.${r}.by`, ''])
      ),
      ...Object.fromEntries(['air', 'kiln', 'rfv'].map((s) => [`season.${s}`, '']))
    })
    expect(read(few).sheet).toMatchObject({ placeholder: false, rates: {} })
  })
})

describe('the series of sections', () => {
  it('reads what people write, each size once, the smaller side first', () => {
    const { sizes } = readSizes('8x8, 10 x 8; 8 by 10\n12×12  8X8 7.5x9', 'in')
    expect(sizesText(sizes)).toBe('7.5x9, 8x8, 8x10, 12x12')
    expect(readSizes('200x250', 'mm').outside).toEqual([])
    expect(readSizes('200x250', 'in').outside).toEqual(['200x250'])
  })
  it('a tick puts a size in and takes it out, and leaves what could not be read', () => {
    const with10 = toggleSize('8x8, what', 'in', [8, 10], true)
    expect(with10).toBe('8x8, 8x10, what')
    expect(toggleSize(with10, 'in', [8, 10], false)).toBe('8x8, what')
  })
  it('begins in three ways that all hold', () => {
    for (const id of ['full-sawn', 'planed', 'mm'] as const) {
      const made = read(withSeries(FILLED, id)).sheet
      expect(made?.sections.sizes.length).toBeGreaterThan(10)
      expect([made?.sections.unit, made?.surface]).toEqual([
        id === 'mm' ? 'mm' : 'in',
        id === 'planed' ? 'planed' : 'full-sawn'
      ])
    }
  })
})

describe('the door', () => {
  const broken = (change: object) => {
    const found = readSheet({ ...(sampleShop as object), ...change })
    return found.ok ? [] : found.problems.map((p) => `${p.path}: ${p.says}`)
  }
  it.each([
    [{ name: undefined }, 'name: missing'],
    [{ name: '' }, 'name: a name'],
    [{ name: 7 }, 'name: text'],
    [{ placeholder: 'yes' }, 'placeholder: true or false'],
    [{ extra: 1 }, 'extra: not part of a shop sheet of this version'],
    [{ version: 2 }, 'version: 1 and nothing else'],
    [{ surface: 'rough' }, 'surface: one of: full-sawn, planed'],
    [{ grade: 'AA' }, 'grade: a grade of the list'],
    [{ woods: [] }, 'woods: at least one wood'],
    [{ woods: 'oak' }, 'woods: a list'],
    [{ woods: [{ species: 'white-oak', perBoardFoot: -1 }] }, 'woods.0.perBoardFoot: at least 0'],
    [{ woods: [{ species: 'white-oak' }] }, 'woods.0.perBoardFoot: missing'],
    [
      { rates: { joinery: { by: 'day', value: 1 } } },
      'rates.joinery.by: one of: board-foot, timber-percent, frame-percent, sum'
    ],
    [{ wastePercent: Number.NaN }, 'wastePercent: a number']
  ])('says of %j', (change, says) => expect(broken(change)).toContain(says))
  it('is no sheet at all', () => {
    for (const input of [null, 1, 'x', undefined])
      expect(readSheet(input)).toEqual({ ok: false, problems: [{ path: '', says: 'not a shop sheet' }] })
  })
})

describe('the published schema', () => {
  interface Schema {
    readonly required?: readonly string[]
    readonly properties?: Readonly<Record<string, Schema>>
    readonly items?: Schema
    readonly additionalProperties?: boolean
    readonly maxItems?: number
    readonly maximum?: number
  }
  it('asks for what the door asks for, and allows nothing beside it', async () => {
    const schema = (await GET().json()) as Schema
    const { required = [], properties = {} } = schema
    for (const key of Object.keys(sheet)) expect(Object.keys(properties), key).toContain(key)
    for (const key of Object.keys(properties)) {
      const { [key as keyof typeof sheet]: _gone, ...rest } = sheet
      expect(required.includes(key), key).toBe(!readSheet(rest).ok)
    }
    expect(schema.additionalProperties).toBe(false)
    expect(properties['woods']?.maxItems).toBe(SHEET.woods)
    expect(properties['woods']?.items?.properties?.['perBoardFoot']?.maximum).toBe(SHEET.price)
    // Not every validator knows classes of characters.
    expect(JSON.stringify(schema)).not.toMatch(/\\\\p\{/)
  })
})

describe('a file', () => {
  const opened = (text: string) => readSheetFile(text, known)
  it('comes back as it was saved', () => {
    expect(opened(sheetFile(sheet))).toEqual({ ok: true, sheet, unknown: [] })
    expect(opened(`\uFEFF${sheetFile(sheet)}`)).toMatchObject({ ok: true })
  })
  it.each([
    ['{', /not JSON, or was cut short/],
    ['[]', /not a shop sheet/],
    ['null', /not a shop sheet/],
    ['{"a":1}', /no version/],
    ['{"version":2}', /version 2.*reads version 1/],
    ['{"version":1}', /cannot be taken/],
    [' '.repeat(LARGEST_FILE + 1), /201 KB.*at most 200 KB/],
    ['['.repeat(100_000), /not JSON/]
  ])('is refused in words, %#', (text, says) => {
    const found = opened(text)
    expect(found.ok ? '' : found.says).toMatch(says)
  })
  it('names the places that it cannot take, and woods that nobody here knows', () => {
    const woods = [...sheet.woods, { species: 'balsa', perBoardFoot: 1 }]
    expect(opened(JSON.stringify({ ...sheet, woods }))).toMatchObject({ ok: true, unknown: ['balsa'] })
    expect(opened(JSON.stringify({ ...sheet, woods: [{ species: 'balsa', perBoardFoot: 1 }] })).ok).toBe(false)
    const bad = opened(JSON.stringify({ ...sheet, woods: [{ species: 'white-oak', perBoardFoot: -4 }] }))
    expect(bad.ok ? [] : bad.list).toEqual(['wood 1 (white-oak), price per board foot: at least 0'])
  })
})

/** Thousands of cases on a busy machine. */
const LONG = 60_000

describe('anything at all', () => {
  /** A whole sheet with some of it replaced by something else. */
  const spoiled = fc
    .tuple(
      fc.array(
        fc.tuple(
          fc.nat(400),
          fc.oneof(
            fc.jsonValue({ maxDepth: 2 }),
            fc.constantFrom<unknown>(-1, 1e308, '', '\u202e', [], {}, null, 'a\0b', '<img src=x onerror=alert(1)>')
          )
        ),
        { minLength: 1, maxLength: 4 }
      ),
      fc.boolean()
    )
    .map(([changes, cut]) => {
      let at = 0
      const text = JSON.stringify(sheet, (_key, value) => {
        const change = changes.find(([where]) => where === at++)
        return change ? change[1] : value
      })
      return cut ? text.slice(0, Math.floor(text.length / 2)) : (text ?? '')
    })
  const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 80 }), fc.json({ maxDepth: 4 }), spoiled)
  it(
    'as a file never throws, and never gives a sheet that the door would refuse',
    () => {
      fc.assert(
        fc.property(anyText, (text) => {
          const found = readSheetFile(text, known)
          return found.ok
            ? readSheet(found.sheet).ok && read(draftOf(found.sheet, known)).problems.length === 0
            : found.says.length > 0
        }),
        { numRuns: 6000 }
      )
    },
    LONG
  )
  it('as a prototype changes nothing', () => {
    readSheetFile('{"version":1,"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}', known)
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
  })
  it(
    'typed into the form never throws, and a sheet of it always passes the door',
    () => {
      const fields = [
        ...Object.keys(draftOf(sheet, known)),
        'wood.hickory',
        'wood.hickory.price',
        'wood.__proto__',
        'contact',
        'note'
      ]
      const anyWord = fc.oneof(
        fc.string({ unit: 'binary', maxLength: 12 }),
        fc.constantFrom('on', '', '4.2', '-1', '8x10', '1e9', 'mm', 'planed', 'sum', '\r\n', '\t'),
        fc.double().map(String)
      )
      fc.assert(
        fc.property(
          fc.array(fc.tuple(fc.constantFrom(...fields), anyWord), { maxLength: 8 }),
          fc.boolean(),
          (typed, blank) => {
            const { sheet: made, problems } = read(
              set(blank ? FILLED : draftOf(sheet, known), Object.fromEntries(typed))
            )
            if (made === null) return problems.length > 0 && problems.every((p) => p.says !== '' && p.field !== '')
            return (
              readSheet(made).ok &&
              readSheetFile(sheetFile(made), known).ok === made.woods.some((w) => known.has(w.species))
            )
          }
        ),
        { numRuns: 4000 }
      )
    },
    LONG
  )
})
