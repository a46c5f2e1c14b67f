/** Reads one field of a draft at a time, and keeps what is to be said of it. */
import { SHEET } from '../../data/shop-schema'
import { readAmount, readFeet, readSides } from '../amount'
import { readSizes, sideRange } from '../sizes'
import type { Draft } from './draft'
import { type NumberField, rangeWords } from './fields'

export interface FieldWord {
  /** The field's name in the draft. */
  readonly field: string
  /** What the field is called in a list of all. */
  readonly label: string
  readonly says: string
  /** Nothing typed yet, as against something that cannot be taken. */
  readonly missing: boolean
}

const CONTROL = /[^\P{Cc}\n]|[\p{Bidi_Control}\u2028\u2029]/u

/** What was typed in a field, and what is said of it. */
export class Reader {
  readonly problems: FieldWord[] = []
  constructor(readonly draft: Draft) {}

  private say(field: string, label: string, says: string, missing = false): undefined {
    this.problems.push({ field, label, says, missing })
    return undefined
  }
  private typed(field: string): string {
    return (this.draft[field] ?? '').trim()
  }

  words(field: string, label: string, longest: number): string | undefined {
    // A carriage return is how some systems end a line, nothing more.
    const text = this.typed(field).replace(/\r\n?/g, '\n').replaceAll('\t', ' ')
    if (text.length > longest) return this.say(field, label, `At most ${longest} characters; these are ${text.length}.`)
    if (CONTROL.test(text))
      return this.say(field, label, 'There is an invisible control character in this text. Type it afresh.')
    return text === '' ? undefined : text
  }

  number(field: string, kind: NumberField, label = kind.label, needed = true): number | undefined {
    const text = this.typed(field)
    const range = rangeWords(kind)
    if (text === '')
      return needed ? this.say(field, label, `Type a number ${range}, such as ${kind.such}.`, true) : undefined
    const value = kind.unit === 'ft' ? readFeet(text) : readAmount(text)
    if (value === null)
      return this.say(field, label, `We could not read that. Type a number such as ${kind.such}, ${range}.`)
    if (value < kind.least || value > kind.most) return this.say(field, label, `This has to be ${range}.`)
    return value
  }

  lines(field: string, label: string): string[] {
    const all = this.typed(field)
      .split(/\r?\n/)
      .map((line) => line.trim())
      .filter(Boolean)
    if (all.length > SHEET.cautions)
      this.say(field, label, `At most ${SHEET.cautions} cautions; these are ${all.length}.`)
    const long = all.findIndex((line) => line.length > SHEET.caution)
    if (long >= 0)
      this.say(field, label, `At most ${SHEET.caution} characters each; number ${long + 1} has ${all[long]?.length}.`)
    if (all.some((line) => CONTROL.test(line)))
      this.say(field, label, 'There is an invisible control character in this text. Type it afresh.')
    return all
  }

  largest(field: string, label: string): [number, number] | undefined {
    const text = this.typed(field)
    if (text === '') return undefined
    const sides = readSides(text)
    const [least, most] = SHEET.sideIn
    if (sides === null)
      return this.say(field, label, 'We could not read that. Type two sides in inches, such as 12x16.')
    if (sides[0] < least || sides[1] > most)
      return this.say(field, label, `Each side has to be from ${least} to ${most} in.`)
    return [...sides]
  }

  sizes(unit: 'in' | 'mm'): [number, number][] {
    const { sizes, unread, outside } = readSizes(this.draft['sizes'] ?? '', unit)
    const [least, most] = sideRange(unit)
    const such = unit === 'in' ? '8x10' : '200x250'
    const label = 'Sections'
    if (unread[0] !== undefined)
      this.say('sizes', label, `“${unread[0]}” is not a section. Type each as ${such}, with commas between.`)
    else if (outside[0] !== undefined)
      this.say('sizes', label, `“${outside[0]}” is out of range: each side has to be from ${least} to ${most} ${unit}.`)
    else if (sizes.length === 0) this.say('sizes', label, `Name at least one section, such as ${such}.`, true)
    else if (sizes.length > SHEET.sections)
      this.say('sizes', label, `At most ${SHEET.sections} sections; these are ${sizes.length}.`)
    return sizes.map(([a, b]) => [a, b])
  }

  need(holds: boolean, field: string, label: string, says: string): void {
    if (!holds) this.say(field, label, says, true)
  }
  oneOf<T extends string>(field: string, list: readonly T[]): T | undefined {
    return list.find((one) => one === this.draft[field])
  }
}
