/** What went out, and why: reasons with the woods they hold for, each with its own figures. */

import type { WoodLine } from '../../choice/types'
import { asList } from '../say/as-list'
import { Q } from '../say/Q'
import { Say } from '../say/Say'
import { groupOut } from './group-out'

export function Out({ lines }: { readonly lines: readonly WoodLine[] }) {
  return (
    <ul class="outs plain" {...asList}>
      {groupOut(lines).map((group) => (
        <li key={group.key}>
          {group.sentences.map((s) => (
            <p key={s.text}>
              <Say s={s} />
            </p>
          ))}
          <p class="outs-woods">
            {group.woods.map(({ line, own }, i) => (
              <span key={line.species}>
                {i > 0 && ', '}
                <b>{line.wood}</b>
                {own.map((q, j) => (
                  <span key={j} class="num">
                    {' '}
                    <Q q={q} plain />
                  </span>
                ))}
              </span>
            ))}
          </p>
        </li>
      ))}
    </ul>
  )
}
