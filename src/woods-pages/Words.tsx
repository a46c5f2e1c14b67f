/** Own words on a wood: figures open their source, and words of the trade their meaning, each once a page. */
import type { Sentence } from '../data/quantity'
import { explained } from '../notes/glossary'
import { glossary } from '../notes/words'
import { Meanings } from '../ui/notes/Meanings'
import { Q } from '../ui/say/Q'
import { pieces } from '../ui/say/sentence'

/** @param told gathers what the page has explained */
export function SayWords({ s, told }: { readonly s: Sentence; readonly told: Set<string> }) {
  return (
    <>
      {pieces(s).map((piece, i) =>
        typeof piece === 'string' ? (
          explained(piece, glossary, told).map((part) =>
            typeof part === 'string' ? (
              part
            ) : (
              <button key={part.id} type="button" class="term" popovertarget={`term-${part.id}`}>
                {part.said}
              </button>
            )
          )
        ) : (
          <Q key={i} q={piece} />
        )
      )}
    </>
  )
}

/** Stands behind all words that it explains. */
export function Told({ told }: { readonly told: ReadonlySet<string> }) {
  return <Meanings terms={told} glossary={glossary} />
}
