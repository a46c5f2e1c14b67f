/** A number, typed in the reader's units. What is typed is kept as a draft until it can be read. */

import { fieldText, fieldUnit, fieldWords, parseNumber, permittedWords } from '../format/field'
import { asList } from '../say/as-list'
import { COMPLAINT, type FieldProps, HEADING, type QuestionOf } from './field-props'
import { Instead } from './Instead'

export function NumberField(props: FieldProps<QuestionOf<'number'>>) {
  const { question, answer, drafts, system, invalid, onAnswer, onDraft, onLeave } = props
  const { id, quantity } = question
  const text = drafts[id] ?? (typeof answer === 'number' ? fieldText(answer, quantity, system) : '')
  const bare = /^[\d.,\s/]*$/.test(text)

  const type = (typed: string) => {
    const read = parseNumber(typed, quantity, system, question)
    onDraft(id, typed)
    onAnswer(read.ok ? read.value : undefined)
  }
  const pick = (value: Parameters<typeof onAnswer>[0]) => {
    onDraft(id, undefined)
    onAnswer(value)
  }

  return (
    <div class="field ask-number">
      <div class="field-box">
        <input
          id={`${id}-number`}
          class="num"
          type="text"
          inputMode={quantity === 'count' ? 'numeric' : 'text'}
          autocomplete="off"
          enterkeyhint="next"
          value={text}
          aria-labelledby={HEADING}
          aria-describedby={`${invalid ? `${COMPLAINT} ` : ''}${id}-range`}
          aria-invalid={invalid ? 'true' : undefined}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={() => {
            // Read and understood: from here on the field shows the answer itself, in whichever units are chosen.
            if (typeof answer === 'number') onDraft(id, undefined)
            else if (text !== '') onLeave()
          }}
        />
        {bare && <span class="unit">{fieldUnit(quantity, system)}</span>}
      </div>
      <p class="help" id={`${id}-range`}>
        A number {permittedWords(question, quantity, system)}.
      </p>
      {question.examples && (
        <ul class="picks plain row" {...asList} aria-label="Quick picks">
          {question.examples.map((example) => (
            <li key={example.label}>
              <button
                type="button"
                class="btn btn--quiet btn--small"
                aria-pressed={answer === example.value}
                onClick={() => pick(example.value)}
              >
                {example.label}, {fieldWords(example.value, quantity, system)}
              </button>
            </li>
          ))}
        </ul>
      )}
      <Instead id={id} none={question.none} unsure={question.unsure} answer={answer} onAnswer={pick} />
    </div>
  )
}
