/** The invite that a framer is making: kept, so that nothing typed is lost. Checked by the doors when it is used. */
import { saved } from './saved'

export interface InviteDraft {
  readonly answers: Readonly<Record<string, unknown>>
  readonly locked: readonly string[]
  /** Parts of the sheet that are left out of the link. */
  readonly leave: readonly string[]
  readonly correction: string
  /** The words sent with the link; null for ours. */
  readonly words: string | null
}

const NOTHING: InviteDraft = { answers: {}, locked: [], leave: [], correction: 'M', words: null }
/** Longest text kept, characters. Our own practice. */
const LONGEST = 2000

const texts = (input: unknown): string[] =>
  Array.isArray(input) ? input.filter((x) => typeof x === 'string').slice(0, 100) : []

export const $inviteDraft = saved<InviteDraft>('bentwise.invite-draft.1', NOTHING, (input) => {
  const it = (typeof input === 'object' && input !== null ? input : {}) as Record<string, unknown>
  const answers = it['answers']
  return {
    value: {
      answers: typeof answers === 'object' && answers !== null ? (answers as InviteDraft['answers']) : {},
      locked: texts(it['locked']),
      leave: texts(it['leave']),
      correction: typeof it['correction'] === 'string' ? it['correction'] : 'M',
      words: typeof it['words'] === 'string' ? it['words'].slice(0, LONGEST) : null
    }
  }
})

export const changeDraft = (change: Partial<InviteDraft>): void =>
  $inviteDraft.set({ ...$inviteDraft.get(), ...change })
