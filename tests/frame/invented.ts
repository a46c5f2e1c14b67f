/** Design values of an invented wood, so that tests of statics and of what must always hold stand on no table. MPa. */
import { INCH } from '../../src/data/units'
import { inTryingOrder } from '../../src/frame/sizing'
import type { DesignValues, Section } from '../../src/frame/values'

/** @param strength 1 for a middling softwood; everything in proportion */
export const values = (strength: number): DesignValues => ({
  bending: 9 * strength,
  tension: 5 * strength,
  shear: 1.1 * strength,
  compressionPerp: 4 * strength,
  compression: 6.5 * strength,
  elasticity: 10_000 * strength,
  elasticityMin: 3_700 * strength,
  wetIncluded: false,
  derived: false,
  origin: { mark: 'derived', sources: [] }
})

/** Sections of 6 to 12 by 6 to 18 in, mm. */
export const series: Section[] = inTryingOrder(
  [6, 8, 10, 12].flatMap((b) =>
    [6, 8, 10, 12, 14, 16, 18].filter((d) => d >= b).map((d): Section => [b * INCH, d * INCH])
  )
)
