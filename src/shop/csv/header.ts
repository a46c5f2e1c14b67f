/** The heading of a list of prices: which column is which, and what its numbers are in. */

export type Column = 'id' | 'wood' | 'price' | 'request' | 'longest' | 'largest' | 'free' | 'note'

export interface Columns {
  readonly at: Readonly<Partial<Record<Column, number>>>
  readonly unit: 'board-foot' | 'thousand' | 'ask'
  readonly lengths: 'ft' | 'm' | 'mm' | 'in'
  readonly sides: 'in' | 'mm'
  /** Headings that are none of ours, cut short. */
  readonly ignored: readonly string[]
}

/** "Price / BF ($)" as words: price bf $ */
const tidy = (heading: string): string =>
  heading
    .toLowerCase()
    .slice(0, 60)
    .replace(/[^a-z0-9$%"']+/g, ' ')
    .trim()

const THOUSAND = /\bmbf\b|\bm ?b ?f\b|thousand|\b1 ?000\b|\bmfbm\b|\bper m\b/
const BOARD_FOOT = /\bbf\b|\bbd ?ft\b|board (?:foot|feet)|\bfbm\b|\bb ?f\b/

/** In this order: "free of heart price" is an addition, "largest price" no section. The first column that fits has it. */
const KINDS: readonly (readonly [Column, RegExp])[] = [
  ['free', /free of heart|\bfohc?\b|heart free/],
  ['request', /request|to order|special order/],
  ['longest', /long|max(?:imum)? length|^length/],
  ['largest', /larg|max(?:imum)? (?:size|section)|biggest/],
  ['price', /price|cost|rate|\$|mbf|per bf|board f/],
  ['id', /^id$|\bcode\b|wood id/],
  ['wood', /wood|species|timber|lumber|^name$|material/],
  ['note', /note|remark|comment/]
]

/** The columns of a heading; null where it names no wood or no price. */
export function readHeader(cells: readonly string[]): Columns | null {
  const at: Partial<Record<Column, number>> = {}
  const ignored: string[] = []
  cells.forEach((cell, i) => {
    const kind = KINDS.find(([, fits]) => fits.test(tidy(cell)))?.[0]
    if (kind !== undefined && at[kind] === undefined) at[kind] = i
    else if (cell !== '') ignored.push(cell.slice(0, 40))
  })
  if ((at.wood === undefined && at.id === undefined) || at.price === undefined) return null
  const heading = (column: Column): string => tidy(cells[at[column] ?? -1] ?? '')
  const price = heading('price')
  const long = heading('longest')
  return {
    at,
    unit: THOUSAND.test(price) ? 'thousand' : BOARD_FOOT.test(price) ? 'board-foot' : 'ask',
    lengths: /\bmm\b/.test(long)
      ? 'mm'
      : /\bm(?:etre|eter)?s?\b/.test(long)
        ? 'm'
        : /\bin(?:ch|ches)?\b/.test(long)
          ? 'in'
          : 'ft',
    sides: /\bmm\b/.test(heading('largest')) ? 'mm' : 'in',
    ignored
  }
}
