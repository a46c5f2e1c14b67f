/** The glossary: words of the trade, what they mean, and where a text says one of them. */
import * as v from 'valibot'

const text = v.pipe(v.string(), v.trim(), v.nonEmpty())
const id = v.pipe(v.string(), v.regex(/^[a-z][a-z-]*$/, 'lower-case id expected'))

export const glossarySchema = v.record(
  id,
  v.strictObject({
    /** As it stands at the head of its entry. */
    term: text,
    /** Other forms that a text may use. */
    variants: v.optional(v.array(text)),
    means: text,
    see: v.optional(v.array(id)),
    /** Page of this site that shows it. */
    page: v.optional(v.pipe(v.string(), v.regex(/^\/[a-z/-]*\/$/)))
  })
)
export type Glossary = v.InferOutput<typeof glossarySchema>
export interface Entry {
  readonly id: string
  readonly term: string
  readonly means: string
}

/** @throws Error where an entry refers to one that is not there, or two share a word. */
export function readGlossary(input: unknown): Glossary {
  const glossary = v.parse(glossarySchema, input)
  const words = new Map<string, string>()
  for (const [key, { term, variants = [], see = [] }] of Object.entries(glossary)) {
    for (const other of see) {
      if (!Object.hasOwn(glossary, other)) throw new Error(`glossary: ${key} refers to "${other}"`)
    }
    for (const word of [term, ...variants].map((w) => w.toLowerCase())) {
      if (words.has(word)) throw new Error(`glossary: "${word}" stands at ${words.get(word)} and ${key}`)
      words.set(word, key)
    }
  }
  return glossary
}

export type Piece = string | (Entry & { readonly said: string })

/** Cuts a text at the words that the glossary explains; each is explained once, so `told` gathers their ids. */
export function explained(words: string, glossary: Glossary, told: Set<string>): readonly Piece[] {
  const forms = Object.entries(glossary)
    .filter(([key]) => !told.has(key))
    .flatMap(([key, { term, variants = [] }]) => [term, ...variants].map((w) => [w.toLowerCase(), key] as const))
    // The longest form first, so that "boxed heart" is not taken for "heart".
    .sort(([a], [b]) => b.length - a.length)
  if (forms.length === 0) return [words]
  const escaped = forms.map(([w]) => w.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
  const pattern = new RegExp(`(?<![\\p{L}-])(?:${escaped.join('|')})(?![\\p{L}-])`, 'giu')
  const pieces: Piece[] = []
  let at = 0
  for (const m of words.matchAll(pattern)) {
    const key = forms.find(([w]) => w === m[0].toLowerCase())?.[1]
    const entry = key === undefined ? undefined : glossary[key]
    if (key === undefined || entry === undefined || told.has(key)) continue
    told.add(key)
    if (m.index > at) pieces.push(words.slice(at, m.index))
    pieces.push({ id: key, term: entry.term, means: entry.means, said: m[0] })
    at = m.index + m[0].length
  }
  if (at < words.length) pieces.push(words.slice(at))
  return pieces
}
