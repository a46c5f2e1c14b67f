/** The code of a brief's link. The sample's sheet is on every page: links need not carry it. */
import type { Answers } from '../../choice/types'
import type { ShopSheetContent } from '../../data/shop-schema'
import { encodeBrief, encodeLink, type Given } from '../../shop/link'

/** The part after `#b=`. @param sheet null for the sample's */
export const codeOf = (answers: Answers, sheet: ShopSheetContent | null, given?: Given): string =>
  sheet === null ? encodeLink(answers) : encodeBrief(answers, sheet, given)
