/** What the brief rests on: every answer, those that were assumed marked. */
import type { Brief } from '../../choice/brief-types'
import type { Given } from '../../shop/link'
import { Say } from '../say/Say'

interface Props {
  readonly brief: Brief
  readonly given?: Given | undefined
}

export function Told({ brief, given }: Props) {
  const note = (id: string) =>
    given?.settled.includes(id)
      ? ' (settled by the shop)'
      : given?.suggested.includes(id)
        ? ' (as the shop suggested)'
        : ''
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
                <span class="soft">{line.assumed ? ' (assumed)' : note(line.question)}</span>
              </dd>
            </div>
          ))}
        </dl>
      </div>
    </section>
  )
}
