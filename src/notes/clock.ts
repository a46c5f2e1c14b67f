/** Drying clocks that notes speak of, each run once a build. */
import { readClock } from '../choice/clock/door'
import { clockReport } from '../choice/clock/report'
import { type ClockAsked, type ClockReport, HEATINGS, MOMENTS, SEASONINGS } from '../choice/clock/types'
import { computed, quantity } from '../choice/say'
import type { Quantity } from '../data/quantity'
import type { Args } from './args'
import { once } from './once'

/** @throws Error where the door refuses. */
export function clockOfArgs(args: Args): ClockReport {
  const [breadth, depth] = args.section('size', '8x8')
  const asked: ClockAsked = {
    wood: args.wood().id,
    breadth,
    depth,
    place: args.placeId(),
    exposure: args.exposure('lives', 'heated'),
    seasoning: args.word('dry', SEASONINGS, 'green'),
    felledMonth: args.number('felled', 1),
    yardWeeks: args.number('yard', 52),
    kilnWeeks: args.number('kiln', 7),
    shopWeeks: args.number('shop', 8),
    heating: args.word('heating', HEATINGS, 'first-winter')
  }
  const { reference } = args
  return once(reference, 'clock', asked, () => {
    const read = readClock(asked, reference)
    if (!read.ok) throw new Error(`a note's drying clock is refused: ${read.problems.map((p) => p.field).join(', ')}`)
    return clockReport(read.job, reference)
  })
}

/** `{{clock toCome moment=raised wood=..}}`, or `{{clock half wood=..}}`: weeks until half of what is to come is made. */
export function clockFigure(args: Args): Quantity {
  const what = args.word('of', ['mean', 'shell', 'core', 'toCome', 'after', 'half', 'most'])
  const moment = what === 'half' || what === 'most' ? null : args.word('moment', MOMENTS)
  const { curve, lines } = clockOfArgs(args)
  if (what === 'half' || what === 'most') {
    const days = curve[what]
    if (days === null) throw new Error('that takes longer than the clock shows')
    return quantity('weeks', days / 7, computed(args.reference, 'shows'))
  }
  const line = lines.find((l) => l.id === moment)
  if (!line) throw new Error(`the clock has no moment "${moment}"`)
  return line[what]
}
