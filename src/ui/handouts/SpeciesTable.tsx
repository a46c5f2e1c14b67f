/** The species chart as a table. */
import { type ChartRow, LEVELS, recalled, TRAITS } from '../../handouts/species-chart'
import { Cell, Recalled } from './Cell'

const classes = ({ best, worst }: ChartRow['durability']): string => (best === worst ? `${best}` : `${best}–${worst}`)

export function SpeciesTable({ rows, caption }: { readonly rows: readonly ChartRow[]; readonly caption: string }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls by itself has to be reached by keyboard
    <section class="scroll" tabIndex={0} aria-label={caption}>
      <table class="data chart">
        <caption class="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            <td />
            <th scope="colgroup" colSpan={2} class="group">
              Weight, <span class="us">lb/ft³</span>
              <span class="si">kg/m³</span>
            </th>
            <th scope="colgroup" colSpan={3} class="group">
              Shrinkage, %
            </th>
            <th scope="col" rowSpan={2} class="mid group-cell">
              Class
            </th>
            <th scope="colgroup" colSpan={2} class="group">
              Strength
            </th>
            <th scope="colgroup" colSpan={4} class="group">
              Drying
            </th>
            <th scope="colgroup" colSpan={2} class="group">
              Resin
            </th>
            <th scope="colgroup" colSpan={2} class="group">
              Working
            </th>
          </tr>
          <tr>
            <th scope="col">Wood</th>
            {['Green', 'Dry', 'Radial', 'Tang.', 'T/R', 'Bending', 'Stiffness'].map((name) => (
              <th key={name} scope="col" class="num">
                {name}
              </th>
            ))}
            {TRAITS.map(([id, name]) => (
              <th key={id} scope="col" class="mid">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">{row.name}</th>
              {[row.green, row.dry, row.radial, row.tangential, row.ratio].map((q, i) => (
                <td key={i} class="num">
                  <Cell q={q} />
                </td>
              ))}
              <td class="num mid">
                {classes(row.durability)}
                {recalled(row.durability.origin) && <Recalled />}
              </td>
              {[row.bending, row.stiffness].map((q, i) => (
                <td key={i} class="num">
                  <Cell q={q} />
                </td>
              ))}
              {row.traits.map((level, i) => (
                <td key={TRAITS[i]?.[0]} class={level === 2 ? 'mid much' : 'mid'}>
                  {LEVELS[level]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
