/** The clock as a store. */
import type { ClockAsked, ClockReport } from '../../choice/clock/types'
import { type BenchStore, type BenchView, makeBench, type Outside } from '../bench/store'
import { linkOf, readLink } from './link'

export type Field = keyof ClockAsked
export type View = BenchView<ClockAsked, ClockReport>
export type ClockStore = BenchStore<ClockAsked, ClockReport>

/** Whether the way of drying and living uses the field at all. */
export function uses(field: Field, { seasoning, exposure }: ClockAsked): boolean {
  if (field === 'yardWeeks') return seasoning === 'air'
  if (field === 'kilnWeeks') return seasoning === 'kiln'
  return field === 'heating' ? exposure === 'heated' : true
}

export const makeClock = (first: ClockReport, given: Pick<View, 'library' | 'places'>, outside: Outside): ClockStore =>
  makeBench<ClockAsked, ClockReport>(first, given, outside, {
    report: (engine, asked) => engine.clock(asked),
    uses,
    linkOf,
    readLink
  })
