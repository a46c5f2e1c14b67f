/** A cell that names its column on a phone. One element inside, since the cell is then a grid of name and content. */
import type { ComponentChildren } from 'preact'

interface Props {
  readonly label: string
  readonly num?: boolean
  readonly children: ComponentChildren
}

export function Cell({ label, num = false, children }: Props) {
  return (
    <td data-label={label} class={num ? 'num' : undefined}>
      <span>{children}</span>
    </td>
  )
}
