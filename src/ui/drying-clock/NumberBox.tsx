/** One number of the clock. */
import { NumberBox as Box } from '../bench/NumberBox'
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
  const trouble = wrong[field]
  return (
    <Box
      id={`clock-${field}`}
      label={label}
      unit={unitOf(field, system)}
      system={system}
      help={help}
      typed={typed[field]}
      text={textOf(field, asked[field], system)}
      trouble={trouble}
      says={trouble && troubleWords(field, trouble, system)}
      onType={(text) => {
        const read = readField(field, text, system)
        if (read === null) store.misread(field, text, 'unread')
        else store.set(field, read, text)
      }}
      onLeave={() => store.leave(field)}
    />
  )
}
