/** The woods, each with the shortest honest word on it. */

import type { Settled } from '../../choice/settle'
import { asList } from '../say/as-list'
import { Say } from '../say/Say'

export function WoodList({ settled }: { readonly settled: Settled }) {
  return (
    <ul class="woods plain" {...asList}>
      {settled.woods.map((wood) => (
        <li key={wood.species} class={wood.lead ? 'lead' : wood.in ? '' : 'out'}>
          <b>
            {wood.short}
            {!wood.in && <span class="visually-hidden"> (out)</span>}
          </b>
          <span>
            <Say s={wood.says} bare />
          </span>
        </li>
      ))}
    </ul>
  )
}
