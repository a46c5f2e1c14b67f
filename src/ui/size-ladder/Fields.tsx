/** What the ladder is asked: the timber, what it carries, and how it is bought. */
import type { LadderNumber } from '../../choice/ladder-door'
import { bearsOf, livesOf, usesField } from '../../choice/ladder-uses'
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import { NumberBox } from '../bench/NumberBox'
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
      says={trouble && troubleWords(field, trouble, rangeOf(field, asked.kind, ranges), system)}
      onType={(text) => {
        const read = readField(field, text, system)
        if (read === null) store.misread(field, text, 'unread')
        else store.set(field, read, text)
      }}
      onLeave={() => store.leave(field)}
    />
  )
}

export function Fields() {
  const { store, woods } = useHere()
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
        <Box field="point" label="Load at mid-span" help="Besides the rest; 0 for none." />
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
      <fieldset>
        <legend>How it is bought</legend>
        <Select field="dryness" label="Green or dried" options={BOUGHT} />
        <Select field="grade" label="Grade" options={GRADES} />
        <Select field="surface" label="Surface" options={SAWN} />
        <Select field="wood" label="Wood to look into" options={woods.map((w) => [w.id, w.name] as const)} />
      </fieldset>
    </form>
  )
}
