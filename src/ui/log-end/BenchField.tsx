/**
 * One number of the bench. What is typed is kept as typed until the field is left with a number that can be drawn, or
 * until the number changes from elsewhere: by dragging the piece, say.
 */
import { useState } from 'preact/hooks'
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import type { System } from '../format/quantity'
import { Say } from '../say/Say'
import { usePart } from './bench'
import type { View } from './model'
import { lengthText, percentText, readLength, readPercent } from './read'
import { complaintOf } from './words'

interface Props {
  readonly id: string
  readonly label: string
  readonly kind: 'length' | 'percent'
  readonly value: number
  readonly help?: string
  /** A complaint that is told once for several fields stands elsewhere. */
  readonly complaintAt?: string
  readonly onValue: (value: number) => void
}

const WAYS = {
  length: { text: lengthText, read: readLength, unit: (s: System) => (s === 'us' ? 'in' : 'mm') },
  percent: { text: percentText, read: readPercent, unit: () => '%' }
} as const

const UNREAD = {
  length: {
    us: 'We could not read that. Type inches, such as 7 1/2.',
    si: 'We could not read that. Type millimetres, such as 190.'
  },
  percent: {
    us: 'We could not read that. Type a percentage, such as 12.',
    si: 'We could not read that. Type a percentage, such as 12.'
  }
} as const

const refusal = (view: View) => view.refused
const asked = (view: View) => view.asked

export function BenchField({ id, label, kind, value, help, complaintAt, onValue }: Props) {
  const system = useSaved($units)
  const [draft, keep] = useState<{ text: string; value: number; bad: boolean } | null>(null)
  const complaint = useComplaint(id)
  const way = WAYS[kind]
  const own = draft !== null && Object.is(draft.value, value) ? draft : null
  const unread = own?.bad === true
  const wrong = unread || complaint !== null
  const told = complaint?.together && complaintAt !== undefined && !unread ? complaintAt : `${id}-error`
  const describedBy = [wrong && told, help && `${id}-help`].filter(Boolean).join(' ') || undefined

  const type = (text: string) => {
    const read = way.read(text, system)
    keep({ text, value: read ?? value, bad: read === null })
    if (read !== null) onValue(read)
  }
  return (
    <div class="field">
      <label for={`bench-${id}`}>{label}</label>
      <div class="field-box">
        <input
          id={`bench-${id}`}
          class="num"
          type="text"
          inputMode="text"
          autocomplete="off"
          value={own?.text ?? way.text(value, system)}
          aria-describedby={describedBy}
          aria-invalid={wrong ? 'true' : undefined}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={() => {
            if (!wrong) keep(null)
          }}
        />
        <span class="unit">{way.unit(system)}</span>
      </div>
      {help && (
        <p class="help" id={`${id}-help`}>
          {help}
        </p>
      )}
      {wrong && told === `${id}-error` && (
        <p class="error" id={`${id}-error`}>
          {unread ? UNREAD[kind][system] : complaint && <Say s={complaint.says} bare />}
        </p>
      )}
    </div>
  )
}

/** The refusal that concerns this field, if any. */
export function useComplaint(id: string) {
  const refused = usePart(refusal)
  const now = usePart(asked)
  if (refused === null) return null
  const complaint = complaintOf({ refused, asked: now } as View)
  return complaint?.at.includes(id) ? complaint : null
}
