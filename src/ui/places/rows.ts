/** Every place as the engine sees it: how fast rot works there, and how dry wood gets outdoors and in a heated room. */
import { factsFrom } from '../../choice/facts'
import { hazardFigure, serviceMoistureFigure } from '../../choice/figures'
import type { Quantity } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import type { Hazard } from '../../wood/decay'

export interface PlaceRow {
  readonly id: string
  readonly name: string
  readonly state: string
  readonly lat: number
  readonly lon: number
  readonly hazard: Hazard
  /** What each month adds to the index. */
  readonly months: readonly number[]
  readonly index: Quantity
  readonly outdoors: Quantity
  readonly heated: Quantity
}

export function placeRows(reference: Reference): PlaceRow[] {
  return [...reference.places.values()]
    .map((place): PlaceRow => {
      const under = factsFrom({ exposure: 'roofed', place: place.id }, reference)
      const inside = factsFrom({ exposure: 'heated', place: place.id }, reference)
      return {
        id: place.id,
        name: place.name,
        state: place.state,
        lat: place.lat,
        lon: place.lon,
        hazard: under.hazard,
        months: under.hazardMonths,
        index: hazardFigure(under, reference),
        outdoors: serviceMoistureFigure(under, reference),
        heated: serviceMoistureFigure(inside, reference)
      }
    })
    .sort((a, b) => a.state.localeCompare(b.state) || a.name.localeCompare(b.name))
}
