/** Answers that come with a link: taken where there are none yet, asked about where there are. */
import { $answers } from '../../stores/answers'
import { useSaved } from '../../stores/use-saved'
import { useArrival } from './use-arrival'

export function Arrival({ onTaken }: { readonly onTaken: () => void }) {
  const own = Object.keys(useSaved($answers)).length
  const { arrived, take, keep } = useArrival(onTaken)
  if (arrived === null) return null
  const theirs = Object.keys(arrived.answers).length
  return (
    <div class="notice" role="alert">
      <p>
        <b>This link carries {theirs} answers.</b> On this device there are {own} of your own. Opening the link’s
        answers would replace them.
      </p>
      {arrived.problems.length > 0 && <p>Left out, since they could not be read: {arrived.problems.join(' ')}</p>}
      <p class="row">
        <button type="button" class="btn btn--small" onClick={take}>
          Replace mine with the link’s
        </button>
        <button type="button" class="btn btn--quiet btn--small" onClick={keep}>
          Keep my own
        </button>
      </p>
    </div>
  )
}
