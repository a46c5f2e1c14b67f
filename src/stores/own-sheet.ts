/** The framer's own shop sheet, kept on this device. Raw, so that no page pays for its schema: `readSheet` checks it in use. */
import { saved } from './saved'

/** null until a sheet was made or opened. */
export const $ownSheet = saved<unknown>('bentwise.sheet.1', null, (input) => ({ value: input ?? null }))
