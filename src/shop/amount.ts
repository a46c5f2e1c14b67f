/** Numbers as a framer types or a spreadsheet writes them: "$4.20", "4,20", "1,850.00", "30 %", "24 ft", "8x12". */

/** What a comma is in this text: the mark of decimals, of thousands, or whatever its place says. */
export type Comma = 'decimal' | 'thousands' | 'guess'

const MINUS = /[−–]/g
const SPACES = /[\s\u00a0\u2009\u202f]+/g

/** Digits with their marks, decimals behind a point. A single comma before three digits parts thousands, unless told. */
function decimals(text: string, comma: Comma): string | null {
  const marks = text.replace(/[^.,]/g, '')
  const last = marks.at(-1)
  // Both marks: the last one parts the decimals. One kind more than once: thousands.
  const both = marks.includes('.') && marks.includes(',')
  const many = marks.length > 1 && !both
  const thousands = both ? (last === '.' ? ',' : '.') : many ? last : undefined
  if (thousands !== undefined) {
    const whole = text.split(both && last ? last : '\u0000')[0] ?? ''
    const groups = whole.replace('-', '').split(thousands)
    if (groups.slice(1).some((g) => g.length !== 3) || (groups[0]?.length ?? 0) > 3 || !groups[0]) return null
    if (both && text.split(last ?? '').length > 2) return null
    return text.replaceAll(thousands, '').replace(',', '.')
  }
  const grouped = /^-?[1-9]\d{0,2}[.,]\d{3}$/.test(text)
  if (last === ',') return grouped && comma !== 'decimal' ? text.replace(',', '') : text.replace(',', '.')
  if (last === '.' && comma === 'decimal' && grouped) return text.replace('.', '')
  return text
}

/**
 * A plain number, or null. A currency sign, a percent sign and what a price is taken for ("/bf") are read over; a
 * minus is kept, so that the range refuses it by name.
 */
export function readAmount(input: string, comma: Comma = 'guess'): number | null {
  const text = input
    .slice(0, 40)
    .toLowerCase()
    .replace(MINUS, '-')
    .replace(SPACES, '')
    .replace(/^\((.+)\)$/, '-$1')
    .replace(/^(-?)(?:us|ca|cad|usd)?[$€£](-?)/, '$1$2')
    .replace(/(?:usd|cad|[$€£%])$/, '')
    .replace(/\/?(?:per)?(?:bf|bd\.?ft\.?|mbf)$/, '')
  if (!/^-?(?:\d[\d.,]*|[.,]\d+)$/.test(text)) return null
  const plain = decimals(text, comma)
  if (plain === null || !/^-?(?:\d+\.?\d*|\.\d+)$/.test(plain)) return null
  const value = Number(plain)
  return Number.isFinite(value) ? value : null
}

const PER_FOOT: Readonly<Record<string, number>> = {
  '': 1,
  "'": 1,
  ft: 1,
  foot: 1,
  feet: 1,
  in: 1 / 12,
  '"': 1 / 12,
  m: 1 / 0.3048,
  mm: 1 / 304.8,
  cm: 1 / 30.48
}

/** A length in feet from "24", "24 ft", "24'", "7.3 m", or null; `bare` is the unit of a number that names none. */
export function readFeet(input: string, bare: 'ft' | 'm' | 'mm' | 'in' = 'ft', comma: Comma = 'guess'): number | null {
  const found = /^(.*?[\d.,])\s*(ft|foot|feet|'|in|"|mm|cm|m)?\.?$/i.exec(
    input.trim().slice(0, 40).replace(/[’′]/g, "'")
  )
  if (!found) return null
  const number = readAmount(found[1] ?? '', comma)
  const factor = PER_FOOT[(found[2] ?? bare).toLowerCase()]
  return number === null || factor === undefined ? null : Number((number * factor).toFixed(3))
}

/** Two sides of a section, the smaller first, from "8x12", "8 × 12 in", "8 by 12", "200/300 mm"; as written, or null. */
export function readSides(input: string, comma: Comma = 'guess'): readonly [number, number] | null {
  const text = input
    .trim()
    .slice(0, 40)
    .toLowerCase()
    .replace(/["”″]|\b(?:in|inch|inches|mm)\b\.?/g, '')
  const parts = text.split(/\s*(?:x|×|\*|\/|\bby\b)\s*/)
  if (parts.length !== 2) return null
  const [a, b] = parts.map((part) => readAmount(part, comma))
  if (a == null || b == null) return null
  return a <= b ? [a, b] : [b, a]
}
