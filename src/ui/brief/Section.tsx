/** A part of the sheet: heading and text in the main column, figures and notes in the margin. */
import type { ComponentChildren } from 'preact'
import { WordScope } from '../words/scope'

interface Props {
  readonly id: string
  readonly title: string
  readonly margin?: ComponentChildren
  readonly children: ComponentChildren
}

export function Section({ id, title, margin, children }: Props) {
  return (
    <section class="sheet" id={id} aria-labelledby={`${id}-title`}>
      <WordScope>
        <div class="stack sheet-main">
          <h2 id={`${id}-title`}>{title}</h2>
          {children}
        </div>
        {margin && <div class="margin">{margin}</div>}
      </WordScope>
    </section>
  )
}
