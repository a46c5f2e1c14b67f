import { UNSURE } from '../../choice/types'
import { COMPLAINT, type FieldProps, HEADING, NOT_SURE, type QuestionOf } from './field-props'
import { Radio } from './Radio'

/** Picking does not move on by itself: someone on the keyboard walks through the radios to read them. */
export function ChoiceField({ question, answer, invalid, onAnswer }: FieldProps<QuestionOf<'choice'>>) {
  return (
    <div class="choices" role="radiogroup" aria-labelledby={HEADING} aria-describedby={invalid ? COMPLAINT : undefined}>
      {question.choices.map((choice) => (
        <Radio
          key={choice.id}
          group={question.id}
          value={choice.id}
          label={choice.label}
          help={choice.help}
          checked={answer === choice.id}
          onPick={onAnswer}
        />
      ))}
      <Radio
        group={question.id}
        value={UNSURE}
        label={NOT_SURE}
        help={question.unsure}
        checked={answer === UNSURE}
        onPick={onAnswer}
      />
    </div>
  )
}
