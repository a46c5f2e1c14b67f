/** What a timber settles at, place by place: its mean over the year and the driest and wettest month. */
import type { Quantity } from '../../data/quantity'
import type { RegionRow } from '../../handouts/rot'
import { NBSP, range } from '../format/number'
import { Cell } from './Cell'

const WAYS = [
  ['outdoors', 'Outdoors, under cover'],
  ['heated', 'In a heated room']
] as const
const months = ({ low = 0, high = 0 }: Quantity): string =>
  range(String(Math.round(low * 100)), String(Math.round(high * 100)))

export function DryTable({ rows }: { readonly rows: readonly RegionRow[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls by itself has to be reached by keyboard
    <section class="scroll" tabIndex={0} aria-label="Moisture that wood settles at">
      <table class="data chart">
        <caption class="visually-hidden">Moisture that wood settles at, % of its dry weight</caption>
        <thead>
          <tr>
            <th scope="col">Moisture,{NBSP}%, mean and months</th>
            {rows.map((row) => (
              <th key={row.place} scope="col" class="num">
                {row.place}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {WAYS.map(([id, name]) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              {rows.map((row) => (
                <td key={row.place} class="num">
                  <Cell q={row[id]} /> ({months(row[id])})
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
