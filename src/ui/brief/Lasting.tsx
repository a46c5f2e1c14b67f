/** Whether it will last where it stands, and how it will look and be looked after. */
import type { Brief } from '../../choice/brief-types'
import { DecayMonths } from '../pictures/charts'
import { WaterMarks } from '../pictures/WaterMarks'
import { href } from '../site/href'
import { Figures } from './Figures'
import { Finish } from './Finish'
import { FIGURE_NAMES } from './names'
import { Section } from './Section'
import { Paragraphs } from './Sentences'

export function Lasting({ brief }: { readonly brief: Brief }) {
  const { durability, lead } = brief
  const total = typeof durability.hazard.value === 'number' ? durability.hazard.value : 0
  return (
    <>
      <Section
        id="lasting"
        title="Will it last?"
        margin={
          <Figures
            of={[
              ['Rot at this place, climate index', durability.hazard],
              [FIGURE_NAMES.durabilityClass, lead?.figures.durabilityClass ?? null]
            ]}
          />
        }
      >
        <Paragraphs of={durability.says} />
        <p class="no-print">
          <a href={href('/places/')}>Rot and dryness in other places</a>
        </p>
        {durability.water && (
          <figure class="figure brief-figure">
            <WaterMarks kept={durability.water.details} roofed={durability.water.roofed} />
            <figcaption>Where rot starts first, with the details taken here.</figcaption>
          </figure>
        )}
        {durability.months.length === 12 && durability.useClass !== '1' && (
          <figure class="figure brief-figure">
            <DecayMonths months={durability.months} total={total} />
            <figcaption>
              When rot can work in {brief.climate.place}: what each month adds to the climate index.
            </figcaption>
          </figure>
        )}
      </Section>
      <Finish brief={brief} />
    </>
  )
}
