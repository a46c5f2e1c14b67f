/** Where in the questionnaire one is, and how that is written in the address. */
import type { Question } from '../../choice/types'

export type Spot =
  | { readonly at: 'question'; readonly id: string }
  | { readonly at: 'overview' }
  | { readonly at: 'link'; readonly code: string }
  /** To open a brief from a file. */
  | { readonly at: 'file' }
  | { readonly at: 'none' }

export function readSpot(hash: string): Spot {
  const text = hash.replace(/^#/, '')
  if (text === 'overview') return { at: 'overview' }
  if (text.startsWith('q=')) return { at: 'question', id: text.slice(2, 62) }
  if (text === 'file') return { at: 'file' }
  if (/^[abi]=/.test(text)) return { at: 'link', code: text.slice(2) }
  return { at: 'none' }
}

export const questionHash = (id: string): string => `#q=${id}`
export const OVERVIEW_HASH = '#overview'

/**
 * The question to show: the wanted one where it is asked, else the one that stands in its place in the whole list
 * (an edited answer can make a question fall away), else the first.
 */
export function settleOn(wanted: string, asked: readonly Question[], all: readonly Question[]): Question | undefined {
  const found = asked.find((q) => q.id === wanted)
  if (found !== undefined) return found
  const index = all.findIndex((q) => q.id === wanted)
  return asked.find((q) => all.indexOf(q) > index) ?? asked[0]
}

export function firstOpen(
  asked: readonly Question[],
  answers: Readonly<Record<string, unknown>>
): Question | undefined {
  return asked.find((q) => answers[q.id] === undefined) ?? asked.at(-1)
}
