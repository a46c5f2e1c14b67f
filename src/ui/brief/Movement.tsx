/** How it will move, and how dry it is when it comes and where it lives. */
import type { Brief } from '../../choice/types'
import { ClimateStrip } from '../pictures/charts'
import { LogEndPair } from '../pictures/LogEndPair'
import { Say } from '../say/Say'
import { href } from '../site/href'
import { Figures } from './Figures'
import { FIGURE_NAMES } from './names'
import { Section } from './Section'
import { Paragraphs } from './Sentences'

export function Movement({ brief }: { readonly brief: Brief }) {
  const figures = brief.lead?.figures
  const { logEnds } = brief.movement
  return (
    <Section
      id="movement"
      title="How it will move"
      margin={
        figures && (
          <Figures
            of={[
              [FIGURE_NAMES.faceShrinkage, figures.faceShrinkage],
              [FIGURE_NAMES.shoulderGap, figures.shoulderGap],
              [FIGURE_NAMES.checkOpening, figures.checkOpening]
            ]}
          />
        )
      }
    >
      <Paragraphs of={brief.movement.says} />
      {logEnds.length > 0 && (
        <figure class="figure">
          <LogEndPair logEnds={logEnds} />
          <figcaption>
            {logEnds.map((end) => (
              <span key={end.heart} class="caption-line">
                <Say s={end.says} />{' '}
              </span>
            ))}
            Dashed: as sawn. Drawn {Math.round((logEnds[0]?.exaggeration ?? 1) * 10) / 10} times larger than it moves.
          </figcaption>
        </figure>
      )}
      <p class="no-print">
        <a href={href('/log-end/')}>Move a piece across the log yourself</a>
      </p>
    </Section>
  )
}

export function Drying({ brief }: { readonly brief: Brief }) {
  const figures = brief.lead?.figures
  const { climate } = brief
  return (
    <Section
      id="drying"
      title="How dry, and how long that takes"
      margin={
        figures && (
          <Figures
            of={[
              [FIGURE_NAMES.moistureDelivered, figures.moistureDelivered],
              [FIGURE_NAMES.moistureInService, figures.moistureInService],
              [FIGURE_NAMES.readyWeeks, figures.readyWeeks]
            ]}
          />
        )
      }
    >
      <Paragraphs of={climate.says} />
      {climate.months.length === 12 && (
        <figure class="figure brief-figure">
          <ClimateStrip outdoor={climate.months.map((m) => m.outdoor)} service={climate.months.map((m) => m.service)} />
          <figcaption>
            The moisture that wood settles at in {climate.place}, month by month: outdoors under cover, and where your
            timbers will be.
          </figcaption>
        </figure>
      )}
    </Section>
  )
}
