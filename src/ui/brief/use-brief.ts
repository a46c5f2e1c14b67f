/**
 * The brief to show: of the link in the address where there is one, else of one's own answers. Neither touches the other.
 * A link that carries a shop's sheet is worked out from that sheet; all else from the sheet in force on this device.
 */
import { useEffect, useState } from 'preact/hooks'
import { $invite } from '../../stores/invite'
import { readSpot } from '../questionnaire/flow'
import type { Unworked, Worked } from './worked'

export type Shown = Unworked | ({ readonly state: 'brief'; readonly sheet: typeof import('./sheet') } & Worked)

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
