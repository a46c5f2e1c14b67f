/**
 * The little language that notes are written in: front matter, headings, paragraphs, lists, warnings, and calls of the
 * engine in double braces. Anything that it does not know is refused with the line, so that a slip fails the build.
 */

/** A call such as `{{shrink wood=white-oak face=8 at=9}}`: its name, and its arguments as text; a bare one is `of`. */
export interface Call {
  readonly name: string
  readonly args: Readonly<Record<string, string>>
}

export type Inline =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'strong'; readonly text: string }
  | { readonly kind: 'link'; readonly text: string; readonly to: string }
  | { readonly kind: 'call'; readonly call: Call }
  /** `[@key where | mark]` */
  | { readonly kind: 'cite'; readonly key: string; readonly where: string | null; readonly mark: string | null }

export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'paragraph' | 'warning'; readonly of: readonly Inline[] }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly items: readonly (readonly Inline[])[] }
  /** `::name args`, then its caption. */
  | { readonly kind: 'picture'; readonly call: Call; readonly caption: readonly Inline[] }

export interface Parsed {
  readonly front: Readonly<Record<string, string>>
  readonly blocks: readonly Block[]
}

/** @throws Error that names what is wrong and where. */
export function parseNote(text: string): Parsed {
  const found = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text)
  if (!found) throw new Error('a note begins with front matter between two lines of ---')
  const front = Object.fromEntries(
    (found[1] ?? '').split('\n').map((line) => {
      const cut = line.indexOf(': ')
      if (cut < 1) throw new Error(`front matter: "${line}" is not "name: value"`)
      return [line.slice(0, cut), line.slice(cut + 2).trim()]
    })
  )
  const parts = (found[2] ?? '')
    .split(/\n{2,}/)
    .map((part) => part.trim())
    .filter(Boolean)
  return { front, blocks: parts.map(blockOf) }
}

function blockOf(part: string): Block {
  const lines = part.split('\n')
  const first = lines[0] ?? ''
  if (first.startsWith('## ') && lines.length === 1) return { kind: 'heading', text: first.slice(3) }
  if (first.startsWith('::')) {
    return { kind: 'picture', call: callOf(first.slice(2)), caption: inlinesOf(lines.slice(1).join(' ')) }
  }
  const bullet = /^(- |\d+\. )/
  if (bullet.test(first)) {
    // A line that does not begin an item goes on with the last one.
    const items: string[] = []
    for (const line of lines) {
      if (bullet.test(line)) items.push(line.replace(bullet, ''))
      else items.push(`${items.pop() ?? ''} ${line.trim()}`)
    }
    return { kind: 'list', ordered: !first.startsWith('-'), items: items.map(inlinesOf) }
  }
  const warning = first.startsWith('> ')
  const said = lines.map((line) => (warning ? line.replace(/^> ?/, '') : line)).join(' ')
  if (/^[#>`|]/.test(said)) throw new Error(`not in the language of notes: "${first}"`)
  return { kind: warning ? 'warning' : 'paragraph', of: inlinesOf(said) }
}

const INLINE = /\{\{([^}]*)\}\}|\[@([a-z0-9.-]+)([^\]]*)\]|\[([^\]]+)\]\(([^)]+)\)|\*\*([^*]+)\*\*/g

/** @throws Error for braces, brackets or stars that are left over. */
export function inlinesOf(text: string): readonly Inline[] {
  const all: Inline[] = []
  let at = 0
  const plain = (piece: string) => {
    if (/[{}[\]*`_]/.test(piece)) throw new Error(`not in the language of notes: "${piece.trim()}"`)
    if (piece) all.push({ kind: 'text', text: piece })
  }
  for (const m of text.matchAll(INLINE)) {
    plain(text.slice(at, m.index))
    at = m.index + m[0].length
    const [, call, key, rest, words, to, strong] = m
    if (call !== undefined) all.push({ kind: 'call', call: callOf(call) })
    else if (key !== undefined) {
      const [where = '', mark] = (rest ?? '').split('|').map((s) => s.trim())
      all.push({ kind: 'cite', key, where: where || null, mark: mark ?? null })
    } else if (to !== undefined) all.push({ kind: 'link', text: words ?? '', to })
    else all.push({ kind: 'strong', text: strong ?? '' })
  }
  plain(text.slice(at))
  return all
}

/** `name a b=c d="e f"` */
export function callOf(text: string): Call {
  const words = [...text.trim().matchAll(/(?:([a-z]+)=)?(?:"([^"]*)"|(\S+))/g)]
  const [name, ...rest] = words
  if (!name?.[3] || name[1] || !/^[a-z][a-zA-Z-]*$/.test(name[3]))
    throw new Error(`"${text}" does not begin with a name`)
  const args: Record<string, string> = {}
  for (const [, key = 'of', quoted, bare] of rest) {
    if (Object.hasOwn(args, key)) throw new Error(`"${text}" gives ${key} twice`)
    args[key] = quoted ?? bare ?? ''
  }
  return { name: name[3], args }
}
