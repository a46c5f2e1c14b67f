/** How long a coat lasts, by the finish, the wood and where it stands. */
import type { Wood } from '../../data/reference'
import type { FinishContent } from '../../data/schema'
import { limit } from '../facts'
import type { Context } from '../rule'

export interface Years {
  readonly low: number
  readonly high: number
}

/** Years between coats; null where nothing is renewed. Posts in the ground are taken as in the weather. Source: derived, coat-years */
export function coatYears(
  wood: Wood,
  finish: FinishContent,
  { facts, reference, sheet }: Pick<Context, 'facts' | 'reference' | 'sheet'>
): Years | null {
  if (finish.weatherYears === null) return null
  if (facts.exposure === 'heated' || facts.exposure === 'unheated')
    return { low: limit(reference, 'coat-indoors-low'), high: limit(reference, 'coat-indoors-high') }
  let [low = 1, high = low] = finish.weatherYears
  if (finish.build === 'film') {
    const middle = (low + high) / 2
    if (wood.paint?.group === 1) low = middle
    if (wood.paint?.group === 3) high = middle
  }
  const times =
    (facts.exposure === 'roofed' ? limit(reference, 'coat-roofed-times') : 1) *
    (finish.optics.stainKX && sheet.surface === 'planed' ? limit(reference, 'coat-smooth-times') : 1)
  return { low: low * times, high: high * times }
}
