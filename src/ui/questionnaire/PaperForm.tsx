/** All questions at once, to be printed and filled in by hand: what stands here without script. */

import type { ComponentChildren } from 'preact'
import { QUESTIONS, STAGES } from '../../choice/questions'
import type { Question } from '../../choice/types'
import { fieldWords, permittedWords } from '../format/field'
import type { System } from '../format/quantity'
import { asList } from '../say/as-list'
import { NOT_SURE } from './field-props'

/** The same words in both unit systems. */
function Both({ say }: { readonly say: (system: System) => string }) {
  const [us, si] = [say('us'), say('si')]
  if (us === si) return <>{us}</>
  return (
    <>
      <span class="us">{us}</span>
      <span class="si">{si}</span>
    </>
  )
}

function Line({ name }: { name: ComponentChildren }) {
  return (
    <p class="paper-line">
      <span class="label">{name}</span>
    </p>
  )
}

function Rows({
  question,
  rows
}: {
  question: Question
  rows: readonly { id: string; label: string; help?: string | undefined }[]
}) {
  const square = question.kind === 'order' ? 'number' : 'box'
  return (
    <ul class="paper-rows plain" {...asList}>
      {rows.map((row) => (
        <li key={row.id} class={`paper-${row.id === 'unsure' ? 'box' : square}`}>
          {row.label}
          {row.help && <small>{row.help}</small>}
        </li>
      ))}
    </ul>
  )
}

function PaperQuestion({ question }: { question: Question }) {
  const rows = [
    ...('choices' in question ? question.choices : []),
    ...('none' in question && question.none !== undefined ? [question.none] : []),
    { id: 'unsure', label: NOT_SURE, help: question.unsure }
  ]
  return (
    <section class="paper-question">
      <h3>{question.title}</h3>
      <p class="note">{question.why}</p>
      {question.kind === 'place' && <Line name="Town and state" />}
      {question.kind === 'number' && (
        <Line
          name={
            <>
              A number <Both say={(system) => permittedWords(question, question.quantity, system)} />
            </>
          }
        />
      )}
      {question.kind === 'section' && (
        <Line
          name={
            <>
              Two sides, each <Both say={(system) => permittedWords(question, 'diameter', system)} />
            </>
          }
        />
      )}
      {question.kind === 'number' && question.examples && (
        <p class="note">
          For instance:{' '}
          <Both
            say={(system) =>
              (question.examples ?? [])
                .map((e) => `${e.label.toLowerCase()} ${fieldWords(e.value, question.quantity, system)}`)
                .join(', ')
            }
          />
          .
        </p>
      )}
      {question.kind === 'order' && <p class="note">Number them, 1 for what matters most.</p>}
      <Rows question={question} rows={rows} />
    </section>
  )
}

/** @param stages which to set; all unless told */
export function PaperForm({ stages = STAGES }: { readonly stages?: readonly (typeof STAGES)[number][] }) {
  return (
    <div class="paper">
      {stages.map((stage) => (
        <section key={stage.id}>
          <h2>{stage.name}</h2>
          {QUESTIONS.filter((q) => q.stage === stage.id).map((question) => (
            <PaperQuestion key={question.id} question={question} />
          ))}
        </section>
      ))}
    </div>
  )
}
