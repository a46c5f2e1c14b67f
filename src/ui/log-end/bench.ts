/**
 * The bench as a store: one setting, judged as it changes. The picture follows every change; words and fields follow
 * a piece on the move a few times a second, so that each step of it is drawn within a frame.
 */
import { atom, type ReadableAtom } from 'nanostores'
import { createContext } from 'preact'
import { useContext, useEffect, useState } from 'preact/hooks'
import { type Bench, type BenchWood, judge, startBench, type View } from './model'

export interface BenchStore {
  /** What the picture shows. */
  readonly $view: ReadableAtom<View>
  /** What is written: the same, except while the piece moves. */
  readonly $told: ReadableAtom<View>
  readonly woods: readonly BenchWood[]
  /** What is set, told at once. */
  change(how: (asked: Bench) => Bench): void
  /** One of many steps: drawn at once, told when some have gathered. */
  move(how: (asked: Bench) => Bench): void
}

const TOLD_EVERY_MS = 200

export function makeBench(woods: readonly BenchWood[], start: string): BenchStore {
  const wood = woods.find((w) => w.id === start) ?? woods[0]
  if (wood === undefined) throw new Error('no wood to show')
  const $view = atom<View>(judge(startBench(wood), null))
  const $told = atom<View>($view.get())
  const draw = (how: (asked: Bench) => Bench) => $view.set(judge(how($view.get().asked), $view.get()))
  let waiting: ReturnType<typeof setTimeout> | undefined
  const tell = () => {
    clearTimeout(waiting)
    waiting = undefined
    $told.set($view.get())
  }
  return {
    $view,
    $told,
    woods,
    change(how) {
      draw(how)
      tell()
    },
    move(how) {
      draw(how)
      waiting ??= setTimeout(tell, TOLD_EVERY_MS)
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

/** Redraws only when the part itself changes. */
function useFollowed<T>($view: ReadableAtom<View>, pick: (view: View) => T): T {
  const [part, keep] = useState(() => ({ of: pick($view.get()) }))
  useEffect(() => {
    const follow = () => keep((old) => (Object.is(old.of, pick($view.get())) ? old : { of: pick($view.get()) }))
    follow()
    return $view.listen(follow)
  }, [$view, pick])
  return part.of
}
const whole = (view: View): View => view
export const useDrawn = (): View => useFollowed(useBench().$view, whole)
export const useView = (): View => useFollowed(useBench().$told, whole)
export const usePart = <T>(pick: (view: View) => T): T => useFollowed(useBench().$told, pick)
