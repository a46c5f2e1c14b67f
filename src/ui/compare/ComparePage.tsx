/** The page that sets two returned briefs side by side. Nothing leaves the browser. */
import { Bring } from './Bring'
import { useCompare } from './use-compare'

const LABELS = [
  ['first-brief', 'First brief'],
  ['second-brief', 'Second brief']
] as const

export function ComparePage() {
  const { slots, outcome, type, open, compare, takeOwn } = useCompare()
  return (
    <div class="stack">
      <form
        class="stack no-print"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          compare()
        }}
      >
        <div class="two">
          {LABELS.map(([id, label], at) => {
            const slot = slots[at as 0 | 1]
            return (
              <Bring
                key={id}
                id={id}
                label={label}
                text={slot.text}
                problem={slot.problem}
                left={slot.left}
                onText={(text) => type(at as 0 | 1, text)}
                onFile={(file) => void open(at as 0 | 1, file)}
                onOwn={takeOwn && (() => void takeOwn(at as 0 | 1))}
              />
            )
          })}
        </div>
        <p>
          <button type="submit" class="btn">
            Compare
          </button>
        </p>
      </form>
      <div role="status" class="no-print">
        {outcome.state === 'working' && <p>Working both out …</p>}
        {outcome.state === 'failed' && (
          <p class="notice">The numbers about wood did not load. What you brought is kept; try again.</p>
        )}
      </div>
      {outcome.state === 'done' && <outcome.draw.Pair sides={outcome.sides} />}
    </div>
  )
}
