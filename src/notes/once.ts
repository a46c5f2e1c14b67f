/** What many notes ask for alike, worked out once a build. */
import type { Reference } from '../data/reference'

const kept = new WeakMap<Reference, Map<string, unknown>>()

/** The result of `make` for this kind and these arguments; made on the first call. The shop sheet is the sample's throughout. */
export function once<T>(reference: Reference, kind: string, asked: unknown, make: () => T): T {
  const known = kept.get(reference) ?? new Map<string, unknown>()
  kept.set(reference, known)
  const key = `${kind} ${JSON.stringify(asked)}`
  if (!known.has(key)) known.set(key, make())
  return known.get(key) as T
}
