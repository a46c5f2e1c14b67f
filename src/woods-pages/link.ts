/** The woods of a comparison in the fragment of an address: `#w=douglas-fir,white-oak`. */
export const LEAST = 2
export const MOST = 4

export const linkOf = (ids: readonly string[]): string => `w=${ids.join(',')}`

export interface LinkRead {
  /** Woods that are known, each once, at most `MOST`. */
  readonly woods: readonly string[]
  /** What names no wood, as written but cut short. */
  readonly unknown: readonly string[]
  /** More were named than fit. */
  readonly tooMany: boolean
}

/** Read a fragment without its `#`. Never throws; what it cannot take is named. null where it asks for no woods at all. */
export function readLink(text: string, known: ReadonlySet<string>): LinkRead | null {
  const found = /^w=(.*)$/s.exec(text.slice(0, 1000))
  if (!found) return null
  const ids = (found[1] ?? '')
    .split(',')
    .map((id) => id.trim().toLowerCase())
    .filter(Boolean)
  const woods = [...new Set(ids.filter((id) => known.has(id)))]
  const unknown = [...new Set(ids.filter((id) => !known.has(id)))].map((id) => id.slice(0, 40)).slice(0, MOST)
  return { woods: woods.slice(0, MOST), unknown, tooMany: woods.length > MOST }
}
