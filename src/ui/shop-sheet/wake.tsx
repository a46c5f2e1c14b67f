/** Brings the form to life: drawn at build by the same components. What was typed before is taken in. */
import { hydrate } from 'preact'
import { readSheet } from '../../shop/sheet/door'
import { BLANK, draftOf, ON, withField } from '../../shop/sheet/draft'
import { $ownSheet } from '../../stores/own-sheet'
import { $sheetDraft } from '../../stores/sheet-draft'
import { href } from '../site/href'
import { openWordsHere } from '../words/open-here'
import type { FormGiven } from './given'
import { ShopForm } from './ShopForm'

/** Fields that were changed in the page as it was drawn. */
function typedBefore(root: Element): [field: string, text: string][] {
  const all = root.querySelectorAll<HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement>('[name]')
  return [...all].flatMap((element): [string, string][] => {
    if ('checked' in element && element.type === 'checkbox')
      return element.checked === element.defaultChecked ? [] : [[element.name, element.checked ? ON : '']]
    const was = 'options' in element ? [...element.options].find((o) => o.defaultSelected)?.value : element.defaultValue
    return element.value === was ? [] : [[element.name, element.value]]
  })
}

/** @throws where the woods do not come; the form then stays as it was drawn. */
export async function wake(root: HTMLElement): Promise<void> {
  const response = await fetch(href('/data/shop-form.json'))
  if (!response.ok) throw new Error(`shop form: ${response.status}`)
  const given = (await response.json()) as FormGiven
  // A sheet that was kept without its form, by another page or an older one.
  const kept = readSheet($ownSheet.get())
  if (kept.ok && JSON.stringify($sheetDraft.get()) === JSON.stringify(BLANK))
    $sheetDraft.set(draftOf(kept.sheet, new Set(given.woods.map((wood) => wood.id))))
  const before = typedBefore(root)
  hydrate(<ShopForm given={given} />, root)
  root.dataset['live'] = ''
  void openWordsHere()
  for (const [field, text] of before) $sheetDraft.set(withField($sheetDraft.get(), field, text))
}
