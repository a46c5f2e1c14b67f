/**
 * One number of a bench. What is typed stays as typed until the field is left with a number that can be taken; a change
 * of units turns what was understood into the other unit, and leaves what was not.
 */
import { useState } from 'preact/hooks'
import type { System } from '../format/quantity'
import type { Trouble } from './store'

interface Props {
  readonly id: string
  readonly label: string
  readonly unit: string
  readonly system: System
  readonly help?: string | undefined
  /** As typed, while that is what the field shows. */
  readonly typed: string | undefined
  /** The number as it would be typed in this system. */
  readonly text: string
  readonly trouble: Trouble | undefined
  /** What is said of the trouble. */
  readonly says: string | undefined
  readonly onType: (text: string) => void
  readonly onLeave: () => void
}

export function NumberBox({ id, label, unit, system, help, typed, text, trouble, says, onType, onLeave }: Props) {
  const [typedIn, setTypedIn] = useState(system)
  const shown = typed !== undefined && (trouble === 'unread' || typedIn === system) ? typed : text
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
            setTypedIn(system)
            onType(event.currentTarget.value)
          }}
          onBlur={onLeave}
        />
        <span class="unit">{unit}</span>
      </div>
      {help && (
        <p class="help" id={`${id}-help`}>
          {help}
        </p>
      )}
      {trouble && (
        <p class="error" id={`${id}-error`}>
          {says}
        </p>
      )}
    </div>
  )
}
