/** Where a text says a word that the glossary explains. Apart from the glossary's schema, which the browser need not load. */
import type { Glossary } from './glossary'

export interface Entry {
  readonly id: string
  readonly term: string
  readonly means: string
}
export type Piece = string | (Entry & { readonly said: string })

interface Forms {
  readonly pattern: RegExp
  /** Id of the entry by form, in lower case. */
  readonly ids: ReadonlyMap<string, string>
}
const made = new WeakMap<Glossary, Forms>()

function formsOf(glossary: Glossary): Forms {
  const known = made.get(glossary)
  if (known !== undefined) return known
  const ids = new Map(
    Object.entries(glossary).flatMap(([id, { term, variants = [] }]) =>
      [term, ...variants].map((form) => [form.toLowerCase(), id] as const)
    )
  )
  // The longest form first, so that "boxed heart" is not taken for "heart".
  const escaped = [...ids.keys()]
    .sort((a, b) => b.length - a.length)
    .map((form) => form.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/ /g, '\\s+'))
  const pattern = new RegExp(`(?<![\\p{L}-])(?:${escaped.join('|')})(?![\\p{L}-])`, 'giu')
  const forms = { pattern, ids }
  made.set(glossary, forms)
  return forms
}

/** Whether one of the phrases stands in the text round the word at `from`. */
function within(text: string, phrases: readonly string[], from: number, to: number): boolean {
  return phrases.some((phrase) => {
    const at = text.indexOf(phrase.toLowerCase(), Math.max(0, to - phrase.length))
    return at !== -1 && at <= from
  })
}

/** Cuts a text at the words that the glossary explains; each is explained once, so `told` gathers their ids. */
export function explained(words: string, glossary: Glossary, told: Set<string>): readonly Piece[] {
  const { pattern, ids } = formsOf(glossary)
  const lower = words.toLowerCase()
  const pieces: Piece[] = []
  let at = 0
  for (const m of words.matchAll(pattern)) {
    const id = ids.get(m[0].toLowerCase().replace(/\s+/g, ' '))
    const entry = id === undefined ? undefined : glossary[id]
    if (id === undefined || entry === undefined || told.has(id)) continue
    if (within(lower, entry.not ?? [], m.index, m.index + m[0].length)) continue
    told.add(id)
    if (m.index > at) pieces.push(words.slice(at, m.index))
    pieces.push({ id, term: entry.term, means: entry.means, said: m[0] })
    at = m.index + m[0].length
  }
  if (at < words.length || pieces.length === 0) pieces.push(words.slice(at))
  return pieces
}
