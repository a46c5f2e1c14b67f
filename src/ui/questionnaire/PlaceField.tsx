/** The question where the house will stand. */

import { COMPLAINT, type FieldProps, HEADING, type QuestionOf } from './field-props'
import { Instead } from './Instead'
import { PlaceBox } from './PlaceBox'
import { answerWords } from './words'

export function PlaceField(props: FieldProps<QuestionOf<'place'>>) {
  const { question, answer, drafts, places, system, invalid, onAnswer, onDraft, onLeave } = props
  const { id } = question
  const chosen = typeof answer === 'string' && answer !== 'unsure' ? answer : undefined
  return (
    <div class="field ask-place">
      <PlaceBox
        id={id}
        inputId={`${id}-number`}
        labelledBy={HEADING}
        complaintId={invalid ? COMPLAINT : undefined}
        typed={drafts[id] ?? (chosen === undefined ? '' : answerWords(question, chosen, system, places))}
        searching={drafts[id] !== undefined}
        chosen={chosen}
        places={places}
        onType={(text) => {
          onDraft(id, text)
          onAnswer(undefined)
        }}
        onChoose={(place) => {
          onDraft(id, undefined)
          onAnswer(place.id)
        }}
        onLeave={() => answer === undefined && onLeave()}
      />
      <Instead
        id={id}
        unsure={question.unsure}
        answer={answer}
        onAnswer={(value) => {
          onDraft(id, undefined)
          onAnswer(value)
        }}
      />
    </div>
  )
}
