/**
 * A place by name: an editable combobox with a list of matches, by the pattern that screen readers know.
 * What is typed stays; a name that we do not have gets the nearest ones that we do.
 */

import { useEffect, useState } from 'preact/hooks'
import { asList } from '../say/as-list'
import type { PlaceName } from './field-props'
import { exactPlace, findPlaces, nearPlaces } from './place-search'

interface Props {
  readonly id: string
  readonly inputId: string
  /** Id of what names it, where no label does. */
  readonly labelledBy?: string | undefined
  /** Id of the complaint, where there is one. */
  readonly complaintId?: string | undefined
  readonly typed: string
  /** The text is being typed, not that of the chosen place. */
  readonly searching: boolean
  readonly chosen: string | undefined
  readonly places: readonly PlaceName[]
  readonly onType: (text: string) => void
  readonly onChoose: (place: PlaceName) => void
  /** Left with a name that is no place of ours. */
  readonly onLeave: () => void
}

export function PlaceBox(props: Props) {
  const { id, inputId, labelledBy, complaintId, typed, searching, chosen, places, onType, onLeave } = props
  const [open, setOpen] = useState(false)
  const [active, setActive] = useState(-1)
  const matches = open && searching ? findPlaces(typed, places) : []
  const list = `${id}-list`
  const lost =
    chosen === undefined && typed.trim().length > 1 && places.length > 0 && findPlaces(typed, places, 1).length === 0
  const near = lost ? nearPlaces(typed, places) : []

  useEffect(() => setActive(-1), [typed])

  const choose = (place: PlaceName) => {
    props.onChoose(place)
    setOpen(false)
  }
  const onKey = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && open) {
      event.preventDefault()
      setOpen(false)
    } else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault()
      setOpen(true)
      const step = event.key === 'ArrowDown' ? 1 : -1
      if (matches.length > 0)
        setActive((active + step + matches.length + (active < 0 && step < 0 ? 1 : 0)) % matches.length)
    } else if (event.key === 'Enter') {
      const place =
        matches[active] ??
        (chosen === undefined ? exactPlace(typed, places) : undefined) ??
        (matches.length === 1 ? matches[0] : undefined)
      if (place !== undefined && place.id !== chosen) {
        // Enter takes the place; a second Enter goes on.
        event.preventDefault()
        choose(place)
      }
    }
  }

  return (
    <>
      <div class="combo">
        <input
          id={inputId}
          type="text"
          role="combobox"
          autocomplete="off"
          spellcheck={false}
          aria-labelledby={labelledBy}
          aria-describedby={`${complaintId ? `${complaintId} ` : ''}${id}-help`}
          aria-invalid={complaintId ? 'true' : undefined}
          aria-autocomplete="list"
          aria-expanded={matches.length > 0}
          aria-controls={list}
          aria-activedescendant={active >= 0 && matches.length > 0 ? `${list}-${active}` : undefined}
          value={typed}
          onInput={(event) => {
            onType(event.currentTarget.value)
            setOpen(true)
          }}
          onKeyDown={onKey}
          onBlur={() => {
            setOpen(false)
            const exact = chosen === undefined ? exactPlace(typed, places) : undefined
            if (exact !== undefined) choose(exact)
            else if (chosen === undefined && typed.trim() !== '') onLeave()
          }}
        />
        <div id={list} class="combo-list" role="listbox" aria-label="Places" hidden={matches.length === 0}>
          {matches.map((place, i) => (
            // biome-ignore lint/a11y/useKeyWithClickEvents: keys are handled by the combobox that owns the list
            <div
              key={place.id}
              id={`${list}-${i}`}
              role="option"
              tabIndex={-1}
              aria-selected={i === active}
              // Taken on press: the field's blur would close the list before a click arrived.
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => choose(place)}
            >
              {place.name}
            </div>
          ))}
        </div>
      </div>
      <p class="help" id={`${id}-help`}>
        Type a town or a state. We know the monthly weather of{' '}
        {places.length > 0 ? `${places.length} places` : 'some 250 places'}.
      </p>
      {lost && (
        <div class="notice" role="status">
          <p>
            We have no weather for “{typed.trim().slice(0, 60)}”.{' '}
            {near.length > 0 ? 'Nearest that we have:' : 'Type the name of the state to see its places.'}
          </p>
          {near.length > 0 && (
            <ul class="picks plain row" {...asList}>
              {near.map((place) => (
                <li key={place.id}>
                  <button type="button" class="btn btn--quiet btn--small" onClick={() => choose(place)}>
                    {place.name}
                  </button>
                </li>
              ))}
            </ul>
          )}
        </div>
      )}
    </>
  )
}
