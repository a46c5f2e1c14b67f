/** What is typed on the bench, read kindly. Positions may lie left of or above the middle, so a minus is read too. */

import { fieldText } from '../format/field'
import { plain } from '../format/number'
import { readNumber } from '../format/parse'
import type { System } from '../format/quantity'

export const lengthText = (mm: number, system: System): string =>
  mm < 0 ? `−${fieldText(-mm, 'diameter', system)}`.replace(/^−0$/, '0') : fieldText(mm, 'diameter', system)

/** mm, or null where it is no length. */
export function readLength(text: string, system: System): number | null {
  const sign = /^\s*[-−–]\s*/.exec(text)
  const read = readNumber(sign === null ? text : text.slice(sign[0].length), 'diameter', system)
  if (!read.ok) return null
  return sign === null || read.value === 0 ? read.value : -read.value
}

export const percentText = (share: number): string => plain(share * 100, 1)

/** A fraction, or null where it is no number. */
export function readPercent(text: string): number | null {
  const found = /^\s*([-−–]?)\s*(\d*[.,]?\d+)\s*%?\s*$/.exec(text)
  if (found === null) return null
  const value = Number((found[2] ?? '').replace(',', '.')) / 100
  return found[1] === '' || value === 0 ? value : -value
}
