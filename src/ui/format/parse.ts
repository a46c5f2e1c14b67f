/** What a person types into a number field, read kindly: "16", "16.5", 16'6", "16 ft 6 in", "4,88 m". */
import { MM_PER_FOOT, MM_PER_INCH } from './length'
import type { System } from './quantity'

export type NumberKind = 'span' | 'areaLoad' | 'diameter' | 'pitch' | 'count' | 'money'
export type Parsed = { readonly ok: true; readonly value: number } | { readonly ok: false }

const NO: Parsed = { ok: false }
const yes = (value: number): Parsed => (Number.isFinite(value) ? { ok: true, value } : NO)

/** One spelling for each sign that has several; the decimal comma becomes a point. */
function tidy(text: string): string {
  return text
    .slice(0, 60)
    .toLowerCase()
    .replace(/[\u00a0\u2009\u202f\s]+/g, ' ')
    .replace(/[’′`´]/g, "'")
    .replace(/[”″“]|''/g, '"')
    .replace(/[−–]/g, '-')
    .replace(/²/g, '2')
    .replace(/(\d),(\d)/g, '$1.$2')
    .trim()
}

/** 16 | 16.5 | .5 | 1/2 | 16 1/2 | 16-1/2 */
const NUMBER = String.raw`(\d+[ -]\d+\/\d+|\d+\/\d+|\d*\.\d+|\d+\.?)`

function numberOf(text: string): number {
  const mixed = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text)
  if (mixed === null) return Number(text)
  return Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3])
}

const FEET = `(?:'|ft\\.?|feet|foot)`
const INCH = `(?:"|in\\.?|inch|inches)`
const FEET_INCHES = new RegExp(`^${NUMBER} ?${FEET}(?:[ -]?(?:and )?${NUMBER} ?${INCH}?)?$`)
const WITH_UNIT = new RegExp(`^${NUMBER} ?([a-z"'°/][a-z"'°0-9/ ]*\\.?)?$`)

const LENGTH: Readonly<Record<string, number>> = {
  '"': MM_PER_INCH,
  in: MM_PER_INCH,
  'in.': MM_PER_INCH,
  inch: MM_PER_INCH,
  inches: MM_PER_INCH,
  m: 1000,
  metre: 1000,
  metres: 1000,
  meter: 1000,
  meters: 1000,
  cm: 10,
  mm: 1
}
const PSF = 47.880_258_98
const LOAD: Readonly<Record<string, number>> = {
  psf: PSF,
  'lb/ft2': PSF,
  'lbs/ft2': PSF,
  'lb/sq ft': PSF,
  pounds: PSF,
  lb: PSF,
  lbs: PSF,
  'kn/m2': 1000,
  kn: 1000,
  kpa: 1000,
  'kg/m2': 9.806_65
}

function withUnit(text: string, units: Readonly<Record<string, number>>, bare: number): Parsed {
  const found = WITH_UNIT.exec(text)
  if (found === null) return NO
  const factor =
    found[2] === undefined ? bare : Object.hasOwn(units, found[2].trim()) ? units[found[2].trim()] : undefined
  return factor === undefined ? NO : yes(numberOf(found[1] ?? '') * factor)
}

function length(text: string, bare: number): Parsed {
  const feet = FEET_INCHES.exec(text)
  if (feet === null) return withUnit(text, LENGTH, bare)
  return yes(numberOf(feet[1] ?? '') * MM_PER_FOOT + (feet[2] === undefined ? 0 : numberOf(feet[2]) * MM_PER_INCH))
}

/** Roof pitch, kept as rise over run: "8 in 12", "8/12", "8:12", "34°"; a bare number is the rise in 12, or degrees in metric. */
function pitch(text: string, system: System): Parsed {
  const rise = /^(\d*\.?\d+) ?(?:\/|:|in) ?12$/.exec(text)
  const degrees = /^(\d*\.?\d+) ?(?:°|deg|degrees)$/.exec(text)
  const bare = /^(\d*\.?\d+)$/.exec(text)
  if (rise !== null) return yes(Number(rise[1]) / 12)
  if (degrees !== null) return yes(ratioOf(Number(degrees[1])))
  if (bare === null) return NO
  return yes(system === 'us' ? Number(bare[1]) / 12 : ratioOf(Number(bare[1])))
}

/** Past a right angle there is no roof; NaN is then refused as no number. */
const ratioOf = (degrees: number): number => (degrees < 90 ? Math.tan((degrees * Math.PI) / 180) : Number.NaN)
export const degreesOf = (ratio: number): number => (Math.atan(ratio) * 180) / Math.PI

/** A sum: "$45,000", "45 000", "45k", "38.500,50". A point or comma before three digits parts thousands. */
function money(text: string): Parsed {
  const found = /^[$€£]?\s*(\d{1,3}(?:[.,' ]\d{3})+|\d+)(?:[.,](\d{1,2}))?\s*(k)?\s*[$€£]?$/.exec(
    text.trim().toLowerCase()
  )
  if (found === null) return NO
  const [, whole = '', cents = '', thousands] = found
  return yes((Number(whole.replace(/\D/g, '')) + Number(`0.${cents || 0}`)) * (thousands ? 1000 : 1))
}

/** The typed text as a number in SI, or not. Never throws; a unit that is spelled out beats the chosen system. */
export function readNumber(text: string, kind: NumberKind, system: System): Parsed {
  const clean = tidy(text)
  switch (kind) {
    case 'span':
      return length(clean, system === 'us' ? MM_PER_FOOT : 1000)
    case 'diameter':
      return length(clean, system === 'us' ? MM_PER_INCH : 1)
    case 'areaLoad':
      return withUnit(clean, LOAD, system === 'us' ? PSF : 1000)
    case 'pitch':
      return pitch(clean, system)
    case 'count':
      return /^\d+$/.test(clean) ? yes(Number(clean)) : NO
    case 'money':
      return money(text.slice(0, 60).replace(/[\u00a0\u2009\u202f]/g, ' '))
  }
}
