/** Whose questions these are, while an invite is open: over the questionnaire and the brief. */
import { useState } from 'preact/hooks'
import { questionOf } from '../../choice/questions'
import { $invite } from '../../stores/invite'
import { useSaved } from '../../stores/use-saved'
import { href } from '../site/href'
import { Lines } from './Lines'
import { shopName } from './marks'
import { useInForce } from './use-in-force'

const count = (n: number, one: string, many: string) => (n === 1 ? `one ${one}` : `${n} ${many}`)

interface Props {
  readonly at: 'questions' | 'brief'
  /** With the shop's own words: once, not over every question of a phone. */
  readonly full?: boolean
}

export function InviteNote({ at, full = false }: Props) {
  const kept = useSaved($invite)
  const force = useInForce()
  const [sure, setSure] = useState(false)
  if (kept === null) return null
  const invite = force?.invite ?? null
  const name = shopName(kept)
  const settled = kept.locked.length
  const suggested = Object.keys(kept.answers).length - settled
  const problems = force?.problems ?? []
  return (
    <section class="notice no-print invite-note" aria-label={`Invite from ${name}`}>
      <p>
        <b>{name}</b> {at === 'questions' ? 'asks you these questions.' : 'gave the sheet for this brief.'}
        {invite?.sheet.placeholder && ' Its prices are placeholders.'}
      </p>
      {problems.length > 0 && <p>{problems.join(' ')}</p>}
      {invite?.sheet.note && full && <Lines text={invite.sheet.note} />}
      <details>
        <summary>What that means</summary>
        <div class="stack stack--tight">
          {invite !== null && (
            <p>
              Only the {count(invite.sheet.woods.length, 'wood', 'woods')} on this shop’s sheet are weighed, at its
              prices and with its sizes.
            </p>
          )}
          {(suggested > 0 || settled > 0) && (
            <p>
              {suggested > 0 && `${count(suggested, 'answer is', 'answers are')} suggested: change what does not fit. `}
              {settled > 0 &&
                `${count(settled, 'answer is', 'answers are')} settled by the shop and not asked: ${kept.locked.map((id) => questionOf(id)?.label ?? '').join(', ')}. `}
              {at === 'questions' ? (
                <a href="#overview">See all questions and answers</a>
              ) : (
                <a href={href('/start/#overview')}>See all questions and answers</a>
              )}
            </p>
          )}
          {settled > 0 && <p>If something settled looks wrong to you, say so to the shop: they can send a new link.</p>}
          <p>
            Nothing is sent. Your answers stay in this browser until you send the link or the file of your brief
            yourself. Nobody asks for your name.
          </p>
          {invite?.sheet.contact && <p>The shop: {invite.sheet.contact}</p>}
          {!sure ? (
            <button type="button" class="btn btn--link" onClick={() => setSure(true)}>
              Put this shop’s sheet away
            </button>
          ) : (
            <div role="alert">
              <p>The answers stay as they are, the settled ones too, and all can then be changed.</p>
              <p class="row">
                <button type="button" class="btn btn--small" onClick={() => $invite.set(null)}>
                  Put it away
                </button>
                <button type="button" class="btn btn--quiet btn--small" onClick={() => setSure(false)}>
                  Keep it
                </button>
              </p>
            </div>
          )}
        </div>
      </details>
    </section>
  )
}
