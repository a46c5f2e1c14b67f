/** A shop sheet as one JSON file. What comes in may be anything at all; what is wrong with it is said, and nothing is thrown. */
import type { ShopSheetContent } from '../../data/shop-schema'
import { readSheet } from './door'
import { placeWords } from './paths'

/** Largest file that is looked at, bytes. A full sheet takes about 12 000. */
export const LARGEST_FILE = 200_000

export type FileRead =
  /** `unknown`: woods that we have no data on; they are left out of the form. */
  | { readonly ok: true; readonly sheet: ShopSheetContent; readonly unknown: readonly string[] }
  | { readonly ok: false; readonly says: string; readonly list: readonly string[] }

const no = (says: string, list: readonly string[] = []): FileRead => ({ ok: false, says, list })

/** @param known ids of the woods that we have data on */
export function readSheetFile(text: string, known: ReadonlySet<string>): FileRead {
  if (text.length > LARGEST_FILE) return no(tooLarge(text.length))
  let input: unknown
  try {
    input = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch {
    return no('This file is not JSON, or was cut short. Choose a shop sheet that was saved from this page.')
  }
  if (typeof input !== 'object' || input === null || Array.isArray(input))
    return no('This is a JSON file, but not a shop sheet.')
  const { version } = input as { version?: unknown }
  if (version === undefined) return no('This is a JSON file, but not a shop sheet: it has no version.')
  if (version !== 1)
    return no(`This sheet is of version ${String(JSON.stringify(version)).slice(0, 20)}. This page reads version 1.`)
  const read = readSheet(input)
  if (!read.ok)
    return no(
      'This file cannot be taken as it is. Mend these in it, or fill in the form.',
      read.problems.map(({ path, says }) => (path === '' ? says : `${placeWords(path, input)}: ${says}`))
    )
  const unknown = read.sheet.woods.map((w) => w.species).filter((id) => !known.has(id))
  if (unknown.length === read.sheet.woods.length)
    return no('None of its woods is one that we have data on.', unknown.slice(0, 20))
  return { ok: true, sheet: read.sheet, unknown }
}

export const tooLarge = (bytes: number): string =>
  `This file has ${Math.ceil(bytes / 1000).toLocaleString('en-US')} KB. A shop sheet has at most ${LARGEST_FILE / 1000} KB, so it was not opened.`

/** The text of the file. */
export const sheetFile = (sheet: ShopSheetContent): string => `${JSON.stringify(sheet, null, 2)}\n`
