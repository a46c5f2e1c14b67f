/** Which fields a job of the size ladder uses, and what its member may bear. Light enough for a page to ask. */
import { type Bears, FLOORS, type LadderAsked, LIVES, ROOFS, SLOTS, type Slot } from './types'

/** A floor's joists bear no roof, and roof timbers no floor. */
export function bearsOf(kind: string): readonly Bears[] {
  if (kind === 'joist') return FLOORS
  return kind === 'beam' || kind === 'post' ? [...ROOFS, ...FLOORS] : ROOFS
}
export const isFloor = (bears: string): boolean => FLOORS.some((f) => f === bears)
/** Whether snow can lie on it: on any roof, and on a deck. */
export const isSnowed = (bears: string): boolean => !isFloor(bears) || bears === 'deck'
/** Where it may live: a deck in the open is in no heated room. */
export const livesOf = (bears: string): readonly (typeof LIVES)[number][] =>
  bears === 'deck' ? ['weather', 'unheated'] : LIVES
/** Members of a slope of their own; the others may lie under any roof. */
export const isSloped = (kind: string): boolean => ['rafter', 'king', 'king-struts', 'queen'].includes(kind)

/** Timbers that lie level on two supports may bear loads at points. */
export const bearsPoints = (kind: string): boolean => kind !== 'post' && !isSloped(kind)
export const slotsOf = (loads: string): Slot[] => SLOTS.filter((slot) => String(loads).includes(slot))
/** Which load a field belongs to; null for the fields of the rest. */
export const slotOf = (field: string): Slot | null =>
  SLOTS.find((slot) => field === `point${slot}` || field === `at${slot}`) ?? null

/** Whether the job uses the field at all; what it does not use is not judged. */
export function usesField(field: keyof LadderAsked, { kind, bears, loads }: LadderAsked): boolean {
  const slot = slotOf(field)
  if (slot) return bearsPoints(kind) && slotsOf(loads).includes(slot)
  if (field === 'height') return kind === 'post'
  if (field === 'slope') return !isFloor(bears)
  if (field === 'snow') return isSnowed(bears)
  if (field === 'loads') return bearsPoints(kind)
  return true
}
