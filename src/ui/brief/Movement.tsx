/** How it will move. */
import type { Brief } from '../../choice/brief-types'
import type { JointLine } from '../../choice/types'
import { JointPicture } from '../pictures/Joint'
import { LogEndPair } from '../pictures/LogEndPair'
import { Heads } from '../say/Heads'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { href } from '../site/href'
import { Cell } from './Cell'
import { Figures } from './Figures'
import { FIGURE_NAMES } from './names'
import { Section } from './Section'
import { Paragraphs } from './Sentences'

const COLUMNS = [
  ['gap', 'Opens'],
  ['drop', 'Comes down'],
  ['housing', 'Housing to hide it']
] as const

/** What each joint does once dry, with the housing that hides it. */
export function Joints({ of }: { readonly of: readonly JointLine[] }) {
  return (
    <table class="data data--stack">
      <caption>Joints</caption>
      <Heads words={['Joint']} numbers={COLUMNS.map(([, label]) => label)} />
      <tbody>
        {of.map((joint) => (
          <tr key={joint.id}>
            <th scope="row">{joint.name}</th>
            {COLUMNS.map(([key, label]) => (
              <Cell key={key} label={label} num>
                <Q q={joint[key]} />
              </Cell>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

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
              [FIGURE_NAMES.breadthShrinkage, figures.breadthShrinkage],
              [FIGURE_NAMES.shoulderGap, figures.shoulderGap],
              [FIGURE_NAMES.twist, figures.twist],
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
      <Joints of={brief.movement.joints} />
      <figure class="figure">
        <JointPicture shoulder={brief.movement.shoulder} />
        <figcaption>
          A housed shoulder, as cut and as settled. Dashed: as cut. The housing and all that moves are drawn{' '}
          {brief.movement.shoulder.exaggeration} times larger; the rest is to scale.
        </figcaption>
      </figure>
      <p class="no-print">
        <a href={href('/log-end/')}>Move a piece across the log yourself</a>
      </p>
    </Section>
  )
}
