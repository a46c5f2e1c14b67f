/** How long each way of drying takes, how dry the timber is when it comes and where it lives, and what is still to come. */
import type { Brief } from '../../choice/brief-types'
import { linkOf } from '../drying-clock/link'
import { Moments } from '../drying-clock/Moments'
import { clockScaleWords, DryingClock } from '../pictures/DryingClock'
import { goesOn, Timetable } from '../pictures/Timetable'
import { Say } from '../say/Say'
import { href } from '../site/href'
import { Figures } from './Figures'
import { FIGURE_NAMES } from './names'
import { Section } from './Section'
import { List, Paragraphs } from './Sentences'

export function Drying({ brief }: { readonly brief: Brief }) {
  const figures = brief.lead?.figures
  const { climate, clock, schedule } = brief
  return (
    <Section
      id="drying"
      title="How dry, and how long that takes"
      margin={
        figures && (
          <>
            <Figures
              of={[
                [FIGURE_NAMES.moistureDelivered, figures.moistureDelivered],
                [FIGURE_NAMES.moistureInService, figures.moistureInService],
                [FIGURE_NAMES.readyWeeks, figures.readyWeeks]
              ]}
            />
            <p>A preliminary opinion. A moisture meter decides.</p>
          </>
        )
      }
    >
      <Paragraphs of={[schedule.says]} />
      <div class="stack timetable-told">
        <figure class="figure brief-figure">
          <Timetable of={schedule} />
          <figcaption>
            <Say s={schedule.means} /> {schedule.named && 'Grey: winters. '}
            {goesOn(schedule) && 'An arrow: what follows lies beyond the drawing.'}
          </figcaption>
        </figure>
        <List of={schedule.rows.map((row) => row.says)} />
      </div>
      <Paragraphs of={climate.says} />
      <Paragraphs of={clock.says} />
      <figure class="figure brief-figure">
        <DryingClock report={clock} />
        <figcaption>
          Its moisture from felling on, in {climate.place}. Tinted: as quick and as slow as the published boards of this
          wood. Grey: winters. {clockScaleWords(clock)}
        </figcaption>
      </figure>
      <Moments of={clock.lines} />
      <p class="no-print">
        <a href={`${href('/drying-clock/')}#${linkOf(clock.asked)}`}>Try other woods, sizes and dates</a>
      </p>
    </Section>
  )
}
