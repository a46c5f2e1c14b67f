/** Every question with its answer, each a step away from being changed. */
import { useEffect, useRef, useState } from 'preact/hooks'
import { STAGES } from '../../choice/questions'
import type { Answers, Question } from '../../choice/types'
import type { System } from '../format/quantity'
import { href } from '../site/href'
import type { PlaceName } from './field-props'
import { questionHash } from './flow'
import { LeftOpen } from './LeftOpen'
import { answerWords } from './words'

interface Props {
  readonly asked: readonly Question[]
  readonly answers: Answers
  readonly system: System
  readonly places: readonly PlaceName[]
  readonly onGo: (id: string) => void
  readonly onClear: () => void
}

export function Overview({ asked, answers, system, places, onGo, onClear }: Props) {
  const heading = useRef<HTMLHeadingElement>(null)
  const [sure, setSure] = useState(false)
  useEffect(() => heading.current?.focus(), [])
  const answered = asked.filter((q) => answers[q.id] !== undefined).length
  return (
    <section class="overview stack">
      <h1 class="question" tabIndex={-1} ref={heading}>
        Your answers
      </h1>
      <p>
        {answered} of {asked.length} answered. Change any of them; the rest stays. What is left open, the brief carries
        as “not sure”.
      </p>
      <LeftOpen />
      {STAGES.map((stage) => {
        const questions = asked.filter((q) => q.stage === stage.id)
        return (
          questions.length > 0 && (
            <div key={stage.id}>
              <h2 class="label">{stage.name}</h2>
              <dl class="answers">
                {questions.map((q) => (
                  <div key={q.id} class={answers[q.id] === undefined ? 'open' : ''}>
                    <dt>{q.label}</dt>
                    <dd>{answerWords(q, answers[q.id], system, places)}</dd>
                    <dd class="change">
                      <a
                        href={questionHash(q.id)}
                        onClick={(event) => {
                          event.preventDefault()
                          onGo(q.id)
                        }}
                      >
                        {answers[q.id] === undefined ? 'Answer' : 'Change'}
                        <span class="visually-hidden">: {q.title}</span>
                      </a>
                    </dd>
                  </div>
                ))}
              </dl>
            </div>
          )
        )
      })}
      <p class="row">
        <a class="btn" href={href('/brief/')}>
          See your brief
        </a>
        {answered > 0 && !sure && (
          <button type="button" class="btn btn--link" onClick={() => setSure(true)}>
            Clear all answers
          </button>
        )}
      </p>
      {sure && (
        <div class="notice" role="alert">
          <p>Clear all {answered} answers on this device? They cannot be brought back.</p>
          <p class="row">
            <button type="button" class="btn btn--small" onClick={onClear}>
              Clear them
            </button>
            <button type="button" class="btn btn--quiet btn--small" onClick={() => setSure(false)}>
              Keep them
            </button>
          </p>
        </div>
      )}
    </section>
  )
}
