/** The bench as a store: one setting, judged as it changes. Parts of the page follow only what they show. */
import { atom, type ReadableAtom } from 'nanostores'
import { createContext } from 'preact'
import { useContext, useEffect, useState } from 'preact/hooks'
import { type Bench, type BenchWood, judge, startBench, type View } from './model'

export interface BenchStore {
  readonly $view: ReadableAtom<View>
  readonly woods: readonly BenchWood[]
  change(how: (asked: Bench) => Bench): void
}

export function makeBench(woods: readonly BenchWood[], start: string): BenchStore {
  const wood = woods.find((w) => w.id === start) ?? woods[0]
  if (wood === undefined) throw new Error('no wood to show')
  const $view = atom<View>(judge(startBench(wood), null))
  return {
    $view,
    woods,
    change(how) {
      const last = $view.get()
      $view.set(judge(how(last.asked), last))
    }
  }
}

const Here = createContext<BenchStore | null>(null)
export const BenchProvider = Here.Provider

export function useBench(): BenchStore {
  const bench = useContext(Here)
  if (bench === null) throw new Error('no bench')
  return bench
}

/** Redraws only when the part itself changes, so that a dragged piece does not redraw the whole form. */
export function usePart<T>(pick: (view: View) => T): T {
  const { $view } = useBench()
  const [part, keep] = useState(() => ({ of: pick($view.get()) }))
  useEffect(() => {
    const follow = () => keep((old) => (Object.is(old.of, pick($view.get())) ? old : { of: pick($view.get()) }))
    follow()
    return $view.listen(follow)
  }, [$view, pick])
  return part.of
}
const whole = (view: View): View => view
export const useView = (): View => usePart(whole)
