/** The notes that figures above have asked for; stands last, since a server renders in the order of the page. */
import { SourceNote } from './SourceNote'
import { useShelf } from './shelf'

export function Shelf() {
  const shelf = useShelf()
  if (shelf === null) return null
  return (
    <div class="shelf">
      {[...shelf.notes.values()].map(({ id, origin }) => (
        <span key={id} id={id} class="source" popover="auto">
          <SourceNote origin={origin} />
        </span>
      ))}
    </div>
  )
}
