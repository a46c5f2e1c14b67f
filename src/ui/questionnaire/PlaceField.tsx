/**
 * A place by name: an editable combobox with a list of matches, by the pattern that screen readers know.
 * What is typed stays; a name that we do not have gets the nearest ones that we do.
 */

import { useEffect, useState } from 'preact/hooks'
import { asList } from '../say/as-list'
import { COMPLAINT, type FieldProps, HEADING, type PlaceName, type QuestionOf } from './field-props'
import { Instead } from './Instead'
import { exactPlace, findPlaces, nearPlaces } from './place-search'
import { answerWords } from './words'

export function PlaceField(props: FieldProps<QuestionOf<'place'>>) {
  const { question, answer, drafts, places, system, invalid, onAnswer, onDraft, onLeave } = props
  const { id } = question
  const chosen = typeof answer === 'string' && answer !== 'unsure' ? answer : undefined
  const typed = drafts[id] ?? (chosen === undefined ? '' : answerWords(question, chosen, system, places))
  const [open, setOpen] = useState(false)
  const [active, setActive] = useState(-1)
  const matches = open && drafts[id] !== undefined ? findPlaces(typed, places) : []
  const list = `${id}-list`
  const lost =
    chosen === undefined && typed.trim().length > 1 && places.length > 0 && findPlaces(typed, places, 1).length === 0
  const near = lost ? nearPlaces(typed, places) : []

  useEffect(() => setActive(-1), [typed])

  const choose = (place: PlaceName) => {
    onDraft(id, undefined)
    onAnswer(place.id)
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
    <div class="field ask-place">
      <div class="combo">
        <input
          id={`${id}-number`}
          type="text"
          role="combobox"
          autocomplete="off"
          spellcheck={false}
          aria-labelledby={HEADING}
          aria-describedby={`${invalid ? `${COMPLAINT} ` : ''}${id}-help`}
          aria-invalid={invalid ? 'true' : undefined}
          aria-autocomplete="list"
          aria-expanded={matches.length > 0}
          aria-controls={list}
          aria-activedescendant={active >= 0 && matches.length > 0 ? `${list}-${active}` : undefined}
          value={typed}
          onInput={(event) => {
            onDraft(id, event.currentTarget.value)
            onAnswer(undefined)
            setOpen(true)
          }}
          onKeyDown={onKey}
          onBlur={() => {
            setOpen(false)
            const exact = chosen === undefined ? exactPlace(typed, places) : undefined
            if (exact !== undefined) choose(exact)
            else if (chosen === undefined && typed.trim() !== '' && answer === undefined) onLeave()
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
      <Instead
        id={id}
        unsure={question.unsure}
        answer={answer}
        onAnswer={(value) => {
          onDraft(id, undefined)
          onAnswer(value)
        }}
      />
    </div>
  )
}
