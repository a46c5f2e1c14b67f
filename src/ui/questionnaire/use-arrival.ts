/** What comes with the address (`#a=`, `#i=`): read once, never written over one's own without being asked. */
import { useEffect, useState } from 'preact/hooks'
import type { Answers } from '../../choice/types'
import type { Invite } from '../../shop/invite/door'
import { $answers, $notice } from '../../stores/answers'
import { $drafts } from '../../stores/drafts'
import { $invite } from '../../stores/invite'
import { OVERVIEW_HASH, readSpot } from './flow'

export interface Arrived {
  readonly answers: Answers
  readonly problems: readonly string[]
  /** With an invite. */
  readonly invite?: Invite
  /** Questions that one has answered otherwise oneself. */
  readonly clashes: readonly string[]
}

export interface Arriving {
  readonly arrived: Arrived | null
  /** @param whose whose answer stands where both have one; what an invite has settled holds either way */
  readonly take: (whose: 'theirs' | 'mine') => void
  readonly keep: () => void
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)
const only = (answers: Answers, ids: readonly string[]): Answers =>
  Object.fromEntries(Object.entries(answers).filter(([id]) => ids.includes(id)))

/** The answers once an invite is open. */
function merged({ answers, invite }: Arrived, own: Answers, whose: 'theirs' | 'mine'): Answers {
  const both = whose === 'theirs' ? { ...own, ...answers } : { ...answers, ...own }
  return { ...both, ...only(answers, invite?.locked ?? []) }
}

/** What was typed for an answer that has just been replaced goes with it; the rest of the drafts stay. */
function dropDrafts(replaced: readonly string[]): void {
  $drafts.set(
    Object.fromEntries(Object.entries($drafts.get()).filter(([id]) => !replaced.includes(id.split('.')[0] ?? '')))
  )
}

export function useArrival(onTaken: (invited: boolean) => void): Arriving {
  const [arrived, setArrived] = useState<Arrived | null>(null)

  const take = (it: Arrived, whose: 'theirs' | 'mine') => {
    const own = $answers.get()
    if (it.invite) {
      const next = merged(it, own, whose)
      dropDrafts(Object.keys(next).filter((id) => !same(next[id], own[id])))
      $answers.set(next)
      $invite.set({ ...it.invite })
      if (it.problems.length > 0) $notice.set(`Left out of the invite: ${it.problems.join(' ')}`)
    } else {
      $drafts.set({})
      // What an open invite has settled stays settled.
      $answers.set({ ...it.answers, ...only(own, $invite.get()?.locked ?? []) })
      $notice.set(['The answers from the link are in place. Change any of them.', ...it.problems].join(' '))
    }
    setArrived(null)
    onTaken(it.invite !== undefined)
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
      const own = $answers.get()
      const { answers, sheet, locked = [] } = link
      const clashes = Object.keys(answers).filter((id) => own[id] !== undefined && !same(own[id], answers[id]))
      const next: Arrived = {
        answers,
        problems: link.problems.map((p) => p.says),
        clashes,
        ...(sheet && { invite: { sheet, answers, locked } })
      }
      const kept = $invite.get()
      const another = kept !== null && sheet !== undefined && !same(kept.sheet, sheet)
      // A plain link replaces all answers; an invite only adds where there is none.
      const none = Object.keys(own).length === 0 || same(Object.entries(own).sort(), Object.entries(answers).sort())
      const asks = sheet === undefined ? !none : clashes.length > 0 || another
      if (asks) setArrived(next)
      else take(next, 'theirs')
    }
    read()
    addEventListener('hashchange', read)
    return () => removeEventListener('hashchange', read)
  }, [])

  return { arrived, take: (whose) => arrived !== null && take(arrived, whose), keep: () => setArrived(null) }
}
