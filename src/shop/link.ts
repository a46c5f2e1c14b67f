/**
 * What a link carries, in the fragment of its address. Three kinds: answers alone; an invite (a shop's sheet, answers
 * known already, which of them are settled); a brief sent back (answers and the sheet that it was made with, so that
 * everyone who opens it sees the same choice and prices). The first character is the version, and links of every
 * version that was released keep opening.
 */
import { strToU8 } from 'fflate'
import { type Problem, readAnswers } from '../choice/answers'
import type { Answers } from '../choice/types'
import type { ShopSheetContent } from '../data/shop-schema'
import { type Invite, type Known, readInvite, readKnownSheet } from './invite/door'
import { seal, unseal } from './invite/envelope'
import { packSheet, unpackSheet } from './invite/sheet'
import { DICTIONARY_2 } from './invite/tables'

/** Version 1: a plain object of answers. Version 2: [kind, ...], kinds as below. */
const VERSIONS: ReadonlyMap<string, Uint8Array | undefined> = new Map([
  ['1', undefined],
  ['2', strToU8(DICTIONARY_2)]
])
const ANSWERS = 'a'
const INVITE = 'i'
const BRIEF = 'b'

const seal2 = (content: unknown): string => seal('2', JSON.stringify(content), VERSIONS.get('2'))

/** The part of a link after `#a=` or `#b=`, for these answers alone. */
export const encodeLink = (answers: Answers): string => seal2([ANSWERS, answers])

/** The part of a link after `#i=`. */
export const encodeInvite = ({ sheet, answers, locked }: Invite): string =>
  seal2([INVITE, packSheet(sheet), answers, locked])

/** Which answers of a brief came with the shop's invite: settled by the shop, or suggested and left as they were. */
export interface Given {
  readonly settled: readonly string[]
  readonly suggested: readonly string[]
}

/** The part of a link after `#b=`, for a brief and the sheet that it was made with. */
export const encodeBrief = (answers: Answers, sheet: ShopSheetContent, given?: Given): string =>
  seal2([BRIEF, packSheet(sheet), answers, ...(given && saysAny(given) ? [given.settled, given.suggested] : [])])

const saysAny = ({ settled, suggested }: Given): boolean => settled.length + suggested.length > 0

/** Each id once, and only of questions that have an answer. */
const idsOf = (raw: unknown, answers: Answers): string[] =>
  Array.isArray(raw)
    ? [...new Set(raw)].filter((id): id is string => typeof id === 'string' && Object.hasOwn(answers, id))
    : []

export type Decoded =
  | {
      readonly ok: true
      readonly answers: Answers
      readonly problems: readonly Problem[]
      /** Of an invite or a brief sent back. */
      readonly sheet?: ShopSheetContent
      /** Of an invite alone. */
      readonly locked?: readonly string[]
      /** Of a brief that answers an invite. */
      readonly given?: Given
    }
  | { readonly ok: false; readonly says: string }

/** What a link's fragment carries. Never throws: what cannot be read is said, answer by answer where it can be. */
export function decodeLink(fragment: string, known: Known = {}): Decoded {
  const opened = unseal(fragment, VERSIONS)
  if (!opened.ok) return opened
  if (opened.version === '1') return { ok: true, ...readAnswers(opened.json, known.places) }
  const [kind, first, second, third, fourth] = Array.isArray(opened.json) ? opened.json : []
  switch (kind) {
    case ANSWERS:
      return { ok: true, ...readAnswers(first, known.places) }
    case INVITE: {
      const read = readInvite({ sheet: unpackSheet(first), answers: second, locked: third }, known)
      return read.ok ? { ok: true, ...read.invite, problems: read.problems } : read
    }
    case BRIEF: {
      const sheet = readKnownSheet(unpackSheet(first), known.woods)
      if (!sheet.ok) return sheet
      const { answers, problems } = readAnswers(second, known.places)
      const settled = idsOf(third, answers)
      const suggested = idsOf(fourth, answers).filter((id) => !settled.includes(id))
      const given = { settled, suggested }
      return {
        ok: true,
        sheet: sheet.sheet,
        answers,
        problems: [...sheet.problems, ...problems],
        ...(saysAny(given) && { given })
      }
    }
    default:
      return { ok: false, says: 'What this link carries could not be read.' }
  }
}
