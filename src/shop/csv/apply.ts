/** From a list of prices into the form, and from the form into a list. */

import { carriedIn, type Draft, ON, withField } from '../sheet/draft'
import type { NamedWood } from '../wood-names'
import { type CsvLine, type PriceUnit, perBoardFoot } from './csv'
import type { CsvRow } from './row'

/** The wood that a line means: as it was understood, or as the framer chose for it; '' for none. */
export const woodOf = (row: CsvRow, chosen: Readonly<Record<number, string>>): string =>
  chosen[row.line] ?? (row.match.how === 'one' ? row.match.id : '')

/** Lines that can be taken: a known wood and a price in range. Of two for the same wood the later one. */
export function takenRows(
  rows: readonly CsvRow[],
  unit: Exclude<PriceUnit, 'ask'>,
  chosen: Readonly<Record<number, string>>
): ReadonlyMap<string, CsvRow> {
  const fit = rows.filter((row) => woodOf(row, chosen) !== '' && perBoardFoot(row.price, unit) !== null)
  return new Map(fit.map((row) => [woodOf(row, chosen), row]))
}

/** The draft with these prices. Woods that the list does not name, and what it does not say of a wood, stay as they are. */
export function withCsv(draft: Draft, taken: ReadonlyMap<string, CsvRow>, unit: Exclude<PriceUnit, 'ask'>): Draft {
  let next = draft
  for (const [id, row] of taken) {
    const at = `wood.${id}`
    const set = (field: string, text: string | undefined) => {
      if (text !== undefined) next = withField(next, `${at}.${field}`, text)
    }
    next = withField(next, at, ON)
    set('price', String(perBoardFoot(row.price, unit)))
    set('request', row.onRequest === undefined ? undefined : row.onRequest ? ON : '')
    set('longest', row.longestFt?.toString())
    set('largest', row.largestIn?.join('x'))
    set('freeAdd', row.freeAddPercent?.toString())
    set('note', row.note)
  }
  return next
}

/** The woods that the draft carries, as lines of a list; with all of `woods` where it carries none yet. */
export function csvLines(draft: Draft, woods: readonly NamedWood[]): CsvLine[] {
  const carried = carriedIn(draft)
  const ids = carried.length > 0 ? carried : woods.map((wood) => wood.id)
  return ids.map((id) => {
    const text = (field: string) => draft[`wood.${id}.${field}`] ?? ''
    return {
      id,
      wood: woods.find((wood) => wood.id === id)?.name ?? id,
      price: text('price'),
      request: text('request') === ON ? 'yes' : '',
      longest: text('longest'),
      largest: text('largest'),
      free: text('freeAdd'),
      note: text('note')
    }
  })
}
