/** All that draws a brief: one chunk, loaded beside the engine once it is known that there is a brief to draw. */
export { inSlices } from '../in-slices'
export { InviteNote } from '../invite/InviteNote'
export { plainSentence } from '../say/sentence'
export { Linked } from './Linked'
export { WorkedBrief } from './WorkedBrief'
