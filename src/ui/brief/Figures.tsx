/** Named figures in the margin, each opening to its source. */
import type { Quantity } from '../../data/quantity'
import { Q } from '../say/Q'

export type Named = readonly [string, Quantity | null]

export function Figures({ of }: { readonly of: readonly Named[] }) {
  return (
    <dl class="figures">
      {of.map(
        ([name, q]) =>
          q !== null && (
            <div key={name}>
              <dt>{name}</dt>
              <dd class="num">
                <Q q={q} />
              </dd>
            </div>
          )
      )}
    </dl>
  )
}
