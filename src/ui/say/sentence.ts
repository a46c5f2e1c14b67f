/** A sentence in pieces: plain text, and the quantities that its placeholders stand for. */
import type { Quantity, Sentence } from '../../data/quantity'
import { formatIn, type System } from '../format/quantity'

export type Piece = string | Quantity

/** Braces that stand for nothing are somebody's own, such as a shop's name, and stay as they are. */
export function pieces(sentence: Sentence): readonly Piece[] {
  return sentence.text
    .split(/\{([A-Za-z0-9_]+)\}/)
    .map((part, i): Piece => {
      if (i % 2 === 0) return part
      const values = sentence.values ?? {}
      return (Object.hasOwn(values, part) ? values[part] : undefined) ?? `{${part}}`
    })
    .filter((piece) => piece !== '')
}

/** The sentence as plain text in one unit system: for announcements, file names and the like. */
export function plainSentence(sentence: Sentence, system: System): string {
  return pieces(sentence)
    .map((piece) => (typeof piece === 'string' ? piece : formatIn(piece, system)))
    .join('')
}
