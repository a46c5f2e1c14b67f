/** What an opened invite says of a single question. Read from the store as kept: names are shown as text, never trusted. */
import type { Answer, Answers } from '../../choice/types'
import type { Given } from '../../shop/link'
import type { KeptInvite } from '../../stores/invite'

export function shopName(invite: KeptInvite): string {
  const name = (invite.sheet as { name?: unknown } | null)?.name
  return typeof name === 'string' && name.trim() !== '' ? name.slice(0, 80) : 'the shop'
}

/** Whether the answer stands as the shop suggested it. */
export const isSuggested = (invite: KeptInvite | null, question: string, answer: Answer | undefined): boolean =>
  invite !== null &&
  answer !== undefined &&
  !invite.locked.includes(question) &&
  JSON.stringify(invite.answers[question]) === JSON.stringify(answer)

/** The line at a question whose answer the shop suggested and nobody has changed, or null. */
export const suggestedBy = (invite: KeptInvite | null, question: string, answer: Answer | undefined): string | null =>
  invite !== null && isSuggested(invite, question, answer)
    ? `Suggested by ${shopName(invite)}. Change it if it does not fit.`
    : null

/** Which of the answers came with the invite and stand as they came. */
export const givenIn = (invite: KeptInvite, answers: Answers): Given => ({
  settled: invite.locked.filter((id) => Object.hasOwn(answers, id)),
  suggested: Object.keys(answers).filter((id) => isSuggested(invite, id, answers[id]))
})
