/**
 * The clock as a store: what is asked, what of it cannot be taken, and the last setting that could be drawn. The engine
 * comes when it is first needed; until then a change waits, and nothing that was typed is lost.
 */
import { atom, type ReadableAtom } from 'nanostores'
import type { ClockAsked, ClockReport } from '../../choice/clock-types'
import type { Engine } from '../engine'
import type { PlaceName } from '../questionnaire/field-props'
import type { Library } from '../say/library'
import { linkOf, readLink } from './link'
import type { Trouble } from './read'

export type Field = keyof ClockAsked

export interface View {
  readonly asked: ClockAsked
  /** As typed, while that is what the field shows. */
  readonly typed: Readonly<Partial<Record<Field, string>>>
  readonly wrong: Readonly<Partial<Record<Field, Trouble>>>
  readonly shown: ClockReport
  readonly kept: ClockReport | null
  readonly engine: 'asleep' | 'loading' | 'ready' | 'failed'
  /** A change waits for the engine. */
  readonly waits: boolean
  readonly places: readonly PlaceName[]
  readonly library: Library
  /** The part of a link that could not be read. */
  readonly badLink: string | null
}

export interface ClockStore {
  readonly $view: ReadableAtom<View>
  /** A value that could be read; `text` where it was typed. */
  set(field: Field, value: string | number, text?: string): void
  /** Typed, and no value. */
  misread(field: Field, text: string, trouble: Trouble): void
  /** Typed so far, to be judged later: a place by name. */
  type(field: Field, text: string): void
  /** The field is left: where its text was understood it shows the value itself from here on. */
  leave(field: Field): void
  keep(): void
  drop(): void
  /** Fetch the engine; `quietly` where nobody asked for anything yet. */
  fetch(): void
  /** Show what a fragment of the address asks for. */
  open(fragment: string): void
}

interface Outside {
  readonly load: () => Promise<Engine>
  /** Put a setting into the address. `step`: one that the back button should come back from. */
  readonly address: (fragment: string, step: boolean) => void
}

/** Whether the way of drying and living uses the field at all. */
export function uses(field: Field, { seasoning, exposure }: ClockAsked): boolean {
  if (field === 'yardWeeks') return seasoning === 'air'
  if (field === 'kilnWeeks') return seasoning === 'kiln'
  return field === 'heating' ? exposure === 'heated' : true
}

const without = <T extends object>(from: T, key: keyof T): T => {
  const { [key]: _gone, ...rest } = from
  return rest as T
}

export function makeClock(first: ClockReport, given: Pick<View, 'library' | 'places'>, outside: Outside): ClockStore {
  const $view = atom<View>({
    asked: first.asked,
    typed: {},
    wrong: {},
    shown: first,
    kept: null,
    engine: 'asleep',
    waits: false,
    badLink: null,
    ...given
  })
  let engine: Engine | null = null
  /** The setting came by the address, which it need not be put into. */
  let linked = false
  /** Typing on in one field is one step back, not one a letter. */
  let typing: Field | null = null
  let step = true
  const put = (change: Partial<View>) => $view.set({ ...$view.get(), ...change })

  function judge(): void {
    if (engine === null) {
      put({ waits: true })
      wake()
      return
    }
    const { asked, wrong } = $view.get()
    const unread = Object.fromEntries(Object.entries(wrong).filter(([, why]) => why !== 'range'))
    const stuck = Object.keys(unread).some((field) => uses(field as Field, asked))
    const came = engine.clock(asked)
    if (!('problems' in came)) {
      put({ waits: false, wrong: unread, ...(stuck ? {} : { shown: came }) })
      if (!stuck && !linked) outside.address(linkOf(asked), step)
    } else if (linked) {
      example(String(asked[came.problems[0]?.field ?? 'wood']).slice(0, 40))
    } else {
      const found = Object.fromEntries(came.problems.map((p) => [p.field, p.why]))
      put({ waits: false, wrong: { ...found, ...unread } })
    }
  }

  /** The example, with a word on the part of the link that could not be read. */
  function example(badLink: string | null): void {
    linked = false
    put({ asked: first.asked, shown: first, typed: {}, wrong: {}, waits: false, badLink })
  }

  function wake(): void {
    if (engine !== null || $view.get().engine === 'loading') return
    put({ engine: 'loading' })
    outside.load().then(
      (came) => {
        engine = came
        put({ engine: 'ready', places: came.places, library: came.library })
        if ($view.get().waits) judge()
      },
      () => put({ engine: 'failed' })
    )
  }

  return {
    $view,
    set(field, value, text) {
      const { asked, typed, wrong } = $view.get()
      linked = false
      step = text === undefined || typing !== field
      typing = text === undefined ? null : field
      put({
        asked: { ...asked, [field]: value },
        typed: text === undefined ? without(typed, field) : { ...typed, [field]: text },
        wrong: without(wrong, field),
        badLink: null
      })
      judge()
    },
    misread(field, text, trouble) {
      const { typed, wrong } = $view.get()
      put({ typed: { ...typed, [field]: text }, wrong: { ...wrong, [field]: trouble } })
      wake()
    },
    type(field, text) {
      const { typed, wrong } = $view.get()
      put({ typed: { ...typed, [field]: text }, wrong: without(wrong, field) })
      wake()
    },
    leave(field) {
      typing = null
      const { typed, wrong } = $view.get()
      if (wrong[field] === undefined && typed[field] !== undefined) put({ typed: without(typed, field) })
    },
    keep: () => put({ kept: $view.get().shown }),
    drop: () => put({ kept: null }),
    fetch: wake,
    open(fragment) {
      const read = fragment === '' ? null : readLink(fragment, first.asked)
      if (!read?.ok) {
        example(read === null ? null : read.part)
        return
      }
      linked = true
      put({ asked: read.asked, typed: {}, wrong: {}, badLink: null })
      judge()
    }
  }
}
