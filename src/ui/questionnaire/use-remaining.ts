/** Which questions left could still change anything, kept up with the answers: worked off beside the question, read by whoever shows it. */
import { atom } from 'nanostores'
import { useEffect } from 'preact/hooks'
import type { Remaining } from '../../choice/firm/remaining'
import type { Answers } from '../../choice/types'
import type { Engine } from '../engine'
import { useWorked } from '../use-worked'

/** null while it is worked off. */
export const $remaining = atom<Remaining | null>(null)

export function useRemaining(engine: Engine | null, answers: Answers): void {
  const worked = useWorked(engine === null ? null : () => engine.remaining(answers), [engine, answers])
  useEffect(() => $remaining.set(worked), [worked])
}
