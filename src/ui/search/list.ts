/** What was found, as a list under a heading for each kind of page. */
import { type Found, titleOf } from './index-api'

/** Headings of one page that are linked to, at most. */
const HEADINGS = 2

function make<K extends keyof HTMLElementTagNameMap>(tag: K, kind: string, ...inside: (Node | string)[]) {
  const made = document.createElement(tag)
  made.className = kind
  made.append(...inside)
  return made
}

function link(kind: string, url: string, words: string): HTMLAnchorElement {
  const made = make('a', kind, words)
  made.href = url
  return made
}

/** Text with marks. Read as a document of its own, so that nothing in it can run or load. */
function excerpt(html: string): HTMLElement {
  const read = new DOMParser().parseFromString(html, 'text/html').body
  return make('p', 'found-says', ...read.childNodes)
}

function item(page: Found): HTMLElement {
  const parts = page.sub_results.filter(({ url }) => url.includes('#')).slice(0, HEADINGS)
  return make(
    'li',
    'found',
    link('found-page', page.url, titleOf(page)),
    excerpt(page.excerpt),
    ...(parts.length === 0
      ? []
      : [
          make(
            'p',
            'found-parts',
            'In it: ',
            ...parts.flatMap((part, i) => [i ? ' · ' : '', link('', part.url, part.title)])
          )
        ])
  )
}

/** Groups in the order of their best page. */
export function listOf(found: readonly Found[]): HTMLElement[] {
  const kinds = new Map<string, Found[]>()
  for (const one of found) {
    const kind = one.filters.kind?.[0] ?? 'The site'
    kinds.set(kind, [...(kinds.get(kind) ?? []), one])
  }
  return [...kinds].flatMap(([kind, of]) => {
    const list = make('ul', 'plain', ...of.map(item))
    list.setAttribute('role', 'list')
    return [make('h3', 'found-kind', kind), list]
  })
}
