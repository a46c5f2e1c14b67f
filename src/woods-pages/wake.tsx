/** Brings the comparison to life: the page was drawn by the same components, from the same data, at build. */
import { hydrate } from 'preact'
import { address, followAddress } from '../ui/bench/address'
import { href } from '../ui/site/href'
import { openWordsHere } from '../ui/words/open-here'
import { Compare, type WoodName } from './Compare'
import type { CompareWood } from './compare-data'

/** @throws where a wood does not come. */
async function load(id: string): Promise<CompareWood> {
  const response = await fetch(href(`/data/woods/${id}.json`))
  if (!response.ok) throw new Error(`wood: ${response.status}`)
  return (await response.json()) as CompareWood
}

/** @throws where the woods of the first view do not come; the page then stays as it was drawn. */
export async function wake(root: HTMLElement): Promise<void> {
  const ids = (root.dataset['first'] ?? '').split(',')
  const names: WoodName[] = [...root.querySelectorAll<HTMLOptionElement>('#wood-0 option[value]:not([value=""])')].map(
    (option) => ({ id: option.value, name: option.textContent ?? option.value })
  )
  const first = await Promise.all(ids.map(load))
  hydrate(<Compare names={names} first={first} outside={{ load, address, follow: followAddress }} />, root)
  root.dataset['live'] = ''
  void openWordsHere()
}
