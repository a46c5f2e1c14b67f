/** A brief worked out, with whence it came; or why there is none to show. */
import type { Brief } from '../../choice/brief-types'
import type { Comparison } from '../../choice/firm/comparison'
import type { Given } from '../../shop/link'
import type { Engine } from '../engine'
import type { InForce } from '../invite/in-force'
import type { OpenFile } from './OpenFile'

export interface Worked {
  readonly brief: Brief
  readonly compare: Comparison
  readonly engine: Engine
  /** Whose sheet it is worked out from. */
  readonly from: InForce['from'] | 'link'
  readonly linked: boolean
  readonly left: readonly string[]
  /** Of a link: which answers came with the shop's invite. */
  readonly given?: Given
  /** The framer's own sheet on this device says otherwise than the link's. */
  readonly otherOwn: 'renamed' | 'changed' | null
}

export type Unworked =
  | { readonly state: 'loading' }
  | { readonly state: 'failed'; readonly retry: () => void }
  /** Nothing answered on this device, and no link. */
  | { readonly state: 'empty'; readonly OpenFile: typeof OpenFile }
  /** A file is to be opened. */
  | { readonly state: 'file'; readonly OpenFile: typeof OpenFile }
  | { readonly state: 'bad-link'; readonly says: string; readonly own: number }
