/** How long untreated heartwood is expected to last: spans of years, as coarse as the trials they come from. */
import type { Hazard, UseClass } from './decay'

export interface Years {
  readonly says: string
  /** Years, from and to; the upper null where the trial ended before the wood did, both where no trial sets an end. */
  readonly lowYears: number | null
  readonly highYears: number | null
}

/** Steps of life above ground, shortest first, and where on them each class starts under a moderate climate in class 3.1. */
export interface LifeScale {
  readonly steps: readonly Years[]
  /** By durability class 1 to 5: lowest and highest step, counted from 0; a step past the last is the last. */
  readonly startByClass: readonly (readonly [number, number])[]
  /** Steps gained or lost by climate and by use class. */
  readonly byHazard: Readonly<Record<Hazard, number>>
  readonly byUseClass: Readonly<Record<'3.1' | '3.2', number>>
}

const known = (durabilityClass: number): number => {
  if (![1, 2, 3, 4, 5].includes(durabilityClass))
    throw new RangeError(`durability class ${durabilityClass} is not a whole number from 1 to 5`)
  return durabilityClass - 1
}

/**
 * Life of heartwood above ground in the open, from the worse end of its class range to the better. The ends of the scale
 * hold whatever falls past them: nothing is said beyond the longest trial. Source: highley-1995, bentwise-scale.
 * @throws RangeError for a class that is not a whole number from 1 to 5
 */
export function lifeAboveGround(
  scale: LifeScale,
  useClass: '3.1' | '3.2',
  hazard: Hazard,
  best: number,
  worst: number
): readonly [Years, Years] {
  const moved = scale.byHazard[hazard] + scale.byUseClass[useClass]
  const step = (n: number): Years => {
    const last = scale.steps.length - 1
    return scale.steps[Math.max(0, Math.min(last, n + moved))] as Years
  }
  return [step(scale.startByClass[known(worst)]?.[0] ?? 0), step(scale.startByClass[known(best)]?.[1] ?? 0)]
}

export interface LifeData {
  readonly dry: Years
  readonly aboveGround: LifeScale
  /** In the ground, by durability class 1 to 5. */
  readonly ground: readonly Years[]
}

/**
 * Expected life of heartwood, worse end of its class range first; both alike where the range makes no difference.
 * Source: en-350-1994, meaning of the classes in the ground; highley-1995 above it.
 * @throws RangeError for a class that is not a whole number from 1 to 5
 */
export function expectedLife(
  data: LifeData,
  useClass: UseClass,
  hazard: Hazard,
  best: number,
  worst: number
): readonly [Years, Years] {
  if (useClass === '1' || useClass === '2') return [data.dry, data.dry]
  if (useClass === '4') return [data.ground[known(worst)] as Years, data.ground[known(best)] as Years]
  return lifeAboveGround(data.aboveGround, useClass, hazard, best, worst)
}
