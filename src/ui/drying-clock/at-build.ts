/** The example that the page begins with, and what goes with it to the browser: as little as draws and opens it. */
import { readClock } from '../../choice/clock/door'
import { clockReport } from '../../choice/clock/report'
import type { ClockAsked, ClockReport } from '../../choice/clock/types'
import type { Reference } from '../../data/reference'
import { INCH } from '../../data/units'
import { libraryOf, rounded } from '../bench/at-build'
import type { ClockGiven } from './ClockBench'

/** Eight by eight of green Douglas-fir into a heated house. */
export const EXAMPLE: ClockAsked = {
  wood: 'douglas-fir',
  breadth: 8 * INCH,
  depth: 8 * INCH,
  place: 'portland-or',
  exposure: 'heated',
  seasoning: 'green',
  felledMonth: 1,
  yardWeeks: 52,
  kilnWeeks: 7,
  shopWeeks: 8,
  heating: 'first-winter'
}

/** @throws Error where the door refuses, which at build is a mistake of ours. */
export function reportAsked(change: Partial<ClockAsked>, reference: Reference): ClockReport {
  const read = readClock({ ...EXAMPLE, ...change }, reference)
  if (!read.ok) throw new Error(`drying clock: ${read.problems.map((p) => p.field).join(', ')}`)
  return clockReport(read.job, reference)
}

export function givenOf(reference: Reference): ClockGiven {
  const report = rounded(reportAsked({}, reference))
  const woods = [...reference.woods.values()]
    .map(({ id, name, said }) => ({ id, name, said }))
    .sort((a, b) => a.name.localeCompare(b.name))
  const place = reference.places.get(EXAMPLE.place)
  return {
    report,
    woods,
    places: place ? [{ id: place.id, name: place.name }] : [],
    library: libraryOf(report, reference)
  }
}
