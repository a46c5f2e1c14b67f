/** A brief as a file: all of it for people and programs to read; its answers and its sheet to open it again by. */
import { type Problem, readAnswers } from '../../choice/answers'
import type { Brief } from '../../choice/brief-types'
import type { Answers } from '../../choice/types'
import type { ShopSheetContent } from '../../data/shop-schema'
import { type Known, readKnownSheet } from './door'

/** Longest file that is looked at, characters: several times the longest brief. Our own practice. */
const LONGEST = 5_000_000

export const briefFile = (brief: Brief, sheet: ShopSheetContent): string =>
  `${JSON.stringify({ ...brief, sheet }, null, 1)}\n`

export type FileIn =
  | {
      readonly ok: true
      readonly answers: Answers
      /** Absent in files of before sheets travelled with them. */
      readonly sheet?: ShopSheetContent
      readonly problems: readonly Problem[]
    }
  | { readonly ok: false; readonly says: string }

/** Answers and sheet from a file's text; the rest of it is worked out anew. Never throws. */
export function readBriefFile(text: string, known: Known = {}): FileIn {
  if (text.length > LONGEST) return { ok: false, says: 'This file is far larger than any brief; it was not opened.' }
  let file: unknown
  try {
    file = JSON.parse(text)
  } catch {
    return {
      ok: false,
      says: 'This file is no brief: it is not JSON. Choose the file that was downloaded from a brief.'
    }
  }
  const {
    version,
    answers: raw,
    sheet: rawSheet
  } = (typeof file === 'object' && file !== null ? file : {}) as Record<string, unknown>
  if (typeof raw !== 'object' || raw === null) return { ok: false, says: 'This file is no brief: it holds no answers.' }
  if (version !== undefined && version !== 1)
    return { ok: false, says: 'This file was made by a version of Bentwise that this page does not know.' }
  const { answers, problems } = readAnswers(raw, known.places)
  if (rawSheet === undefined) return { ok: true, answers, problems }
  const sheet = readKnownSheet(rawSheet, known.woods)
  if (!sheet.ok) return sheet
  return { ok: true, answers, sheet: sheet.sheet, problems: [...sheet.problems, ...problems] }
}
