/** What is typed on the size ladder, and what is said of it when it cannot be taken. */
import type { LadderNumber } from '../../choice/ladder/door'
import type { PointField } from '../../choice/ladder/types'
import { slotOf } from '../../choice/ladder/uses'
import type { Trouble } from '../bench/store'
import { fieldText, fieldUnit, fieldWords } from '../format/field'
import { NBSP, plain } from '../format/number'
import { degreesOf, type NumberKind, readNumber } from '../format/parse'
import type { System } from '../format/quantity'

export interface Range {
  readonly least: number
  readonly most: number
}
const isForce = (field: LadderNumber): field is PointField => slotOf(field) !== null && field.startsWith('point')
const kindOf = (field: LadderNumber): NumberKind =>
  field === 'slope' ? 'pitch' : field === 'snow' ? 'areaLoad' : 'span'
const POUND_FORCE = 4.448_221_615
const FORCE = /^(\d{1,12}(?:\.\d+)?)\s*(lbs?|pounds?|kn|n|kg)?\.?$/
const NEWTONS: Readonly<Record<string, number>> = { l: POUND_FORCE, p: POUND_FORCE, kn: 1000, n: 1, kg: 9.806_65 }

export const unitOf = (field: LadderNumber, system: System): string => {
  if (isForce(field)) return system === 'us' ? 'lb' : 'kN'
  return field === 'snow' && system === 'us' ? 'psf' : fieldUnit(kindOf(field), system)
}

const pointText = (value: number, system: System): string =>
  system === 'us' ? String(Math.round(value / POUND_FORCE)) : String(Number((value / 1000).toFixed(2)))
export const pointWords = (value: number, system: System): string =>
  system === 'us' ? `${plain(value / POUND_FORCE)}${NBSP}lb` : `${pointText(value, system)}${NBSP}kN`

/** A number as it would be typed. */
export const textOf = (field: LadderNumber, value: number, system: System): string =>
  isForce(field) ? pointText(value, system) : fieldText(value, kindOf(field), system)

/** SI, or null where it is no number. A unit that is spelled out beats the field's. */
export function readField(field: LadderNumber, text: string, system: System): number | null {
  if (!isForce(field)) {
    const read = readNumber(text, kindOf(field), system)
    return read.ok ? read.value : null
  }
  const clean = text
    .trim()
    .toLowerCase()
    .replace(/(\d),(\d{3})\b/g, '$1$2')
    .replace(',', '.')
  const found = FORCE.exec(clean)
  if (found === null) return null
  const unit = found[2] ?? (system === 'us' ? 'lb' : 'kn')
  return Number(found[1]) * (NEWTONS[unit] ?? NEWTONS[unit.charAt(0)] ?? POUND_FORCE)
}

/** An end of a range in whole steps of the reader's unit, always inside it: what is said is taken when typed. */
function endWords(field: LadderNumber, value: number, system: System, up: boolean): string {
  if (system === 'us') return isForce(field) ? pointWords(value, 'us') : fieldWords(value, kindOf(field), 'us')
  const round = up ? Math.ceil : Math.floor
  if (field === 'slope') return `${round(degreesOf(value) - (up ? 1e-6 : -1e-6))}°`
  const said = round(value / 10 - (up ? 1e-6 : -1e-6)) / 100
  return `${said}${NBSP}${unitOf(field, 'si')}`
}
export const rangeWords = (field: LadderNumber, { least, most }: Range, system: System): string =>
  `from ${endWords(field, least, system, true)} to ${endWords(field, most, system, false)}`

type Example = Readonly<Record<System, string>>
const SUCH_AS: Readonly<Record<'span' | 'width' | 'height' | 'slope' | 'snow' | 'point' | 'at', Example>> = {
  span: { us: '24 or 24 ft 6 in', si: '7.3' },
  width: { us: '10 or 2 ft 6 in', si: '3' },
  height: { us: '9 or 9 ft 6 in', si: '2.7' },
  slope: { us: '8, for 8 in 12', si: '34, for degrees' },
  snow: { us: '40', si: '1.9' },
  point: { us: '2000', si: '9' },
  at: { us: '8 or 8 ft 6 in', si: '2.5' }
}

const exampleOf = (field: LadderNumber): Example =>
  SUCH_AS[slotOf(field) ? (isForce(field) ? 'point' : 'at') : (field as 'span')]

export function troubleWords(field: LadderNumber, trouble: Trouble, range: Range, system: System): string {
  const words = rangeWords(field, range, system)
  return trouble === 'range'
    ? `We cannot answer for that. Type a number ${words}.`
    : `We could not read that. Type a number such as ${exampleOf(field)[system]}, ${words}.`
}
