import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { content } from '../../src/data/content'
import type { PlaceName } from '../../src/ui/questionnaire/field-props'
import { exactPlace, findPlaces, nearPlaces } from '../../src/ui/questionnaire/place-search'

const places = (content.places as { places: PlaceName[] }).places
const names = (found: readonly PlaceName[]) => found.map((place) => place.name)

describe('a place by what is typed', () => {
  test('beginnings of words, in any case, with or without marks', () => {
    expect(names(findPlaces('dulu', places))).toEqual(['Duluth, MN'])
    expect(names(findPlaces('ST paul', places))).toContain('Minneapolis-St. Paul, MN')
    expect(names(findPlaces('portland or', places))).toEqual(['Portland, OR'])
  })

  test('a state’s name finds its places', () => {
    expect(names(findPlaces('vermont', places))).toEqual(['Burlington, VT'])
  })

  test('the name itself is exact, a town alone only where there is one of it', () => {
    expect(exactPlace('duluth, mn', places)?.name).toBe('Duluth, MN')
    expect(exactPlace('duluth', places)?.name).toBe('Duluth, MN')
    expect(exactPlace('portland', places)).toBeUndefined()
  })

  test('near misses are found; a town that we lack gets its state’s places', () => {
    expect(names(nearPlaces('Dulut', places))[0]).toBe('Duluth, MN')
    expect(names(nearPlaces('Bend, Oregon', places)).every((name) => name.endsWith('OR'))).toBe(true)
  })

  test('every place is found by its own name', () => {
    for (const place of places) expect(exactPlace(place.name, places)?.id, place.name).toBe(place.id)
  })

  test('any text gives a list, never a throw', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 120 }), (text) => {
        expect(findPlaces(text, places).length).toBeLessThanOrEqual(8)
        expect(nearPlaces(text, places).length).toBeLessThanOrEqual(6)
      })
    )
  })
})
