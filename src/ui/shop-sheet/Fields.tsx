/** The fields of the form: text, number, choice, tick. Each says beside itself what is wrong with it. */
import type { ComponentChildren } from 'preact'
import { ON } from '../../shop/sheet/draft'
import type { NumberField } from '../../shop/sheet/fields'
import { inMetric } from './metric'
import { idOf, useSheet, useWord } from './use-sheet'

interface WordProps {
  readonly field: string
}
export function Word({ field }: WordProps) {
  const word = useWord(field)
  if (word === null) return null
  return (
    <p class={word.wrong ? 'error' : 'shop-caution'} id={`${idOf(field)}-error`}>
      {word.says}
    </p>
  )
}

/** What every control has: its place in the draft, and where its complaint stands. */
function useControl(field: string, help: boolean) {
  const { draft, set, leave } = useSheet()
  const word = useWord(field)
  const id = idOf(field)
  return {
    id,
    name: field,
    value: draft[field] ?? '',
    'aria-invalid': word?.wrong ? ('true' as const) : undefined,
    'aria-describedby': [word && `${id}-error`, help && `${id}-help`].filter(Boolean).join(' ') || undefined,
    onInput: (event: { currentTarget: { value: string } }) => set(field, event.currentTarget.value),
    onBlur: () => leave(field)
  }
}

interface TextProps {
  readonly field: string
  readonly label: ComponentChildren
  readonly help?: ComponentChildren
  /** More than one line. */
  readonly rows?: number
  readonly needed?: boolean
  /** No field below another's label: said to screen readers alone. */
  readonly hideLabel?: boolean
}
export function TextField({ field, label, help, rows, needed, hideLabel }: TextProps) {
  const control = useControl(field, help !== undefined)
  const common = { ...control, required: needed, autocomplete: 'off' as const, class: 'shop-text' }
  return (
    <div class="field">
      <label for={control.id} class={hideLabel ? 'visually-hidden' : undefined}>
        {label}
      </label>
      {help !== undefined && (
        <p class="help" id={`${control.id}-help`}>
          {help}
        </p>
      )}
      {rows === undefined ? <input type="text" {...common} /> : <textarea rows={rows} {...common} />}
      <Word field={field} />
    </div>
  )
}

/** Enter goes on to the next number that is in sight: eight prices in a row, without a tap between. */
function goOn(event: { key: string; currentTarget: HTMLInputElement; preventDefault: () => void }): void {
  if (event.key !== 'Enter') return
  event.preventDefault()
  const all = [...(event.currentTarget.form?.querySelectorAll<HTMLInputElement>('input.num') ?? [])]
  const next = all
    .slice(all.indexOf(event.currentTarget) + 1)
    .find((input) => input.offsetParent !== null && input.checkVisibility?.() !== false)
  next?.focus()
}

interface NumberProps {
  readonly field: string
  readonly kind: NumberField
  readonly label?: ComponentChildren
  readonly hideLabel?: boolean
  readonly help?: ComponentChildren
}
export function NumberInput({ field, kind, label = kind.label, hideLabel, help }: NumberProps) {
  const control = useControl(field, help !== undefined)
  const si = inMetric(control.value, kind.unit)
  return (
    <div class="field">
      <label for={control.id} class={hideLabel ? 'visually-hidden' : undefined}>
        {label}
      </label>
      <div class="field-box">
        <input
          {...control}
          class="num"
          type="text"
          inputMode="decimal"
          enterkeyhint="next"
          onKeyDown={goOn}
          autocomplete="off"
        />
        <span class="unit">
          {kind.unit}
          {si !== null && <span class="si"> = {si}</span>}
        </span>
      </div>
      {help !== undefined && (
        <p class="help" id={`${control.id}-help`}>
          {help}
        </p>
      )}
      <Word field={field} />
    </div>
  )
}

interface SelectProps {
  readonly field: string
  readonly label: ComponentChildren
  readonly options: readonly (readonly [value: string, words: string])[]
  readonly hideLabel?: boolean
}
export function Select({ field, label, options, hideLabel }: SelectProps) {
  const { onInput, value, ...control } = useControl(field, false)
  return (
    <div class="field">
      <label for={control.id} class={hideLabel ? 'visually-hidden' : undefined}>
        {label}
      </label>
      <select {...control} value={value} onChange={onInput}>
        {options.map(([id, words]) => (
          <option key={id} value={id} selected={id === value}>
            {words}
          </option>
        ))}
      </select>
      <Word field={field} />
    </div>
  )
}

interface TickProps {
  readonly field: string
  readonly label: ComponentChildren
}
export function Tick({ field, label }: TickProps) {
  const { draft, set } = useSheet()
  return (
    <label class="shop-tick">
      <input
        type="checkbox"
        id={idOf(field)}
        name={field}
        checked={draft[field] === ON}
        onChange={(event) => set(field, event.currentTarget.checked ? ON : '')}
      />
      <span>{label}</span>
    </label>
  )
}
