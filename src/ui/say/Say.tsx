/** A sentence of the engine, its numbers set in the reader's units, each opening to its source. */
import type { Sentence } from '../../data/quantity'
import { useScope } from '../words/scope'
import { Worded } from '../words/Worded'
import { Figure } from './Figure'
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
  const cited = !bare && (s.sources?.length ?? 0) > 0
  return (
    <>
      {all.map((piece, i) => {
        if (typeof piece === 'string')
          return bare || scope === null ? piece : <Worded key={i} text={piece} scope={scope} />
        return bare ? <Figure key={i} q={piece} /> : <Q key={i} q={piece} plain={i !== marked} />
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
