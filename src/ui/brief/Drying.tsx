/** How dry it is when it comes and where it lives, and what is still to come at each moment between. */
import type { Brief } from '../../choice/types'
import { linkOf } from '../drying-clock/link'
import { Moments } from '../drying-clock/Moments'
import { clockScaleWords, DryingClock } from '../pictures/DryingClock'
import { href } from '../site/href'
import { Figures } from './Figures'
import { FIGURE_NAMES } from './names'
import { Section } from './Section'
import { Paragraphs } from './Sentences'

export function Drying({ brief }: { readonly brief: Brief }) {
  const figures = brief.lead?.figures
  const { climate, clock } = brief
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
