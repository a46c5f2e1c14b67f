/** Jobs that several tests look at. */
import type { Answers } from '../../src/choice/types'
import { FOOT, PSF } from '../../src/data/units'

/** A great room's roof on king posts, a year away. */
export const hall: Answers = {
  project: 'great-room',
  role: 'structure',
  exposure: 'heated',
  place: 'madison-wi',
  carries: 'truss',
  span: 24 * FOOT,
  spacing: 12 * FOOT,
  count: 4,
  slope: 8 / 12,
  snow: 40 * PSF,
  postHeight: 10 * FOOT,
  stands: 'w52',
  finish: 'clear'
}
