/** Prices from a spreadsheet: kind to what programs write, exact in what is taken, and never thrown by anything. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readAmount, readFeet, readSides } from '../../src/shop/amount'
import { csvLines, takenRows, withCsv } from '../../src/shop/csv/apply'
import { type CsvRead, perBoardFoot, readCsv, writeCsv } from '../../src/shop/csv/csv'
import { matchWood } from '../../src/shop/wood-names'
import { reference } from '../reference'

const woods = [...reference.woods.values()].map(({ id, name, short }) => ({ id, name, short }))
const one = (id: string) => ({ how: 'one', id })

function rowsOf(read: CsvRead) {
  if (!read.ok) throw new Error(read.says)
  return read.rows
}
const prices = (text: string) =>
  rowsOf(readCsv(text, woods)).map((r) => [r.match.how === 'one' ? r.match.id : r.match.how, r.price])

describe('a number as it is typed', () => {
  it.each([
    ['4.2', 4.2],
    ['$4.20', 4.2],
    ['4,20', 4.2],
    ['4.20 $', 4.2],
    ['US$4.20', 4.2],
    ['4.20/bf', 4.2],
    ['1,850', 1850],
    ['1.850', 1.85],
    ['1.850,00', 1850],
    ['1,234,567', 1_234_567],
    ['1 850', 1850],
    ['30 %', 30],
    ['.5', 0.5],
    ['−3', -3],
    ['-3', -3],
    ['($4.20)', -4.2],
    ['4.', 4]
  ])('%s is %d', (text, value) => expect(readAmount(text)).toBe(value))
  it.each(['', 'four', '4.2.1', '1,23,456', '4-5', '=1+1', '1e3', 'NaN', 'Infinity', '$', '-', '0x10', '1,2,3'])(
    '%j is none',
    (text) => expect(readAmount(text)).toBeNull()
  )
  it('a comma is what the list says it is', () => {
    expect(readAmount('4,200', 'decimal')).toBe(4.2)
    expect(readAmount('1.850', 'decimal')).toBe(1850)
    expect(readAmount('4.20', 'decimal')).toBe(4.2)
  })
  it('lengths come in feet, sections with the smaller side first', () => {
    expect(readFeet('24')).toBe(24)
    expect(readFeet("24'")).toBe(24)
    expect(readFeet('24 ft')).toBe(24)
    expect(readFeet('7.3 m')).toBe(23.95)
    expect(readFeet('7,3', 'm')).toBe(23.95)
    expect(readFeet('long')).toBeNull()
    expect(readSides('12 x 8')).toEqual([8, 12])
    expect(readSides('8 by 12 in')).toEqual([8, 12])
    expect(readSides('8"×12"')).toEqual([8, 12])
    expect(readSides('8x')).toBeNull()
  })
})

describe('a wood by its name', () => {
  it.each([
    ['Douglas-fir', 'douglas-fir'],
    ['DOUGLAS FIR', 'douglas-fir'],
    ['Inland Douglas fir', 'douglas-fir-interior'],
    ['E. white pine', 'eastern-white-pine'],
    ['East. White Pine', 'eastern-white-pine'],
    ['EWP', 'eastern-white-pine'],
    ['Western Red Cedar', 'western-redcedar'],
    ['wrc', 'western-redcedar'],
    ['white oaks', 'white-oak'],
    ['red-oak', 'red-oak'],
    ['Cypress', 'baldcypress'],
    ['locust', 'black-locust'],
    ['White oak (green)', 'white-oak'],
    ['southern yellow pine', 'southern-pine'],
    ['air-dried northern red oak', 'red-oak']
  ])('%s', (name, id) => expect(matchWood(name, woods)).toEqual(one(id)))
  it.each(['Doug fir', 'oak', 'pine', 'hemlock', 'cedar', 'white'])('%s may be several: asked, not guessed', (name) => {
    const match = matchWood(name, woods)
    expect(match.how).toBe('several')
  })
  it('of several, the one that the shop carries; of none, none', () => {
    expect(matchWood('Doug fir', woods, new Set(['douglas-fir', 'white-oak']))).toEqual(one('douglas-fir'))
    expect(matchWood('oak', woods, new Set(['red-oak', 'white-oak'])).how).toBe('several')
    for (const name of ['', 'balsa', 'steel', '<b>', '=1+1', 'x'.repeat(999)])
      expect(matchWood(name, woods).how).toBe('none')
  })
})

describe('a list of prices', () => {
  it('reads every separator, quotes, a byte order mark, headings in many words', () => {
    const want = [
      ['douglas-fir', 4.2],
      ['white-oak', 4.9]
    ]
    expect(prices('wood,price per board foot\nDouglas-fir,4.20\nWhite oak,4.90')).toEqual(want)
    expect(prices('\uFEFFSpecies;$/BF\r\nDouglas fir;4,20\r\nWhite Oak;4,90\r\n')).toEqual(want)
    expect(prices('Timber\tCost (bf)\nDouglas fir\t$4.20\nWhite oak\t$4.90')).toEqual(want)
    expect(prices('"Wood","Price, $ / bd ft"\n"Douglas-fir","$4.20"\n"White oak","4.9"')).toEqual(want)
    expect(prices('Our prices 2026\n\nname,price\nDouglas-fir,4.20\n,\nWhite oak,4.90')).toEqual(want)
    expect(prices('Douglas-fir,4.20\nWhite oak,4.90')).toEqual(want)
    expect(prices('id,price\ndouglas-fir,4.2\nwhite-oak,4.9')).toEqual(want)
  })
  it('knows the unit from the heading, or asks', () => {
    const unit = (head: string) => {
      const read = readCsv(`wood,${head}\nWhite oak,"1,850"`, woods)
      return read.ok && [read.unit, read.rows[0]?.price]
    }
    expect(unit('price per MBF')).toEqual(['thousand', 1850])
    expect(unit('$ per thousand')).toEqual(['thousand', 1850])
    expect(unit('price/bf')).toEqual(['board-foot', 1850])
    expect(unit('price')).toEqual(['ask', 1850])
    expect(perBoardFoot(1850, 'thousand')).toBe(1.85)
    expect(perBoardFoot(4.2, 'board-foot')).toBe(4.2)
    expect(perBoardFoot(1850, 'board-foot')).toBeNull()
    expect(perBoardFoot(-1, 'board-foot')).toBeNull()
  })
  it('takes what else is said of a wood, and says what it cannot take', () => {
    const [good, bad] = rowsOf(
      readCsv(
        'wood,price per bf,on request,longest (m),largest,free of heart adds,note\n' +
          'Western larch,4,yes,"7,3",12x16,30 %,from one mill\n' +
          'White oak,dear,maybe,900,3x99,-4,',
        woods
      )
    )
    expect(good).toMatchObject({
      onRequest: true,
      longestFt: 23.95,
      largestIn: [12, 16],
      freeAddPercent: 30,
      note: 'from one mill',
      problems: []
    })
    expect(bad?.price).toBeNull()
    expect(bad?.problems.join('\n')).toMatch(
      /price “dear”: not a number[\s\S]*on request “maybe”: yes or no[\s\S]*longest “900”[\s\S]*free of heart “-4”[\s\S]*largest “3x99”/
    )
  })
  it.each([
    ['', /nothing in this file/],
    ['hello', /could not tell the columns/],
    ['wood,price', /no wood is under them/],
    [`wood,price\n${'White oak,4\n'.repeat(500)}`, /at most 400 lines/],
    ['x'.repeat(200_001), /at most 200 KB/]
  ])('says what is the matter, %#', (text, says) => {
    const read = readCsv(text, woods)
    expect(read.ok ? '' : read.says).toMatch(says)
  })
})

describe('the template', () => {
  const empty = {
    id: 'white-oak',
    wood: 'White oak',
    price: '',
    request: '',
    longest: '',
    largest: '',
    free: '',
    note: ''
  }
  it('has no cell that a spreadsheet would take for a formula, and comes back as it was', () => {
    const notes = ['=HYPERLINK("x")', '+1', '-1', '@SUM(A1)', '\t=1', 'plain, "quoted"']
    const lines = notes.map((note) => ({ ...empty, price: '4.9', note }))
    const text = writeCsv(lines)
    for (const line of text.split('\r\n').slice(1, -1)) {
      const note = line.split(',').slice(7).join(',').replace(/^"/, '')
      expect(note).not.toMatch(/^[=+\-@\t\r]/)
    }
    const back = rowsOf(readCsv(text, woods)).map((r) => r.note)
    expect(back).toEqual(notes.map((n) => n.trim()))
  })
  it('is read back with its prices', () => {
    const text = writeCsv([{ ...empty, price: '4.9', request: 'yes', longest: '24', largest: '12x12', free: '30' }])
    expect(rowsOf(readCsv(text, woods))[0]).toMatchObject({
      match: one('white-oak'),
      price: 4.9,
      onRequest: true,
      longestFt: 24,
      largestIn: [12, 12],
      freeAddPercent: 30,
      problems: []
    })
  })
})

describe('taken into the form', () => {
  const list = 'wood,price per bf,on request\nWhite oak,4.9,yes\nRed oak,4,\nWhite oak,5,no\nBalsa,1,\nBlack locust,-3,'
  const rows = rowsOf(readCsv(list, woods))
  it('takes each known wood with a price in range, of two lines the later, and leaves the rest as it was', () => {
    const taken = takenRows(rows, 'board-foot', {})
    expect([...taken.keys()]).toEqual(['white-oak', 'red-oak'])
    const before = {
      name: 'x',
      'wood.redwood': 'on',
      'wood.redwood.price': '8',
      'wood.red-oak.longest': '20',
      'invented.wood.red-oak.price': 'on'
    }
    expect(withCsv(before, taken, 'board-foot')).toEqual({
      name: 'x',
      'wood.redwood': 'on',
      'wood.redwood.price': '8',
      'wood.red-oak': 'on',
      'wood.red-oak.price': '4',
      'wood.red-oak.longest': '20',
      'wood.white-oak': 'on',
      'wood.white-oak.price': '5'
    })
  })
  it('a line that named no wood takes the one that is chosen for it', () => {
    expect(takenRows(rows, 'thousand', { 5: 'hickory' }).get('hickory')?.price).toBe(1)
  })
  it('what is saved to fill in has the carried woods as they are typed', () => {
    const lines = csvLines({ 'wood.red-oak': 'on', 'wood.red-oak.price': '4', 'wood.redwood.price': '9' }, woods)
    expect(lines).toMatchObject([{ id: 'red-oak', wood: 'Red oak', price: '4' }])
    expect(csvLines({}, woods).length).toBe(woods.length)
  })
})

/** Thousands of cases on a busy machine. */
const LONG = 60_000

describe('anything at all', () => {
  const piece = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 30 }),
    fc.constantFrom(
      'wood',
      'price',
      'price per mbf',
      ',',
      ';',
      '\t',
      '"',
      '""',
      '\n',
      '\r\n',
      '\0',
      '\uFEFF',
      '=1+1',
      '$4,20',
      '-1',
      '1e999',
      'White oak',
      'Doug fir',
      '8x12',
      'longest (m)',
      '__proto__',
      'constructor',
      '<script>',
      '\u202e'
    ),
    fc.double().map(String)
  )
  it(
    'never throws, and gives only woods that we know and numbers in range',
    () => {
      fc.assert(
        fc.property(fc.array(piece, { maxLength: 40 }), fc.boolean(), (pieces, headed) => {
          const read = readCsv((headed ? 'wood,price,longest,largest,free of heart\n' : '') + pieces.join(''), woods)
          if (!read.ok) return read.says.length > 0
          return read.rows.every((row) => {
            const known = row.match.how !== 'one' || reference.woods.has(row.match.id)
            const price = perBoardFoot(row.price, 'board-foot')
            const fair = price === null || (price >= 0 && price <= 1000)
            const long = row.longestFt === undefined || (row.longestFt >= 4 && row.longestFt <= 120)
            const large = row.largestIn === undefined || (row.largestIn[0] >= 2 && row.largestIn[1] <= 36)
            return known && fair && long && large
          })
        }),
        { numRuns: 10_000 }
      )
    },
    LONG
  )
})
