/** A text whose words of the trade open their meaning where they stand. */
import { useEffect, useId, useState } from 'preact/hooks'
import type { Entry } from '../../notes/explained'
import { Held } from '../say/Held'
import { wordsIn } from './held'
import { Meaning } from './Meanings'
import type { Scope } from './scope'

/** Opens by the browser's own popover; filled when it is first opened. */
export function Term({ entry, children }: { readonly entry: Entry; readonly children: string }) {
  const id = useId()
  const [filled, fill] = useState(false)
  return (
    <>
      <button type="button" class="term" popovertarget={id}>
        {children}
      </button>
      <span
        id={id}
        class="source"
        popover="auto"
        onBeforeToggle={(event) => {
          if (event.newState === 'open') fill(true)
        }}
      >
        {filled && <Meaning {...entry} />}
      </span>
    </>
  )
}

export function Worded({ text, scope: { glossary, claims } }: { readonly text: string; readonly scope: Scope }) {
  const me = useId()
  // Drawn anew after it was put away, such as a part that is folded, it may explain its words again.
  useEffect(
    () => () => {
      for (const [id, owner] of claims) if (owner === me) claims.delete(id)
    },
    [claims, me]
  )
  const told = new Set([...claims].filter(([, owner]) => owner !== me).map(([id]) => id))
  return (
    <>
      {wordsIn(text, glossary, told).map((piece) => {
        if (typeof piece === 'string') return piece
        claims.set(piece.id, me)
        return (
          <Held key={piece.id} mark={piece.mark}>
            <Term entry={piece}>{piece.said}</Term>
          </Held>
        )
      })}
    </>
  )
}
