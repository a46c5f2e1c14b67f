/** What every saved store shares: text in, a checked value out; what cannot be read is put aside, never lost. */
import {
  type PersistentEvents,
  persistentAtom,
  setPersistentEngine,
  windowPersistentEvents
} from '@nanostores/persistent'
import type { ReadableAtom, WritableAtom } from 'nanostores'

type Box = Record<string, string>

/** The browser's storage, or a plain object where it is shut (private windows, full disks). */
function storage(): Box {
  try {
    return localStorage as unknown as Box
  } catch {
    return {}
  }
}

/** Writing may fail at any time, when the disk is full for one; the page then goes on from memory. */
const engine: Box = new Proxy(typeof window === 'undefined' ? {} : storage(), {
  set(target, key: string, value: string) {
    try {
      target[key] = value
    } catch {}
    return true
  },
  deleteProperty(target, key: string) {
    delete target[key]
    return true
  },
  get: (target, key: string) => target[key]
})

if (typeof window !== 'undefined') setPersistentEngine(engine, windowPersistentEvents as PersistentEvents)

export interface Read<T> {
  readonly value: T
  /** What was wrong with the saved text; then the text is put aside under another key. */
  readonly problem?: string
}

const starts = new WeakMap<object, unknown>()

/** What a saved store holds before storage is read: the value that the server rendered with. */
export function startOf<T>(store: ReadableAtom<T>): T {
  return (starts.has(store) ? starts.get(store) : (store as ReadableAtom<T> & { init: T }).init) as T
}

/** Saves under `key`; `read` gets whatever JSON was there and must not throw. */
export function saved<T>(
  key: string,
  initial: T,
  read: (input: unknown) => Read<T>,
  onProblem: (says: string) => void = () => {}
): WritableAtom<T> {
  let mended = false
  const decode = (text: string): T => {
    const result = parse(text, read, initial)
    if (result.problem !== undefined) {
      engine[`${key}.aside`] = text
      mended = true
      onProblem(result.problem)
    }
    return result.value
  }
  const store = persistentAtom<T>(key, initial, { encode: JSON.stringify, decode })
  starts.set(store, initial)
  if (mended) store.set(store.get())
  return store
}

function parse<T>(text: string, read: (input: unknown) => Read<T>, initial: T): Read<T> {
  try {
    return read(JSON.parse(text))
  } catch {
    return {
      value: initial,
      problem: 'What was saved on this device could not be read and was set aside. You can start afresh.'
    }
  }
}
