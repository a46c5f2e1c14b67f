/** The figures of the landing page, asked of the engine at build time: one wood, one size, one room. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Reference, Wood } from '../../data/reference'
import { INCH, percent } from '../../data/units'
import { shrinkageFromGreen } from '../../wood/shrinkage'

const WOOD = 'douglas-fir'
const SERVICE_PERCENT = 9
const SIZE = 8 * INCH

export interface LandingFigures {
  readonly wood: Wood
  readonly size: number
  readonly servicePercent: number
  /** Shrinkage from green to service, fractions. */
  readonly radial: number
  readonly tangential: number
  readonly radialPercent: string
  readonly tangentialPercent: string
  readonly sentence: Sentence
}

export function landingFigures(reference: Reference): LandingFigures {
  const wood = reference.woods.get(WOOD) ?? ([...reference.woods.values()][0] as Wood)
  const moisture = percent(SERVICE_PERCENT)
  const strain = (total: number) => shrinkageFromGreen(total, moisture, wood.fibreSaturation)
  const radial = strain(wood.radial)
  const tangential = strain(wood.tangential)
  const say = (fraction: number) => (fraction * 100).toFixed(1)

  const plain = { mark: 'derived', sources: [] } as const
  const closes = (total: number): Quantity => ({
    kind: 'gap',
    value: SIZE * strain(total),
    origin: {
      mark: wood.shrinkageOrigin.mark,
      sources: wood.shrinkageOrigin.sources,
      formula: 'shrinkage',
      inputs: {
        'S₀, green to oven-dry': { kind: 'percent', value: total, origin: wood.shrinkageOrigin },
        'M, in the room': { kind: 'moisture', value: moisture, origin: plain },
        'Mf, fibre saturation': { kind: 'moisture', value: wood.fibreSaturation, origin: wood.fibreSaturationOrigin },
        'face, green': { kind: 'gap', value: SIZE, origin: plain }
      }
    }
  })
  return {
    wood,
    size: SIZE,
    servicePercent: SERVICE_PERCENT,
    radial,
    tangential,
    radialPercent: say(wood.radial),
    tangentialPercent: say(wood.tangential),
    sentence: {
      text: `From green to ${SERVICE_PERCENT}${'\u00a0'}%, an 8${'\u00a0'}in face of ${wood.short} shrinks {across} where the rings run along it, and {radial} where they run into it.`,
      values: { across: closes(wood.tangential), radial: closes(wood.radial) }
    }
  }
}
