/** The questionnaire: one question at a time, and beside it what the answers settle. */
import type { ComponentChildren } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { $answers, $notice, setAnswer } from '../../stores/answers'
import { $drafts, setDraft } from '../../stores/drafts'
import { $invite } from '../../stores/invite'
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import { href } from '../site/href'
import { NOTHING_KNOWN } from './field-props'
import { OVERVIEW_HASH, readSpot } from './flow'
import { Progress } from './Progress'
import { Step } from './Step'
import { useFields } from './use-fields'
import { useWizard } from './use-wizard'

/** From here on a brief says more than "not sure". */
const ENOUGH = 3

interface Props {
  /** The first question's picture, drawn by the server: the code that draws pictures comes at the first touch. */
  readonly picture?: ComponentChildren
}

/** Turns true at the first touch or key, and for a link with answers. */
function useTouched(): boolean {
  const [touched, touch] = useState(false)
  useEffect(() => {
    const first = () => touch(true)
    const link = () => readSpot(location.hash).at === 'link' && first()
    link()
    const once = { once: true, passive: true }
    addEventListener('pointerdown', first, once)
    addEventListener('keydown', first, once)
    addEventListener('hashchange', link)
    return () => {
      removeEventListener('pointerdown', first)
      removeEventListener('keydown', first)
      removeEventListener('hashchange', link)
    }
  }, [])
  return touched
}

export function Questionnaire({ picture }: Props) {
  const answers = useSaved($answers)
  const drafts = useSaved($drafts)
  const system = useSaved($units)
  const notice = useSaved($notice)
  const invite = useSaved($invite)
  const settled = invite?.locked ?? []
  const wizard = useWizard(answers, settled)
  const touched = useTouched()
  const [{ places, known }, learn] = useState(NOTHING_KNOWN)
  const answered = Object.keys(answers).length
  const { asked, current, overview } = wizard
  const wanted = touched || invite !== null || answered > 0 || overview || current.id !== asked[0]?.id
  const fields = useFields(wanted)

  const next = () => {
    if (!wizard.step(1)) location.assign(href('/brief/'))
  }
  const clear = () => {
    $answers.set(Object.fromEntries(Object.entries(answers).filter(([id]) => settled.includes(id))))
    $drafts.set({})
    wizard.go(asked[0]?.id ?? '')
  }
  return (
    <div class="wizard">
      {fields === null ? (
        <aside class="settled settled--none" aria-label="What your answers settle">
          <p class="label">What your answers settle</p>
          <p class="note">Answer, and the woods sort themselves here: which are still in, which go out and why.</p>
        </aside>
      ) : (
        <fields.Woods answers={answers} onLearn={learn} />
      )}
      <div class="wizard-main">
        {notice !== null && (
          <div class="notice" role="status">
            <p>{notice}</p>
            <button type="button" class="btn btn--link" onClick={() => $notice.set(null)}>
              Close this note
            </button>
          </div>
        )}
        {fields !== null && (
          <fields.Arrival onTaken={(invited) => (invited && asked[0] ? wizard.go(asked[0].id) : wizard.goOverview())} />
        )}
        {fields !== null && <fields.InviteNote at="questions" full={overview || asked[0] === current} />}
        {overview && fields !== null ? (
          <fields.Overview
            invite={invite}
            answers={answers}
            system={system}
            places={places}
            onGo={wizard.go}
            onClear={clear}
          />
        ) : (
          <>
            <Progress current={current} asked={asked} answers={answers} />
            <Step
              key={current.id}
              question={current}
              answer={answers[current.id]}
              drafts={drafts}
              system={system}
              places={places}
              fields={fields}
              picture={
                fields !== null ? (
                  <fields.QuestionPicture
                    question={current}
                    answers={fields.withDraft(answers, drafts, current)}
                    known={known}
                  />
                ) : asked[0] === current ? (
                  picture
                ) : null
              }
              note={fields?.suggestedBy(invite, current.id, answers[current.id])}
              first={asked[0] === current}
              last={asked.at(-1) === current}
              moved={wizard.moves > 0}
              onAnswer={(answer) => setAnswer(current.id, answer)}
              onDraft={setDraft}
              answered={() => $answers.get()[current.id] !== undefined}
              onBack={() => wizard.step(-1)}
              onNext={next}
            />
            <nav class="wizard-ways row" aria-label="Questionnaire">
              <a
                href={OVERVIEW_HASH}
                onClick={(event) => {
                  event.preventDefault()
                  wizard.goOverview()
                }}
              >
                All questions and answers
              </a>
              {answered >= ENOUGH && <a href={href('/brief/')}>See your brief so far</a>}
            </nav>
          </>
        )}
      </div>
    </div>
  )
}
