/** Choices of the form, in words. */
import type { Charge } from '../../data/shop-schema'

export const GRADES = [
  ['Select Structural', 'Select Structural'],
  ['No.1', 'No. 1'],
  ['No.2', 'No. 2']
] as const

export const SURFACES = [
  ['full-sawn', 'Full-sawn: as large as they are called'],
  ['planed', 'Planed: sizes in inches come half an inch under']
] as const

export const CHARGE_WORDS: readonly (readonly [Charge['by'] | '', string])[] = [
  ['', 'Not offered'],
  ['board-foot', 'By the board foot'],
  ['timber-percent', 'A share of the timber'],
  ['frame-percent', 'A share of the frame'],
  ['sum', 'A sum for the job']
]
