/**
 * Prices from a spreadsheet: one wood a line. Kind to separators, spellings and decimal commas; says what it did not
 * understand instead of guessing. Never throws.
 */
import Papa from 'papaparse'
import { SHEET } from '../../data/shop-schema'
import { type Comma, readAmount } from '../amount'
import { matchWood, type NamedWood } from '../wood-names'
import { type Column, type Columns, readHeader } from './header'
import { type CsvRow, readRow } from './row'

/** Largest text that is looked at, and the most lines. */
export const LARGEST_CSV = 200_000
const MOST_ROWS = 400

/** What the prices are for: told by the heading, or to be asked. */
export type PriceUnit = 'board-foot' | 'thousand' | 'ask'

export type CsvRead =
  | {
      readonly ok: true
      readonly unit: PriceUnit
      readonly rows: readonly CsvRow[]
      readonly ignored: readonly string[]
    }
  | { readonly ok: false; readonly says: string }

/** A spreadsheet may have been told by us, or by another program, that a cell is text. */
const cellText = (cell: unknown): string =>
  String(cell ?? '')
    .trim()
    .replace(/^'(?=[=+\-@\t\r])/, '')
    .trim()

/** @param carried woods of the sheet so far: of two that a name may mean, the one that is carried */
export function readCsv(text: string, woods: readonly NamedWood[], carried: ReadonlySet<string> = new Set()): CsvRead {
  if (text.length > LARGEST_CSV)
    return { ok: false, says: `A list of prices has at most ${LARGEST_CSV / 1000} KB, so this one was not opened.` }
  const parsed = Papa.parse<unknown[]>(text.replace(/^\uFEFF/, '').replaceAll('\0', ''), {
    skipEmptyLines: 'greedy',
    delimitersToGuess: [',', ';', '\t', '|']
  })
  const rows = parsed.data.filter(Array.isArray).map((row) => row.slice(0, 40).map(cellText))
  if (rows.length === 0) return { ok: false, says: 'There is nothing in this file.' }
  if (rows.length > MOST_ROWS)
    return { ok: false, says: `A list of prices has at most ${MOST_ROWS} lines; this one has ${rows.length}.` }
  const comma: Comma = parsed.meta.delimiter === ';' ? 'decimal' : 'guess'
  const head = findHeader(rows, woods)
  if (head === null)
    return {
      ok: false,
      says: 'We could not tell the columns. The first line should name them: “wood” and “price per board foot”.'
    }
  const { columns, from } = head
  const named = rows.slice(from).flatMap((cells, i) => {
    const cell = (column: Column): string => cells[columns.at[column] ?? -1] ?? ''
    return cell('wood') === '' && cell('price') === ''
      ? []
      : [readRow(cell, from + i + 1, columns, commaOf(cells, comma), woods, carried)]
  })
  if (named.length === 0) return { ok: false, says: 'The columns are there, but no wood is under them.' }
  return { ok: true, unit: columns.unit, rows: named, ignored: columns.ignored }
}

/** Semicolons go with decimal commas, but not in a line that has decimal points. */
const commaOf = (cells: readonly string[], comma: Comma): Comma =>
  comma === 'decimal' && cells.some((cell) => /\d\.\d{1,2}$/.test(cell)) ? 'guess' : comma

/** The heading within the first lines, or two columns of woods and prices without one. */
function findHeader(rows: readonly string[][], woods: readonly NamedWood[]): { columns: Columns; from: number } | null {
  for (let i = 0; i < Math.min(rows.length, 8); i++) {
    const columns = readHeader(rows[i] ?? [])
    if (columns) return { columns, from: i + 1 }
  }
  const first = rows[0] ?? []
  const bare = matchWood(first[0] ?? '', woods).how !== 'none' && readAmount(first[1] ?? '') !== null
  return bare
    ? { columns: { at: { wood: 0, price: 1 }, unit: 'ask', lengths: 'ft', sides: 'in', ignored: [] }, from: 0 }
    : null
}

/** The price per board foot, or what is wrong with it. */
export function perBoardFoot(price: number | null, unit: Exclude<PriceUnit, 'ask'>): number | null {
  if (price === null) return null
  const value = Number((unit === 'thousand' ? price / 1000 : price).toFixed(4))
  return value >= 0 && value <= SHEET.price ? value : null
}

/** A cell that no spreadsheet takes for a formula. */
const inert = (cell: string): string => (/^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell)

/** The sheet's woods as a list to fill in and open again here; `woods` where there is no price yet. */
export function writeCsv(lines: readonly CsvLine[]): string {
  const fields = [
    'id',
    'wood',
    'price per board foot',
    'on request',
    'longest, ft',
    'largest, in',
    'free of heart adds, %',
    'note'
  ]
  const data = lines.map((one) =>
    [one.id, one.wood, one.price, one.request, one.longest, one.largest, one.free, one.note].map(inert)
  )
  return `\uFEFF${Papa.unparse({ fields, data }, { newline: '\r\n' })}\r\n`
}
export type CsvLine = Readonly<
  Record<'id' | 'wood' | 'price' | 'request' | 'longest' | 'largest' | 'free' | 'note', string>
>
