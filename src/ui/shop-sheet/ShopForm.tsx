/** The form of a shop sheet. Drawn at build as it is at the beginning; what is saved on the device follows. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import { BLANK, type Draft, draftOf, withField } from '../../shop/sheet/draft'
import { readDraft } from '../../shop/sheet/read'
import { $ownSheet } from '../../stores/own-sheet'
import { $sheetAside, $sheetDraft } from '../../stores/sheet-draft'
import { useSaved } from '../../stores/use-saved'
import { Client } from './Client'
import { Files } from './Files'
import { AdditionsPart, QuotePart, ShopPart, SizesPart, TellPart, WoodsPart } from './Parts'
import { RatesPart } from './Rates'
import { SeasoningPart } from './Seasoning'
import { Standing } from './Standing'
import { type Here, SheetProvider } from './use-sheet'

export function ShopForm({ given }: { readonly given: Here['given'] }) {
  const draft = useSaved($sheetDraft)
  const own = useSaved($ownSheet)
  const aside = useSaved($sheetAside)
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set())
  const [said, say] = useState('')
  const names = useMemo(() => new Map(given.woods.map((wood) => [wood.id, wood.name])), [given])
  const nameOf = (id: string) => names.get(id) ?? id
  const read = useMemo(() => readDraft(draft, nameOf, given.unusual ?? 10), [draft, given])

  useEffect(() => {
    if (read.sheet !== null && JSON.stringify(read.sheet) !== JSON.stringify($ownSheet.get())) $ownSheet.set(read.sheet)
  }, [read])

  const replace = (next: Draft, says: string) => {
    $sheetAside.set($sheetDraft.get())
    $sheetDraft.set(next)
    say(says)
  }
  const putBack = () => {
    if (aside === null) return
    $sheetDraft.set(aside)
    $sheetAside.set(null)
    say('It is as it was before.')
  }
  const here: Here = {
    given,
    draft,
    read,
    nameOf,
    left,
    set: (field, text) => {
      say('')
      $sheetDraft.set(withField($sheetDraft.get(), field, text))
    },
    put: (next, says) => {
      $sheetDraft.set(next)
      say(says)
    },
    leave: (field) => setLeft((before) => (before.has(field) ? before : new Set(before).add(field))),
    replace
  }
  return (
    <SheetProvider value={here}>
      <form
        class="shop-form"
        aria-label="Shop sheet"
        autocomplete="off"
        noValidate
        onSubmit={(e) => e.preventDefault()}
      >
        <div class="shop-parts">
          <p class="row shop-start">
            <button
              type="button"
              class="btn btn--quiet btn--small"
              onClick={() =>
                given.sample &&
                replace(
                  draftOf(given.sample, new Set(names.keys())),
                  'Filled in from the sample. Its prices are invented.'
                )
              }
            >
              Fill in from the sample
            </button>
            <button
              type="button"
              class="btn btn--quiet btn--small"
              onClick={() => replace(BLANK, 'The form is as it was at the beginning.')}
            >
              Empty the form
            </button>
            <a href="#shop-files">Open a file or a list of prices</a>
          </p>
          <ShopPart />
          <WoodsPart />
          <RatesPart />
          <SeasoningPart />
          <SizesPart />
          <AdditionsPart />
          <QuotePart />
          <TellPart />
          <div class={said === '' ? 'shop-said' : 'shop-said shop-said--now'} role="status">
            {said !== '' && <p>{said}</p>}
            {aside !== null && (
              <button type="button" class="btn btn--link" onClick={putBack}>
                Put back what was there before
              </button>
            )}
          </div>
        </div>
        <div class="shop-side">
          <div>
            <Standing kept={own !== null} />
            <Client />
          </div>
        </div>
        <Files />
      </form>
    </SheetProvider>
  )
}
