/** The notes that figures above have asked for; stands last, since a server renders in the order of the page. */
import type { Origin } from '../../data/quantity'
import { SourceNote } from './SourceNote'
import { useShelf } from './shelf'

export function Shelf() {
  const shelf = useShelf()
  if (shelf === null) return null
  // Like beside like: alike notes pack into half the bytes when they stand near each other.
  const notes = [...shelf.notes.values()].sort((p, q) => (keyOf(p.origin) < keyOf(q.origin) ? -1 : 1))
  return (
    <div class="shelf">
      {notes.map(({ id, origin }) => (
        <span key={id} id={id} class="source" popover="auto">
          <SourceNote origin={origin} />
        </span>
      ))}
    </div>
  )
}

const keyOf = (origin: Origin): string =>
  `${origin.formula ?? ''} ${origin.sources.map((s) => s.key).join()} ${Object.keys(origin.inputs ?? {}).join()}`
