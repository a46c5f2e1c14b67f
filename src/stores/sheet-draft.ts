/** The shop sheet as it is being written, kept on this device whether it is whole or not. */
import { BLANK, type Draft } from '../shop/sheet/draft'
import { saved } from './saved'

const LONGEST = 4000
const MOST = 1200

function texts(input: unknown): Draft | null {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) return null
  const found = Object.entries(input).filter((entry): entry is [string, string] => typeof entry[1] === 'string')
  return Object.fromEntries(found.slice(0, MOST).map(([field, text]) => [field.slice(0, 100), text.slice(0, LONGEST)]))
}

export const $sheetDraft = saved<Draft>('bentwise.sheet-draft.1', BLANK, (input) => {
  const value = texts(input)
  return value === null
    ? { value: BLANK, problem: 'The saved shop sheet could not be read and was set aside.' }
    : { value }
})

/** What stood in the form before it was last filled from somewhere else, to be put back; null where there is nothing. */
export const $sheetAside = saved<Draft | null>('bentwise.sheet-draft.before', null, (input) => ({
  value: texts(input)
}))
