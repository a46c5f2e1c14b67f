/**
 * A button that opens a note by the browser's own popover, so that it works without script and by keyboard.
 * Where there is script the note is filled when it is first opened: a brief has some hundreds of figures.
 */
import type { ComponentChildren } from 'preact'
import { useId, useState } from 'preact/hooks'
import type { Origin } from '../../data/quantity'
import { SourceNote } from './SourceNote'
import { useShelf } from './shelf'

interface Props {
  readonly origin: Origin
  readonly kind: 'q' | 'cite'
  readonly label?: string
  readonly children: ComponentChildren
}

export function Opens({ origin, kind, label, children }: Props) {
  const own = useId()
  const shelf = useShelf()
  // A page without script and without a shelf has to carry the note right here.
  const [filled, fill] = useState(typeof window === 'undefined')
  const id = shelf?.idOf(origin) ?? own
  return (
    <>
      <button type="button" class={kind} popovertarget={id} aria-label={label}>
        {children}
      </button>
      {shelf === null && (
        <span
          id={id}
          class="source"
          popover="auto"
          onBeforeToggle={(event) => {
            if (event.newState === 'open') fill(true)
          }}
        >
          {filled && <SourceNote origin={origin} />}
        </span>
      )}
    </>
  )
}
