/** The door for shop sheets: from a form, a file, a link or a saved state. Never throws. */
import * as v from 'valibot'
import { type ShopSheetContent, shopSheetSchema } from '../../data/shop-schema'

export interface SheetProblem {
  /** Where in the sheet, as keys and places joined by dots: `woods.3.perBoardFoot`; empty where the whole is at fault. */
  readonly path: string
  readonly says: string
}

export type SheetRead =
  | { readonly ok: true; readonly sheet: ShopSheetContent }
  | { readonly ok: false; readonly problems: readonly SheetProblem[] }

/** More is of no use to anyone, and a hostile file could ask for millions. */
const MOST_TOLD = 50

/** The schema's own messages are ours already; those that the library adds speak of types, and are put into words. */
function wordsOf(issue: v.BaseIssue<unknown>): string {
  if (issue.kind !== 'schema' || issue.path === undefined) return issue.path ? issue.message : 'not a shop sheet'
  if (issue.type === 'strict_object') {
    if (issue.expected === 'never') return 'not part of a shop sheet of this version'
    return issue.received === 'undefined' ? 'missing' : 'not what belongs here'
  }
  if (issue.received === 'undefined') return 'missing'
  if (issue.type === 'boolean') return 'true or false'
  if (issue.type === 'array') return 'a list'
  if (issue.type === 'literal') return `${(issue.expected ?? '').replaceAll('"', '')} and nothing else`
  if (issue.type === 'variant' || issue.message.startsWith('Invalid'))
    return `one of: ${(issue.expected ?? '').replace(/[()"]/g, '').replaceAll(' | ', ', ')}`
  return issue.message
}

/** A shop sheet from anything, or every reason why it is none (the first fifty). */
export function readSheet(input: unknown): SheetRead {
  const read = v.safeParse(shopSheetSchema, input)
  if (read.success) return { ok: true, sheet: read.output }
  const problems = read.issues
    .slice(0, MOST_TOLD)
    .map((issue) => ({ path: v.getDotPath(issue) ?? '', says: wordsOf(issue) }))
  return { ok: false, problems }
}
