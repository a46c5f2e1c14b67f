/** Climate index for decay (Scheffer 1971) from the NOAA 2006-2020 normals. */
import { describe, expect, it } from 'vitest'
import { schefferIndex } from '../../src/wood/decay'
import { reference } from '../reference'

describe('Scheffer index computed from the normals', () => {
  // Source of the expected values: derived from the same normals by hand; one decimal.
  it.each([
    ['seattle-wa', 58.5],
    ['madison-wi', 46.1],
    ['las-vegas-nv', 0]
  ])('%s is %d', (id, printed) => {
    const place = reference.places.get(id)
    expect(schefferIndex(place?.temperatureF ?? [], place?.wetDays ?? [])).toBeCloseTo(printed, 1)
  })
  it('a month at 35 F or with 3 wet days adds nothing', () => {
    expect(schefferIndex([35, 20, 70], [20, 20, 3])).toBe(0)
    expect(schefferIndex([65], [13])).toBeCloseTo(10, 12)
  })
})
