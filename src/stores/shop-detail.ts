/** Whether this device shows a brief's shop detail: off until somebody who wants it switches it on. */
import { saved } from './saved'

export const $shopDetail = saved<boolean>('bentwise.shop-detail.1', false, (input) => ({ value: input === true }))
