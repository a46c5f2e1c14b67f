/** Work of the engine that somebody waits for, in slices that let the page draw and listen between them. */
import type { Steps } from '../choice/steps'

/** At a stretch, ms: a frame, so that a scroll or a press is never held up for long. */
const STRETCH = 16

/** The next turn of the page; unlike a timer it is not held back after a few. */
const turn = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel()
    port1.onmessage = () => {
      port1.close()
      resolve()
    }
    port2.postMessage(null)
  })

export async function inSlices<T>(steps: Steps<T>): Promise<T> {
  let step = steps.next()
  let until = performance.now() + STRETCH
  while (!step.done) {
    if (performance.now() >= until) {
      await turn()
      until = performance.now() + STRETCH
    }
    step = steps.next()
  }
  return step.value
}
