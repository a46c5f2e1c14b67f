/** The door for what a link, a file or a saved state brings: a sheet whose woods are known, and answers. Never throws. */
import { type Problem, readAnswers } from '../../choice/answers'
import type { Answers } from '../../choice/types'
import type { ShopSheetContent } from '../../data/shop-schema'
import { readSheet } from '../sheet/door'

type Ids = ReadonlySet<string> | ReadonlyMap<string, unknown>

/** What there is data on, where it is at hand; a wood or a place that is not in it is said and left out. */
export interface Known {
  readonly places?: Ids | undefined
  readonly woods?: Ids | undefined
}

export interface Invite {
  readonly sheet: ShopSheetContent
  /** Answers known already: suggested, or settled by the shop. */
  readonly answers: Answers
  /** Questions that the shop has settled; each has an answer. */
  readonly locked: readonly string[]
}

export type SheetIn =
  | { readonly ok: true; readonly sheet: ShopSheetContent; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly says: string }

/** A sheet from anything, without the woods that nothing is known of. */
export function readKnownSheet(input: unknown, woods?: Ids): SheetIn {
  const read = readSheet(input)
  if (!read.ok) {
    const [first] = read.problems
    const where = first?.path ? ` (${first.path.slice(0, 60)}: ${first.says})` : ''
    return { ok: false, says: `The shop’s sheet could not be read${where}.` }
  }
  if (!woods) return { ok: true, sheet: read.sheet, problems: [] }
  const unknown = read.sheet.woods.filter((wood) => !woods.has(wood.species)).map((wood) => wood.species)
  if (unknown.length === 0) return { ok: true, sheet: read.sheet, problems: [] }
  const rest = read.sheet.woods.filter((wood) => woods.has(wood.species))
  if (rest.length === 0)
    return {
      ok: false,
      says: 'This page has no numbers on any wood of the shop’s sheet. It may be older than the link.'
    }
  const says = `This page has no numbers on ${unknown.slice(0, 8).join(', ')}: left out of the shop’s sheet.`
  return { ok: true, sheet: { ...read.sheet, woods: rest }, problems: [{ question: null, says }] }
}

export type InviteIn =
  | { readonly ok: true; readonly invite: Invite; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly says: string }

const fields = (input: unknown): Record<string, unknown> =>
  typeof input === 'object' && input !== null ? (input as Record<string, unknown>) : {}

/** An invite from anything: its sheet must be sound, bad answers are left out and named. */
export function readInvite(input: unknown, known: Known = {}): InviteIn {
  const { sheet: rawSheet, answers: rawAnswers, locked: rawLocked } = fields(input)
  const sheet = readKnownSheet(rawSheet, known.woods)
  if (!sheet.ok) return sheet
  const { answers, problems } = readAnswers(rawAnswers ?? {}, known.places)
  const locked = Array.isArray(rawLocked)
    ? [...new Set(rawLocked)].filter((id): id is string => typeof id === 'string' && Object.hasOwn(answers, id))
    : []
  return { ok: true, invite: { sheet: sheet.sheet, answers, locked }, problems: [...sheet.problems, ...problems] }
}
