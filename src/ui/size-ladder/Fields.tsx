/** What the ladder is asked: the timber, what it carries, and how it is bought. */
import { useEffect, useRef } from 'preact/hooks'
import type { LadderNumber } from '../../choice/ladder/door'
import { SLOTS } from '../../choice/ladder/types'
import { bearsOf, livesOf, slotsOf, usesField } from '../../choice/ladder/uses'
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import { NumberBox } from '../bench/NumberBox'
import { WoodOptions } from '../bench/WoodOptions'
import { type Field, rangeOf } from './bench'
import { readField, textOf, troubleWords, unitOf } from './read'
import { useHere, useView } from './use-ladder'
import { BEARS, BOUGHT, GRADES, SAWN, spanLabel, WHAT, WHERE, widthLabel } from './words'

interface SelectProps {
  readonly field: Field
  readonly label: string
  readonly options: readonly (readonly [string, string])[]
}
function Select({ field, label, options }: SelectProps) {
  const { store } = useHere()
  const { asked } = useView()
  return (
    <div class="field">
      <label for={`ladder-${field}`}>{label}</label>
      <select
        id={`ladder-${field}`}
        value={String(asked[field])}
        onChange={(event) => store.set(field, event.currentTarget.value)}
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

interface BoxProps {
  readonly field: LadderNumber
  readonly label: string
  readonly help?: string
}
function Box({ field, label, help }: BoxProps) {
  const { store, ranges } = useHere()
  const { asked, typed, wrong } = useView()
  const system = useSaved($units)
  const trouble = wrong[field]
  if (!usesField(field, asked)) return null
  return (
    <NumberBox
      id={`ladder-${field}`}
      label={label}
      unit={unitOf(field, system)}
      system={system}
      help={help}
      typed={typed[field]}
      text={textOf(field, asked[field], system)}
      trouble={trouble}
      says={trouble && troubleWords(field, trouble, rangeOf(field, asked, ranges), system)}
      onType={(text) => {
        const read = readField(field, text, system)
        if (read === null) store.misread(field, text, 'unread')
        else store.set(field, read, text)
      }}
      onLeave={() => store.leave(field)}
    />
  )
}

/** Loads at points of a level timber: each with its weight and its place, added and removed one by one. */
function Points() {
  const { store } = useHere()
  const { asked } = useView()
  // A button that goes away takes the focus with it: it moves to the new load, or to the button that adds one.
  const next = useRef<string | null>(null)
  useEffect(() => {
    const id = next.current
    next.current = null
    // A field just put reads the store a moment after it stands (see `useSaved`).
    if (id) requestAnimationFrame(() => document.getElementById(id)?.focus())
  }, [asked.loads])
  if (!usesField('loads', asked)) return null
  const used = slotsOf(asked.loads)
  const free = SLOTS.find((slot) => !used.includes(slot))
  const put = (loads: string, focus: string) => {
    next.current = focus
    store.set('loads', loads)
  }
  return (
    <fieldset class="ladder-points">
      <legend>Loads at points</legend>
      <p class="help">
        A post, a tank, the foot of a strut: besides the even load, lying there for good. Its place is measured from one
        end.
      </p>
      {used.map((slot, i) => (
        <div key={slot} class="ladder-point">
          <Box field={`point${slot}`} label={`Load ${i + 1}`} />
          <Box field={`at${slot}`} label={`Load ${i + 1} is at`} />
          <button
            type="button"
            class="btn btn--quiet btn--small"
            onClick={() => put(used.filter((s) => s !== slot).join(''), 'ladder-add')}
          >
            Remove load {i + 1}
          </button>
        </div>
      ))}
      {free ? (
        <button
          type="button"
          class="btn btn--quiet btn--small"
          id="ladder-add"
          onClick={() => put([...used, free].join(''), `ladder-point${free}`)}
        >
          Add a load
        </button>
      ) : (
        <p class="help">Four at most.</p>
      )}
    </fieldset>
  )
}

export function Fields() {
  const { store, woods, shop } = useHere()
  const { asked } = useView()
  const can = bearsOf(asked.kind) as readonly string[]
  const live = livesOf(asked.bears) as readonly string[]
  return (
    <form
      class="bench-fields ladder-fields needs-script no-print"
      aria-label="The job"
      autocomplete="off"
      onSubmit={(event) => event.preventDefault()}
      onFocusIn={() => store.fetch()}
    >
      <fieldset>
        <legend>The timber</legend>
        <Select field="kind" label="What" options={WHAT} />
        <Box field="span" label={spanLabel(asked.kind)} />
        <Box field="width" label={widthLabel(asked.kind)} />
        <Box field="slope" label="Slope of the roof" />
        <Box field="height" label="Height between points held sideways" />
      </fieldset>
      <fieldset>
        <legend>What it carries</legend>
        <Select field="bears" label="Roof or floor" options={BEARS.filter(([id]) => can.includes(id))} />
        <Box
          field="snow"
          label="Snow on the ground"
          help="Ask your building office for the ground snow load, at service level."
        />
        <Select field="lives" label="Where it lives" options={WHERE.filter(([id]) => live.includes(id))} />
      </fieldset>
      <Points />
      <fieldset>
        <legend>How it is bought</legend>
        <Select field="dryness" label="Green or dried" options={BOUGHT} />
        <Select field="grade" label="Grade" options={GRADES} />
        <Select field="surface" label="Sections" options={SAWN} />
        <div class="field">
          <label for="ladder-wood">Wood to look into</label>
          <select
            id="ladder-wood"
            value={asked.wood}
            onChange={(event) => store.set('wood', event.currentTarget.value)}
          >
            <WoodOptions woods={woods} chosen={asked.wood} shop={shop} />
          </select>
          {shop && (
            <p class="help bench-shop">
              The sheet of {shop.name} is in use on this device. Its woods come first, and its sizes are those tried.
            </p>
          )}
        </div>
      </fieldset>
    </form>
  )
}
