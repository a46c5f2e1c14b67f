/** Which question the person was at. */
import { saved } from './saved'

export const $at = saved<string>('bentwise.at.1', '', (input) => ({
  value: typeof input === 'string' ? input.slice(0, 60) : ''
}))
