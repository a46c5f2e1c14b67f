/** What went out, and why: a line a wood in few words; opened, every reason in full with its source. */
import type { WoodLine } from '../../choice/types'
import { asList } from '../say/as-list'
import { Say } from '../say/Say'

export function Out({ lines }: { readonly lines: readonly WoodLine[] }) {
  return (
    <ul class="outs plain" {...asList}>
      {lines.map(({ species, wood, report, says }) => {
        const reasons = report.reasons.filter((reason) => reason.effect === 'out')
        return (
          <li key={species}>
            <details>
              <summary>
                <b>{wood}</b>{' '}
                {reasons.map((reason, i) => (
                  <span key={reason.rule}>
                    {i > 0 && '; '}
                    <Say s={reason.short} bare />
                  </span>
                ))}
              </summary>
              {(reasons.length > 0 ? reasons.map((reason) => reason.says) : [says]).map((s) => (
                <p key={s.text}>
                  <Say s={s} />
                </p>
              ))}
            </details>
          </li>
        )
      })}
    </ul>
  )
}
