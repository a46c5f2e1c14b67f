/** A number question's field: what stands in it, what its unit is called, and what is said when it does not fit. */
import { feetAndInches, inchesIn, MM_PER_FOOT, MM_PER_INCH } from './length'
import { NBSP, plain } from './number'
import { degreesOf, type NumberKind, readNumber } from './parse'
import type { System } from './quantity'

const PSF = 47.880_258_98

/** The value as it would be typed, without its unit where the unit stands beside the field. */
export function fieldText(value: number, kind: NumberKind, system: System): string {
  if (kind === 'count' || kind === 'money') return String(value)
  if (kind === 'span' && system === 'us') {
    const inches = Math.round(value / MM_PER_INCH)
    return inches % 12 === 0 ? String(inches / 12) : feetAndInches(value).replaceAll(NBSP, ' ')
  }
  const [by, decimals] = SCALE[kind][system]
  if (kind === 'diameter' && system === 'us') return inchesIn(value / MM_PER_INCH).replaceAll(NBSP, ' ')
  const shown = kind === 'pitch' && system === 'si' ? degreesOf(value) : value / by
  return String(Number(shown.toFixed(decimals)))
}

const SCALE: Record<Exclude<NumberKind, 'count' | 'money'>, Record<System, readonly [number, number]>> = {
  span: { us: [MM_PER_FOOT, 2], si: [1000, 2] },
  diameter: { us: [MM_PER_INCH, 2], si: [1, 0] },
  areaLoad: { us: [PSF, 0], si: [1000, 2] },
  pitch: { us: [1 / 12, 1], si: [1, 0] }
}

export function fieldUnit(kind: NumberKind, system: System): string {
  const units: Record<NumberKind, Record<System, string>> = {
    span: { us: 'ft', si: 'm' },
    diameter: { us: 'in', si: 'mm' },
    areaLoad: { us: 'pounds per square foot', si: 'kN/m²' },
    pitch: { us: 'in 12', si: 'degrees' },
    count: { us: '', si: '' },
    money: { us: 'dollars', si: 'dollars' }
  }
  return units[kind][system]
}

/** A value with its unit, for messages, quick picks and lists. */
export function fieldWords(value: number, kind: NumberKind, system: System): string {
  if (kind === 'count') return plain(value)
  if (kind === 'money') return `$${plain(value)}`
  if (kind === 'span' && system === 'us') return feetAndInches(value)
  if (kind === 'areaLoad' && system === 'us') return `${fieldText(value, kind, system)}${NBSP}psf`
  if (kind === 'pitch' && system === 'si') return `${fieldText(value, kind, system)}°`
  return `${fieldText(value, kind, system)}${NBSP}${fieldUnit(kind, system)}`
}

export interface Permitted {
  readonly min: number
  readonly max: number
}

export function permittedWords({ min, max }: Permitted, kind: NumberKind, system: System): string {
  return `from ${fieldWords(min, kind, system)} to ${fieldWords(max, kind, system)}`
}

const EXAMPLE: Record<NumberKind, Record<System, string>> = {
  span: { us: '16, 16.5 or 16 ft 6 in', si: '4.9 or 4,9' },
  diameter: { us: '12 or 11 1/2', si: '300' },
  areaLoad: { us: '35', si: '1.7' },
  pitch: { us: '8', si: '34' },
  count: { us: '6', si: '6' },
  money: { us: '45,000', si: '45,000' }
}

export type ParsedNumber = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly says: string }

/** Slack for rounding: what we show as the end of the range must itself be accepted when typed. */
const SLACK = 0.005

export function parseNumber(text: string, kind: NumberKind, system: System, permitted: Permitted): ParsedNumber {
  const words = permittedWords(permitted, kind, system)
  if (text.trim() === '') return { ok: false, says: `Type a number ${words}, or choose “Not sure”.` }
  const read = readNumber(text, kind, system)
  if (!read.ok) {
    const how = kind === 'count' ? 'a whole number' : `a number such as ${EXAMPLE[kind][system]}`
    return { ok: false, says: `We could not read that as a number. Type ${how}, ${words}.` }
  }
  const { min, max } = permitted
  const { value } = read
  if (value < min * (1 - SLACK))
    return { ok: false, says: `That is smaller than we can answer for. Type a number ${words}.` }
  if (value > max * (1 + SLACK))
    return { ok: false, says: `That is larger than we can answer for. Type a number ${words}.` }
  return { ok: true, value: Math.min(max, Math.max(min, value)) }
}
