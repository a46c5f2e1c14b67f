/** What a wood does: how it moves and dries, and how stout it has to be for the truss. Beside each other on paper. */

import { Section } from '../ui/brief/Section'
import { Paragraphs } from '../ui/brief/Sentences'
import { LogEndPair } from '../ui/pictures/LogEndPair'
import { SizeLadder } from '../ui/pictures/SizeLadder'
import { Figure } from '../ui/say/Figure'
import { Say } from '../ui/say/Say'
import { SizeCaution } from '../ui/site/SizeCaution'
import { DRAWN_TIMES } from './movement'
import { SIZES } from './sizes'
import type { WoodView } from './view'

interface Of {
  readonly view: WoodView
}
interface Props extends Of {
  /** The same truss in this wood, on the size ladder. */
  readonly ladder: string
}

export function WoodActs({ view, ladder }: Props) {
  return (
    <div class="wood-acts">
      <Moves view={view} />
      <Stout view={view} ladder={ladder} />
    </div>
  )
}

function Moves({ view: { logEnds, traits, drying } }: Of) {
  return (
    <Section
      id="moves"
      title="How it moves and dries"
      margin={
        <>
          <h3>Habits</h3>
          {traits.length === 0 && <p>No bad habit worth naming.</p>}
          {traits.map((s) => (
            <p key={s.text}>
              <Say s={s} />
            </p>
          ))}
        </>
      }
    >
      <figure class="figure">
        <LogEndPair logEnds={logEnds} />
        <figcaption>
          <Figure q={SIZES.square} />, green (dashed) and settled in a heated room, its movement drawn {DRAWN_TIMES}{' '}
          times.{' '}
          {logEnds.map((end, i) => (
            <>
              {i > 0 && ' '}
              <Say s={end.says} />
            </>
          ))}
        </figcaption>
      </figure>
      <Paragraphs of={drying} />
    </Section>
  )
}

function Stout({ view: { rungs, truss }, ladder }: Props) {
  return (
    <Section id="stout" title="How stout it has to be">
      <div class="wood-stout">
        {rungs.length > 0 && (
          <figure class="figure">
            <SizeLadder items={rungs.map((rung, i) => ({ ...rung, lead: i === 0 && rungs.length > 1 }))} />
            <figcaption>
              The stoutest timber of the truss, in {rungs.map((rung) => rung.said).join(' and in ')}, beside a person.
            </figcaption>
          </figure>
        )}
        <div class="stack">
          <Paragraphs of={truss} />
          <SizeCaution />
          <p class="no-print">
            <a href={ladder}>The same truss on the size ladder</a>
          </p>
        </div>
      </div>
    </Section>
  )
}
