/** Brings the size ladder to life: the page was drawn by the same components, from the same data, at build. */
import { hydrate, render } from 'preact'
import type { LadderNumber } from '../../choice/ladder/door'
import { slotOf } from '../../choice/ladder/uses'
import { $units } from '../../stores/units'
import { address, changedFields, followAddress } from '../bench/address'
import { type BenchShop, engineInForce } from '../bench/in-force'
import { href } from '../site/href'
import { openWordsHere } from '../words/open-here'
import { type Field, makeLadder } from './bench'
import { LadderBench, type LadderGiven } from './LadderBench'
import { linkOf } from './link'
import { readField } from './read'

const isNumber = (field: string): field is LadderNumber =>
  ['span', 'width', 'slope', 'height', 'snow'].includes(field) || slotOf(field) !== null

/** @throws where the example's figures do not come; the page then stays as it was drawn. */
export async function wake(root: HTMLElement): Promise<void> {
  const response = await fetch(href('/data/size-ladder.json'))
  if (!response.ok) throw new Error(`size ladder: ${response.status}`)
  const { report, woods, ranges, library } = (await response.json()) as LadderGiven
  const before = changedFields(root.querySelector('.ladder-fields'), 'ladder-')
  const load = () =>
    engineInForce((shop) => {
      render(bench(shop), root)
      // The example was worked out from the sample's sizes: once more, from these.
      if (store.$view.get().asked === report.asked) store.open(linkOf(report.asked))
    })
  const store = makeLadder(report, { library }, { load, address })
  const bench = (shop: BenchShop | null) => <LadderBench store={store} woods={woods} ranges={ranges} shop={shop} />
  hydrate(bench(null), root)
  root.dataset['live'] = ''
  void openWordsHere()
  followAddress(store.open)
  for (const [field, text] of before) {
    if (!isNumber(field)) {
      store.set(field as Field, text)
      continue
    }
    const read = readField(field, text, $units.get())
    if (read === null) store.misread(field, text, 'unread')
    else store.set(field, read, text)
  }
  store.fetch()
}
