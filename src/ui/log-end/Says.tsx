/**
 * One sentence on the piece as it is now, announced. It follows a drag a few times a second, not with every frame, so
 * that it can be read and heard. What is refused is said here too, with the way out where there is one.
 */
import { useEffect, useRef, useState } from 'preact/hooks'
import { $units } from '../../stores/units'
import { Say } from '../say/Say'
import { useBench, useView } from './bench'
import { chosenOf, fitted, type View, withPiece } from './model'
import { complaintOf, sentenceOf } from './words'

const EVERY_MS = 250

function useUnhurried(view: View): View {
  const [slow, keep] = useState(view)
  const last = useRef(0)
  useEffect(() => {
    const wait = Math.max(0, last.current + EVERY_MS - performance.now())
    const timer = setTimeout(() => {
      last.current = performance.now()
      keep(view)
    }, wait)
    return () => clearTimeout(timer)
  }, [view])
  return slow
}

export function Says() {
  const view = useUnhurried(useView())
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
