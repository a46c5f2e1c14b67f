/** The example that the page begins with, and what goes with it to the browser: as little as draws and opens it. */
import { readClock } from '../../choice/clock-door'
import { clockReport } from '../../choice/clock-report'
import type { ClockAsked, ClockReport } from '../../choice/clock-types'
import type { Origin, Quantity } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import { INCH } from '../../data/units'
import type { Library } from '../say/library'
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

/** A hundredth of a percent is finer than the drawing; more digits would only be sent. */
const rounded = <T>(value: T): T =>
  JSON.parse(JSON.stringify(value, (_, v) => (typeof v === 'number' ? Number(v.toFixed(4)) : v))) as T

function originsIn(report: ClockReport): Origin[] {
  const lines = report.lines.flatMap((l) => [l.after, l.mean, l.shell, l.core, l.toCome])
  const told = report.says.flatMap((s) => Object.values(s.values ?? {}))
  const withInputs = (q: Quantity): Origin[] => [q.origin, ...Object.values(q.origin.inputs ?? {}).flatMap(withInputs)]
  return [...lines, ...told].flatMap(withInputs)
}

/** The formulas and sources that the report's figures open to. */
function libraryOf(report: ClockReport, { formulas, sources }: Reference): Library {
  const origins = originsIn(report)
  const named = Object.fromEntries(
    origins.flatMap(({ formula }) => {
      const found = formula === undefined ? undefined : formulas[formula]
      return formula === undefined || found === undefined ? [] : [[formula, found]]
    })
  )
  const keys = new Set([
    ...Object.values(named).map((f) => f.source),
    ...origins.flatMap((o) => o.sources.map((s) => s.key))
  ])
  const cited = Object.fromEntries(
    Object.entries(sources).flatMap(([key, { title, by, edition, year }]) =>
      keys.has(key) ? [[key, { title, by, edition, year }]] : []
    )
  )
  return { formulas: named, sources: cited }
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
