/** What can be left out of the invite, and how much shorter it gets. The sheet on the device stays whole. */
import type { Invite } from '../../shop/invite/door'
import { savings } from '../../shop/invite/slim'

interface Props {
  readonly invite: Invite
  readonly leave: readonly string[]
  readonly onLeave: (leave: readonly string[]) => void
  /** There is no code until something goes. */
  readonly urgent: boolean
}

export function Slim({ invite, leave, onLeave, urgent }: Props) {
  const parts = savings(invite, leave)
  if (parts.length === 0) return null
  return (
    <details class="slim" open={urgent || leave.length > 0}>
      <summary>Make the invite slimmer</summary>
      <fieldset class="choices">
        <legend class="help">Left out of this link alone; your sheet stays whole.</legend>
        {parts.map((part) => (
          <label key={part.id} class="choice">
            <input
              type="checkbox"
              checked={part.left}
              onChange={() => onLeave(part.left ? leave.filter((id) => id !== part.id) : [...leave, part.id])}
            />
            <span>
              Leave out: {part.label.charAt(0).toLowerCase() + part.label.slice(1)}
              <small>
                {part.left ? 'Saves' : 'Would save'} {part.saves} characters. {part.says}
              </small>
            </span>
          </label>
        ))}
      </fieldset>
    </details>
  )
}
