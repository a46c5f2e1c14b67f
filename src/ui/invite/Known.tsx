/** What the framer knows already: answers to any of the questions, each suggested to the client or settled. */
import { useState } from 'preact/hooks'
import { askedQuestions, STAGES } from '../../choice/questions'
import type { Answer, Answers } from '../../choice/types'
import { $answers } from '../../stores/answers'
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import type { Engine } from '../engine'
import { answerWords } from '../questionnaire/words'
import { AnswerEditor } from './AnswerEditor'

interface Props {
  readonly answers: Answers
  readonly locked: readonly string[]
  readonly engine: Engine
  readonly onChange: (answers: Answers, locked: readonly string[]) => void
}

export function Known({ answers, locked, engine, onChange }: Props) {
  const system = useSaved($units)
  const own = useSaved($answers)
  const [open, setOpen] = useState<string | null>(null)
  const asked = askedQuestions(answers)
  const stagesOf = (set: Answers) =>
    new Set(askedQuestions(set).flatMap((q) => (set[q.id] === undefined ? [] : [q.stage as string])))
  const [stages, setStages] = useState(() => stagesOf(answers))
  const set = asked.filter((q) => answers[q.id] !== undefined).length
  const put = (id: string, answer: Answer | undefined) => {
    const { [id]: _old, ...rest } = answers
    if (answer === undefined)
      onChange(
        rest,
        locked.filter((x) => x !== id)
      )
    else onChange({ ...rest, [id]: answer }, locked)
  }
  const backTo = (id: string) => {
    requestAnimationFrame(() => document.getElementById(`set-${id}`)?.focus())
  }

  const close = (id: string) => {
    setOpen(null)
    backTo(id)
  }

  return (
    <section class="sheet no-print" aria-labelledby="known-title">
      <div class="stack">
        <h2 id="known-title">What is known already</h2>
        <p>
          {set === 0
            ? 'Nothing yet: the client is asked everything.'
            : `${set} of ${asked.length} questions answered here.`}
        </p>
        <p class="row">
          {Object.keys(own).length > 0 && (
            <button
              type="button"
              class="btn btn--quiet btn--small"
              onClick={() => {
                onChange(own, [])
                setStages(stagesOf(own))
              }}
            >
              Take the {Object.keys(own).length} answers on this device
            </button>
          )}
          {set > 0 && (
            <button type="button" class="btn btn--link" onClick={() => onChange({}, [])}>
              Remove all
            </button>
          )}
        </p>
        {STAGES.map((stage) => {
          const questions = asked.filter((q) => q.stage === stage.id)
          if (questions.length === 0) return null
          const here = questions.filter((q) => answers[q.id] !== undefined).length
          return (
            <details
              key={stage.id}
              class="stage"
              open={stages.has(stage.id)}
              onToggle={(event) => {
                if (event.currentTarget.open === stages.has(stage.id)) return
                const next = new Set(stages)
                if (event.currentTarget.open) next.add(stage.id)
                else next.delete(stage.id)
                setStages(next)
              }}
            >
              <summary>
                {stage.name}{' '}
                <span class="soft">
                  {here > 0
                    ? `${here} of ${questions.length} set`
                    : questions.length === 1
                      ? 'one question'
                      : `${questions.length} questions`}
                </span>
              </summary>
              <ul class="known plain">
                {questions.map((q) => {
                  const answer = answers[q.id]
                  return (
                    <li key={q.id} class={answer === undefined ? 'open' : ''}>
                      <span class="known-name">{q.label}</span>
                      <span>{answer === undefined ? 'asked' : answerWords(q, answer, system, engine.places)}</span>
                      <span class="row known-do">
                        {answer !== undefined && (
                          <label class="tick">
                            <input
                              type="checkbox"
                              checked={locked.includes(q.id)}
                              onChange={(event) =>
                                onChange(
                                  answers,
                                  event.currentTarget.checked ? [...locked, q.id] : locked.filter((x) => x !== q.id)
                                )
                              }
                            />
                            settled<span class="visually-hidden">: {q.label}</span>
                          </label>
                        )}
                        {answer !== undefined && (
                          <button
                            type="button"
                            class="btn btn--link"
                            onClick={() => {
                              put(q.id, undefined)
                              backTo(q.id)
                            }}
                          >
                            Remove<span class="visually-hidden">: {q.label}</span>
                          </button>
                        )}
                        <button
                          type="button"
                          id={`set-${q.id}`}
                          class="btn btn--link"
                          aria-expanded={open === q.id}
                          onClick={() => setOpen(open === q.id ? null : q.id)}
                        >
                          {answer === undefined ? 'Set' : 'Change'}
                          <span class="visually-hidden">: {q.label}</span>
                        </button>
                      </span>
                      {open === q.id && (
                        <AnswerEditor
                          question={q}
                          answer={answer}
                          system={system}
                          places={engine.places}
                          onAnswer={(next) => put(q.id, next)}
                          onDone={() => close(q.id)}
                        />
                      )}
                    </li>
                  )
                })}
              </ul>
            </details>
          )
        })}
      </div>
      <aside class="margin" aria-label="Suggested or settled">
        <p>
          <b>Suggested</b> is how an answer travels unless you tick settled: the client finds it filled in, marked as
          yours, and can change it.
        </p>
        <p>
          <b>Settled</b> is not asked. The client sees it in the list of answers, marked as settled by you.
        </p>
      </aside>
    </section>
  )
}
