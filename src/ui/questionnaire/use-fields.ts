/** Code that comes after the first view: asked for once it is wanted, and kept. */
import { useEffect, useState } from 'preact/hooks'
import type { Fields } from './Control'

export function useFields(wanted: boolean): Fields | null {
  const [fields, keep] = useState<Fields | null>(null)
  useEffect(() => {
    if (!wanted) return
    // A lost connection: the first question stays usable, and the next visit tries again.
    import('./fields').then(
      (it) => it.styled.then(() => keep(it)),
      () => {}
    )
  }, [wanted])
  return fields
}
