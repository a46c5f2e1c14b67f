/** Every question with its answer, each a step away from being changed. */
import { useEffect, useRef, useState } from 'preact/hooks'
import { askedQuestions, STAGES } from '../../choice/questions'
import type { Answers } from '../../choice/types'
import type { KeptInvite } from '../../stores/invite'
import type { System } from '../format/quantity'
import { isSuggested, shopName } from '../invite/marks'
import { href } from '../site/href'
import type { PlaceName } from './field-props'
import { questionHash } from './flow'
import { LeftOpen } from './LeftOpen'
import { answerWords } from './words'

interface Props {
  readonly invite: KeptInvite | null
  readonly answers: Answers
  readonly system: System
  readonly places: readonly PlaceName[]
  readonly onGo: (id: string) => void
  readonly onClear: () => void
}

export function Overview({ invite, answers, system, places, onGo, onClear }: Props) {
  const heading = useRef<HTMLHeadingElement>(null)
  const [sure, setSure] = useState(false)
  useEffect(() => heading.current?.focus(), [])
  // Those that a shop has settled too: they are not asked, but they are to be seen.
  const asked = askedQuestions(answers)
  const settled = (id: string) => invite?.locked.includes(id) === true
  const shop = invite === null ? '' : shopName(invite)
  const clearable = Object.keys(answers).filter((id) => !settled(id)).length
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
                    <dd>
                      {answerWords(q, answers[q.id], system, places)}
                      {isSuggested(invite, q.id, answers[q.id]) && <small> suggested by {shop}</small>}
                      {settled(q.id) && <small> settled by {shop}</small>}
                    </dd>
                    <dd class="change">
                      {!settled(q.id) && (
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
                      )}
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
        {clearable > 0 && !sure && (
          <button type="button" class="btn btn--link" onClick={() => setSure(true)}>
            Clear all answers
          </button>
        )}
      </p>
      {sure && (
        <div class="notice" role="alert">
          <p>Clear {clearable} answers on this device? They cannot be brought back.</p>
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
