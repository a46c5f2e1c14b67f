/** The sheet that the form is about, for whatever part of the form needs it. */
import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import type { Draft } from '../../shop/sheet/draft'
import type { DraftRead } from '../../shop/sheet/read'
import type { FieldWord } from '../../shop/sheet/reader'
import type { FormGiven } from './given'

export interface Here {
  readonly given: Pick<FormGiven, 'woods' | 'regions'> & Partial<FormGiven>
  readonly draft: Draft
  readonly read: DraftRead
  readonly nameOf: (wood: string) => string
  /** Fields that were left, so that an empty one may be complained of. */
  readonly left: ReadonlySet<string>
  readonly set: (field: string, text: string) => void
  readonly leave: (field: string) => void
  /** A change that takes nothing away. */
  readonly put: (next: Draft, says: string) => void
  /** Another draft in place of this one, which is put aside; `says` what happened. */
  readonly replace: (next: Draft, says: string) => void
}
const Context = createContext<Here | null>(null)
export const SheetProvider = Context.Provider

export function useSheet(): Here {
  const here = useContext(Context)
  if (here === null) throw new Error('no sheet')
  return here
}

export const idOf = (field: string): string => `sheet-${field.replaceAll('.', '-')}`

/** What is to be said at a field: a complaint, or a caution. Empty fields are complained of once they were left. */
export function useWord(field: string): { readonly says: string; readonly wrong: boolean } | null {
  const { read, left } = useSheet()
  const of = (list: readonly FieldWord[]) => list.find((one) => one.field === field)
  const problem = of(read.problems)
  if (problem && (!problem.missing || left.has(field))) return { says: problem.says, wrong: true }
  const caution = of(read.cautions)
  return caution ? { says: caution.says, wrong: false } : null
}

/** Whether a field whose name begins so cannot be taken. */
export function useWrong(...starts: readonly string[]): boolean {
  const { read } = useSheet()
  return read.problems.some(({ field }) => starts.some((start) => field.startsWith(start)))
}

/** Go to a field, opening what it lies in. */
export function goTo(field: string): void {
  const target = document.getElementById(idOf(field))
  for (let at = target?.parentElement; at; at = at.parentElement) if (at instanceof HTMLDetailsElement) at.open = true
  target?.focus()
  target?.scrollIntoView({ block: 'center' })
}
