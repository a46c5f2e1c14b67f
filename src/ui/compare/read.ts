/** A returned brief from whatever it came in: a link, the code of one, or a downloaded file. */
import { readAnswers } from '../../choice/answers'
import type { Answers } from '../../choice/types'
import type { ShopSheetContent } from '../../data/shop-schema'
import { decodeLink } from '../../shop/link'

export { encodeLink } from '../../shop/link'

export interface Brought {
  readonly answers: Answers
  /** The shop sheet that came with it; the sample's stands in where none did. */
  readonly sheet?: ShopSheetContent
  /** Answers that could not be read, each in words. */
  readonly left: readonly string[]
}
export type Read = Brought | { readonly says: string }

/** Longest text that is looked at, characters: a downloaded brief takes about two million. */
const LONGEST = 12_000_000

const some = (answers: Answers): boolean => Object.keys(answers).length > 0

function fromFile(text: string): Read {
  let input: unknown
  try {
    input = JSON.parse(text)
  } catch {
    return { says: 'This file is not whole. Download the brief again, or paste its link.' }
  }
  const held = (input ?? {}) as Record<string, unknown>
  if (held['answers'] !== undefined && held['version'] !== 1)
    return { says: 'This file was made by a version of Bentwise that this page does not know.' }
  const { answers, problems } = readAnswers(held['answers'] ?? input)
  if (!some(answers)) return { says: 'There are no answers of a brief in this.' }
  return { answers, left: problems.map((p) => p.says) }
}

/** Answers, and the sheet where one came along; or in words why not. Never throws. */
export async function readBrought(text: string): Promise<Read> {
  const given = text.trim()
  if (given === '') return { says: 'Paste a link here, or open a file.' }
  if (given.length > LONGEST) return { says: 'This is far longer than any brief; it was not opened.' }
  if (given.startsWith('{')) return fromFile(given)
  // A link may stand in the middle of a message.
  const code = /#[ab]=([^\s"<>]+)/.exec(given)?.[1] ?? given
  if (/\s/.test(code) || !/^\d+\./.test(code))
    return { says: 'There is no link to a brief in this. It holds “#b=” and a long code after it.' }
  const link = decodeLink(code)
  if (!link.ok) return { says: link.says }
  if (!some(link.answers)) return { says: 'This link holds no answers that could be read.' }
  return { answers: link.answers, left: link.problems.map((p) => p.says) }
}
