/** Brings the clock to life: the page was drawn by the same components, from the same data, at build. */
import { hydrate } from 'preact'
import { $units } from '../../stores/units'
import { loadEngine } from '../engine'
import { href } from '../site/href'
import { type Field, makeClock } from './bench'
import { ClockBench, type ClockGiven } from './ClockBench'
import { readField } from './read'

/** Put a setting into the address of this page. */
function address(fragment: string, step: boolean): void {
  if (location.hash === `#${fragment}`) return
  if (step) history.pushState(null, '', `#${fragment}`)
  else history.replaceState(null, '', `#${fragment}`)
}

/** What was chosen or typed before the script had come. */
function changedFields(root: HTMLElement): [Field, string][] {
  const all = root.querySelectorAll<HTMLInputElement | HTMLSelectElement>('.clock-fields :is(input, select)')
  return [...all].flatMap((element): [Field, string][] => {
    const was = 'options' in element ? [...element.options].find((o) => o.defaultSelected)?.value : element.defaultValue
    return element.value === was ? [] : [[element.id.replace('clock-', '') as Field, element.value]]
  })
}

/** @throws where the example's figures do not come; the page then stays as it was drawn. */
export async function wake(root: HTMLElement): Promise<void> {
  const response = await fetch(href('/data/drying-clock.json'))
  if (!response.ok) throw new Error(`drying clock: ${response.status}`)
  const { report, woods, places, library } = (await response.json()) as ClockGiven
  const before = changedFields(root)
  const store = makeClock(report, { places, library }, { load: loadEngine, address })
  hydrate(<ClockBench store={store} woods={woods} />, root)
  root.dataset['live'] = ''

  const follow = () => {
    const fragment = decoded(location.hash.slice(1))
    // A jump within the page, such as the skip link's, asks for no setting.
    if (fragment === '' || document.getElementById(fragment) === null) store.open(fragment)
  }
  if (location.hash !== '') follow()
  addEventListener('popstate', follow)
  for (const [field, text] of before) {
    if (field === 'place') store.type(field, text)
    else if (field === 'felledMonth') store.set(field, Number(text))
    else if (field === 'breadth' || field === 'depth' || field === 'shopWeeks') {
      const read = readField(field, text, $units.get())
      if (read === null) store.misread(field, text, 'unread')
      else store.set(field, read, text)
    } else store.set(field, text)
  }
  store.fetch()
}

/** A fragment with a broken escape is taken as it stands: it will be refused by name. */
function decoded(fragment: string): string {
  try {
    return decodeURIComponent(fragment)
  } catch {
    return fragment
  }
}
