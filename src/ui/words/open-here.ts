/**
 * On a page that a script wakes, words lead to the glossary and their meanings are not in the page, which may not weigh more.
 * Once there is script they open in place, as everywhere else.
 */
import { h, render } from 'preact'
import { loadGlossary } from './load'
import { Meanings } from './Meanings'

/** Where the glossary does not come, words go on leading to its page. */
export async function openWordsHere(): Promise<void> {
  const links = [...document.querySelectorAll<HTMLAnchorElement>('a.term')]
  if (links.length === 0) return
  const glossary = await loadGlossary().catch(() => null)
  if (glossary === null) return
  const idOf = (link: HTMLAnchorElement) => link.hash.slice(1)
  const place = document.createElement('div')
  document.getElementById('main')?.append(place)
  render(h(Meanings, { ids: new Set(links.map(idOf)), glossary }), place)
  for (const link of links) {
    const button = document.createElement('button')
    button.type = 'button'
    button.className = 'term'
    button.setAttribute('popovertarget', `term-${idOf(link)}`)
    button.textContent = link.textContent
    const focused = link === document.activeElement
    link.replaceWith(button)
    if (focused) button.focus()
  }
}
