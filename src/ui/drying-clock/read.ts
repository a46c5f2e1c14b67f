/** What is typed on the clock, and what is said of it when it cannot be taken. */
import { CLOCK_RANGES } from '../../choice/clock/door'
import type { Trouble } from '../bench/store'
import { fieldText } from '../format/field'
import { NBSP, plain } from '../format/number'
import { readNumber } from '../format/parse'
import type { System } from '../format/quantity'

export type NumberField = keyof typeof CLOCK_RANGES

const isSize = (field: NumberField): boolean => field === 'breadth' || field === 'depth'

export const unitOf = (field: NumberField, system: System): string =>
  isSize(field) ? (system === 'us' ? 'in' : 'mm') : 'weeks'

/** A number as it would be typed. */
export const textOf = (field: NumberField, value: number, system: System): string =>
  isSize(field) ? fieldText(value, 'diameter', system) : plain(value, 1).replaceAll(',', '')

const WEEKS = /^(\d{1,4}(?:[.,]\d+)?)\s*(weeks?|wks?|w|months?|mo|years?|yrs?|y)?\.?$/
const PER: Readonly<Record<string, number>> = { w: 1, m: 365.25 / 12 / 7, y: 365.25 / 7 }

/** mm, or weeks; null where it is neither. A unit that is spelled out beats the field's. */
export function readField(field: NumberField, text: string, system: System): number | null {
  if (isSize(field)) {
    const read = readNumber(text, 'diameter', system)
    return read.ok ? read.value : null
  }
  const found = WEEKS.exec(text.trim().toLowerCase())
  return found === null ? null : Number(found[1]?.replace(',', '.')) * (PER[found[2]?.[0] ?? 'w'] ?? 1)
}

/** "from 2 in to 24 in". Ends in whole millimetres lie within the range, so that what is said is taken when typed. */
export function rangeWords(field: NumberField, system: System): string {
  const [low, high] = CLOCK_RANGES[field]
  if (!isSize(field)) return `from ${low} to ${high}${NBSP}weeks`
  return system === 'us'
    ? `from ${fieldText(low, 'diameter', 'us')} to ${fieldText(high, 'diameter', 'us')}${NBSP}in`
    : `from ${Math.ceil(low)} to ${Math.floor(high)}${NBSP}mm`
}

export function troubleWords(field: NumberField, trouble: Trouble, system: System): string {
  const range = rangeWords(field, system)
  if (trouble === 'range') return `We cannot answer for that. Type a number ${range}.`
  const how = isSize(field)
    ? system === 'us'
      ? 'inches, such as 7 1/2'
      : 'millimetres, such as 190'
    : 'weeks, such as 26'
  return `We could not read that. Type ${how}, ${range}.`
}
