/** The sheet in force, followed: null until the engine is there. */
import { useEffect, useState } from 'preact/hooks'
import { $invite } from '../../stores/invite'
import { useSaved } from '../../stores/use-saved'
import { type InForce, sheetInForce } from './in-force'

export function useInForce(): InForce | null {
  const kept = useSaved($invite)
  const [force, setForce] = useState<InForce | null>(null)
  useEffect(() => {
    let gone = false
    // Whoever asked for the engine says that it could not be had.
    sheetInForce().then(
      (it) => gone || setForce(it),
      () => {}
    )
    return () => {
      gone = true
    }
  }, [kept])
  return force
}
