/** The page where a framer makes an invite. The bench itself needs the engine and the codec, and comes after the first view. */
import { useEffect, useState } from 'preact/hooks'
import type { InForce } from './in-force'

interface Ready {
  readonly force: InForce
  readonly Bench: typeof import('./InviteBench').InviteBench
}

export function InvitePage() {
  const [ready, setReady] = useState<Ready | null>(null)
  const [failed, setFailed] = useState(false)
  const load = async () => {
    setFailed(false)
    try {
      const [{ framersSheet }, { InviteBench }, fields] = await Promise.all([
        import('./in-force'),
        import('./InviteBench'),
        import('../questionnaire/fields')
      ])
      const [force] = await Promise.all([framersSheet(), fields.styled])
      setReady({ force, Bench: InviteBench })
    } catch {
      setFailed(true)
    }
  }
  useEffect(() => void load(), [])
  if (ready) return <ready.Bench force={ready.force} />
  if (!failed) return <p role="status">One moment …</p>
  return (
    <div class="notice" role="alert">
      <p>The numbers about wood could not be loaded. Nothing that you have set is lost.</p>
      <button type="button" class="btn btn--small" onClick={() => void load()}>
        Try again
      </button>
    </div>
  )
}
