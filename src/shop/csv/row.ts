/** One line of a list of prices: a wood, its price, and what else is said of it. */
import { SHEET } from '../../data/shop-schema'
import { type Comma, readAmount, readFeet, readSides } from '../amount'
import { type Match, matchWood, type NamedWood } from '../wood-names'
import type { Column, Columns } from './header'

export interface CsvRow {
  /** Line of the file, from 1, heading included. */
  readonly line: number
  /** The wood as the file has it. */
  readonly said: string
  readonly match: Match
  /** As in the file; what it means depends on the unit. null where there is none to read. */
  readonly price: number | null
  readonly onRequest?: boolean
  readonly longestFt?: number
  readonly largestIn?: readonly [number, number]
  readonly freeAddPercent?: number
  readonly note?: string
  /** Cells that could not be taken, in words. */
  readonly problems: readonly string[]
}

const YES = /^(?:y|yes|true|1|x|✓|✔|on request|request|order|to order)$/i
const NO = /^(?:|n|no|false|0|-|–|stock|kept|in stock)$/i

/** @param cell text of a column, empty where there is none */
export function readRow(
  cell: (column: Column) => string,
  line: number,
  columns: Columns,
  comma: Comma,
  woods: readonly NamedWood[],
  carried: ReadonlySet<string>
): CsvRow {
  const problems: string[] = []
  const refuse = (what: string, text: string, why: string): undefined => {
    problems.push(`${what} “${text.slice(0, 30)}”: ${why}`)
    return undefined
  }
  const within = (
    what: string,
    text: string,
    value: number | null,
    least: number,
    most: number,
    unit: string
  ): number | undefined => {
    if (text === '') return undefined
    if (value === null) return refuse(what, text, 'not a number')
    return value < least || value > most
      ? refuse(what, text, `has to be from ${least} to ${most} ${unit}`)
      : Number(value.toFixed(3))
  }
  const said = (cell('wood') || cell('id')).slice(0, 80)
  const id = cell('id')
  const match: Match = woods.some((wood) => wood.id === id) ? { how: 'one', id } : matchWood(said, woods, carried)
  const priceText = cell('price')
  const price = readAmount(priceText, comma)
  if (price === null) refuse('price', priceText, priceText === '' ? 'there is none' : 'not a number')
  const request = cell('request')
  const onRequest = YES.test(request) ? true : NO.test(request) ? false : refuse('on request', request, 'yes or no')
  const long = cell('longest')
  const longestFt = within(
    'longest',
    long,
    readFeet(long, columns.lengths, comma),
    SHEET.lengthFt[0],
    SHEET.lengthFt[1],
    'ft'
  )
  const free = cell('free')
  const freeAddPercent = within('free of heart', free, readAmount(free, comma), 0, SHEET.percent, '%')
  const large = cell('largest')
  const sides =
    large === '' ? undefined : (readSides(large, comma) ?? refuse('largest', large, 'two sides, such as 12x16'))
  const mm = sides && (columns.sides === 'mm' || /mm/i.test(large) || sides[0] > SHEET.sideIn[1])
  const largestIn = sides?.map((side) => (mm ? Number((side / 25.4).toFixed(2)) : side))
  const [a, b] = largestIn ?? []
  const fits = a !== undefined && b !== undefined && a >= SHEET.sideIn[0] && b <= SHEET.sideIn[1]
  if (largestIn && !fits)
    refuse('largest', large, `each side has to be from ${SHEET.sideIn[0]} to ${SHEET.sideIn[1]} in`)
  const note = cell('note').slice(0, SHEET.woodNote)
  return {
    line,
    said,
    match,
    price,
    ...(request !== '' && onRequest !== undefined && { onRequest }),
    ...(longestFt !== undefined && { longestFt }),
    ...(fits && { largestIn: [a, b] as const }),
    ...(freeAddPercent !== undefined && { freeAddPercent }),
    ...(note !== '' && { note }),
    problems
  }
}
