/** Work done in steps, kept by the answers that it was done for. */
import type { Steps } from '../steps'
import type { Answers } from '../types'

/** Enough for going back and forth between some answers. */
const MOST = 24

/** The same answers in whatever order they were given. */
export const answersKey = (answers: Answers): string =>
  JSON.stringify(Object.entries(answers).sort(([p], [q]) => (p < q ? -1 : 1)))

/** What was finished before for the same answers is there at the first step; what was broken off is begun anew. */
export function remembered<T>(work: (answers: Answers) => Steps<T>): (answers: Answers) => Steps<T> {
  const done = new Map<string, T>()
  return function* (answers) {
    const key = answersKey(answers)
    const known = done.get(key)
    if (known !== undefined) return known
    const value = yield* work(answers)
    const [oldest] = done.keys()
    if (done.size >= MOST && oldest !== undefined) done.delete(oldest)
    done.set(key, value)
    return value
  }
}
