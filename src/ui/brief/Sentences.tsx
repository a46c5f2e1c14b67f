/** Several sentences of the engine: a paragraph each, or a list. */

import type { Sentence } from '../../data/quantity'
import { asList } from '../say/as-list'
import { Say } from '../say/Say'

export function Paragraphs({ of, lead = false }: { readonly of: readonly Sentence[]; readonly lead?: boolean }) {
  return (
    <>
      {of.map((s) => (
        <p key={s.text} class={lead ? 'lead' : undefined}>
          <Say s={s} />
        </p>
      ))}
    </>
  )
}

export function List({ of }: { readonly of: readonly Sentence[] }) {
  return (
    <ul class="list plain" {...asList}>
      {of.map((s) => (
        <li key={s.text}>
          <Say s={s} />
        </li>
      ))}
    </ul>
  )
}
