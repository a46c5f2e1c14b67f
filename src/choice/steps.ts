/** Work in small steps, so that a page can stay awake between them. */

/** Each step that is yielded has judged the job once; the last value is what was asked for. */
export type Steps<T> = Generator<void, T>

/** All of it at once. */
export function toEnd<T>(steps: Steps<T>): T {
  let step = steps.next()
  while (!step.done) step = steps.next()
  return step.value
}
