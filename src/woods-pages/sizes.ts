/** The sizes that every wood is told at; no data with it, so that a page in the browser may have it too. */
import { quantity } from '../choice/say'
import type { Quantity } from '../data/quantity'
import { FOOT, INCH } from '../data/units'

export const SIDE = 8 * INCH
/** Of a beam between two posts, and of the stick that is weighed. */
export const BEAM = 12 * FOOT
export const STICK = 16 * FOOT
export const CHOSEN = { mark: 'practice', sources: [{ key: 'common-practice' }] } as const
/** The same to be set in a sentence. */
export const SIZES: Readonly<Record<'side' | 'square' | 'stick', Quantity>> = {
  side: quantity('gap', SIDE, CHOSEN),
  square: quantity('section', [SIDE, SIDE], CHOSEN),
  stick: quantity('span', STICK, CHOSEN)
}
