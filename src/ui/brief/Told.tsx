/** What the brief rests on: every answer, those that were assumed marked. */
import type { Brief } from '../../choice/types'
import { Say } from '../say/Say'

export function Told({ brief }: { readonly brief: Brief }) {
  return (
    <section class="sheet" id="told" aria-labelledby="told-title">
      <div class="stack bleed">
        <h2 id="told-title">What you told us</h2>
        <dl class="told">
          {brief.job.map((line) => (
            <div key={line.question}>
              <dt>{line.label}</dt>
              <dd>
                <Say s={line.says} bare />
                {line.assumed && <span class="soft"> (assumed)</span>}
              </dd>
            </div>
          ))}
        </dl>
      </div>
    </section>
  )
}
