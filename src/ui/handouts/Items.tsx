/** The points of a handout's section, figures in the reader's units. */
import type { Quantity } from '../../data/quantity'
import type { Prose } from '../../handouts/prose'
import { asList } from '../say/as-list'
import { Say } from '../say/Say'

type Values = Readonly<Record<string, Quantity>>

interface Props {
  readonly section: Prose['sections'][number]
  readonly values?: Values
  /** `lines`: room to write under each; `boxes`: a box to tick. */
  readonly with?: 'lines' | 'boxes'
}

export function Items({ section, values = {}, with: extra }: Props) {
  return (
    <ul class={extra ? `items items--${extra} plain` : 'items plain'} {...asList}>
      {section.items.map((item) => (
        <li key={item.text} class={item.head || extra ? undefined : 'point'}>
          {item.head && <b>{item.head}</b>}
          {item.head && ' '}
          <Say s={{ text: item.text, values }} bare />
        </li>
      ))}
    </ul>
  )
}
