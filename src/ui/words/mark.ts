/**
 * Marks the words of the trade in a page as it was built, each where the page first says it, and adds what they mean. What
 * it adds is spliced into the text of the page; nothing else of it changes. `[data-plain]` keeps words as they are.
 */
import { type DefaultTreeAdapterTypes, parse } from 'parse5'
import { explained } from '../../notes/explained'
import type { Glossary } from '../../notes/glossary'
import { wordsIn } from './held'

type Node = DefaultTreeAdapterTypes.ChildNode
type Element = DefaultTreeAdapterTypes.Element

/** What running text stands in. */
const RUNNING = new Set(['p', 'li', 'dd', 'td', 'figcaption', 'blockquote', 'small'])
/** Where a button must not stand, where words are no text, and what the framework makes anew in the browser. */
const CLOSED = new Set(
  'a button label legend h1 h2 h3 h4 h5 h6 summary caption th dt svg script style template noscript textarea select option datalist nav header footer pre code astro-island'.split(
    ' '
  )
)
/** In a part that a script takes over nothing can be marked; its words are listed behind it. */
const LISTED = 'data-words-below'
const CLOSING = ['popover', 'aria-hidden', 'data-plain', LISTED]
/** What of such a part is no text of its own. */
const SILENT = new Set('script style template svg option datalist noscript textarea'.split(' '))

const isElement = (node: Node): node is Element => 'tagName' in node
const has = (element: Element, name: string) => element.attrs.some((attribute) => attribute.name === name)

const isClosed = (element: Element): boolean =>
  CLOSED.has(element.tagName) ||
  CLOSING.some((name) => has(element, name)) ||
  // Where the reader is, not what is said there.
  element.attrs.some(({ name, value }) => name === 'class' && /\bcrumb\b/.test(value))

interface Splice {
  readonly from: number
  readonly to: number
  readonly put: string
}

/** How a word stands in the page. */
type Draw = (id: string, said: string) => string

function marked(text: string, glossary: Glossary, told: Set<string>, draw: Draw): string {
  return wordsIn(text, glossary, told)
    .map((piece) => {
      if (typeof piece === 'string') return piece
      const word = draw(piece.id, piece.said)
      return piece.mark === '' ? word : `<span class="held">${word}${piece.mark}</span>`
    })
    .join('')
}

const all = (nodes: readonly Node[], fits: (element: Element) => boolean): readonly Element[] =>
  nodes.filter(isElement).flatMap((node) => (fits(node) ? [node] : all(node.childNodes, fits)))

const textOf = (node: Node): string => {
  if (!isElement(node)) return 'value' in node ? node.value : ''
  if (SILENT.has(node.tagName) || CLOSING.some((name) => has(node, name))) return ''
  return ` ${node.childNodes.map(textOf).join('')} `
}

export interface Drawn {
  /** A word that opens what stands on the page. */
  readonly button: Draw
  /** A word that leads to the glossary. */
  readonly link: Draw
  /** What the words of these ids mean. */
  readonly meanings: (ids: readonly string[]) => string
}

/** A page of which a script takes over a part gets links: `open-here.ts` makes buttons of them. */
export function markWords(html: string, glossary: Glossary, { button, link, meanings }: Drawn): string {
  const [main] = all(parse(html, { sourceCodeLocationInfo: true }).childNodes, (e) => e.tagName === 'main')
  const end = main?.sourceCodeLocation?.endTag?.startOffset
  if (main === undefined || end === undefined) return html
  const told = new Set<string>()
  const splices: Splice[] = []
  const listed = all(main.childNodes, (e) => has(e, LISTED))
  const draw = listed.length > 0 ? link : button

  const walk = (node: Node, running: boolean): void => {
    if (isElement(node)) {
      if (!isClosed(node)) for (const child of node.childNodes) walk(child, running || RUNNING.has(node.tagName))
    } else if (running && node.nodeName === '#text' && node.sourceCodeLocation) {
      const { startOffset: from, endOffset: to } = node.sourceCodeLocation
      const text = html.slice(from, to)
      const put = marked(text, glossary, told, draw)
      if (put !== text) splices.push({ from, to, put })
    }
  }
  for (const child of main.childNodes) walk(child, false)

  for (const part of listed) {
    const words = explained(part.childNodes.map(textOf).join(' '), glossary, told).filter(
      (piece) => typeof piece !== 'string'
    )
    const at = part.sourceCodeLocation?.endOffset
    if (words.length === 0 || at === undefined) continue
    const put = `<p class="note no-print">Words here: ${words.map(({ id, term }) => draw(id, term.toLowerCase())).join(', ')}</p>`
    splices.push({ from: at, to: at, put })
  }
  if (told.size === 0) return html
  if (draw === button) splices.push({ from: end, to: end, put: meanings([...told].sort()) })
  let at = 0
  let out = ''
  for (const { from, to, put } of splices.sort((a, b) => a.from - b.from)) {
    out += html.slice(at, from) + put
    at = to
  }
  return out + html.slice(at)
}
