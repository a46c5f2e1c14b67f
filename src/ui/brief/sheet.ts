/** All that draws a brief: one chunk, loaded beside the engine once it is known that there is a brief to draw. */
export { InviteNote } from '../invite/InviteNote'
export { ShopLine } from '../invite/ShopLine'
export { plainSentence } from '../say/sentence'
export { Actions } from './Actions'
export { BriefView } from './BriefView'
export { Linked } from './Linked'
