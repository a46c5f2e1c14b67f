/** Every note, gathered by the bundler and worked out once a build. */
import * as v from 'valibot'
import { content, teachingShop } from '../data/content'
import { buildReference } from '../data/reference'
import { shopSheetSchema } from '../data/shop-schema'
import { GROUPS, type Group, type Library, type Note, readNote } from './note'
import { glossary } from './words'

export { glossary }

const texts = Object.entries(
  import.meta.glob<string>('../../content/notes/*.md', { eager: true, query: '?raw', import: 'default' })
).map(([path, text]) => [path.replace(/^.*\/|\.md$/g, ''), text] as const)

export const noteLibrary: Library = {
  reference: buildReference(content),
  sheet: v.parse(shopSheetSchema, teachingShop),
  glossary,
  ids: texts.map(([id]) => id)
}

const groups = Object.keys(GROUPS) as Group[]
const place = (note: Note): number => groups.indexOf(note.group) * 1000 + note.order

/** In the order of the index. */
export const notes: readonly Note[] = texts
  .map(([id, text]) => readNote(id, text, noteLibrary))
  .sort((a, b) => place(a) - place(b))
