/** Loads at points before they are asked for: where each would stand, and how heavy. Light: a page needs it at once. */
import { type LadderAsked, type PlaceField, type PointField, SLOTS, type Slot } from '../../choice/ladder/types'
import { slotsOf } from '../../choice/ladder/uses'

/** Half a ton, mid-span first, then the quarters. */
const WEIGHT = 1000 * 4.448_221_615
const SHARES: Readonly<Record<Slot, number>> = { 1: 0.5, 2: 0.25, 3: 0.75, 4: 0.125 }

/** All slots as they are before they are used, in whole inches along a span. */
export function restingLoads(span: number): Readonly<Record<PointField | PlaceField, number>> {
  const places = SLOTS.map((s) => [`at${s}`, Math.round((span * SHARES[s]) / 25.4) * 25.4])
  const weights = SLOTS.map((s) => [`point${s}`, WEIGHT])
  return Object.fromEntries([...places, ...weights]) as Record<PointField | PlaceField, number>
}

/** Slots that are not in use stand where they would in this span; those in use stay. */
export function settleLoads(asked: LadderAsked): LadderAsked {
  const used = slotsOf(asked.loads)
  const rest = restingLoads(asked.span)
  const free = SLOTS.filter((s) => !used.includes(s)).map((s) => [`at${s}`, rest[`at${s}`]])
  return { ...asked, ...Object.fromEntries(free) }
}
