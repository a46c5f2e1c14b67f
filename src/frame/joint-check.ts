/** What checks of joints have in common: their form, the case that governs, refusal of impossible sizes. N, mm, MPa. */
import type { QuantityKind } from '../data/quantity'
import type { Variable } from './cases'
import { loadDurationFactor } from './factors'

export type JointCheckId =
  | 'pegs'
  | 'tenon-tension'
  | 'relish'
  | 'peg-depth'
  | 'bearing-across'
  | 'bearing-along'
  | 'bearing-slope'
  | 'step-depth'
  | 'housing-depth'
  | 'shear-plane'
  | 'tie-tension'
  | 'head-length'

export interface JointCheck {
  readonly id: JointCheckId
  readonly kind: Extract<QuantityKind, 'force' | 'gap' | 'stress' | 'ratio'>
  readonly demand: number
  readonly capacity: number
  /** demand / capacity; at most 1 passes. */
  readonly ratio: number
  /** Clause that the check follows, or the statics that it is. */
  readonly clause: string
}

/** A check of a joint from its demand and capacity, in the same unit. Source: derived. */
export function jointCheck(
  id: JointCheckId,
  kind: JointCheck['kind'],
  demand: number,
  capacity: number,
  clause: string
): JointCheck {
  return { id, kind, demand, capacity, ratio: demand / capacity, clause }
}

/** The check that is used most. Source: derived. */
export function worstOf(checks: readonly [JointCheck, ...JointCheck[]]): JointCheck {
  return checks.reduce((most, c) => (c.ratio > most.ratio ? c : most))
}

/** Passes within rounding: a size worked out to just carry its load does carry it. Source: derived. */
export function passes(check: JointCheck): boolean {
  return check.ratio <= 1 + 1e-9
}

/**
 * The case that asks most of strengths that the duration factor goes with: the largest of load / C_D.
 * Source: nds, 2.3.2. @throws RangeError where there is no case or a load is below zero.
 */
export function governingCase(cases: readonly Variable[]): Variable {
  const [first, ...rest] = cases
  if (!first) throw new RangeError('a joint needs a load case')
  for (const c of cases) if (!(c.load >= 0)) throw new RangeError('the load on a joint must not be below zero')
  const asks = (c: Variable) => c.load / loadDurationFactor(c.duration)
  return rest.reduce((most, c) => (asks(c) > asks(most) ? c : most), first)
}

/** Refuses what cannot be the size, strength or number of a thing. Source: derived. @throws RangeError naming it. */
export function refuse(sizes: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(sizes))
    if (!(Number.isFinite(value) && value > 0)) throw new RangeError(`${name} of a joint must be above zero`)
}
