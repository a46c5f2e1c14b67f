/** The wood that is looked into: its timbers, each opening to all its checks, its joints, what to lift, what to ask. */
import type { CheckRow, Part } from '../../choice/ladder-types'
import { Paragraphs } from '../brief/Sentences'
import { asList } from '../say/as-list'
import { Figure } from '../say/Figure'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { useView } from './use-ladder'

export function Chosen() {
  const { shown } = useView()
  const { said, parts, joints, says, ways } = shown.chosen
  return (
    <section class="ladder-chosen stack" id="ladder-chosen" tabindex={-1} aria-label={`Looked into: ${said}`}>
      <h2>In {said}</h2>
      {ways.length > 0 && (
        <div class="notice ladder-ways">
          <Paragraphs of={ways} />
        </div>
      )}
      <div class="ladder-parts">
        {parts.map((part) => (
          <PartChecks key={part.name} part={part} />
        ))}
      </div>
      {joints.length > 0 && (
        <>
          <h3>Its joints</h3>
          <ul class="list plain" {...asList}>
            {joints.map((joint) => (
              <li key={joint.name}>
                <b>
                  {joint.name}:{!joint.joinery && <span class="mark mark--steel">steel?</span>}
                </b>{' '}
                <Say s={joint.says} />
              </li>
            ))}
          </ul>
        </>
      )}
      <Paragraphs of={says} />
    </section>
  )
}

function PartChecks({ part }: { readonly part: Part }) {
  return (
    <details>
      <summary>
        <b>{part.name}</b>
        {part.pieces > 1 && ` (${part.pieces})`}, <Figure q={part.length} />:{' '}
        {part.section ? <Figure q={part.section} /> : 'no section passes'}
        {part.push && (
          <>
            , push <Figure q={part.push} />
          </>
        )}
        {part.pull && (
          <>
            , pull <Figure q={part.pull} />
          </>
        )}
        {part.used && (
          <>
            , used to <Figure q={part.used} />
          </>
        )}
      </summary>
      <table class="data">
        <caption>
          {part.section ? 'All its checks.' : 'The checks of the largest section tried.'} What is asked, and what it can
          give.
        </caption>
        <thead>
          <tr>
            <th scope="col">Check</th>
            <th scope="col" class="num">
              Asked
            </th>
            <th scope="col" class="num">
              Given
            </th>
            <th scope="col" class="num">
              Used
            </th>
          </tr>
        </thead>
        <tbody>
          {part.checks.map((c) => (
            <CheckLine key={c.name} c={c} />
          ))}
        </tbody>
      </table>
      {part.lighter && (
        <p>
          <Say s={part.lighter} />
        </p>
      )}
    </details>
  )
}

const CheckLine = ({ c }: { readonly c: CheckRow }) => (
  <tr>
    <th scope="row">
      {c.name} <span class="ladder-clause">{c.clause}</span>
    </th>
    <td class="num">
      <Figure q={c.demand} />
    </td>
    <td class="num">
      <Figure q={c.capacity} />
    </td>
    <td class="num">
      <Q q={c.used} />
    </td>
  </tr>
)
