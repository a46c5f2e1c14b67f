/** One question: heading, picture, control, why we ask, and the way on. */
import type { ComponentChildren } from 'preact'
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks'
import { Control, type Fields } from './Control'
import { COMPLAINT, type FieldProps, HEADING } from './field-props'

interface Props extends Omit<FieldProps, 'invalid' | 'onLeave'> {
  readonly picture: ComponentChildren
  readonly fields: Fields | null
  /** What is to be known of the answer that stands there. */
  readonly note?: string | null | undefined
  readonly first: boolean
  readonly last: boolean
  /** True once the person has moved in the questionnaire: then focus follows to the new heading. */
  readonly moved: boolean
  /** Asked of the store itself: Enter may follow the answer faster than the page is drawn anew. */
  readonly answered: () => boolean
  readonly onBack: () => void
  readonly onNext: () => void
}

export function Step({ picture, fields, note, first, last, moved, answered, onBack, onNext, ...field }: Props) {
  const { question, answer, drafts, system } = field
  const [complaint, complain] = useState<string | null>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  const form = useRef<HTMLFormElement>(null)

  // With the drawing, not after it: a moment later it would take the focus from somebody who has tabbed on already.
  useLayoutEffect(() => {
    if (!moved) return
    heading.current?.focus({ preventScroll: true })
    scrollTo(0, 0)
  }, [moved])
  useEffect(() => complain(null), [answer])

  const say = () =>
    fields === null ? 'Choose one of these, or “Not sure”.' : fields.complaintOf(question, drafts, system)
  const submit = (event: Event) => {
    event.preventDefault()
    if (answered()) return onNext()
    complain(say())
    form.current?.querySelector<HTMLElement>('input, .order-rest button')?.focus()
  }

  return (
    <form ref={form} class="step" onSubmit={submit} noValidate>
      <h1 id={HEADING} class="question" tabIndex={-1} ref={heading}>
        {question.title}
      </h1>
      <div class="step-picture">{picture}</div>
      <div class="step-control stack">
        <div role="alert">
          {complaint !== null && (
            <p class="error" id={COMPLAINT}>
              {complaint}
            </p>
          )}
        </div>
        {note && <p class="note suggested">{note}</p>}
        <Control {...field} fields={fields} invalid={complaint !== null} onLeave={() => complain(say())} />
        <details class="why">
          <summary>Why we ask</summary>
          <p>{fields === null ? question.why : <fields.Why question={question} />}</p>
        </details>
        <p class="row">
          <button type="button" class="btn btn--quiet" onClick={onBack} disabled={first}>
            Back
          </button>
          <button type="submit" class="btn">
            {last ? 'See your brief' : 'Next'}
          </button>
        </p>
        {fields !== null && <fields.WordsHere question={question} />}
      </div>
    </form>
  )
}
