/** Answers in the address (`#a=`): read once, never written over one's own without being asked. */
import { useEffect, useState } from 'preact/hooks'
import type { Answers } from '../../choice/types'
import { $answers, $notice } from '../../stores/answers'
import { $drafts } from '../../stores/drafts'
import { OVERVIEW_HASH, readSpot } from './flow'

export interface Arrived {
  readonly answers: Answers
  readonly problems: readonly string[]
}

export interface Arriving {
  readonly arrived: Arrived | null
  readonly take: () => void
  readonly keep: () => void
}

export function useArrival(goOverview: () => void): Arriving {
  const [arrived, setArrived] = useState<Arrived | null>(null)

  const take = (link: Arrived) => {
    $drafts.set({})
    $answers.set(link.answers)
    setArrived(null)
    $notice.set(['The answers from the link are in place. Change any of them.', ...link.problems].join(' '))
    goOverview()
  }

  useEffect(() => {
    const read = async () => {
      const spot = readSpot(location.hash)
      if (spot.at !== 'link') return
      const { decodeLink } = await import('../../shop/link')
      const link = decodeLink(spot.code)
      // Out of the address at once: a reload must not ask again, and Back must not bring it back.
      history.replaceState(null, '', link.ok ? OVERVIEW_HASH : location.pathname)
      if (!link.ok) return $notice.set(`${link.says} Your own answers are as they were.`)
      const next: Arrived = { answers: link.answers, problems: link.problems.map((p) => p.says) }
      const own = $answers.get()
      const same = JSON.stringify(Object.entries(own).sort()) === JSON.stringify(Object.entries(next.answers).sort())
      if (Object.keys(own).length === 0 || same) take(next)
      else setArrived(next)
    }
    read()
    addEventListener('hashchange', read)
    return () => removeEventListener('hashchange', read)
  }, [])

  return { arrived, take: () => arrived !== null && take(arrived), keep: () => setArrived(null) }
}
