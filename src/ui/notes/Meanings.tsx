/** What the words of the trade on a page mean; a word in the text opens its own. */
import type { Glossary } from '../../notes/glossary'
import { href } from '../site/href'

export function Meanings({ terms, glossary }: { readonly terms: Iterable<string>; readonly glossary: Glossary }) {
  return (
    <div class="meanings">
      {[...terms].map((id) => {
        const entry = glossary[id]
        return (
          <span key={id} id={`term-${id}`} class="source" popover="auto">
            <span>
              <b>{entry?.term}</b>
            </span>
            <span>{entry?.means}</span>
            <span class="source-mark">
              <a href={href(`/glossary/#${id}`)}>In the glossary</a>
            </span>
          </span>
        )
      })}
    </div>
  )
}
