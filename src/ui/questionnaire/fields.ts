/** What the first question does not need: one chunk and its style sheet, loaded at the first touch. */
import sheet from './later.css?url'

/** Settles once the style sheet is in place, or cannot be had: bare controls are better than none. */
export const styled = new Promise<void>((done) => {
  const link = document.createElement('link')
  link.rel = 'stylesheet'
  link.href = sheet
  link.onload = () => done()
  link.onerror = () => done()
  document.head.append(link)
})

export { InviteNote } from '../invite/InviteNote'
export { suggestedBy } from '../invite/marks'
export { QuestionPicture } from '../pictures/QuestionPicture'
export { Arrival } from './Arrival'
export { complaintOf } from './complaint'
export { NumberField } from './NumberField'
export { OrderField } from './OrderField'
export { Overview } from './Overview'
export { PlaceField } from './PlaceField'
export { SectionField } from './SectionField'
export { Woods } from './Woods'
export { Why, WordsHere } from './Words'
export { withDraft } from './words'
