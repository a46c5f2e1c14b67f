/** The drying clock, to be played with. Drawn at build too, so that picture, table and sentences stand without script. */
import type { ClockReport } from '../../choice/clock/types'
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import type { BenchShop } from '../bench/in-force'
import { Words } from '../bench/Words'
import { Paragraphs } from '../brief/Sentences'
import { AcrossTimber } from '../pictures/AcrossTimber'
import { clockScaleWords, DryingClock, keyOf } from '../pictures/DryingClock'
import { type Library, LibraryProvider } from '../say/library'
import { type ClockStore, makeClock } from './bench'
import { Fields } from './Fields'
import { Moments } from './Moments'
import { ClockProvider, useHere, useNames, useView } from './use-clock'
import { apart, settingWords, type WoodName } from './words'

export interface ClockGiven {
  readonly report: ClockReport
  readonly woods: readonly WoodName[]
  readonly places: readonly { readonly id: string; readonly name: string }[]
  readonly library: Library
}

interface BenchProps {
  readonly store: ClockStore
  readonly woods: readonly WoodName[]
  readonly shop?: BenchShop | null
}

export function ClockBench({ store, woods, shop = null }: BenchProps) {
  return (
    <ClockProvider value={{ store, woods, shop }}>
      <Sheet />
    </ClockProvider>
  )
}

function Sheet() {
  const { store } = useHere()
  const view = useView()
  const { shown, library } = view
  return (
    <LibraryProvider value={library}>
      <div class="clock-sheet">
        <Words view={view} onRetry={store.fetch} class="clock-words" />
        <Picture />
        <div class="clock-told stack">
          <Paragraphs of={shown.says} />
          <p class="note">A preliminary opinion. A moisture meter decides.</p>
          <Compare />
        </div>
        <div class="clock-moments">
          <Moments of={shown.lines} />
          <Across report={shown} />
        </div>
        <Fields />
      </div>
    </LibraryProvider>
  )
}

/** The same moments, across the timber. */
function Across({ report: { asked, curve, lines } }: { readonly report: ClockReport }) {
  return (
    <figure class="figure figure--plain">
      <AcrossTimber
        moments={curve.milestones}
        labels={Object.fromEntries(lines.map((line, i) => [line.id, `${keyOf(i)} ${line.label}`]))}
        fibreSaturation={curve.fibreSaturation}
        thickness={Math.min(asked.breadth, asked.depth)}
      />
      <figcaption>From face to face through the middle, at each moment.</figcaption>
    </figure>
  )
}

function Picture() {
  const { shown, kept } = useView()
  const names = useNames()
  const system = useSaved($units)
  const other = kept !== null && kept !== shown ? kept : undefined
  const name = (s: 'us' | 'si') => (other ? apart(other.asked, shown.asked, names, s) : '')
  return (
    <figure class="figure figure--plain clock-figure">
      <DryingClock
        report={shown}
        kept={other && { curve: other.curve, us: `kept: ${name('us')}`, si: `kept: ${name('si')}` }}
      />
      <figcaption>
        <b>{settingWords(shown.asked, names, system)}</b> Tinted: as quick and as slow as the published boards of this
        wood. Grey: winters. {clockScaleWords(shown)}
        {other && (
          <>
            {' '}
            <b>Dotted, kept to compare:</b> {settingWords(other.asked, names, system)}
          </>
        )}
      </figcaption>
    </figure>
  )
}

/** One curve can be left in the picture while another setting is tried. */
function Compare() {
  const { store } = useHere()
  const { shown, kept } = useView()
  return (
    <p class="row needs-script no-print">
      <button
        type="button"
        class="btn btn--quiet btn--small"
        aria-disabled={kept === shown ? 'true' : undefined}
        onClick={store.keep}
      >
        {kept === shown ? 'Kept: now change something' : 'Keep this one to compare'}
      </button>
      {kept !== null && kept !== shown && (
        <button type="button" class="btn btn--link" onClick={store.drop}>
          Take the dotted one away
        </button>
      )}
    </p>
  )
}

/** As drawn at build: what wakes later repeats this first render from the same data. */
export function StillClock({ report, woods, places, library }: ClockGiven) {
  const still = { load: () => Promise.reject(new Error('still')), address: () => {} }
  return <ClockBench store={makeClock(report, { places, library }, still)} woods={woods} />
}
