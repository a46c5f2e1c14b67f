/** A sentence of the engine, its numbers set in the reader's units, each opening to its source. */
import type { Sentence } from '../../data/quantity'
import { markOf } from '../words/held'
import { useScope } from '../words/scope'
import { Worded } from '../words/Worded'
import { Figure } from './Figure'
import { Held } from './Held'
import { Opens } from './Opens'
import { isPlaceholder, Q } from './Q'
import { pieces } from './sentence'

interface Props {
  readonly s: Sentence
  /** For headings and labels: numbers as text, nothing to open. */
  readonly bare?: boolean
}

export function Say({ s, bare = false }: Props) {
  const all = pieces(s)
  const scope = useScope()
  // One mark tells of every invented price in the sentence.
  const marked = all.findIndex((piece) => typeof piece !== 'string' && isPlaceholder(piece))
  // The one that bears the mark is too long for a phone to hold on to anything.
  const held = (i: number) => !bare && i !== marked && typeof all[i] !== 'string'
  const cited = !bare && (s.sources?.length ?? 0) > 0
  return (
    <>
      {all.map((piece, i) => {
        if (typeof piece === 'string') {
          // What a figure holds on to stands with it.
          const text = i > 0 && held(i - 1) ? piece.slice(markOf(piece).length) : piece
          return bare || scope === null ? text : <Worded key={i} text={text} scope={scope} />
        }
        if (bare) return <Figure key={i} q={piece} />
        return (
          <Held key={i} mark={held(i) ? markOf(all[i + 1]) : ''}>
            <Q q={piece} plain={i !== marked} />
          </Held>
        )
      })}
      {cited && (
        <>
          {' '}
          <Opens
            kind="cite"
            origin={{ mark: s.mark ?? 'derived', sources: s.sources ?? [] }}
            label="source of this statement"
          >
            source
          </Opens>
        </>
      )}
    </>
  )
}
