/** Why this one, the runner-up, and the honest difference between them. */
import type { Brief } from '../../choice/brief-types'
import { ScoreBars } from '../pictures/bars'
import { CRITERION_NAMES, howOf } from './names'
import { Section } from './Section'
import { List, Paragraphs } from './Sentences'

export function Why({ brief }: { readonly brief: Brief }) {
  const { lead, runnerUp } = brief
  return (
    <>
      <Section id="why" title="Why">
        <List of={brief.why} />
        {lead !== null && (
          <figure class="figure brief-figure">
            <ScoreBars
              scores={lead.scores}
              weights={brief.weights}
              labels={CRITERION_NAMES}
              {...(runnerUp === null ? {} : { against: runnerUp.scores })}
            />
            <figcaption>
              How {lead.short} does on each point. The thicker the bar, the more the point weighs by your answers.
              {runnerUp !== null && <> The mark on each bar is {runnerUp.short}.</>}
            </figcaption>
          </figure>
        )}
      </Section>
      {runnerUp !== null && (
        <Section id="runner-up" title="The runner-up">
          <p class="lead">
            {runnerUp.wood}, {howOf(runnerUp)}
          </p>
          <Paragraphs of={brief.difference} />
        </Section>
      )}
    </>
  )
}
