/** The list of what would change the brief, worked off while the page is idle: a step at a time, so that it never stalls. */
import { useEffect, useState } from 'preact/hooks'
import type { Answers } from '../../choice/types'
import type { WhatIf } from '../../choice/what-if'
import type { Engine } from '../engine'

/** Work at most this long at a stretch, ms: half a frame. */
const STRETCH = 8

export function useWhatIf(engine: Engine, answers: Answers): WhatIf | null {
  const [list, show] = useState<WhatIf | null>(null)
  useEffect(() => {
    show(null)
    const steps = engine.whatIf(answers)
    let timer: ReturnType<typeof setTimeout>
    const work = () => {
      const until = performance.now() + STRETCH
      let step = steps.next()
      while (!step.done && performance.now() < until) step = steps.next()
      if (step.done) show(step.value)
      else timer = setTimeout(work)
    }
    timer = setTimeout(work, 300)
    return () => clearTimeout(timer)
  }, [engine, answers])
  return list
}
