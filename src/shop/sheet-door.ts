/** The door for shop sheets: from a form, a file, a link or a saved state. Never throws. */
import * as v from 'valibot'
import { type ShopSheetContent, shopSheetSchema } from '../data/shop-schema'

export interface SheetProblem {
  /** Where in the sheet, as keys and places joined by dots: `woods.3.perBoardFoot`; empty where the whole is at fault. */
  readonly path: string
  readonly says: string
}

export type SheetRead =
  | { readonly ok: true; readonly sheet: ShopSheetContent }
  | { readonly ok: false; readonly problems: readonly SheetProblem[] }

/** A shop sheet from anything, or every reason why it is none. */
export function readSheet(input: unknown): SheetRead {
  const read = v.safeParse(shopSheetSchema, input)
  if (read.success) return { ok: true, sheet: read.output }
  return { ok: false, problems: read.issues.map((issue) => ({ path: v.getDotPath(issue) ?? '', says: issue.message })) }
}
