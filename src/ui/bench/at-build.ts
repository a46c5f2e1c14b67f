/** What goes with a bench's example to the browser: as little as draws and opens it. */
import type { Origin } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import type { Library } from '../say/library'

/** A hundredth of a percent is finer than any drawing; more digits would only be sent. */
export const rounded = <T>(value: T): T =>
  JSON.parse(JSON.stringify(value, (_, v) => (typeof v === 'number' ? Number(v.toFixed(4)) : v))) as T

const isOrigin = (value: object): value is Origin => 'mark' in value && 'sources' in value

function originsIn(value: unknown): Origin[] {
  if (typeof value !== 'object' || value === null) return []
  return [...(isOrigin(value) ? [value] : []), ...Object.values(value).flatMap(originsIn)]
}

/** The formulas and sources that a report's figures open to. */
export function libraryOf(report: unknown, { formulas, sources }: Reference): Library {
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
