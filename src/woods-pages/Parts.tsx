/** Pieces that a wood's page and a comparison share: patches of colour, and tables of numbers. */
import type { Swatch } from '../choice/types'
import { Q } from '../ui/say/Q'
import type { Group, Row } from './rows'
import type { Look } from './view'

export function Patch({ swatch }: { readonly swatch: Swatch }) {
  return (
    <svg class="wood-patch" viewBox="0 0 60 34" preserveAspectRatio="none" aria-hidden="true">
      <rect class="swatch" fill={swatch.hex} width="60" height="34" />
    </svg>
  )
}

export function Looks({ of }: { readonly of: readonly Look[] }) {
  return (
    <dl class="wood-looks">
      {of.map(({ label, swatch }) => (
        <div key={label}>
          <dt>
            <Patch swatch={swatch} />
            {label}
          </dt>
          <dd>
            {swatch.words}
            {!swatch.inGamut && ', stronger than a screen shows'}
          </dd>
        </div>
      ))}
    </dl>
  )
}

export const Value = ({ row }: { readonly row: Row }) =>
  typeof row.value === 'string' ? <span class="soft">{row.value}</span> : <Q q={row.value} />

export function Numbers({ of }: { readonly of: Group }) {
  return (
    <table class="data wood-numbers">
      <caption>{of.title}</caption>
      <tbody>
        {of.rows.map((row) => (
          <tr key={row.label}>
            <th scope="row">{row.label}</th>
            <td class="num">
              <Value row={row} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
