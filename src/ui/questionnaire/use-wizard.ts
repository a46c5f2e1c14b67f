/** Which question is shown, in step with the address, the browser's own Back, and the saved spot. */
import { useEffect, useState } from 'preact/hooks'
import { askedQuestions, QUESTIONS } from '../../choice/questions'
import type { Answers, Question } from '../../choice/types'
import { $at } from '../../stores/place'
import { firstOpen, OVERVIEW_HASH, questionHash, readSpot, settleOn } from './flow'

export interface Wizard {
  readonly asked: readonly Question[]
  readonly current: Question
  readonly overview: boolean
  /** Counts the moves, so that a step can tell the first view from an arrival. */
  readonly moves: number
  readonly go: (id: string) => void
  readonly goOverview: () => void
  readonly step: (by: -1 | 1) => boolean
}

/** @param settled questions that an invite has settled: not asked */
export function useWizard(answers: Answers, settled: readonly string[]): Wizard {
  const asked = askedQuestions(answers).filter((q) => !settled.includes(q.id))
  const [wanted, want] = useState('')
  const [overview, setOverview] = useState(false)
  const [moves, setMoves] = useState(0)
  const current = settleOn(wanted, asked, QUESTIONS) ?? (QUESTIONS[0] as Question)

  useEffect(() => {
    const follow = (event?: Event) => {
      const spot = readSpot(location.hash)
      // A jump within the page (the skip link) is no move.
      if (event !== undefined && spot.at === 'none' && location.hash !== '') return
      setOverview(spot.at === 'overview')
      if (spot.at === 'question') want(spot.id)
      if (event !== undefined) setMoves((n) => n + 1)
    }
    const spot = readSpot(location.hash)
    if (spot.at === 'none') want($at.get() || (firstOpen(askedQuestions(answers), answers)?.id ?? ''))
    follow()
    addEventListener('popstate', follow)
    return () => removeEventListener('popstate', follow)
  }, [])

  const move = (hash: string) => {
    history.pushState(null, '', hash)
    setMoves((n) => n + 1)
  }
  const go = (id: string) => {
    want(id)
    setOverview(false)
    $at.set(id)
    move(questionHash(id))
  }
  return {
    asked,
    current,
    overview,
    moves,
    go,
    goOverview: () => {
      setOverview(true)
      move(OVERVIEW_HASH)
    },
    step: (by) => {
      const next = asked[asked.indexOf(current) + by]
      if (next !== undefined) go(next.id)
      return next !== undefined
    }
  }
}
