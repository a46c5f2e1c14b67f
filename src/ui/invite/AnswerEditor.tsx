/** One question with the questionnaire's own control, opened in its row. */
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks'
import type { Answer, Question } from '../../choice/types'
import type { Drafts } from '../../stores/drafts'
import type { System } from '../format/quantity'
import { Control } from '../questionnaire/Control'
import { COMPLAINT, HEADING, type PlaceName } from '../questionnaire/field-props'
import * as fields from '../questionnaire/fields'

interface Props {
  readonly question: Question
  readonly answer: Answer | undefined
  readonly system: System
  readonly places: readonly PlaceName[]
  readonly onAnswer: (answer: Answer | undefined) => void
  readonly onDone: () => void
}

export function AnswerEditor({ question, answer, system, places, onAnswer, onDone }: Props) {
  const [drafts, setDrafts] = useState<Drafts>({})
  const [complaint, complain] = useState<string | null>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  // With the drawing: a moment later it would take the focus from somebody who types already.
  useLayoutEffect(() => heading.current?.focus(), [])
  useEffect(() => complain(null), [answer])
  const typed = Object.values(drafts).some((text) => text !== '')
  const done = (event: Event) => {
    event.preventDefault()
    // Something was typed that is no answer: it is not dropped in silence.
    if (answer === undefined && typed) complain(fields.complaintOf(question, drafts, system))
    else onDone()
  }
  return (
    <form class="editor stack" onSubmit={done} noValidate>
      <h3 id={HEADING} tabIndex={-1} ref={heading}>
        {question.title}
      </h3>
      <div role="alert">
        {complaint !== null && (
          <p class="error" id={COMPLAINT}>
            {complaint}
          </p>
        )}
      </div>
      <Control
        question={question}
        answer={answer}
        drafts={drafts}
        system={system}
        places={places}
        fields={fields}
        invalid={complaint !== null}
        onAnswer={onAnswer}
        onDraft={(field, text) =>
          setDrafts((old) => {
            const { [field]: _old, ...rest } = old
            return text === undefined ? rest : { ...rest, [field]: text }
          })
        }
        onLeave={() => complain(fields.complaintOf(question, drafts, system))}
      />
      <button type="submit" class="btn btn--small">
        Done
      </button>
    </form>
  )
}
