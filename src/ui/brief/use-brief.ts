/**
 * The brief to show: of the link in the address where there is one, else of one's own answers. Neither touches the other.
 * A link that carries a shop's sheet is worked out from that sheet; all else from the sheet in force on this device.
 */
import { useEffect, useState } from 'preact/hooks'
import type { Brief } from '../../choice/brief-types'
import type { Comparison } from '../../choice/firm/comparison'
import type { Given } from '../../shop/link'
import { $invite } from '../../stores/invite'
import type { Engine } from '../engine'
import type { InForce } from '../invite/in-force'
import { readSpot } from '../questionnaire/flow'
import type { OpenFile } from './OpenFile'

export type Shown =
  | { readonly state: 'loading' }
  | { readonly state: 'failed'; readonly retry: () => void }
  /** Nothing answered on this device, and no link. */
  | { readonly state: 'empty'; readonly OpenFile: typeof OpenFile }
  /** A file is to be opened. */
  | { readonly state: 'file'; readonly OpenFile: typeof OpenFile }
  | { readonly state: 'bad-link'; readonly says: string; readonly own: number }
  | {
      readonly state: 'brief'
      readonly sheet: typeof import('./sheet')
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

export function useBrief(): Shown {
  const [shown, show] = useState<Shown>({ state: 'loading' })
  useEffect(() => {
    let turn = 0
    const work = async () => {
      const mine = ++turn
      const latest = (next: Shown) => mine === turn && show(next)
      try {
        const { atOnce, bring } = await import('./bring')
        const said = atOnce()
        if (said !== null) return latest(said)
        const [brought, sheet] = await Promise.all([bring(), import('./sheet')])
        if ('state' in brought) return latest(brought)
        const { answers, ...rest } = brought
        const { engine } = rest
        const brief = await sheet.inSlices(engine.makeBrief(answers))
        latest({ state: 'brief', sheet, brief, compare: engine.compare(answers), ...rest })
      } catch {
        latest({ state: 'failed', retry: work })
      }
    }
    // Only another link changes what is shown; a jump within the page (the skip link) does not.
    const follow = () => ['link', 'file'].includes(readSpot(location.hash).at) && work()
    work()
    addEventListener('hashchange', follow)
    const unlisten = $invite.listen(() => void work())
    return () => {
      removeEventListener('hashchange', follow)
      unlisten()
    }
  }, [])
  return shown
}
