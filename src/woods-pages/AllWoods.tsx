/** Every wood and its chief numbers in one table, which scrolls by itself where the screen is narrow. */
import { Figure } from '../ui/say/Figure'
import { Heads } from '../ui/say/Heads'
import { href } from '../ui/site/href'
import type { ChartRow } from './chart'
import { SIZES } from './sizes'

const HEADS = ['Class', 'Shoulder opens', 'Green stick', 'Dry density', 'Air-dry in', 'Truss timber', 'Place']

export function AllWoods({ rows }: { readonly rows: readonly ChartRow[] }) {
  return (
    <section class="scroll" aria-label="All woods, scrolls sideways" tabindex={0}>
      <table class="data wood-all">
        <caption>
          The same for all: a stick of <Figure q={SIZES.square} />, <Figure q={SIZES.stick} /> long, one yard, one
          heated room, one truss. Place: among those that carry the truss, leanest first.
        </caption>
        <Heads words={['Wood']} numbers={HEADS} />
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">
                <a href={href(`/woods/${row.id}/`)}>{row.name}</a>
              </th>
              {[row.durability, row.gap, row.green, row.density, row.yard, row.section].map((q, i) => (
                <td key={HEADS[i]} class="num">
                  {q ? <Figure q={q} /> : <span class="soft">{i < 5 ? 'sold dry' : 'none'}</span>}
                </td>
              ))}
              <td class="num">{row.rank ?? <span class="soft">none</span>}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
