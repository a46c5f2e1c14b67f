/** A part of the form. */
import type { ComponentChildren } from 'preact'

interface PartProps {
  readonly id: string
  readonly title: string
  /** What stands in it, in a line: such a part is closed at first. */
  readonly brief?: ComponentChildren
  readonly wrong?: boolean
  readonly children: ComponentChildren
}
/** One with good values to begin with is closed and says them. */
export function Part({ id, title, brief, wrong = false, children }: PartProps) {
  const heading = <h2 id={`part-${id}-title`}>{title}</h2>
  if (brief === undefined)
    return (
      <section class="shop-part" id={`part-${id}`} aria-labelledby={`part-${id}-title`}>
        {heading}
        {children}
      </section>
    )
  return (
    <section class="shop-part" id={`part-${id}`} aria-labelledby={`part-${id}-title`}>
      <details>
        <summary>
          {heading}
          <span class="note">{brief}</span>
          {wrong && <span class="error">Something in here needs another look.</span>}
        </summary>
        <div class="stack">{children}</div>
      </details>
    </section>
  )
}
