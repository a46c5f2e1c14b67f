/** Places and woods under rot: index and moisture by place, woods by class, the matrix of class against use. */
import { factsFrom } from '../choice/facts'
import { hazardFigure, serviceMoistureFigure } from '../choice/figures'
import type { Quantity } from '../data/quantity'
import type { Reference } from '../data/reference'
import { type Hazard, sufficiencyOf, type UseClass, type Verdict } from '../wood/decay'

export interface RegionRow {
  readonly region: string
  readonly place: string
  readonly hazard: Hazard
  readonly index: Quantity
  readonly months: readonly number[]
  readonly outdoors: Quantity
  readonly heated: Quantity
}

/** @param named region and id of a place, in the order wanted. @throws Error for a place that is not known */
export function regionRows(reference: Reference, named: readonly (readonly [string, string])[]): readonly RegionRow[] {
  return named.map(([region, place]) => {
    const found = reference.places.get(place)
    if (found === undefined) throw new Error(`no place "${place}"`)
    const roofed = factsFrom({ exposure: 'roofed', place }, reference)
    const inside = factsFrom({ exposure: 'heated', place }, reference)
    return {
      region,
      place: found.name,
      hazard: roofed.hazard,
      index: hazardFigure(roofed, reference),
      months: roofed.hazardMonths,
      outdoors: serviceMoistureFigure(roofed, reference),
      heated: serviceMoistureFigure(inside, reference)
    }
  })
}

export const CLASSES = [1, 2, 3, 4, 5] as const
const USES = ['1', '2', '3.1', '4'] as const satisfies readonly UseClass[]

export interface MatrixRow {
  readonly use: string
  readonly verdicts: readonly Verdict[]
}

/** The matrix of 1994, which knows class 3 whole. */
export function matrixRows(reference: Reference): readonly MatrixRow[] {
  const { byUseClass } = reference.decay.sufficiency
  return USES.map((use) => ({
    use: use.charAt(0),
    verdicts: CLASSES.map((durability) => sufficiencyOf(byUseClass, use, durability))
  }))
}

/** Woods by the middle of their range of classes, rounded towards the worse. */
export function woodsByClass(
  reference: Reference
): readonly { readonly durability: number; readonly woods: string[] }[] {
  return CLASSES.map((durability) => ({
    durability,
    woods: [...reference.woods.values()]
      .filter(({ durability: { best, worst } }) => Math.ceil((best + worst) / 2) === durability)
      .map((wood) => wood.said)
      .sort((a, b) => a.localeCompare(b))
  }))
}
