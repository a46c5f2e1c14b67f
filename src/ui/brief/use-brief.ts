/** The brief to show: of the link in the address where there is one, else of one's own answers. Neither touches the other. */
import { useEffect, useState } from 'preact/hooks'
import type { Comparison } from '../../choice/comparison'
import type { Answers, Brief } from '../../choice/types'
import { $answers } from '../../stores/answers'
import { type Engine, loadEngine } from '../engine'
import { readSpot } from '../questionnaire/flow'

export type Shown =
  | { readonly state: 'loading' }
  | { readonly state: 'failed'; readonly retry: () => void }
  /** Nothing answered on this device, and no link. */
  | { readonly state: 'empty' }
  | { readonly state: 'bad-link'; readonly says: string; readonly own: number }
  | {
      readonly state: 'brief'
      readonly sheet: typeof import('./sheet')
      readonly brief: Brief
      readonly compare: Comparison
      readonly engine: Engine
      readonly linked: boolean
      readonly left: readonly string[]
    }

interface Wanted {
  readonly answers: Answers
  readonly linked: boolean
  readonly left: readonly string[]
}

async function read(): Promise<Wanted | Shown> {
  const spot = readSpot(location.hash)
  const own = $answers.get()
  const count = Object.keys(own).length
  if (spot.at !== 'link') return count === 0 ? { state: 'empty' } : { answers: own, linked: false, left: [] }
  const { decodeLink } = await import('../../shop/link')
  const link = decodeLink(spot.code)
  if (!link.ok) return { state: 'bad-link', says: link.says, own: count }
  return { answers: link.answers, linked: true, left: link.problems.map((p) => p.says) }
}

export function useBrief(): Shown {
  const [shown, show] = useState<Shown>({ state: 'loading' })
  useEffect(() => {
    let turn = 0
    const work = async () => {
      const mine = ++turn
      const latest = (next: Shown) => mine === turn && show(next)
      const wanted = await read()
      if ('state' in wanted) return latest(wanted)
      try {
        const [engine, sheet] = await Promise.all([loadEngine(), import('./sheet')])
        latest({
          state: 'brief',
          sheet,
          brief: engine.makeBrief(wanted.answers),
          compare: engine.compare(wanted.answers),
          engine,
          linked: wanted.linked,
          left: wanted.left
        })
      } catch {
        latest({ state: 'failed', retry: work })
      }
    }
    // Only another link changes what is shown; a jump within the page (the skip link) does not.
    const follow = () => readSpot(location.hash).at === 'link' && work()
    work()
    addEventListener('hashchange', follow)
    return () => removeEventListener('hashchange', follow)
  }, [])
  return shown
}
