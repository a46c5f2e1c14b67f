/**
 * Putting things in order without dragging: press them in the order that they matter, then move one up or down.
 * Works by touch, by keyboard and by voice. Moves are announced, and focus stays with what was moved.
 */
import { useRef, useState } from 'preact/hooks'
import { UNSURE } from '../../choice/types'
import { COMPLAINT, type FieldProps, HEADING, NOT_SURE, type QuestionOf } from './field-props'
import { Radio } from './Radio'

export function OrderField({ question, answer, drafts, invalid, onAnswer, onDraft }: FieldProps<QuestionOf<'order'>>) {
  const [said, say] = useState('')
  const list = useRef<HTMLFieldSetElement>(null)
  const ids = question.choices.map((c) => c.id)
  const typed = (drafts[question.id] ?? '').split(' ').filter((id) => ids.includes(id))
  const placed = Array.isArray(answer) ? answer.map(String) : typed
  const rest = ids.filter((id) => !placed.includes(id))
  const choice = (id: string) => question.choices.find((c) => c.id === id)
  const label = (id: string) => choice(id)?.label ?? id

  const set = (next: readonly string[]) => {
    const full = next.length === ids.length - 1 ? [...next, ...ids.filter((id) => !next.includes(id))] : next
    onDraft(question.id, full.length === ids.length || full.length === 0 ? undefined : full.join(' '))
    onAnswer(full.length === ids.length ? full : undefined)
  }
  const place = (id: string) => {
    set([...placed, id])
    say(`${label(id)}: ${placed.length + 1} of ${ids.length}.`)
    // After the last one there is nothing left to place: focus stays with it in the list.
    requestAnimationFrame(() => {
      const find = (selector: string) => list.current?.querySelector<HTMLElement>(selector)
      ;(find('.order-rest button') ?? find('.order > li:last-child button'))?.focus()
    })
  }
  const move = (id: string, by: -1 | 1) => {
    const from = placed.indexOf(id)
    const to = from + by
    const next = placed.filter((other) => other !== id)
    next.splice(to, 0, id)
    set(next)
    say(`${label(id)} is now ${to + 1} of ${ids.length}.`)
    // At either end the pressed button goes; focus moves to the one that is left.
    requestAnimationFrame(() => {
      const row = list.current?.querySelector(`[data-id="${id}"]`)
      const wanted = row?.querySelector<HTMLElement>(by < 0 ? '.up' : '.down')
      ;(wanted ?? row?.querySelector<HTMLElement>('button'))?.focus()
    })
  }

  return (
    <fieldset ref={list} class="order-box" aria-labelledby={HEADING} aria-describedby={invalid ? COMPLAINT : undefined}>
      {placed.length > 0 && (
        <ol class="order plain">
          {placed.map((id, i) => (
            <li key={id} data-id={id}>
              <span>{label(id)}</span>
              <span class="row">
                {i > 0 && (
                  <button
                    type="button"
                    class="btn btn--quiet btn--small up"
                    aria-label={`Move up: ${label(id)}`}
                    onClick={() => move(id, -1)}
                  >
                    up
                  </button>
                )}
                {i < placed.length - 1 && (
                  <button
                    type="button"
                    class="btn btn--quiet btn--small down"
                    aria-label={`Move down: ${label(id)}`}
                    onClick={() => move(id, 1)}
                  >
                    down
                  </button>
                )}
              </span>
            </li>
          ))}
        </ol>
      )}
      {rest.length > 0 && (
        <div class="order-rest">
          <p class="help">
            {placed.length === 0 ? 'Press what matters most to you, then the next, and so on.' : 'And then?'}
          </p>
          {rest.map((id) => (
            <button key={id} type="button" class="choice" onClick={() => place(id)}>
              <span class="num" aria-hidden="true">
                +
              </span>
              <span>
                {label(id)}
                {choice(id)?.help && <small>{choice(id)?.help}</small>}
              </span>
            </button>
          ))}
        </div>
      )}
      {placed.length > 0 && (
        <button type="button" class="btn btn--link" onClick={() => set([])}>
          Start the order again
        </button>
      )}
      <div class="choices" role="radiogroup" aria-label="Or choose">
        <Radio
          group={question.id}
          value={UNSURE}
          label={NOT_SURE}
          help={question.unsure}
          checked={answer === UNSURE}
          onPick={onAnswer}
        />
      </div>
      <p class="visually-hidden" role="status">
        {said}
      </p>
    </fieldset>
  )
}
