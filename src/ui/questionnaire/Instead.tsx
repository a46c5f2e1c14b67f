/** What can be chosen instead of typing: an answer such as "no limit", and always "not sure". */
import { type Answer, type Choice, UNSURE } from '../../choice/types'
import { NOT_SURE } from './field-props'
import { Radio } from './Radio'

interface Props {
  readonly id: string
  readonly none?: Choice | undefined
  readonly unsure: string
  readonly answer: Answer | undefined
  readonly onAnswer: (answer: Answer) => void
}

export function Instead({ id, none, unsure, answer, onAnswer }: Props) {
  const group = `${id}-instead`
  return (
    <div class="choices" role="radiogroup" aria-label="Or choose">
      {none && (
        <Radio
          group={group}
          value={none.id}
          label={none.label}
          help={none.help}
          checked={answer === none.id}
          onPick={onAnswer}
        />
      )}
      <Radio
        group={group}
        value={UNSURE}
        label={NOT_SURE}
        help={unsure}
        checked={answer === UNSURE}
        onPick={onAnswer}
      />
    </div>
  )
}
