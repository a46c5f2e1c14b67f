/** A setting in words: for the caption, and for the curve that is kept to compare with. */
import type { ClockAsked } from '../../choice/clock/types'
import { MONTHS } from '../../choice/months'
import { plain } from '../format/number'
import type { System } from '../format/quantity'
import { sectionWords } from '../questionnaire/words'

/** What the page knows of a wood. */
export interface WoodName {
  readonly id: string
  readonly name: string
  /** Within a sentence. */
  readonly said: string
}
export interface Names {
  readonly woods: readonly WoodName[]
  readonly places: readonly { readonly id: string; readonly name: string }[]
}

export const LIVES = [
  ['heated', 'In a heated room'],
  ['unheated', 'Indoors, not heated'],
  ['roofed', 'Outside under a roof'],
  ['weather', 'In the weather']
] as const
export const DRIED = [
  ['green', 'Green: not dried'],
  ['air', 'In a yard'],
  ['kiln', 'In a kiln'],
  ['rfv', 'By radio-frequency vacuum']
] as const
export const HEATS = [
  ['at-once', 'As soon as it is closed in'],
  ['first-winter', 'The first autumn'],
  ['next-year', 'The autumn after that']
] as const

const woodSaid = (id: string, { woods }: Names): string => woods.find((w) => w.id === id)?.said ?? id
const placeName = (id: string, { places }: Names): string => places.find((p) => p.id === id)?.name ?? id
const weeks = (n: number): string => `${plain(n, 1)} week${n === 1 ? '' : 's'}`
const label = (list: readonly (readonly [string, string])[], id: string): string =>
  (list.find(([key]) => key === id)?.[1] ?? id).toLowerCase()

function driedWords({ seasoning, yardWeeks, kilnWeeks }: ClockAsked): string {
  if (seasoning === 'air') return `${weeks(yardWeeks)} in the yard`
  if (seasoning === 'kiln') return `${weeks(kilnWeeks)} in the kiln`
  return seasoning === 'rfv' ? 'dried by radio-frequency vacuum' : 'green'
}

const size = ({ breadth, depth }: ClockAsked, system: System): string =>
  sectionWords([Math.min(breadth, depth), Math.max(breadth, depth)], system)

/** "8 × 8 in Douglas-fir, green, felled in January and raised 8 weeks on; Portland, OR, in a heated room." */
export function settingWords(asked: ClockAsked, names: Names, system: System): string {
  const month = MONTHS[asked.felledMonth - 1] ?? ''
  const start =
    asked.seasoning === 'rfv'
      ? `dried by radio-frequency vacuum in ${month}`
      : `${driedWords(asked)}, felled in ${month}`
  return `${size(asked, system)} ${woodSaid(asked.wood, names)}, ${start}, then ${weeks(asked.shopWeeks)} until raised. ${placeName(asked.place, names)}, ${label(LIVES, asked.exposure)}.`
}

/** What sets a kept setting apart from another, as short as it can be said. */
export function apart(kept: ClockAsked, now: ClockAsked, names: Names, system: System): string {
  if (kept.wood !== now.wood) return woodSaid(kept.wood, names)
  if (size(kept, system) !== size(now, system)) return size(kept, system)
  if (driedWords(kept) !== driedWords(now)) return driedWords(kept)
  if (kept.exposure !== now.exposure) return label(LIVES, kept.exposure)
  if (kept.place !== now.place) return placeName(kept.place, names)
  if (kept.felledMonth !== now.felledMonth) return `felled in ${MONTHS[kept.felledMonth - 1] ?? ''}`
  if (kept.shopWeeks !== now.shopWeeks) return `raised after ${weeks(kept.shopWeeks)}`
  return kept.heating !== now.heating ? label(HEATS, kept.heating) : 'kept'
}
