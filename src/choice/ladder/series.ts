/** The sections of a series as millimetres, in the order in which they are tried. */
import type { SeriesContent } from '../../data/schema'
import type { ShopSheetContent } from '../../data/shop-schema'
import { INCH } from '../../data/units'
import { inTryingOrder } from '../../frame/sizing'
import type { Section } from '../../frame/values'
import { seriesOf } from '../frame-for'

/** Every side with every side that is not shorter and not too deep for it. */
function steps({ leastMm, mostMm, stepMm, deepest }: Extract<SeriesContent, { of: 'steps' }>): Section[] {
  const sides = Array.from({ length: Math.floor((mostMm - leastMm) / stepMm) + 1 }, (_, i) => leastMm + i * stepMm)
  return sides.flatMap((b) => sides.filter((d) => d >= b && d <= deepest * b).map((d): Section => [b, d]))
}

/** The series as actual sizes, mm, lightest first: the shop's own less what planing takes, or plain steps. */
export function sectionsOf(series: SeriesContent, sheet: ShopSheetContent): Section[] {
  if (series.of === 'steps') return inTryingOrder(steps(series))
  const less = series.lessIn * INCH
  return inTryingOrder(seriesOf({ ...sheet, surface: 'full-sawn' }).map(([b, d]): Section => [b - less, d - less]))
}
