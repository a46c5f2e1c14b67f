/**
 * A setting of the drying clock as the fragment of an address, short enough to read:
 * `#douglas-fir/8x8in/portland-or/heated/air-52/jan/8/first-winter`.
 */
import type { ClockAsked } from '../../choice/clock/types'
import { MONTHS } from '../../choice/months'
import { MM_PER_INCH } from '../format/length'

const shortMonth = (index: number): string => (MONTHS[index] ?? '').slice(0, 3).toLowerCase()

const few = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)))

/** Inches where it is a size of a rule, to the sixteenth; else millimetres. */
function sizeText(breadth: number, depth: number): string {
  const inches = [breadth, depth].map((mm) => mm / MM_PER_INCH)
  return inches.every((n) => Math.abs(n * 16 - Math.round(n * 16)) < 0.01)
    ? `${inches.map((n) => few(n, 4)).join('x')}in`
    : `${[breadth, depth].map((mm) => few(mm, 1)).join('x')}mm`
}

export function linkOf(asked: ClockAsked): string {
  const { seasoning, yardWeeks, kilnWeeks } = asked
  const weeks = seasoning === 'air' ? yardWeeks : seasoning === 'kiln' ? kilnWeeks : null
  return [
    asked.wood,
    sizeText(asked.breadth, asked.depth),
    asked.place,
    asked.exposure,
    weeks === null ? seasoning : `${seasoning}-${few(weeks, 1)}`,
    shortMonth(asked.felledMonth - 1),
    few(asked.shopWeeks, 1),
    ...(asked.exposure === 'heated' ? [asked.heating] : [])
  ].join('/')
}

const ID = /^[a-z][a-z0-9-]{1,60}$/
const SIZE = /^(\d{1,4}(?:\.\d{1,4})?)x(\d{1,4}(?:\.\d{1,4})?)(in|mm)$/
const DRIED = /^([a-z]+)(?:-(\d{1,3}(?:\.\d)?))?$/
const WEEKS = /^\d{1,3}(?:\.\d)?$/

export type ReadLink =
  | { readonly ok: true; readonly asked: ClockAsked }
  /** The first part that does not fit. */
  | { readonly ok: false; readonly part: string }

/** Read a fragment, without its `#`. What it leaves out is as in `usual`. Whether the names are known, the engine says. */
export function readLink(text: string, usual: ClockAsked): ReadLink {
  const parts = text.slice(0, 300).split('/')
  const [wood = '', size = '', place = '', exposure = '', dried = '', month = '', shop = '', heating] = parts
  const bad = (part: string): ReadLink => ({ ok: false, part: part.slice(0, 40) })
  const sides = SIZE.exec(size)
  const seasoning = DRIED.exec(dried)
  const felled = MONTHS.findIndex((_, i) => shortMonth(i) === month)
  for (const id of [wood, place, exposure, heating ?? usual.heating]) if (!ID.test(id)) return bad(id)
  if (sides === null) return bad(size)
  if (seasoning === null) return bad(dried)
  if (felled < 0) return bad(month)
  if (!WEEKS.test(shop)) return bad(shop)
  if (parts.length > 8) return bad(parts[8] ?? '')
  const by = sides[3] === 'in' ? MM_PER_INCH : 1
  const weeks = seasoning[2] === undefined ? null : Number(seasoning[2])
  const way = seasoning[1] ?? ''
  return {
    ok: true,
    asked: {
      wood,
      breadth: Number(sides[1]) * by,
      depth: Number(sides[2]) * by,
      place,
      exposure,
      seasoning: way,
      felledMonth: felled + 1,
      yardWeeks: way === 'air' && weeks !== null ? weeks : usual.yardWeeks,
      kilnWeeks: way === 'kiln' && weeks !== null ? weeks : usual.kilnWeeks,
      shopWeeks: Number(shop),
      heating: heating ?? usual.heating
    }
  }
}
