/** The invite that was opened on this device. Its sheet and answers are raw: `readInvite` checks them in use. */
import { saved } from './saved'

export interface KeptInvite {
  readonly sheet: unknown
  readonly answers: Readonly<Record<string, unknown>>
  /** Questions that the shop has settled; they are not asked. */
  readonly locked: readonly string[]
}

/** null while none is open. */
export const $invite = saved<KeptInvite | null>('bentwise.invite.1', null, (input) => {
  const { sheet, answers, locked } = (input ?? {}) as Record<string, unknown>
  return {
    value:
      sheet && answers && Array.isArray(locked)
        ? { sheet, answers: answers as KeptInvite['answers'], locked: locked.map(String) }
        : null
  }
})
