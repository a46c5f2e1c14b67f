/** The glossary: words of the trade and what they mean. */
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
    /** Turns of phrase in which the word means something else and is left alone. */
    not: v.optional(v.array(text)),
    means: text,
    see: v.optional(v.array(id)),
    /** Page of this site that shows it. */
    page: v.optional(v.pipe(v.string(), v.regex(/^\/[a-z/-]*\/$/)))
  })
)
export type Glossary = v.InferOutput<typeof glossarySchema>
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
