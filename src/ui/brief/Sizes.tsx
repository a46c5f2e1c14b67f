/** How big: the section each wood needs for the same job, drawn to one scale. */
import type { Brief } from '../../choice/brief-types'
import type { WoodLine } from '../../choice/types'
import { type LadderItem, SizeLadder } from '../pictures/SizeLadder'
import { TrussForces } from '../pictures/TrussForces'
import { Heads } from '../say/Heads'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { href } from '../site/href'
import { Figures } from './Figures'
import { FIGURE_NAMES } from './names'
import { Section } from './Section'
import { Paragraphs } from './Sentences'

/** As many as stand on one sheet side by side; the rest are in the table above. */
const MOST = 16

function item(line: WoodLine, lead: boolean): LadderItem | null {
  const { value } = line.report.figures.section
  return typeof value === 'number' || value[0] <= 0
    ? null
    : { label: line.report.short, section: value, lead, out: !line.in }
}

/** The joints of the leading option: what each carries, how far it is used, and how it is cut. */
function Joinery({ of }: { readonly of: Brief['sizes']['joinery'] }) {
  if (of.length === 0) return null
  return (
    <table class="data data--stack">
      <caption>Joints at a first look, in the leading option</caption>
      <Heads words={['Joint']} numbers={['Carries', 'Used']} rest={['How']} />
      <tbody>
        {of.map((line) => (
          <tr key={line.id}>
            <th scope="row">{line.name}</th>
            <td class="num" data-label="Carries">
              <Q q={line.force} />
            </td>
            <td class="num" data-label="Used">
              {line.used ? <Q q={line.used} /> : '–'}
            </td>
            <td data-label="How">
              {line.steel && <b>Not in timber alone. </b>}
              <Say s={line.says} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

export function Sizes({ brief }: { readonly brief: Brief }) {
  const { lead } = brief
  const items = brief.woods
    .filter((line) => line.in || !line.report.reasons.some((r) => r.effect === 'out' && r.about === 'strength'))
    .map((line) => item(line, line.species === lead?.option.species))
    .filter((found) => found !== null)
    .slice(0, MOST)
  return (
    <Section
      id="sizes"
      title="How big"
      margin={
        lead !== null && (
          <>
            <Figures
              of={[
                [FIGURE_NAMES.section, lead.figures.section],
                [FIGURE_NAMES.logDiameter, lead.figures.logDiameter],
                [FIGURE_NAMES.stickWeight, lead.figures.stickWeight],
                [FIGURE_NAMES.volume, lead.figures.volume]
              ]}
            />
            <p>A first size, to talk about. A licensed engineer sizes your frame to the local code.</p>
          </>
        )
      }
    >
      <Paragraphs of={brief.sizes.says} />
      {brief.sizes.demanded && items.length > 0 && (
        <figure class="figure">
          <SizeLadder items={items} />
          <figcaption>
            The main timber in each wood, for the same job, to one scale.
            {items.some((i) => i.out) && <> Dashed: out for another reason.</>}
          </figcaption>
        </figure>
      )}
      {brief.sizes.drawn && (
        <figure class="figure brief-figure">
          <TrussForces {...brief.sizes.drawn} />
          <figcaption>
            The frame of the leading option, to scale beside a person.
            {brief.sizes.drawn.parts.some((p) => p.push || p.pull) &&
              ' Whole line, arrows on the joints: push. Dashed line, arrows off the joints: pull.'}
          </figcaption>
        </figure>
      )}
      <Joinery of={brief.sizes.joinery} />
      <p class="no-print">
        <a href={href('/size-ladder/')}>Try other spans, loads and members</a>
      </p>
    </Section>
  )
}
