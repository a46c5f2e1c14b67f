/** What words of the trade mean; a word in the text opens its own. */
import type { Glossary } from '../../notes/glossary'
import { href } from '../site/href'

/** Spans throughout, as it may stand inside a paragraph. */
export function Meaning({ id, term, means }: { readonly id: string; readonly term: string; readonly means: string }) {
  return (
    <>
      <span>
        <b>{term}</b>
      </span>
      <span>{means}</span>
      <span class="source-mark">
        <a href={href(`/glossary/#${id}`)}>In the glossary</a>
      </span>
    </>
  )
}

/** Stands once a page, behind all words that it explains. */
export function Meanings({ ids, glossary }: { readonly ids: Iterable<string>; readonly glossary: Glossary }) {
  return (
    <div class="meanings" data-pagefind-ignore>
      {[...ids].map((id) => {
        const { term = id, means = '' } = glossary[id] ?? {}
        return (
          <span key={id} id={`term-${id}`} class="source" popover="auto">
            <Meaning id={id} term={term} means={means} />
          </span>
        )
      })}
    </div>
  )
}
