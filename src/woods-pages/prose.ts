/**
 * Own words on a wood, one file each in `content/wood-pages/`. A line `for: ..` says in a few words what it is for; `sold: dry` is
 * for wood that comes from old buildings alone. Then parts, each under `## <part> <mark>`, in the order of `PARTS`. `with=a,b` behind the mark names woods that the part speaks of.
 */
import type { Mark } from '../data/schema'

export const PARTS = ['use', 'look', 'bench', 'wrong', 'confused', 'opinion'] as const
export type PartId = (typeof PARTS)[number]

export const PART_NAMES: Readonly<Record<PartId, string>> = {
  use: 'What it is for',
  look: 'How it looks and smells',
  bench: 'Under the saw and the chisel',
  wrong: 'What goes wrong',
  confused: 'Taken for another',
  opinion: 'Trade opinion'
}

export interface ProsePart {
  readonly id: PartId
  readonly mark: Mark
  readonly paragraphs: readonly string[]
  /** Ids of other woods. */
  readonly others: readonly string[]
}
export interface Prose {
  readonly id: string
  /** A few words for a table. */
  readonly line: string
  /** Comes from old buildings alone: how it would dry is nobody's question. */
  readonly soldDry: boolean
  readonly parts: readonly ProsePart[]
}

const HEAD = /^## ([a-z]+) (practice|memory|mixed)(?: with=([a-z0-9,-]+))?$/

/** Read one file. @throws Error where it lacks its line, or its parts are not those of `PARTS` in their order. */
export function readProse(id: string, text: string): Prose {
  const [top = '', ...rest] = text.trim().split(/\n(?=## )/)
  const line = /^for: (.+)$/m.exec(top)?.[1]
  if (!line) throw new Error(`content/wood-pages/${id}.md: no line "for: .."`)
  const parts = rest.map((part, i): ProsePart => {
    const [head = '', ...body] = part.split('\n')
    const found = HEAD.exec(head.trim())
    const wanted = PARTS[i]
    if (!found || !wanted || found[1] !== wanted)
      throw new Error(`content/wood-pages/${id}.md: "${head}" where "## ${wanted ?? 'nothing'} <mark>" should stand`)
    const paragraphs = body
      .join('\n')
      .split(/\n\s*\n/)
      .map((p) => p.replace(/\s+/g, ' ').trim())
      .filter(Boolean)
    return { id: wanted, mark: found[2] as Mark, paragraphs, others: found[3]?.split(',') ?? [] }
  })
  if (parts.length !== PARTS.length) throw new Error(`content/wood-pages/${id}.md: has ${parts.length} parts`)
  return { id, line, soldDry: /^sold: dry$/m.test(top), parts }
}

/** All of them by the id of their wood; the bundler gathers the files. */
export const proses: ReadonlyMap<string, Prose> = new Map(
  Object.entries(
    import.meta.glob<string>('../../content/wood-pages/*.md', { eager: true, query: '?raw', import: 'default' })
  ).map(([path, text]) => {
    const id = path.replace(/^.*\/|\.md$/g, '')
    return [id, readProse(id, text)]
  })
)
