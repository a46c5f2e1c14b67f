/** Years between coats, finish by finish. */
import type { UpkeepRow } from '../../handouts/upkeep'
import { Figure } from '../say/Figure'
import { Heads } from '../say/Heads'

const HEADS = ['In the weather, sawn face', 'In the weather, planed', 'Under a deep roof, sawn', 'In a heated room']

export function UpkeepTable({ rows }: { readonly rows: readonly UpkeepRow[] }) {
  return (
    <table class="data data--stack chart">
      <Heads words={['Finish', ...HEADS]} />
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <th scope="row">{row.name}</th>
            {row.years.map((years, i) => (
              <td key={HEADS[i]} data-label={HEADS[i]}>
                {years === null ? 'nothing to renew' : <Figure q={years} />}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}
