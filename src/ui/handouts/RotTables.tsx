/** Places by region, and the matrix of durability against use. */
import type { Reference } from '../../data/reference'
import { CLASSES, type MatrixRow, type RegionRow } from '../../handouts/rot'
import { recalled } from '../../handouts/species-chart'
import { monthsSay } from '../places/MonthStrip'
import { Cell, Recalled } from './Cell'

const WORD = { low: 'slow', moderate: 'moderate', high: 'fast' } as const

export function RegionTable({ rows }: { readonly rows: readonly RegionRow[] }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls by itself has to be reached by keyboard
    <section class="scroll" tabIndex={0} aria-label="Rot by region">
      <table class="data chart">
        <caption class="visually-hidden">Rot by region</caption>
        <thead>
          <tr>
            <th scope="col">Region</th>
            <th scope="col">Place</th>
            <th scope="col" class="num">
              Index
            </th>
            <th scope="col">Rot works</th>
            <th scope="col">When</th>
            <th scope="col" class="num">
              Outdoors, %
            </th>
            <th scope="col" class="num">
              Heated, %
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.place}>
              <th scope="row">{row.region}</th>
              <td>{row.place}</td>
              <td class="num">
                <Cell q={row.index} />
              </td>
              <td>{row.hazard === 'high' ? <b>{WORD.high}</b> : WORD[row.hazard]}</td>
              <td>{monthsSay(row.months)}</td>
              <td class="num">
                <Cell q={row.outdoors} />
              </td>
              <td class="num">
                <Cell q={row.heated} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

interface MatrixProps {
  readonly rows: readonly MatrixRow[]
  readonly decay: Reference['decay']
  readonly woods: readonly { readonly durability: number; readonly woods: readonly string[] }[]
}

export function MatrixTable({ rows, decay, woods }: MatrixProps) {
  const { words } = decay.sufficiency
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table that scrolls by itself has to be reached by keyboard
    <section class="scroll" tabIndex={0} aria-label="Durability class against use class">
      <table class="data chart matrix">
        <caption class="visually-hidden">Durability class against use class</caption>
        <thead>
          <tr>
            <th scope="col" class="mid">
              Class
            </th>
            {rows.map((row) => (
              <th key={row.use} scope="col">
                Use {row.use}
              </th>
            ))}
            <th scope="col">Years in the ground</th>
            <th scope="col">Woods, by the middle of their range</th>
          </tr>
        </thead>
        <tbody>
          {CLASSES.map((durability, i) => (
            <tr key={durability}>
              <th scope="row" class="mid">
                {durability}
              </th>
              {rows.map((row) => {
                const verdict = row.verdicts[i] ?? 'treat'
                return (
                  <td key={row.use} class={`verdict-${verdict}`}>
                    {words[verdict]}
                  </td>
                )
              })}
              <td>
                {decay.groundYears[i]?.says}
                {decay.groundYears[i] && recalled({ mark: decay.groundYears[i].mark, sources: [] }) && <Recalled />}
              </td>
              <td>{woods[i]?.woods.join(', ') || 'none of those here'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
