/** The place, by the same box as in the questions. */
import { PlaceBox } from '../questionnaire/PlaceBox'
import { useHere, useView } from './use-clock'

export function PlaceChoice() {
  const { store } = useHere()
  const { asked, typed, wrong, places, engine } = useView()
  const text = typed.place
  const trouble = wrong.place !== undefined
  return (
    // Emptied and left, it shows again the place that the picture is of.
    <div class="field" onFocusOut={() => text?.trim() === '' && store.leave('place')}>
      <label for="clock-place">Place</label>
      <PlaceBox
        id="place"
        inputId="clock-place"
        complaintId={trouble ? 'clock-place-error' : undefined}
        typed={text ?? places.find((p) => p.id === asked.place)?.name ?? ''}
        searching={text !== undefined}
        chosen={text === undefined ? asked.place : undefined}
        // Until the engine has come the list is not whole, and a name not in it is not yet unknown.
        places={engine === 'ready' ? places : []}
        onType={(next) => store.type('place', next)}
        onChoose={(place) => store.set('place', place.id)}
        onLeave={() => engine === 'ready' && text !== undefined && store.misread('place', text, 'unknown')}
      />
      {trouble && (
        <p class="error" id="clock-place-error">
          “{text?.trim().slice(0, 60)}” is not in our list of places. Choose one with a climate like yours.
        </p>
      )}
    </div>
  )
}
