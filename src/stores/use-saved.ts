/**
 * The one way for a component to read a store. What is saved is known only in the browser, so the first render
 * there repeats the server's (the store's initial value) and the saved value follows at once; otherwise hydration
 * would keep half of the server's attributes.
 *
 * Redraws without delay: nanostores' own hook waits for a timeout, and a field that its parent draws with the value
 * of one keystroke ago loses letters to a fast typist.
 */
import type { ReadableAtom } from 'nanostores'
import { useEffect, useState } from 'preact/hooks'
import { startOf } from './saved'

export function useSaved<T>(store: ReadableAtom<T>): T {
  const [hydrated, hydrate] = useState(false)
  const [, redraw] = useState({})
  useEffect(() => {
    hydrate(true)
    return store.listen(() => redraw({}))
  }, [store])
  return hydrated ? store.get() : startOf(store)
}
