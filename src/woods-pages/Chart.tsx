/** The chart of all woods. Its figures do not open here: each opens on the page of its wood. */
import { Figure } from '../ui/say/Figure'
import { Heads } from '../ui/say/Heads'
import { href } from '../ui/site/href'
import type { ChartRow } from './chart'

interface Props {
  readonly rows: readonly ChartRow[]
}

/** What a wood is for, with the few numbers that tell one from another. */
export function Index({ rows }: Props) {
  return (
    <table class="data data--stack wood-chart">
      <Heads words={['Wood', 'For']} numbers={['Class', 'Shoulder opens', 'Green stick', 'Truss timber']} />
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <th scope="row">
              <a href={href(`/woods/${row.id}/`)}>{row.name}</a>
            </th>
            <td data-label="For">{row.line}</td>
            <td class="num" data-label="Class">
              <Figure q={row.durability} />
            </td>
            <td class="num" data-label="Shoulder opens">
              <Figure q={row.gap} />
            </td>
            <td class="num" data-label="Green stick">
              {row.green ? <Figure q={row.green} /> : <span class="soft">sold dry</span>}
            </td>
            <td class="num" data-label="Truss timber">
              <span>
                {row.section && row.rank ? (
                  <>
                    <Figure q={row.section} /> <span class="soft">({row.rank})</span>
                  </>
                ) : (
                  <span class="soft">none</span>
                )}
              </span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
