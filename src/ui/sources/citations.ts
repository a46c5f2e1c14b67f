/**
 * Who cites which source, gathered when the site is built: from the content, the rules and calculations in the code, the
 * field notes and the pages. Nobody keeps this list by hand, so it cannot be behind.
 */
import { content } from '../../data/content'

export type CitedBy = 'wood' | 'formula' | 'limit' | 'table' | 'note' | 'page' | 'check' | 'code'
export interface Citation {
  readonly key: string
  readonly by: CitedBy
  /** What cites it, in words. */
  readonly name: string
  /** Its page, where it has one. */
  readonly to?: string
}

type Files = Readonly<Record<string, string>>
const notes: Files = import.meta.glob('../../../content/notes/*.md', { query: '?raw', import: 'default', eager: true })
const woodPages: Files = import.meta.glob('../../../content/wood-pages/*.md', {
  query: '?raw',
  import: 'default',
  eager: true
})
const handouts = import.meta.glob<{ readonly title?: string }>('../../../content/handouts/*.json', {
  import: 'default',
  eager: true
})
const pages: Files = import.meta.glob('../../pages/**/*.astro', { query: '?raw', import: 'default', eager: true })
const code: Files = import.meta.glob('../../{wood,frame,choice,shop,notes,woods-pages,ui}/**/*.{ts,tsx}', {
  query: '?raw',
  import: 'default',
  eager: true
})

/** Printed results that tests hold the engine against. */
export const checks = Object.values(
  import.meta.glob<readonly { readonly source: string; readonly about: string; readonly test: string }[]>(
    '../../../content/checks.json',
    { eager: true, import: 'default' }
  )
).flat()

/** Gathered entry by entry, or no citing at all. */
const OWN_NAMES: readonly string[] = ['species', 'formulas', 'limits', 'sources']

/** What the reader calls a file of content. */
const TABLES: Readonly<Record<string, string>> = {
  designValues: 'design values',
  places: 'weather of the places',
  regions: 'regions',
  decay: 'rot',
  seasonings: 'ways of drying',
  drying: 'speed of drying',
  loads: 'loads',
  joints: 'joints',
  finishes: 'finishes',
  unsure: 'what is assumed where an answer is open',
  series: 'series of sections',
  indoor: 'air of rooms'
}

/** Keys under `source`, and in lists under `sources`, at any depth. */
export function keysIn(node: unknown): string[] {
  if (Array.isArray(node)) return node.flatMap(keysIn)
  if (node === null || typeof node !== 'object') return []
  return Object.entries(node).flatMap(([name, value]) => {
    if (name === 'source' && typeof value === 'string') return [value]
    if (name === 'sources' && Array.isArray(value) && value.every((key) => typeof key === 'string')) return value
    return keysIn(value)
  })
}

const record = (node: unknown): [string, Record<string, unknown>][] =>
  Object.entries((node ?? {}) as Record<string, Record<string, unknown>>)
const nameOf = (path: string): string => path.replace(/^.*\/|\.\w+$/g, '')
/** Where pages of their own exist for woods and notes. */
const has = (folder: string): boolean => Object.keys(pages).some((path) => path.includes(`/pages/${folder}/[`))

/** Keys named in prose, such as the note to a number; those of one word would be mistaken for words. */
function keysInProse(node: unknown, known: ReadonlySet<string>): string[] {
  const words = JSON.stringify(node).match(/[a-z0-9]+(?:[-.][a-z0-9]+)+/g) ?? []
  return words.filter((word) => known.has(word))
}

function ofContent(known: ReadonlySet<string>): Citation[] {
  const found: Citation[] = []
  const add = (by: CitedBy, name: string, node: unknown, to?: string) => {
    for (const key of [...keysIn(node), ...keysInProse(node, known)])
      found.push({ key, by, name, ...(to ? { to } : {}) })
  }
  for (const wood of content.species as { id: string; name: string }[])
    add('wood', wood.name, wood, has('woods') ? `/woods/${wood.id}/` : undefined)
  for (const [id, formula] of record(content.formulas)) add('formula', String(formula['name'] ?? id), formula)
  for (const [id, limit] of record(content.limits)) add('limit', String(limit['about'] ?? id), limit)
  for (const [file, table] of Object.entries(content))
    if (!OWN_NAMES.includes(file)) add('table', TABLES[file] ?? file, table)
  for (const [path, handout] of Object.entries(handouts))
    add('page', handout.title ?? nameOf(path), handout, `/handouts/${nameOf(path)}/`)
  for (const { source, about } of checks) found.push({ key: source, by: 'check', name: about })
  return found
}

/** Keys in the front matter of a note, and in its text: `[@key where | mark]`, `src=key`. */
export function keysOfNote(text: string): string[] {
  const front = /^sources:\s*(.+)$/m.exec(text)?.[1]?.split(',') ?? []
  const inText = [...text.matchAll(/\[@([a-z0-9][a-z0-9.-]*)|\bsrc=([a-z0-9][a-z0-9.-]*)/g)].map(
    (m) => m[1] ?? m[2] ?? ''
  )
  return [...front, ...inText].map((key) => key.trim()).filter((key) => key !== '')
}

function ofNotes(): Citation[] {
  const own = Object.entries(notes).flatMap(([path, text]) => {
    const name = /^title:\s*(.+)$/m.exec(text)?.[1] ?? nameOf(path)
    const to = has('notes') ? { to: `/notes/${nameOf(path)}/` } : {}
    return keysOfNote(text).map((key): Citation => ({ key, by: 'note', name, ...to }))
  })
  const ofWoods = Object.entries(woodPages).flatMap(([path, text]) => {
    const wood = (content.species as { id: string; name: string }[]).find(({ id }) => id === nameOf(path))
    const to = has('woods') ? { to: `/woods/${nameOf(path)}/` } : {}
    return keysOfNote(text).map((key): Citation => ({ key, by: 'wood', name: wood?.name ?? nameOf(path), ...to }))
  })
  return [...own, ...ofWoods]
}

/** Pages and code name a source as a quoted key, or after "Source:" in a comment; only known keys are looked for. */
function ofText(known: ReadonlySet<string>): Citation[] {
  const keysOf = (text: string) =>
    [...text.matchAll(/['"]([a-z0-9][a-z0-9.-]*)['"]|\b(?:Source(?: of [^:]+)?:|;) ([a-z0-9][a-z0-9.-]*)/g)]
      .map((m) => m[1] ?? m[2] ?? '')
      .filter((key) => known.has(key))
  const ofPages = Object.entries(pages)
    .filter(([path]) => !path.includes('['))
    .flatMap(([path, text]) => {
      const name = /<Base[^>]*?\btitle="([^"]+)"/.exec(text)?.[1] ?? nameOf(path)
      const to = path.replace(/^.*\/pages/, '').replace(/(\/index)?\.astro$/, '/')
      return keysOf(text).map((key): Citation => ({ key, by: 'page', name, to }))
    })
  const ofCode = Object.entries(code).flatMap(([path, text]) =>
    keysOf(text).map((key): Citation => ({ key, by: 'code', name: path.replace(/^(\.\.\/)*/, '') }))
  )
  return [...ofPages, ...ofCode]
}

/** Every citation, each once. @param known keys of the bibliography */
export function citations(known: ReadonlySet<string>): Citation[] {
  const all = [...ofContent(known), ...ofNotes(), ...ofText(known)]
  return [...new Map(all.map((one) => [`${one.key}|${one.by}|${one.name}`, one])).values()]
}
