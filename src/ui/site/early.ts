import { href } from './href'

/**
 * The one script of a content page, inline and allowed by its hash: puts the remembered units and theme on <html>
 * before the first paint, and remembers a change. Everything else about the two switches is CSS (styles/units.css).
 * It also lets "/" lead to the search, unless that was switched off there, and asks for the service worker.
 */
function early(base: string) {
  const root = document.documentElement
  const names = ['units', 'theme', 'slash'] as const
  root.dataset.script = ''
  const set = (name: string, value: string) => {
    // 'auto' follows the device, which is what no attribute means.
    if (value === 'auto') delete root.dataset[name]
    else root.dataset[name] = value
  }
  const recall = (name: string) => {
    try {
      return localStorage.getItem(`bentwise.${name}`)
    } catch {
      return null // storage refused: the switch works for this page only
    }
  }
  const apply = () => {
    for (const name of names) {
      const value = recall(name)
      if (!value || !/^(us|si|light|dark|auto|off)$/.test(value)) continue
      set(name, value)
      const radio = document.getElementById(`${name}-${value}`) as HTMLInputElement | null
      if (radio) radio.checked = true
    }
  }
  apply()
  // The radios come later in the page; a browser may also restore a page, or another tab change the choice.
  for (const event of ['DOMContentLoaded', 'pageshow', 'storage']) addEventListener(event, apply)
  addEventListener('change', (event) => {
    const radio = event.target as HTMLInputElement
    const name = radio.name as (typeof names)[number]
    if (!names.includes(name)) return
    set(name, radio.value)
    try {
      localStorage.setItem(`bentwise.${name}`, radio.value)
    } catch {
      // as above
    }
  })
  addEventListener('keydown', (event) => {
    const at = event.target as HTMLElement
    if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || root.dataset['slash']) return
    if (at.matches('input:not([type=radio], [type=checkbox]), select, textarea')) return
    const search = document.querySelector<HTMLElement>('#search-words, .site-search')
    if (!search) return
    event.preventDefault()
    search.focus()
    search.click()
  })
  // After the page: what is kept for later must not be in the way of what is wanted now.
  addEventListener('load', () => navigator.serviceWorker?.register(`${base}sw.js`).catch(() => {}))
}

export const earlyScript = `(${early.toString().replace(/\s*\n\s*/g, '\n')})(${JSON.stringify(href('/'))})`
