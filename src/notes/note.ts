/** A note, read and worked out: what the page draws, with every figure, source and link checked. */
import * as v from 'valibot'
import type { Origin, Quantity } from '../data/quantity'
import type { Reference } from '../data/reference'
import { type Mark, markSchema } from '../data/schema'
import type { ShopSheetContent } from '../data/shop-schema'
import { bareNumbers } from './check'
import { explained } from './explained'
import { figureOf } from './figures'
import type { Glossary } from './glossary'
import { type Call, type Inline, parseNote } from './parse'
import { TABLE_NAMES, type Table, tableOf } from './tables'

/** The kinds of note, in the order of the index. */
export const GROUPS = {
  wood: 'What wood does',
  choosing: 'Choosing the timber',
  strength: 'Strength and joints',
  weather: 'Outdoors',
  look: 'Look and finish',
  job: 'The job'
} as const
export type Group = keyof typeof GROUPS

/** Pages outside the notes that a note may send its reader to, and what they are called. */
export const PAGES: Readonly<Record<string, string>> = {
  '/start/': 'The questions',
  '/drying-clock/': 'Drying clock',
  '/log-end/': 'Log end',
  '/size-ladder/': 'Size ladder',
  '/places/': 'Rot and dryness by place',
  '/sources/': 'All sources',
  '/framers/': 'For framers',
  '/glossary/': 'Glossary',
  '/examples/ridge-hall/': 'An example brief'
}

const list = v.pipe(
  v.string(),
  v.transform((s) => s.split(',').map((part) => part.trim())),
  v.array(v.pipe(v.string(), v.nonEmpty()))
)
const frontSchema = v.strictObject({
  title: v.pipe(v.string(), v.maxLength(60)),
  summary: v.pipe(v.string(), v.maxLength(170)),
  group: v.picklist(Object.keys(GROUPS) as Group[]),
  order: v.pipe(v.string(), v.transform(Number), v.integer()),
  /** Keys of `content/sources.json` that the note rests on as a whole. */
  sources: list,
  /** Ids of notes, or addresses of pages. */
  related: list
})

export type Part =
  /** `plain` is a word that means something else here than in the glossary. */
  | { readonly kind: 'text' | 'strong' | 'plain'; readonly text: string }
  | { readonly kind: 'link'; readonly text: string; readonly to: string }
  | { readonly kind: 'figure'; readonly quantity: Quantity; readonly plain: boolean }
  | { readonly kind: 'cite'; readonly origin: Origin }
export type Parts = readonly Part[]

export type NoteBlock =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'paragraph' | 'warning'; readonly of: Parts }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly Parts[] }
  | { readonly kind: 'table'; readonly table: Table; readonly caption: Parts }
  | { readonly kind: 'picture'; readonly call: Call; readonly caption: Parts }

export interface Note {
  readonly id: string
  readonly title: string
  readonly summary: string
  readonly group: Group
  readonly order: number
  readonly sources: readonly string[]
  readonly related: readonly string[]
  readonly blocks: readonly NoteBlock[]
  /** Ids of the glossary whose words its paragraphs say. */
  readonly terms: readonly string[]
  /** A size of a timber or a force in it stands in the note, so that its page says what such figures leave out. */
  readonly sized: boolean
  readonly words: number
}

export interface Library {
  readonly reference: Reference
  readonly sheet: ShopSheetContent
  readonly glossary: Glossary
  /** Ids of all notes, for links. */
  readonly ids: readonly string[]
}

/** Calls that answer with sections, or with the forces that they come of; they stand inside other calls too. */
const SIZING = /^(ladder|sections|forces)\b/
const sizes = ({ name, args }: Call): boolean => [name, ...Object.values(args)].some((s) => SIZING.test(s))

/** @throws Error that names the note and what is wrong in it. */
export function readNote(id: string, text: string, library: Library): Note {
  try {
    return resolve(id, text, library)
  } catch (error) {
    throw new Error(`content/notes/${id}.md: ${error instanceof Error ? error.message : error}`)
  }
}

function resolve(id: string, text: string, library: Library): Note {
  const { front, blocks } = parseNote(text)
  const { reference, glossary, ids } = library
  const head = v.parse(frontSchema, front)
  for (const key of head.sources) knownSource(key, reference)
  for (const to of head.related) knownLink(to.startsWith('/') ? to : `/notes/${to}/`, ids)
  const told = new Set<string>()
  let sized = false
  const prose = (words: string): string => {
    const bare = bareNumbers(words)
    if (bare.length > 0) throw new Error(`a number is stated by hand: ${bare.join('; ')}`)
    return words
  }
  prose(head.summary)

  const part = (inline: Inline): Parts => {
    switch (inline.kind) {
      case 'text':
        explained(prose(inline.text), glossary, told)
        return [{ kind: 'text', text: inline.text }]
      case 'strong':
        return [{ kind: 'strong', text: prose(inline.text) }]
      case 'link':
        knownLink(inline.to, ids)
        return [inline]
      case 'cite':
        return [{ kind: 'cite', origin: cited(inline, reference) }]
      case 'call':
        if (inline.call.name === 'word') return [{ kind: 'plain', text: prose(inline.call.args['of'] ?? '') }]
        sized ||= sizes(inline.call)
        return [{ kind: 'figure', ...figureOf(inline.call, reference, library.sheet) }]
    }
  }
  const parts = (inlines: readonly Inline[]): Parts => inlines.flatMap(part)

  const done = blocks.map((block): NoteBlock => {
    switch (block.kind) {
      case 'heading':
        return { kind: 'heading', text: prose(block.text) }
      case 'list':
        return { ...block, items: block.items.map(parts) }
      case 'picture': {
        const caption = parts(block.caption)
        sized ||= sizes(block.call)
        return TABLE_NAMES.includes(block.call.name)
          ? { kind: 'table', table: tableOf(block.call, reference, library.sheet), caption }
          : { kind: 'picture', call: block.call, caption }
      }
      default:
        return { kind: block.kind, of: parts(block.of) }
    }
  })
  const words = text.replace(/^---[\s\S]*?\n---/, '').split(/\s+/).length
  return { id, ...head, blocks: done, terms: [...told], sized, words }
}

function knownSource(key: string, { sources }: Reference): void {
  if (!Object.hasOwn(sources, key)) throw new Error(`no source "${key}" in content/sources.json`)
}

function knownLink(to: string, ids: readonly string[]): void {
  const note = /^\/notes\/([a-z-]+)\/$/.exec(to)?.[1]
  if (note !== undefined ? !ids.includes(note) : !Object.hasOwn(PAGES, to)) throw new Error(`no page "${to}"`)
}

/** Marks that a source as a whole may pass on; one that was read has to say what of this statement was read. */
const OWN: readonly Mark[] = ['memory', 'practice', 'derived']

function cited({ key, where, mark }: Extract<Inline, { kind: 'cite' }>, reference: Reference): Origin {
  knownSource(key, reference)
  const own = reference.sources[key]?.mark
  if (mark === null && (own === undefined || !OWN.includes(own))) {
    throw new Error(`[@${key}] must say how its statement is known: "| seen" or "| memory"`)
  }
  const known = mark === null ? own : v.parse(markSchema, mark)
  if (known === 'seen' && own === 'memory') throw new Error(`[@${key}] was never read`)
  return { mark: known ?? 'memory', sources: [where === null ? { key } : { key, where }] }
}
