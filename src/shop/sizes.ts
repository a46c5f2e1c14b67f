/** The series of sections: as a list that is typed, as ticks in a grid, and as a few series to begin with. */
import { SHEET } from '../data/shop-schema'
import { readSides } from './amount'

export type SizeUnit = 'in' | 'mm'
export type Size = readonly [breadth: number, depth: number]

/** Sides that the grid offers; sizes between them are typed. */
export const SIDES: Readonly<Record<SizeUnit, readonly number[]>> = {
  in: [4, 6, 8, 10, 12, 14, 16, 18, 20, 24],
  mm: [100, 150, 200, 250, 300, 350, 400, 450, 500]
}

export const sideRange = (unit: SizeUnit): readonly [number, number] => (unit === 'in' ? SHEET.sideIn : SHEET.sideMm)

const keyOf = ([a, b]: Size): string => `${a}x${b}`

/** Sizes as one would type them, the smaller first. */
export function sizesText(sizes: readonly Size[]): string {
  const order = [...sizes].sort((p, q) => p[0] - q[0] || p[1] - q[1])
  return order.map(keyOf).join(', ')
}

export interface SizesRead {
  readonly sizes: readonly Size[]
  /** Pieces that are no size, as typed. */
  readonly unread: readonly string[]
  /** Sizes with a side outside the range. */
  readonly outside: readonly string[]
}

/** Sizes from a typed list: parted by commas, semicolons or line ends; each size once. */
export function readSizes(text: string, unit: SizeUnit): SizesRead {
  const [least, most] = sideRange(unit)
  const sizes = new Map<string, Size>()
  const unread: string[] = []
  const outside: string[] = []
  const joined = text
    .slice(0, 4000)
    .replace(/\s*(?:[x×*]|\bby\b)\s*/gi, 'x')
    .replace(/(\d)\s+(?=\d[\d.]*x)/g, '$1,')
  for (const piece of joined.split(/[,;\n]+/).map((one) => one.trim())) {
    if (piece === '') continue
    const size = readSides(piece)
    if (size === null) unread.push(piece.slice(0, 30))
    else if (size[0] < least || size[1] > most) outside.push(piece.slice(0, 30))
    else sizes.set(keyOf(size), size)
  }
  return { sizes: [...sizes.values()], unread, outside }
}

/** The typed list with one size put in or taken out; what could not be read stays in it. */
export function toggleSize(text: string, unit: SizeUnit, size: Size, on: boolean): string {
  const { sizes, unread, outside } = readSizes(text, unit)
  const others = sizes.filter((one) => keyOf(one) !== keyOf(size))
  return [sizesText(on ? [...others, size] : others), ...outside, ...unread].filter(Boolean).join(', ')
}

/** Depths from the breadth up to `over` steps above it. */
const series = (breadths: readonly number[], step: number, over: number, most: number): Size[] =>
  breadths.flatMap((b) =>
    Array.from({ length: over + 1 }, (_, i): Size => [b, b + i * step]).filter(([, depth]) => depth <= most)
  )

/** Series to begin with; a shop ticks its own from there. */
export const SERIES = {
  'full-sawn': { unit: 'in', surface: 'full-sawn', sizes: series([6, 8, 10, 12], 2, 3, 18) },
  planed: { unit: 'in', surface: 'planed', sizes: series([6, 8, 10, 12], 2, 3, 18) },
  mm: { unit: 'mm', surface: 'full-sawn', sizes: series([150, 200, 250, 300], 50, 3, 450) }
} as const satisfies Record<string, { unit: SizeUnit; surface: 'full-sawn' | 'planed'; sizes: readonly Size[] }>
export type SeriesId = keyof typeof SERIES
