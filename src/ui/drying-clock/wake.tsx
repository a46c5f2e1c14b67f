/** Brings the clock to life: the page was drawn by the same components, from the same data, at build. */
import { hydrate, render } from 'preact'
import { $units } from '../../stores/units'
import { address, changedFields, followAddress } from '../bench/address'
import { type BenchShop, engineInForce } from '../bench/in-force'
import { href } from '../site/href'
import { openWordsHere } from '../words/open-here'
import { type Field, makeClock } from './bench'
import { ClockBench, type ClockGiven } from './ClockBench'
import { readField } from './read'

/** @throws where the example's figures do not come; the page then stays as it was drawn. */
export async function wake(root: HTMLElement): Promise<void> {
  const response = await fetch(href('/data/drying-clock.json'))
  if (!response.ok) throw new Error(`drying clock: ${response.status}`)
  const { report, woods, places, library } = (await response.json()) as ClockGiven
  const before = changedFields(root.querySelector('.clock-fields'), 'clock-')
  const load = () => engineInForce((shop) => render(bench(shop), root))
  const store = makeClock(report, { places, library }, { load, address })
  const bench = (shop: BenchShop | null) => <ClockBench store={store} woods={woods} shop={shop} />
  hydrate(bench(null), root)
  root.dataset['live'] = ''
  void openWordsHere()

  followAddress(store.open)
  for (const [name, text] of before) {
    const field = name as Field
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
