/** Where a sheet's figures come from, in one line of small print: each source once, and what is recalled. */
import type { Origin } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import { recalled } from '../../handouts/species-chart'

/** Not documents: said in other words. */
const PLAIN: Readonly<Record<string, string>> = {
  'common-practice': 'trade practice',
  'from-memory': 'figures recalled without a document',
  derived: 'worked out here'
}

export function citedIn(origins: readonly Origin[], { sources, formulas }: Reference): string {
  const keys = new Set(
    origins.flatMap((o) => [
      ...o.sources.map((s) => s.key),
      ...(o.formula && formulas[o.formula] ? [formulas[o.formula]?.source ?? ''] : [])
    ])
  )
  const titles = [...keys].map((key) => {
    const entry = sources[key]
    if (PLAIN[key] || entry === undefined) return PLAIN[key] ?? key
    return [entry.title.split(':')[0], entry.year].filter(Boolean).join(' ')
  })
  const some = origins.some(recalled) ? ' Some of these figures are recalled and not yet checked in the source.' : ''
  return `Figures from ${[...new Set(titles)].join('; ')}.${some}`
}
