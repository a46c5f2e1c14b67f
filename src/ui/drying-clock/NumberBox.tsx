/**
 * One number of the clock. What is typed stays as typed until the field is left with a number that can be taken; a change
 * of units turns what was understood into the other unit, and leaves what was not.
 */
import { useState } from 'preact/hooks'
import type { System } from '../format/quantity'
import { type NumberField, readField, textOf, troubleWords, unitOf } from './read'
import { useHere, useView } from './use-clock'

interface Props {
  readonly field: NumberField
  readonly label: string
  readonly system: System
  readonly help?: string
}

export function NumberBox({ field, label, system, help }: Props) {
  const { store } = useHere()
  const { asked, typed, wrong } = useView()
  const [typedIn, setTypedIn] = useState(system)
  const trouble = wrong[field]
  const id = `clock-${field}`
  const text = typed[field]
  const shown =
    text !== undefined && (trouble === 'unread' || typedIn === system) ? text : textOf(field, asked[field], system)
  const describedBy = [trouble && `${id}-error`, help && `${id}-help`].filter(Boolean).join(' ') || undefined
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="field-box">
        <input
          id={id}
          class="num"
          type="text"
          inputMode="text"
          autocomplete="off"
          value={shown}
          aria-describedby={describedBy}
          aria-invalid={trouble ? 'true' : undefined}
          onInput={(event) => {
            const now = event.currentTarget.value
            const read = readField(field, now, system)
            setTypedIn(system)
            if (read === null) store.misread(field, now, 'unread')
            else store.set(field, read, now)
          }}
          onBlur={() => store.leave(field)}
        />
        <span class="unit">{unitOf(field, system)}</span>
      </div>
      {help && (
        <p class="help" id={`${id}-help`}>
          {help}
        </p>
      )}
      {trouble && (
        <p class="error" id={`${id}-error`}>
          {troubleWords(field, trouble, system)}
        </p>
      )}
    </div>
  )
}
