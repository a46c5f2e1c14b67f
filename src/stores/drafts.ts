/** What was typed and is not, or not yet, an answer. Kept, so that nothing typed is ever lost. */
import { saved } from './saved'

export type Drafts = Readonly<Record<string, string>>

const LONGEST = 200

function read(input: unknown): { value: Drafts } {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) return { value: {} }
  const texts = Object.entries(input).filter((entry): entry is [string, string] => typeof entry[1] === 'string')
  return { value: Object.fromEntries(texts.slice(0, 100).map(([key, text]) => [key, text.slice(0, LONGEST)])) }
}

export const $drafts = saved<Drafts>('bentwise.drafts.1', {}, read)

/** `field` is a question's id, or `id.0` and `id.1` where it has two fields. */
export function setDraft(field: string, text: string | undefined): void {
  const { [field]: _old, ...rest } = $drafts.get()
  $drafts.set(text === undefined ? rest : { ...rest, [field]: text.slice(0, LONGEST) })
}
