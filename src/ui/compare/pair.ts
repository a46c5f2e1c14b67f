import type { Brief } from '../../choice/types'
import type { Library } from '../say/library'

/** One of two briefs that are set side by side. */
export interface Side {
  readonly brief: Brief
  readonly link: string
  readonly library: Library
}
