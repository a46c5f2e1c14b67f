/** Under the picture: the usual ways to saw the piece, and how many times the movement is enlarged. */
import { $units } from '../../stores/units'
import { asList } from '../say/as-list'
import { useBench, usePart } from './bench'
import { chosenOf, PICKS, type Pick3, sawn, type View, withPiece } from './model'
import { timesWords } from './words'

const NAMES: Readonly<Record<Pick3, string>> = {
  boxed: 'Boxed heart',
  free: 'Free of heart centre',
  quartered: 'Quartered'
}
const enlarged = (view: View) => view.asked.exaggeration

export function Tools() {
  const { change } = useBench()
  const times = usePart(enlarged)
  const saw = (pick: Pick3) => change((now) => withPiece(now, sawn(pick, chosenOf(now), $units.get())))
  return (
    <div class="ends-tools needs-script">
      <ul class="plain row" {...asList} aria-label="Saw it">
        {PICKS.map((pick) => (
          <li key={pick}>
            <button type="button" class="btn btn--quiet btn--small" onClick={() => saw(pick)}>
              {NAMES[pick]}
            </button>
          </li>
        ))}
      </ul>
      <div class="field">
        <label for="bench-exaggeration">Movement drawn {timesWords(times)}</label>
        <input
          id="bench-exaggeration"
          type="range"
          min="1"
          max="10"
          step="1"
          value={times}
          onInput={(event) => {
            const exaggeration = Number(event.currentTarget.value)
            change((now) => ({ ...now, exaggeration }))
          }}
        />
      </div>
    </div>
  )
}
