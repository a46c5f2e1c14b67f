/** What comes with a link: taken where nothing of one's own stands in the way, asked about where something does. */
import { questionOf } from '../../choice/questions'
import { $answers } from '../../stores/answers'
import { $invite } from '../../stores/invite'
import { useSaved } from '../../stores/use-saved'
import { shopName } from '../invite/marks'
import { type Arrived, type Arriving, useArrival } from './use-arrival'

export function Arrival({ onTaken }: { readonly onTaken: (invited: boolean) => void }) {
  const arriving = useArrival(onTaken)
  const { arrived } = arriving
  if (arrived === null) return null
  return (
    <div class="notice" role="alert">
      {arrived.invite ? <OfInvite {...arriving} arrived={arrived} /> : <OfAnswers {...arriving} arrived={arrived} />}
    </div>
  )
}

type Props = Arriving & { readonly arrived: Arrived }

function Left({ arrived }: { readonly arrived: Arrived }) {
  return arrived.problems.length > 0 ? (
    <p>Left out, since they could not be read: {arrived.problems.join(' ')}</p>
  ) : null
}

function OfAnswers({ arrived, take, keep }: Props) {
  const own = Object.keys(useSaved($answers)).length
  return (
    <>
      <p>
        <b>This link carries {Object.keys(arrived.answers).length} answers.</b> On this device there are {own} of your
        own. Opening the link’s answers would replace them.
      </p>
      <Left arrived={arrived} />
      <p class="row">
        <button type="button" class="btn btn--small" onClick={() => take('theirs')}>
          Replace mine with the link’s
        </button>
        <button type="button" class="btn btn--quiet btn--small" onClick={keep}>
          Keep my own
        </button>
      </p>
    </>
  )
}

const names = (ids: readonly string[]) => ids.map((id) => questionOf(id)?.label ?? id).join(', ')

function OfInvite({ arrived, take, keep }: Props) {
  const kept = useSaved($invite)
  const { invite, clashes } = arrived
  if (!invite) return null
  const shop = shopName(invite)
  const settled = clashes.filter((id) => invite.locked.includes(id))
  const suggested = clashes.filter((id) => !invite.locked.includes(id))
  return (
    <>
      <p>
        <b>This link is an invite from {shop}.</b>
        {kept !== null && ` It would take the place of the one from ${shopName(kept)}.`}
      </p>
      {suggested.length > 0 && <p>You have answered otherwise than it suggests: {names(suggested)}.</p>}
      {settled.length > 0 && (
        <p>
          The shop has settled otherwise than you answered: {names(settled)}. Its answers would replace yours there.
        </p>
      )}
      <Left arrived={arrived} />
      <p class="row">
        <button type="button" class="btn btn--small" onClick={() => take('mine')}>
          {suggested.length > 0 ? 'Open it, keep my answers' : 'Open it'}
        </button>
        {suggested.length > 0 && (
          <button type="button" class="btn btn--quiet btn--small" onClick={() => take('theirs')}>
            Open it, take its answers
          </button>
        )}
        <button type="button" class="btn btn--quiet btn--small" onClick={keep}>
          Do not open it
        </button>
      </p>
    </>
  )
}
