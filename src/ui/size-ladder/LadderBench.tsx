/** The size ladder, to be played with. Drawn at build too, so that pictures, table and sentences stand without script. */
import type { LadderLine, LadderReport } from '../../choice/ladder/types'
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import type { BenchShop } from '../bench/in-force'
import { Words } from '../bench/Words'
import { Paragraphs } from '../brief/Sentences'
import { inInches } from '../format/length'
import { type LadderItem, SizeLadder } from '../pictures/SizeLadder'
import { TrussForces } from '../pictures/TrussForces'
import { type Library, LibraryProvider } from '../say/library'
import { Say } from '../say/Say'
import { type LadderStore, makeLadder, type Ranges } from './bench'
import { Chosen } from './Chosen'
import { Fields } from './Fields'
import { Rungs } from './Rungs'
import { LadderProvider, useHere, useView } from './use-ladder'
import { settingWords, type WoodName } from './words'

export interface LadderGiven {
  readonly report: LadderReport
  readonly woods: readonly WoodName[]
  readonly ranges: Ranges
  readonly library: Library
}

interface BenchProps extends Pick<LadderGiven, 'woods' | 'ranges'> {
  readonly store: LadderStore
  readonly shop?: BenchShop | null
}
export function LadderBench({ store, woods, ranges, shop = null }: BenchProps) {
  return (
    <LadderProvider value={{ store, woods, ranges, shop }}>
      <Sheet />
    </LadderProvider>
  )
}

function Sheet() {
  const { store } = useHere()
  const view = useView()
  const { shown, library } = view
  return (
    <LibraryProvider value={library}>
      <div class="ladder-sheet">
        <Words view={view} onRetry={store.fetch} />
        <div class="ladder-pictures">
          <Ladder report={shown} />
          <Forces report={shown} />
        </div>
        <div class="ladder-told stack">
          <Paragraphs of={shown.says} />
          <p>
            <Say s={shown.loads} />
          </p>
          {shown.cautions.map((s) => (
            <p key={s.text} class="note">
              <Say s={s} />
            </p>
          ))}
        </div>
        <Fields />
        <Rungs />
        <Chosen />
      </div>
    </LibraryProvider>
  )
}

/** One rung a section: the wood that is looked into, or the first that needs it, and how many more do. */
function rungs({ lines, asked }: LadderReport): LadderItem[] {
  const bySection = new Map<string, LadderLine[]>()
  for (const line of lines) {
    if (!line.section) continue
    const key = String(line.section.value)
    bySection.set(key, [...(bySection.get(key) ?? []), line])
  }
  return [...bySection.values()].flatMap((same): LadderItem[] => {
    const lead = same.find((l) => l.wood === asked.wood)
    const named = lead ?? same[0]
    const section = named?.section?.value
    if (!named || section === undefined || typeof section === 'number') return []
    const note = same.length > 1 ? { note: `and ${same.length - 1} more` } : {}
    return [{ label: named.short, section, lead: lead !== undefined, ...note }]
  })
}

function Ladder({ report }: { readonly report: LadderReport }) {
  const system = useSaved($units)
  const items = rungs(report)
  return (
    <figure class="figure figure--plain ladder-figure">
      {items.length > 0 ? (
        <SizeLadder items={items} narrow={3} />
      ) : (
        <p class="notice">No wood of the list carries this: there is nothing to draw.</p>
      )}
      <figcaption>
        <b>{settingWords(report.asked, system)}</b>{' '}
        {items.length > 0 && 'Its stoutest timber in each wood, end on, to one scale beside a person and a foot rule.'}
        {items.some((item) => !inInches(...item.section)) && ' Sizes in mm.'}
      </figcaption>
    </figure>
  )
}

function Forces({ report: { chosen } }: { readonly report: LadderReport }) {
  if (!chosen.drawn) return null
  return (
    <figure class="figure figure--plain ladder-forces">
      <TrussForces {...chosen.drawn} />
      <figcaption>
        In {chosen.said}, to scale beside a person.
        {chosen.drawn.parts.some((p) => p.push || p.pull) &&
          ' Whole line, arrows on the joints: push. Dashed line, arrows off the joints: pull.'}
      </figcaption>
    </figure>
  )
}

/** As drawn at build: what wakes later repeats this first render from the same data. */
export function StillLadder({ report, woods, ranges, library }: LadderGiven) {
  const still = { load: () => Promise.reject(new Error('still')), address: () => {} }
  return <LadderBench store={makeLadder(report, { library }, still)} woods={woods} ranges={ranges} />
}
