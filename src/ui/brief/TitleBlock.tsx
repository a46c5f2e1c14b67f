/** The title block of the sheet: what this brief is for. */
import type { Brief } from '../../choice/brief-types'
import { Say } from '../say/Say'

/** The answers that tell one job from another; all of them stand at the end of the brief. */
const SHOWN = ['exposure', 'place', 'span', 'snow']

export function TitleBlock({ brief }: { readonly brief: Brief }) {
  const lines = SHOWN.map((id) => brief.job.find((line) => line.question === id)).filter((line) => line !== undefined)
  return (
    <dl class="title-block" data-plain>
      <div class="wide">
        <dt>Brief for</dt>
        <dd>
          <Say s={brief.title} bare />
        </dd>
      </div>
      {lines.map((line) => (
        <div key={line.question}>
          <dt>{line.label}</dt>
          <dd>
            <Say s={line.says} bare />
            {line.assumed && <span class="soft"> (assumed)</span>}
          </dd>
        </div>
      ))}
      <div>
        <dt>Shop sheet</dt>
        <dd>
          {brief.shop.name}
          {brief.shop.contact !== null && <span class="soft shop-contact"> {brief.shop.contact}</span>}
        </dd>
      </div>
    </dl>
  )
}
