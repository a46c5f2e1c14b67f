/** What the answers settle, kept up with them without ever holding up a keystroke. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Settled } from '../../choice/settle'
import type { Answers } from '../../choice/types'
import { $invite } from '../../stores/invite'
import { useSaved } from '../../stores/use-saved'
import type { Engine, Glance } from '../engine'
import { sheetInForce } from '../invite/in-force'
import type { Known } from '../pictures/QuestionPicture'
import type { Learnt } from './field-props'
import { useRemaining } from './use-remaining'

export interface Live {
  readonly settled: Settled | null
  /** What just changed, in words, for the live region. */
  readonly news: string
  readonly failed: boolean
  readonly retry: () => void
}

export function newsOf(before: Settled | null, after: Settled): string {
  if (before === null) return ''
  const inBefore = new Map(before.woods.map((wood) => [wood.species, wood.in]))
  const gone = after.woods.filter((wood) => !wood.in && inBefore.get(wood.species) === true).map((wood) => wood.short)
  const back = after.woods.filter((wood) => wood.in && inBefore.get(wood.species) === false).map((wood) => wood.short)
  const leader = after.woods.find((wood) => wood.lead)
  const changed = leader !== undefined && before.woods.find((wood) => wood.lead)?.species !== leader.species
  const parts = [
    gone.length > 0 ? `Out: ${gone.join(', ')}.` : '',
    back.length > 0 ? `Back in: ${back.join(', ')}.` : '',
    changed ? `${leader.short} now leads.` : ''
  ].filter(Boolean)
  return parts.length === 0 ? '' : `${parts.join(' ')} ${after.inCount} woods in, ${after.outCount} out.`
}

/** What the pictures take of it. */
function knownFrom({ gap, share, ...rest }: Glance): Known {
  return {
    ...rest,
    gap: typeof gap?.value === 'number' ? gap.value : undefined,
    share: typeof share?.value === 'number' ? share.value : undefined
  }
}

/** Runs after the next frame, unless called off. */
function afterFrame(work: () => void): () => void {
  let timer = 0
  const frame = requestAnimationFrame(() => {
    timer = window.setTimeout(work)
  })
  return () => {
    cancelAnimationFrame(frame)
    clearTimeout(timer)
  }
}

export function useSettled(answers: Answers, onLearn: (learnt: Learnt) => void): Live {
  const [engine, setEngine] = useState<Engine | null>(null)
  const [settled, setSettled] = useState<Settled | null>(null)
  const [news, setNews] = useState('')
  const [attempt, setAttempt] = useState(0)
  const [failed, setFailed] = useState(false)
  const last = useRef<Settled | null>(null)
  const invite = useSaved($invite)

  useEffect(() => {
    setFailed(false)
    let gone = false
    const ready = (it: Engine) => {
      if (gone) return
      // Another shop's woods are no news of an answer.
      last.current = null
      setEngine(it)
      onLearn({ places: it.places, known: {} })
    }
    sheetInForce().then(
      (force) => ready(force.engine),
      () => setFailed(true)
    )
    return () => {
      gone = true
    }
  }, [attempt, invite])

  useEffect(() => {
    if (engine === null) return
    // After the frame that shows the answer itself; a newer answer calls off the older one's turn.
    return afterFrame(() => {
      const next = engine.settle(answers)
      const said = newsOf(last.current, next)
      last.current = next
      setSettled(next)
      if (said !== '') setNews(said)
    })
  }, [engine, answers])

  useEffect(() => {
    if (engine === null) return
    // Not while someone is typing.
    const timer = setTimeout(() => onLearn({ places: engine.places, known: knownFrom(engine.glance(answers)) }), 200)
    return () => clearTimeout(timer)
  }, [engine, answers])

  useRemaining(engine, answers)

  return { settled, news, failed, retry: () => setAttempt((n) => n + 1) }
}
