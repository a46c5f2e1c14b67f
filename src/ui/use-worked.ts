/** Work of the engine done while the page is idle: a step at a time, so that it never stalls, and called off by newer answers. */
import { useEffect, useState } from 'preact/hooks'
import type { Steps } from '../choice/steps'

/** Work at most this long at a stretch, ms: half a frame. */
const STRETCH = 8
/** Left alone first for so long, ms: nobody is typing, and what was just drawn is on the screen. */
const PAUSE = 300

/**
 * @param start begins the work; null while it cannot begin
 * @param on what it hangs on, compared as an effect's dependencies are
 * @returns null until it is done
 */
export function useWorked<T>(start: (() => Steps<T>) | null, on: readonly unknown[]): T | null {
  const [worked, show] = useState<T | null>(null)
  useEffect(() => {
    if (start === null) return show(null)
    const steps = start()
    // What was worked off before is there at once.
    const first = steps.next()
    if (first.done) return show(() => first.value)
    show(null)
    let timer = setTimeout(work, PAUSE)
    function work() {
      const until = performance.now() + STRETCH
      let step = steps.next()
      while (!step.done && performance.now() < until) step = steps.next()
      const { done, value } = step
      if (done) show(() => value)
      else timer = setTimeout(work)
    }
    return () => clearTimeout(timer)
  }, on)
  return worked
}
