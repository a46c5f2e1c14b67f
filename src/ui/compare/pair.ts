import type { Brief } from '../../choice/brief-types'
import type { ShopSheetContent } from '../../data/shop-schema'
import type { Library } from '../say/library'

/** One of two briefs that are set side by side. */
export interface Side {
  readonly brief: Brief
  readonly link: string
  readonly library: Library
  readonly sheet: ShopSheetContent
  /** It came with its shop's sheet; without one, the sheet in use on this device stands in. */
  readonly own: boolean
}
