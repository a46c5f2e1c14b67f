/** The moments of a timber's drying as a table of figures that open; its letters are those of the picture. */
import type { ClockLine } from '../../choice/clock/types'
import { keyOf } from '../pictures/DryingClock'
import { Heads } from '../say/Heads'
import { Q } from '../say/Q'

export function Moments({ of }: { readonly of: readonly ClockLine[] }) {
  return (
    <table class="data clock-table">
      <caption>Moisture at each moment, timed from felling, and the shrinkage still to come.</caption>
      <Heads words={['Moment']} numbers={['Mean', 'Outside', 'Middle', 'To come']} />
      <tbody>
        {of.map((line, i) => (
          <tr key={line.id}>
            <th scope="row">
              <span class="clock-key">{keyOf(i)}</span>
              {line.label}
              <span class="clock-when">
                {line.month}
                {Number(line.after.value) > 0 && (
                  <>
                    , <Q q={line.after} />
                  </>
                )}
              </span>
            </th>
            {[line.mean, line.shell, line.core, line.toCome].map((q, column) => (
              <td key={column} class="num">
                <Q q={q} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
