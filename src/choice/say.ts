/** Short ways to make quantities and sentences that keep their origin. */
import type { Origin, Quantity, QuantityKind, Sentence, SourceRef } from '../data/quantity'
import type { Reference, Sourced } from '../data/reference'
import { originOf } from '../data/reference'
import type { Mark } from '../data/schema'

export const PRACTICE: SourceRef = { key: 'common-practice' }
export const ANSWERED: Origin = { mark: 'seen', sources: [{ key: 'answers' }] }

export function quantity(
  kind: QuantityKind,
  value: number | readonly [number, number],
  origin: Origin,
  spread: { readonly low?: number; readonly high?: number } = {}
): Quantity {
  return { kind, value, origin, ...spread }
}

/** Origin of a number computed by a formula of `content/formulas.json` from other quantities. */
export function computed(
  reference: Reference,
  formula: string,
  inputs: Readonly<Record<string, Quantity>> = {}
): Origin {
  const entry = reference.formulas[formula]
  if (!entry) throw new Error(`no formula "${formula}" in content/formulas.json`)
  const own = originOf(entry as Sourced)
  // One level of inputs: each names its own formula and source, and a brief stays a few hundred kilobytes, not megabytes.
  const flat = Object.fromEntries(
    Object.entries(inputs).map(([name, q]) => [name, { ...q, origin: withoutInputs(q.origin) }])
  )
  return { mark: own.mark, sources: own.sources, formula, ...(Object.keys(flat).length > 0 ? { inputs: flat } : {}) }
}

export function limitQuantity(reference: Reference, id: string, kind: QuantityKind, factor = 1): Quantity {
  const entry = reference.limits.get(id)
  if (!entry) throw new Error(`no limit "${id}" in content/limits.json`)
  return { kind, value: entry.value * factor, origin: entry.origin }
}

export function sentence(
  text: string,
  values?: Readonly<Record<string, Quantity>>,
  sources?: readonly SourceRef[],
  mark?: Mark
): Sentence {
  return { text, ...(values ? { values } : {}), ...(sources ? { sources } : {}), ...(mark ? { mark } : {}) }
}

/** "a, b and c" */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? ''
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** A figure that keeps its source and formula but not what went into it: for long lists. */
export const bare = (q: Quantity): Quantity => ({ ...q, origin: withoutInputs(q.origin) })

/** A figure without its range: for bars, parts of a bill and whatever else is said to be about so much. */
export const middle = ({ low: _low, high: _high, ...rest }: Quantity): Quantity => rest

/** A sentence whose figures are all bare. */
export function lean(s: Sentence): Sentence {
  if (!s.values) return s
  const values = Object.entries(s.values).map(([name, q]) => [name, bare(q)])
  return { ...s, values: Object.fromEntries(values) }
}

function withoutInputs({ inputs: _inputs, ...rest }: Origin): Origin {
  return rest
}
