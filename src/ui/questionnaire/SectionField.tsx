/** Two sides of a timber, or none. */
import { fieldText, fieldUnit, parseNumber, permittedWords } from '../format/field'
import { COMPLAINT, type FieldProps, HEADING, type QuestionOf } from './field-props'
import { Instead } from './Instead'

const SIDES = ['Width', 'Depth'] as const

export function SectionField(props: FieldProps<QuestionOf<'section'>>) {
  const { question, answer, drafts, system, invalid, onAnswer, onDraft, onLeave } = props
  const { id } = question
  const pair = Array.isArray(answer) ? answer : undefined
  const texts = SIDES.map(
    (_, i) => drafts[`${id}.${i}`] ?? (typeof pair?.[i] === 'number' ? fieldText(pair[i], 'diameter', system) : '')
  )

  const type = (side: number, typed: string) => {
    const next = texts.map((text, i) => (i === side ? typed : text))
    // Both sides become drafts together: the answer may be about to go, and with it what the other field shows.
    for (const [i, text] of next.entries()) onDraft(`${id}.${i}`, text)
    const [b, h] = next.map((text) => parseNumber(text, 'diameter', system, question))
    onAnswer(b?.ok && h?.ok ? [b.value, h.value] : undefined)
  }
  const clear = () => {
    for (const i of SIDES.keys()) onDraft(`${id}.${i}`, undefined)
  }

  return (
    <div class="field ask-number">
      <fieldset class="field-box" aria-labelledby={HEADING}>
        {SIDES.map((side, i) => (
          <>
            {i > 0 && <span class="unit">×</span>}
            <input
              key={side}
              id={i === 0 ? `${id}-number` : undefined}
              class="num"
              type="text"
              inputMode="text"
              autocomplete="off"
              enterkeyhint="next"
              aria-label={`${side}, ${fieldUnit('diameter', system)}`}
              value={texts[i]}
              aria-describedby={`${invalid ? `${COMPLAINT} ` : ''}${id}-range`}
              aria-invalid={
                invalid && !parseNumber(texts[i] ?? '', 'diameter', system, question).ok ? 'true' : undefined
              }
              onInput={(event) => type(i, event.currentTarget.value)}
              onBlur={(event) => {
                if (
                  (event.relatedTarget as Element | null)?.closest('fieldset') ===
                  event.currentTarget.closest('fieldset')
                )
                  return
                if (pair !== undefined) clear()
                else if (texts.some((text) => text !== '')) onLeave()
              }}
            />
          </>
        ))}
        <span class="unit">{fieldUnit('diameter', system)}</span>
      </fieldset>
      <p class="help" id={`${id}-range`}>
        Each side {permittedWords(question, 'diameter', system)}.
      </p>
      <Instead
        id={id}
        none={question.none}
        unsure={question.unsure}
        answer={answer}
        onAnswer={(value) => {
          clear()
          onAnswer(value)
        }}
      />
    </div>
  )
}
