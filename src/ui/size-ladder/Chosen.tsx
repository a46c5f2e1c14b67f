/** The wood that is looked into: its timbers, each opening to all its checks, its joints, what to lift, what to ask. */
import type { CheckRow, Part } from '../../choice/ladder/types'
import { Paragraphs } from '../brief/Sentences'
import { asList } from '../say/as-list'
import { Figure } from '../say/Figure'
import { Heads } from '../say/Heads'
import { Late, LateSay } from './Late'
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
                <LateSay s={joint.says} />
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
        {part.pieces > 1 && ` (${part.pieces})`}: {part.section ? <Figure q={part.section} /> : 'no section passes'}
        {part.used && (
          <>
            , used to <Figure q={part.used} />
          </>
        )}
      </summary>
      <p>
        <LateSay s={part.says} />
      </p>
      <table class="data">
        <caption>
          {part.section ? 'All its checks.' : 'The checks of the largest section tried.'} What is asked, and what it can
          give.
        </caption>
        <Heads words={['Check']} numbers={['Asked', 'Given', 'Used']} />
        <tbody>
          {part.checks.map((c) => (
            <CheckLine key={c.name} c={c} />
          ))}
        </tbody>
      </table>
      {part.lighter && (
        <p>
          <LateSay s={part.lighter} />
        </p>
      )}
    </details>
  )
}

/** A check and, under it, the numbers that went into it: they are there on paper too. */
const CheckLine = ({ c }: { readonly c: CheckRow }) => (
  <>
    <tr>
      <th scope="row">
        {c.name} <span class="ladder-clause">{c.clause}</span>
      </th>
      <td class="num">
        <Late q={c.demand} />
      </td>
      <td class="num">
        <Late q={c.capacity} />
      </td>
      <td class="num">
        <Late q={c.used} />
      </td>
    </tr>
    {c.used.origin.inputs && (
      <tr class="ladder-inputs">
        <td colSpan={4}>
          {Object.entries(c.used.origin.inputs).map(([name, q], i) => (
            <>
              {i > 0 && '; '}
              {name} <Figure q={q} />
            </>
          ))}
        </td>
      </tr>
    )}
  </>
)
