/** The questions that a framer asks first, each with the brief's answer. */
import type { AskedLine } from '../../../choice/detail-types'
import { Say } from '../../say/Say'

export function Asked({ of }: { readonly of: readonly AskedLine[] }) {
  return (
    <ol class="asked">
      {of.map(({ ask, says, state }) => (
        <li key={ask} class={state === 'answered' ? undefined : 'soft'}>
          <b>{ask}</b> <Say s={says} bare />
        </li>
      ))}
    </ol>
  )
}
