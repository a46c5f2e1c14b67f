/** Something that can be pressed with the punctuation behind it: a line may break behind a button, and must not between the two. */
import type { ComponentChildren } from 'preact'

export function Held({ mark, children }: { readonly mark: string; readonly children: ComponentChildren }) {
  if (mark === '') return <>{children}</>
  return (
    <span class="held">
      {children}
      {mark}
    </span>
  )
}
