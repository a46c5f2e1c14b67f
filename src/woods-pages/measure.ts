/**
 * What every wood is held against, so that their pages can be compared: one piece, one room, one yard, one truss. A common
 * measure, not advice: the questions ask for the reader's own.
 */
import { serviceOf } from '../choice/clock/stages'
import type { LadderReport } from '../choice/ladder/types'
import { quantity } from '../choice/say'
import type { Place, Reference, Wood } from '../data/reference'
import { reportAsked } from '../ui/size-ladder/at-build'
import type { ServiceMoisture } from '../wood/service'
import { CHOSEN } from './sizes'

const TOWN = 'indianapolis-in'
const REFERENCE_WOOD = 'douglas-fir'
const OTHER_REFERENCE = 'eastern-white-pine'

export interface Measure {
  readonly reference: Reference
  readonly place: Place
  /** A heated room in that town. */
  readonly room: ServiceMoisture
  /** The truss of the size ladder's example, in every wood. */
  readonly ladder: LadderReport
}

const kept = new WeakMap<Reference, Measure>()

/** Built once a reference: the ladder sizes a truss in every wood. @throws Error where the town is not in content. */
export function measureOf(reference: Reference): Measure {
  const known = kept.get(reference)
  if (known) return known
  const place = reference.places.get(TOWN)
  if (!place) throw new Error(`no place "${TOWN}" in content/places.json`)
  const made: Measure = {
    reference,
    place,
    room: serviceOf(place, 'heated', reference),
    ladder: reportAsked({}, reference)
  }
  kept.set(reference, made)
  return made
}

/** What the truss is asked for. */
export const jobOf = ({ ladder: { asked } }: Measure) => ({
  span: quantity('span', asked.span, CHOSEN),
  width: quantity('span', asked.width, CHOSEN),
  snow: quantity('areaLoad', asked.snow, CHOSEN)
})

export function woodOf(id: string, { reference }: Measure): Wood {
  const wood = reference.woods.get(id)
  if (!wood) throw new Error(`no wood "${id}" in content/species`)
  return wood
}

/** The wood that another is held against. */
export const against = (wood: Wood, measure: Measure): Wood =>
  woodOf(wood.id === REFERENCE_WOOD ? OTHER_REFERENCE : REFERENCE_WOOD, measure)
