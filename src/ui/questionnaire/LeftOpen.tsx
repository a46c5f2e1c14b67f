/** What of the questions left could still change anything, each a step away; and when one may stop. */
import { useSaved } from '../../stores/use-saved'
import { Say } from '../say/Say'
import { href } from '../site/href'
import { questionHash } from './flow'
import { $remaining } from './use-remaining'

const COUNTS = ['None', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine']

export function LeftOpen() {
  const remaining = useSaved($remaining)
  if (remaining === null) return <p class="note left-open">Looking which questions left still matter …</p>
  const { opens, movers, closes, mayStop, left } = remaining
  return (
    <div class="note left-open">
      <p>
        <Say s={opens} bare />{' '}
        {movers.map(({ says, questions }) => (
          <span key={says}>
            {COUNTS[questions.length] ?? questions.length} {says}:{' '}
            {questions.map(({ question, label }, i) => (
              <span key={question}>
                {i > 0 && ', '}
                <a href={questionHash(question)}>{label.toLowerCase()}</a>
              </span>
            ))}
            .{' '}
          </span>
        ))}
        <Say s={closes} bare />
      </p>
      {mayStop && left.length > 0 && (
        <p>
          <a href={href('/brief/')}>See your brief</a>
        </p>
      )}
    </div>
  )
}
