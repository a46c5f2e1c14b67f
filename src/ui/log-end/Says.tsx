/**
 * One sentence on the piece as it is now, announced. What is refused is said here too, with the way out where there is one.
 */
import { $units } from '../../stores/units'
import { Say } from '../say/Say'
import { useBench, useView } from './bench'
import { chosenOf, fitted, withPiece } from './model'
import { complaintOf, sentenceOf } from './words'

export function Says() {
  const view = useView()
  const complaint = complaintOf(view)
  return (
    <div class="ends-says">
      <p id="ends-says" role="status">
        {complaint === null ? (
          <Say s={sentenceOf(view)} bare />
        ) : (
          <span class="ends-complaint">
            <Say s={complaint.says} bare /> The picture shows the last piece that could be drawn.
          </span>
        )}
      </p>
      {view.refused?.why === 'outside' && <FitButton />}
    </div>
  )
}

export function FitButton() {
  const { change } = useBench()
  const fit = () => change((now) => withPiece(now, fitted(chosenOf(now), $units.get())))
  return (
    <button type="button" class="btn btn--quiet btn--small" onClick={fit}>
      Fit the log to it
    </button>
  )
}
