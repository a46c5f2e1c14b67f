/** One row of a group of radios; the whole row is the target. */
interface Props {
  readonly group: string
  readonly value: string
  readonly label: string
  readonly help?: string | undefined
  readonly checked: boolean
  readonly onPick: (value: string) => void
}

export function Radio({ group, value, label, help, checked, onPick }: Props) {
  return (
    <label class="choice">
      <input type="radio" name={group} value={value} checked={checked} onChange={() => onPick(value)} />
      <span>
        {label}
        {help && <small>{help}</small>}
      </span>
    </label>
  )
}
