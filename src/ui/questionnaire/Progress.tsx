/** How far: the stages, and "Question 6 of about 14" (about, since answers add and drop questions). */
import { STAGES } from '../../choice/questions'
import type { Answers, Question } from '../../choice/types'

interface Props {
  readonly current: Question
  readonly asked: readonly Question[]
  readonly answers: Answers
}

export function Progress({ current, asked, answers }: Props) {
  const number = asked.indexOf(current) + 1
  const done = (stage: string) => asked.filter((q) => q.stage === stage).every((q) => answers[q.id] !== undefined)
  return (
    <div class="progress">
      <ol class="steps plain" aria-label="Stages">
        {STAGES.filter((stage) => asked.some((q) => q.stage === stage.id)).map((stage) => {
          const now = stage.id === current.stage
          return (
            <li
              key={stage.id}
              class={now ? 'now' : done(stage.id) ? 'done' : ''}
              aria-current={now ? 'step' : undefined}
            >
              <span>{stage.name}</span>
            </li>
          )
        })}
      </ol>
      <p class="label">
        Question {number} of about {asked.length}
      </p>
    </div>
  )
}
