/** Where a number comes from, gathered for the page: formula, what went into it, sources, and how far to trust it. */
import type { Origin, Quantity, SourceRef } from '../../data/quantity'
import type { Mark } from '../../data/schema'
import type { FormulaEntry, Library } from './library'

export const MARK_WORDS: Readonly<Record<Mark, string>> = {
  seen: 'read in the source',
  memory: 'recalled, not yet checked',
  mixed: 'partly read in the source, partly recalled and not yet checked',
  practice: 'common practice in the trade',
  derived: 'worked out here',
  placeholder: 'placeholder: invented price'
}

export interface Cited {
  readonly key: string
  /** "Title, edition, year" */
  readonly title: string
  readonly where: string | null
}

export interface Told {
  readonly formula: FormulaEntry | null
  readonly inputs: readonly (readonly [string, Quantity])[]
  readonly sources: readonly Cited[]
  readonly mark: string
}

export function cite(ref: SourceRef, library: Library): Cited {
  const entry = Object.hasOwn(library.sources, ref.key) ? library.sources[ref.key] : undefined
  const parts = entry === undefined ? [ref.key] : [entry.title, entry.by, entry.edition, entry.year]
  return {
    key: ref.key,
    title: parts.filter((part) => part !== undefined && part !== '').join(', '),
    where: ref.where ?? null
  }
}

/** Each source once, in the order of first mention; the formula's own source comes first. */
export function tell(origin: Origin, library: Library): Told {
  const id = origin.formula
  const formula = id !== undefined && Object.hasOwn(library.formulas, id) ? (library.formulas[id] ?? null) : null
  const refs: SourceRef[] = []
  if (formula !== null) {
    refs.push(formula.where === undefined ? { key: formula.source } : { key: formula.source, where: formula.where })
  }
  refs.push(...origin.sources)
  const seen = new Map(refs.map((ref) => [`${ref.key}|${ref.where ?? ''}`, ref]))
  return {
    formula,
    inputs: Object.entries(origin.inputs ?? {}),
    sources: [...seen.values()].map((ref) => cite(ref, library)),
    mark: MARK_WORDS[origin.mark]
  }
}
