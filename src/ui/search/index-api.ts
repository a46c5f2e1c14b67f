/** The index that the build writes beside the pages, fetched at the first word typed. What is used of it, typed. */
import { href } from '../site/href'

export interface Found {
  readonly url: string
  /** As HTML: text with <mark> round what was looked for. */
  readonly excerpt: string
  readonly meta: { readonly title?: string }
  readonly filters: { readonly kind?: readonly string[] }
  readonly sub_results: readonly { readonly url: string; readonly title: string }[]
}
interface Hit {
  readonly data: () => Promise<Found>
}
interface Index {
  readonly options: (options: { baseUrl: string; excerptLength: number; noWorker: boolean }) => Promise<void>
  readonly search: (words: string) => Promise<{ readonly results: readonly Hit[] }>
}

let opened: Promise<Index> | undefined

/** @throws where the index cannot be had; the next call tries again */
async function open(): Promise<Index> {
  opened ??= (async () => {
    // Asked for first: the index itself would only log that it is not there. A failed import is never tried again by some browsers.
    const entry = await fetch(href('/pagefind/pagefind-entry.json'))
    if (!entry.ok) throw new Error(`the index answered ${entry.status}`)
    const index: Index = await import(/* @vite-ignore */ href('/pagefind/pagefind.js'))
    await index.options({ baseUrl: href('/'), excerptLength: 24, noWorker: true })
    return index
  })()
  try {
    return await opened
  } catch (error) {
    opened = undefined
    throw error
  }
}

export interface Finds {
  /** Pages in which the words stand. */
  readonly total: number
  /** The best of them, best first. */
  readonly best: readonly Found[]
}

/** @throws where the index, or a part of it, cannot be had */
export async function find(words: string, most: number): Promise<Finds> {
  const { results } = await (await open()).search(words)
  const got = await Promise.all(results.slice(0, most).map((hit) => hit.data()))
  const best = got.filter((page) => says(page, words))
  return { total: results.length - (got.length - best.length), best }
}

/** Letters that a word and what was found for it have in common at least. */
const ALIKE = 3

/** Whether the page holds a word like one of these: the index takes “z” for “zzyzx” rather than find nothing. */
function says({ meta, excerpt }: Found, words: string): boolean {
  const marked = [...excerpt.matchAll(/<mark>([^<]*)/g)].map((m) => m[1] ?? '')
  const there = [...marked, meta.title ?? ''].join(' ').toLowerCase()
  const looked = words.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []
  return looked.some((word) => there.includes(word.slice(0, ALIKE)))
}

/** What the page is called, without the name of the site. */
export const titleOf = ({ meta, url }: Found): string => meta.title?.replace(/ · Bentwise$/, '') ?? url
