/** Everything that the picture can do, as fields: the piece, its log, the wood and its drying. */
import type { LogPiece } from '../../wood/log-end'
import { NBSP } from '../format/number'
import { Say } from '../say/Say'
import { BenchField, useComplaint } from './BenchField'
import { useBench, usePart } from './bench'
import { type Bench, type BenchWood, chosenOf, type View, withPiece } from './model'
import { percentText } from './read'
import { FitButton } from './Says'

type Length = 'left' | 'top' | 'breadth' | 'depth' | 'logDiameter' | 'sapwood'
const PICK: Readonly<Record<Length, (view: View) => number>> = {
  left: (view) => chosenOf(view.asked).left,
  top: (view) => chosenOf(view.asked).top,
  breadth: (view) => chosenOf(view.asked).breadth,
  depth: (view) => chosenOf(view.asked).depth,
  logDiameter: (view) => chosenOf(view.asked).logDiameter,
  sapwood: (view) => chosenOf(view.asked).sapwood
}

function PieceField({ id, label, help }: { readonly id: Length; readonly label: string; readonly help?: string }) {
  const { change } = useBench()
  const value = usePart(PICK[id])
  const onValue = (mm: number) => change((now) => withPiece(now, { [id]: mm }))
  const more = help === undefined ? {} : { help }
  return (
    <BenchField id={id} label={label} kind="length" value={value} {...more} complaintAt={OUTSIDE} onValue={onValue} />
  )
}
const OUTSIDE = 'bench-outside'

const pithX = (view: View) => chosenOf(view.asked).pith[0]
const pithY = (view: View) => chosenOf(view.asked).pith[1]

function PithField({ axis, label, help }: { readonly axis: 0 | 1; readonly label: string; readonly help?: string }) {
  const { change } = useBench()
  const value = usePart(axis === 0 ? pithX : pithY)
  const onValue = (mm: number) =>
    change((now) => {
      const [x, y] = chosenOf(now).pith
      const pith: LogPiece['pith'] = axis === 0 ? [mm, y] : [x, mm]
      return withPiece(now, { pith })
    })
  const more = help === undefined ? {} : { help }
  return (
    <BenchField
      id={axis === 0 ? 'pithX' : 'pithY'}
      label={label}
      kind="length"
      value={value}
      {...more}
      onValue={onValue}
    />
  )
}

const FROM_TO = { from: (view: View) => view.asked.from, to: (view: View) => view.asked.to } as const
function Moisture({ id, label, help }: { readonly id: 'from' | 'to'; readonly label: string; readonly help: string }) {
  const { change } = useBench()
  const value = usePart(FROM_TO[id])
  const onValue = (share: number) =>
    change((now: Bench) => ({ ...now, [id]: share, green: now.green && id !== 'from' }))
  return <BenchField id={id} label={label} kind="percent" value={value} help={help} onValue={onValue} />
}

const woodOf = (view: View) => view.asked.wood
const percent = (share: number): string => `${percentText(share)}${NBSP}%`
/** From the heart to the sapwood, where these differ. */
const greenRange = ({ green, wettest }: BenchWood): string =>
  wettest > green ? `${percentText(green)} to ${percent(wettest)}` : percent(green)

export function Fields() {
  const { change, woods } = useBench()
  const wood = usePart(woodOf)
  const outside = useComplaint('left')
  const pick = (id: string) => {
    const next = woods.find((w) => w.id === id)
    if (next !== undefined) change((now) => ({ ...now, wood: next, from: now.green ? next.green : now.from }))
  }
  return (
    <form
      class="ends-fields needs-script"
      aria-label="The piece, its log and its drying"
      onSubmit={(e) => e.preventDefault()}
    >
      <fieldset>
        <legend>The piece</legend>
        <PieceField id="breadth" label="Breadth" />
        <PieceField id="depth" label="Depth" />
        <PieceField id="left" label="Left face, from the middle" help="Left of the log’s middle is below zero." />
        <PieceField id="top" label="Top face, from the middle" help="Above the log’s middle is below zero." />
        {outside?.together && (
          <div class="ends-outside">
            <p class="error" id={OUTSIDE}>
              <Say s={outside.says} bare />
            </p>
            <FitButton />
          </div>
        )}
      </fieldset>
      <fieldset>
        <legend>Its log</legend>
        <PieceField id="logDiameter" label="Small end, under bark" />
        <PieceField id="sapwood" label="Width of the sapwood" />
        <PithField axis={0} label="Pith, right of the middle" help="Few trees grow round their middle." />
        <PithField axis={1} label="Pith, below the middle" />
      </fieldset>
      <fieldset>
        <legend>The wood and its drying</legend>
        <div class="field">
          <label for="bench-wood">Wood</label>
          <select id="bench-wood" value={wood.id} onChange={(event) => pick(event.currentTarget.value)}>
            {woods.map((w) => (
              <option key={w.id} value={w.id}>
                {w.name}
              </option>
            ))}
          </select>
        </div>
        <Moisture
          id="from"
          label="Moisture now"
          help={`Green, it holds about ${greenRange(wood)}. It moves only below ${percent(wood.fibreSaturation)}.`}
        />
        <Moisture
          id="to"
          label="Moisture later"
          help={`A heated room ends at 6 to 9${NBSP}%, a roofed porch at 12 to 16${NBSP}%.`}
        />
      </fieldset>
    </form>
  )
}
