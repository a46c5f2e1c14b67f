/** Which wood a name in somebody's list means. Kind to spelling, never guessing between two. */

export interface NamedWood {
  readonly id: string
  readonly name: string
  readonly short: string
}

export type Match =
  | { readonly how: 'one'; readonly id: string }
  /** More than one wood answers to it. */
  | { readonly how: 'several'; readonly ids: readonly string[] }
  | { readonly how: 'none' }

/** "Western redcedar (No.1)" as words: western, red, cedar. */
function wordsOf(name: string): string[] {
  return name
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\([^)]*\)?/g, ' ')
    .replace(/(red|white|yellow)cedar/g, '$1 cedar')
    .replace(/bald(?=cypress)/g, 'bald ')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .split(' ')
    .filter(Boolean)
    .map((word) => (word.length > 3 && /[^s]s$/.test(word) && !/(?:us|cypress)$/.test(word) ? word.slice(0, -1) : word))
}

/** Every word typed begins a word of the name, in order. */
function begins(typed: readonly string[], name: readonly string[]): boolean {
  let at = 0
  for (const word of typed) {
    while (at < name.length && !name[at]?.startsWith(word)) at++
    if (at++ >= name.length) return false
  }
  return true
}
const within = (name: readonly string[], typed: readonly string[]): boolean =>
  name.every((word) => typed.includes(word))
const initials = (words: readonly string[]): string => words.map((word) => word.charAt(0)).join('')

/**
 * The wood of a name: its id, full or short name however written; else the one wood whose name it shortens or spells
 * out further. Where several answer, the one the shop carries, if it carries just one of them.
 */
export function matchWood(input: string, woods: readonly NamedWood[], carried: ReadonlySet<string> = new Set()): Match {
  const typed = wordsOf(input.slice(0, 80))
  const key = typed.join(' ')
  // One letter names nothing, and would begin half of all names.
  if (key.length < 2) return { how: 'none' }
  const named = woods.map((wood) => ({ id: wood.id, names: [wood.name, wood.short, wood.id].map(wordsOf) }))
  const exact = named.filter(({ names }) => names.some((words) => words.join(' ') === key))
  if (exact.length === 1 && exact[0]) return { how: 'one', id: exact[0].id }
  const shortened = named.filter(({ names }) =>
    names.some((words) => begins(typed, words) || (typed.length === 1 && initials(words) === key))
  )
  const longest = Math.max(
    0,
    ...named.map(({ names }) => (within(names[0] ?? [], typed) ? (names[0]?.length ?? 0) : 0))
  )
  const spelledOut =
    longest < 2 ? [] : named.filter(({ names: [full = []] }) => within(full, typed) && full.length === longest)
  const ids = (shortened.length > 0 ? shortened : spelledOut).map(({ id }) => id)
  const own = ids.filter((id) => carried.has(id))
  if (ids.length === 1 && ids[0]) return { how: 'one', id: ids[0] }
  if (own.length === 1 && own[0]) return { how: 'one', id: own[0] }
  return ids.length === 0 ? { how: 'none' } : { how: 'several', ids }
}
