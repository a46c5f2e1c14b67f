/** The words of the handouts, read from `content/handouts/` and refused where they break the shape. */
import * as v from 'valibot'
import { markSchema } from '../data/schema'

const text = v.pipe(v.string(), v.trim(), v.nonEmpty())
const from = { source: text, where: v.optional(text), mark: markSchema, note: v.optional(text) }

const itemSchema = v.strictObject({
  /** Names the drawing beside it, where it has one. */
  id: v.optional(text),
  head: v.optional(text),
  /** `{name}` stands for a figure that the sheet works out. */
  text,
  source: v.optional(from.source),
  mark: v.optional(from.mark)
})

export const proseSchema = v.strictObject({
  title: text,
  order: v.pipe(v.number(), v.integer()),
  /** How many sheets of Letter or A4 it prints on. */
  sheets: v.picklist([1, 2]),
  /** Printed across the long side of the paper. */
  wide: v.optional(v.boolean(), false),
  description: text,
  /** Whom or what it is for, in a few words. */
  for: text,
  lead: text,
  /** Region and id of a place of `content/places.json`. */
  places: v.optional(v.array(v.tuple([text, text])), []),
  sections: v.array(v.strictObject({ id: text, title: text, items: v.array(itemSchema) })),
  caution: text,
  ...from
})
export type Prose = v.InferOutput<typeof proseSchema> & { readonly id: string }
export type Item = v.InferOutput<typeof itemSchema>

const files = import.meta.glob('../../content/handouts/*.json', { eager: true, import: 'default' })

/** Every handout in its order; the id is the file's name and the page's address. @throws ValiError for a broken file */
export const HANDOUTS: readonly Prose[] = Object.entries(files)
  .map(([path, file]) => ({ id: /([^/]+)\.json$/.exec(path)?.[1] ?? path, ...v.parse(proseSchema, file) }))
  .sort((a, b) => a.order - b.order)

/** @throws Error where there is no such handout or section: a fault of ours */
export function handout(id: string): Prose {
  const found = HANDOUTS.find((h) => h.id === id)
  if (found === undefined) throw new Error(`no handout "${id}"`)
  return found
}

export function part(prose: Prose, id: string): Prose['sections'][number] {
  const found = prose.sections.find((s) => s.id === id)
  if (found === undefined) throw new Error(`no section "${id}" in handout "${prose.id}"`)
  return found
}
