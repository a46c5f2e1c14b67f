/** Making an invite: whose sheet, what is known already, then the link, the words to send it with, and the code. */
import { readAnswers } from '../../choice/answers'
import { slimmed } from '../../shop/invite/slim'
import { encodeInvite } from '../../shop/link'
import { CORRECTIONS, qrOf } from '../../shop/qr'
import { $inviteDraft, changeDraft } from '../../stores/invite-draft'
import { useSaved } from '../../stores/use-saved'
import { href } from '../site/href'
import { Card } from './Card'
import { Code } from './Code'
import type { InForce } from './in-force'
import { Known } from './Known'
import { Letter } from './Letter'
import { Slim } from './Slim'
import { WhoseSheet } from './WhoseSheet'

export function InviteBench({ force }: { readonly force: InForce }) {
  const draft = useSaved($inviteDraft)
  const { sheet } = force.engine
  const { answers, problems } = readAnswers(draft.answers)
  const locked = draft.locked.filter((id) => answers[id] !== undefined)
  const whole = { sheet, answers, locked }
  const code = encodeInvite({ ...whole, sheet: slimmed(sheet, draft.leave) })
  const link = `${location.origin}${href('/start/')}#i=${code}`
  const codes = new Map(CORRECTIONS.map((correction) => [correction, qrOf(link, correction)]))
  const wanted = CORRECTIONS.find((c) => c === draft.correction) ?? 'M'
  // The wanted correction where it fits, else the most that does.
  const correction = [wanted, ...[...CORRECTIONS].reverse()].find((c) => codes.get(c)) ?? null
  const qr = correction ? (codes.get(correction) ?? null) : null

  return (
    <>
      <WhoseSheet force={force} problems={problems.map((p) => p.says)} />
      <Known
        answers={answers}
        locked={locked}
        engine={force.engine}
        onChange={(next, lock) => changeDraft({ answers: next, locked: lock })}
      />
      <Letter link={link} shop={sheet} words={draft.words} onWords={(words) => changeDraft({ words })} />
      <Code
        qr={qr}
        codes={codes}
        correction={correction}
        link={link}
        onCorrection={(next) => changeDraft({ correction: next })}
        slim={
          <Slim invite={whole} leave={draft.leave} onLeave={(leave) => changeDraft({ leave })} urgent={qr === null} />
        }
      />
      {qr && <Card qr={qr} shop={sheet} />}
    </>
  )
}
