/** A sentence whose figures open, on a page without script: the popover is the browser's own. */
import type { Sentence } from '../../data/quantity'
import { type Library, LibraryProvider } from '../say/library'
import { Say } from '../say/Say'

export function OpenSentence({ s, library }: { readonly s: Sentence; readonly library: Library }) {
  return (
    <LibraryProvider value={library}>
      <Say s={s} />
    </LibraryProvider>
  )
}
