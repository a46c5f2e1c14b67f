/** What the clock is asked: the timber, its way to the frame, and where it will live. */

import { MONTHS } from '../../choice/months'
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import { WoodOptions } from '../bench/WoodOptions'
import { type Field, uses } from './bench'
import { NumberBox } from './NumberBox'
import { PlaceChoice } from './PlaceChoice'
import { useHere, useView } from './use-clock'
import { DRIED, HEATS, LIVES } from './words'

interface SelectProps {
  readonly field: Field
  readonly label: string
  readonly options: readonly (readonly [string, string])[]
  readonly number?: boolean
}
function Select({ field, label, options, number = false }: SelectProps) {
  const { store } = useHere()
  const { asked } = useView()
  return (
    <div class="field">
      <label for={`clock-${field}`}>{label}</label>
      <select
        id={`clock-${field}`}
        value={String(asked[field])}
        onChange={(event) => {
          const { value } = event.currentTarget
          store.set(field, number ? Number(value) : value)
        }}
      >
        {options.map(([value, words]) => (
          <option key={value} value={value} selected={value === String(asked[field])}>
            {words}
          </option>
        ))}
      </select>
    </div>
  )
}

const MONTH_OPTIONS = MONTHS.map((name, i) => [String(i + 1), name] as const)

export function Fields() {
  const { store, woods, shop } = useHere()
  const { asked } = useView()
  const system = useSaved($units)
  return (
    <form
      class="bench-fields clock-fields needs-script"
      aria-label="The timber and its way"
      autocomplete="off"
      onSubmit={(event) => event.preventDefault()}
      onFocusIn={() => store.fetch()}
    >
      <fieldset>
        <legend>The timber</legend>
        <div class="field">
          <label for="clock-wood">Wood</label>
          <select id="clock-wood" value={asked.wood} onChange={(event) => store.set('wood', event.currentTarget.value)}>
            <WoodOptions woods={woods} chosen={asked.wood} shop={shop} />
          </select>
          {shop && (
            <p class="help bench-shop">The sheet of {shop.name} is in use on this device. Its woods come first.</p>
          )}
        </div>
        <div class="clock-pair">
          <NumberBox field="breadth" label="Breadth" system={system} />
          <NumberBox field="depth" label="Depth" system={system} />
        </div>
      </fieldset>
      <fieldset>
        <legend>Its way to the frame</legend>
        <Select field="felledMonth" label="Felled and sawn in" options={MONTH_OPTIONS} number />
        <Select field="seasoning" label="How dried" options={DRIED} />
        {uses('yardWeeks', asked) && <NumberBox field="yardWeeks" label="Time in the yard" system={system} />}
        {uses('kilnWeeks', asked) && (
          <NumberBox
            field="kilnWeeks"
            label="Time in the kiln"
            system={system}
            help="The kiln is paced to the weeks that the shop gives it."
          />
        )}
        <NumberBox
          field="shopWeeks"
          label="From then until raised"
          system={system}
          help="Cutting the joints, and lying cut, under cover."
        />
      </fieldset>
      <fieldset>
        <legend>Where it will live</legend>
        <PlaceChoice />
        <Select field="exposure" label="Indoors or out" options={LIVES} />
        {uses('heating', asked) && <Select field="heating" label="First heating" options={HEATS} />}
      </fieldset>
    </form>
  )
}
