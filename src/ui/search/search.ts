/** The search page: words in the field, pages in the list, the words in the address so that Back comes back to them. */
import { find } from './index-api'
import { listOf } from './list'

/** Pages listed at once, and how many more at each asking. */
const STEP = 12

const part = (id: string) => document.getElementById(id) as HTMLElement
const [field, status, list, more, again] = ['words', 'status', 'list', 'more', 'again'].map((id) =>
  part(`search-${id}`)
) as [HTMLInputElement, ...HTMLElement[]] as [HTMLInputElement, HTMLElement, HTMLElement, HTMLElement, HTMLElement]

let most = STEP
/** Counts the askings, so that a late answer to an old one is dropped. */
let asked = 0

function say(words: string): void {
  status.textContent = words
}

async function look(): Promise<void> {
  const mine = ++asked
  const words = field.value.trim()
  history.replaceState(null, '', words === '' ? location.pathname : `#q=${encodeURIComponent(words)}`)
  again.hidden = true
  if (words === '') {
    list.replaceChildren()
    more.hidden = true
    return say('')
  }
  const slow = setTimeout(() => mine === asked && say('Looking …'), 300)
  try {
    const { total, best } = await find(words, most)
    if (mine !== asked) return
    list.replaceChildren(...listOf(best))
    more.hidden = best.length >= total
    if (total === 0)
      say(`Nothing here says “${words}”. Try fewer words, or another name for it. All pages are listed below.`)
    else
      say(
        `${total === 1 ? 'One page' : `${total} pages`}${best.length < total ? `, the best ${best.length} of them` : ''}.`
      )
  } catch {
    if (mine !== asked) return
    list.replaceChildren()
    more.hidden = true
    again.hidden = false
    say('The index did not load, so nothing can be looked up now. All pages are listed below.')
  } finally {
    clearTimeout(slow)
  }
}

let waiting: ReturnType<typeof setTimeout> | undefined
field.addEventListener('input', () => {
  most = STEP
  clearTimeout(waiting)
  waiting = setTimeout(look, 150)
})

const links = () => [...list.querySelectorAll<HTMLAnchorElement>('a')]
part('search-form').addEventListener('submit', async (event) => {
  event.preventDefault()
  clearTimeout(waiting)
  await look()
  links()[0]?.focus()
})
// Up and down go through what was found; up from the first is back in the field.
part('search').addEventListener('keydown', (event) => {
  const way = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
  const at = links().indexOf(document.activeElement as HTMLAnchorElement)
  if (way === 0 || event.altKey || event.ctrlKey || event.metaKey) return
  if (at < 0 && document.activeElement !== field) return
  const next = at + way
  if (next < 0 && at < 0) return
  event.preventDefault()
  if (next < 0) field.focus()
  else links()[next]?.focus()
})
more.addEventListener('click', async () => {
  const last = links().length
  most += STEP
  await look()
  links()[last]?.focus()
})
again.addEventListener('click', look)

function arrive(): void {
  const given = /^#q=(.*)$/.exec(location.hash)?.[1]
  if (given === undefined) return
  try {
    field.value = decodeURIComponent(given).slice(0, 200)
  } catch {
    return // a broken link: an empty field
  }
  void look()
}
addEventListener('hashchange', arrive)
arrive()
// Typed before this script came.
if (field.value !== '' && location.hash === '') void look()
field.focus({ preventScroll: true })
