/** Words that a text explains, each with the marks of punctuation behind it: a line may break behind a button, and must not
 * between it and its full stop. */
import { type Entry, explained } from '../../notes/explained'
import type { Glossary } from '../../notes/glossary'

export type Said = Entry & { readonly said: string; readonly mark: string }

/** The marks that a text begins with. */
export const markOf = (text: unknown): string =>
  typeof text === 'string' ? (/^(?:’s\b)?[.,;:!?)’”]*/.exec(text)?.[0] ?? '') : ''

/** @param told ids explained already; gathers those explained here */
export function wordsIn(text: string, glossary: Glossary, told: Set<string>): readonly (string | Said)[] {
  const pieces = explained(text, glossary, told)
  const markAfter = (i: number): string => markOf(pieces[i + 1])
  return pieces.map((piece, i) => {
    if (typeof piece !== 'string') return { ...piece, mark: markAfter(i) }
    return i > 0 ? piece.slice(markAfter(i - 1).length) : piece
  })
}
