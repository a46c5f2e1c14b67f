/** Movement per foot or metre from green, every wood in a row. */
import { type MoveRow, TARGETS } from '../../handouts/movement'
import { recalled } from '../../handouts/species-chart'
import { NBSP } from '../format/number'
import { MoveCell, Recalled } from './Cell'

export function MoveTable({ rows, caption }: { readonly rows: readonly MoveRow[]; readonly caption: string }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls by itself has to be reached by keyboard
    <section class="scroll" tabIndex={0} aria-label={caption}>
      <table class="data chart">
        <caption class="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            <td />
            {TARGETS.map((to) => (
              <th key={to} scope="colgroup" colSpan={2} class="group">
                Green to {Math.round(to * 100)}
                {NBSP}%
              </th>
            ))}
          </tr>
          <tr>
            <th scope="col">Wood</th>
            {TARGETS.flatMap((to) => [
              <th key={`${to} r`} scope="col" class="num">
                to the pith
              </th>,
              <th key={`${to} t`} scope="col" class="num">
                round rings
              </th>
            ])}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">
                {row.name}
                {recalled(row.origin) && <Recalled />}
              </th>
              {row.moves.flatMap((move, i) => [
                <td key={`${TARGETS[i]} r`} class="num">
                  <MoveCell move={move.radial} />
                </td>,
                <td key={`${TARGETS[i]} t`} class="num">
                  <MoveCell move={move.tangential} />
                </td>
              ])}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
