/** One section worked through both ways, for the framers' page: the engine's figures, each open to its formula. */
import type { Quantity } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import { checkOpening, faceStrain, logDiameterNeeded, PITH_CLEARANCE } from '../../wood/section'
import type { LandingFigures } from './landing'

export interface WorkedRow {
  readonly label: string
  readonly boxed: Quantity
  readonly free: Quantity | null
}

export function workedRows(reference: Reference, shown: LandingFigures): readonly WorkedRow[] {
  const { wood, size, radial, tangential } = shown
  const plain = { mark: 'derived', sources: [] } as const
  const inch = (kind: Quantity['kind'], value: number): Quantity => ({ kind, value, origin: plain })
  const strains = {
    'eR, radius': { kind: 'percent', value: radial, origin: wood.shrinkageOrigin },
    'eT, round the rings': { kind: 'percent', value: tangential, origin: wood.shrinkageOrigin }
  } as const
  const worked = (
    kind: Quantity['kind'],
    value: number,
    formula: string,
    inputs: Readonly<Record<string, Quantity>>
  ): Quantity => {
    const entry = reference.formulas[formula]
    return {
      kind,
      value,
      origin: { mark: entry?.mark ?? 'derived', sources: wood.shrinkageOrigin.sources, formula, inputs }
    }
  }
  const face = (heart: 'boxed' | 'free') =>
    worked('gap', size * faceStrain(heart, size, size, radial, tangential).breadth, 'face', {
      ...strains,
      face: inch('gap', size)
    })
  const log = (heart: 'boxed' | 'free') =>
    worked('gap', logDiameterNeeded(heart, size, size), `log-${heart}`, {
      b: inch('gap', size),
      d: inch('gap', size),
      ...(heart === 'free' ? { c: inch('gap', PITH_CLEARANCE) } : {})
    })
  return [
    { label: 'Shrinkage across the face', boxed: face('boxed'), free: face('free') },
    {
      label: 'Checks on one face, at most',
      boxed: worked('gap', checkOpening(size / 2, radial, tangential), 'checks', {
        ...strains,
        d: inch('gap', size / 2)
      }),
      free: null
    },
    { label: 'Log needed, small end', boxed: log('boxed'), free: log('free') }
  ]
}
