/**
 * A bench as a store: what is asked, what of it cannot be taken, and the last setting that could be drawn. The engine
 * comes when it is first needed; until then a change waits, and nothing that was typed is lost.
 */
import { atom, type ReadableAtom } from 'nanostores'
import type { Engine } from '../engine'
import type { PlaceName } from '../questionnaire/field-props'
import type { Library } from '../say/library'

export type Trouble = 'unread' | 'range' | 'unknown'
type FieldOf<A> = keyof A & string

export interface BenchView<A, R> {
  readonly asked: A
  /** As typed, while that is what the field shows. */
  readonly typed: Readonly<Partial<Record<FieldOf<A>, string>>>
  readonly wrong: Readonly<Partial<Record<FieldOf<A>, Trouble>>>
  readonly shown: R
  readonly kept: R | null
  readonly engine: 'asleep' | 'loading' | 'ready' | 'failed'
  /** A change waits for the engine. */
  readonly waits: boolean
  readonly places: readonly PlaceName[]
  readonly library: Library
  /** The part of a link that could not be read. */
  readonly badLink: string | null
}

export interface BenchStore<A, R> {
  readonly $view: ReadableAtom<BenchView<A, R>>
  /** A value that could be read; `text` where it was typed. */
  set(field: FieldOf<A>, value: string | number, text?: string): void
  /** Typed, and no value. */
  misread(field: FieldOf<A>, text: string, trouble: Trouble): void
  /** Typed so far, to be judged later: a place by name. */
  type(field: FieldOf<A>, text: string): void
  /** The field is left: where its text was understood it shows the value itself from here on. */
  leave(field: FieldOf<A>): void
  keep(): void
  drop(): void
  /** Fetch the engine; `quietly` where nobody asked for anything yet. */
  fetch(): void
  /** Show what a fragment of the address asks for. */
  open(fragment: string): void
}

export interface Outside {
  readonly load: () => Promise<Engine>
  /** Put a setting into the address. `step`: one that the back button should come back from. */
  readonly address: (fragment: string, step: boolean) => void
}

/** What a bench is about. */
export interface Way<A, R> {
  readonly report: (
    engine: Engine,
    asked: A
  ) => R | { readonly problems: readonly { readonly field: FieldOf<A>; readonly why: 'unknown' | 'range' }[] }
  /** Whether the rest of the setting uses the field at all. */
  readonly uses: (field: FieldOf<A>, asked: A) => boolean
  readonly linkOf: (asked: A) => string
  readonly readLink: (
    fragment: string,
    usual: A
  ) => { readonly ok: true; readonly asked: A } | { readonly ok: false; readonly part: string }
  /** What follows from a choice for other fields. */
  readonly settle?: (asked: A) => A
}

const without = <T extends object>(from: T, key: keyof T): T => {
  const { [key]: _gone, ...rest } = from
  return rest as T
}

export function makeBench<A extends object, R extends { readonly asked: A }>(
  first: R,
  given: Pick<BenchView<A, R>, 'library' | 'places'>,
  outside: Outside,
  way: Way<A, R>
): BenchStore<A, R> {
  type View = BenchView<A, R>
  type Field = FieldOf<A>
  const none = {} as View['typed'] & View['wrong']
  const $view = atom<View>({
    asked: first.asked,
    typed: none,
    wrong: none,
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
    const unread = Object.fromEntries(Object.entries(wrong).filter(([, why]) => why !== 'range')) as View['wrong']
    const stuck = Object.keys(unread).some((field) => way.uses(field as Field, asked))
    const came = way.report(engine, asked)
    if (!('problems' in came)) {
      put({ waits: false, wrong: unread, ...(stuck ? {} : { shown: came }) })
      if (!stuck && !linked) outside.address(way.linkOf(asked), step)
    } else if (linked) {
      const [problem] = came.problems
      example(problem?.why === 'unknown' ? String(asked[problem.field]).slice(0, 40) : '')
    } else {
      const found = Object.fromEntries(came.problems.map((p) => [p.field, p.why])) as View['wrong']
      put({ waits: false, wrong: { ...found, ...unread } })
    }
  }

  /** The example, with a word on the part of the link that could not be read. */
  function example(badLink: string | null): void {
    linked = false
    put({ asked: first.asked, shown: first, typed: none, wrong: none, waits: false, badLink })
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
      const next: A = { ...asked, [field]: value }
      put({
        asked: way.settle ? way.settle(next) : next,
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
      const read = fragment === '' ? null : way.readLink(fragment, first.asked)
      if (!read?.ok) {
        example(read === null ? null : read.part)
        return
      }
      linked = true
      put({ asked: read.asked, typed: none, wrong: none, badLink: null })
      judge()
    }
  }
}
