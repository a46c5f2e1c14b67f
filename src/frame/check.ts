/** The common form of every structural check: what is asked of the timber, what it gives, and the clause. */
import type { Quantity, QuantityKind } from '../data/quantity'

/** What went into a check, by the letters of its formula. */
export type CheckInputs = Readonly<Record<string, readonly [kind: QuantityKind, value: Quantity['value']]>>

export interface Check {
  readonly id:
    | 'bending'
    | 'shear'
    | 'deflection-live'
    | 'deflection-total'
    | 'compression'
    | 'compression-bending'
    | 'tension'
    | 'tension-bending'
    | 'slenderness'
  readonly kind: Extract<QuantityKind, 'stress' | 'gap' | 'ratio'>
  readonly demand: number
  readonly capacity: number
  /** demand / capacity; at most 1 passes. */
  readonly ratio: number
  /** Clause of the standard that the check follows. */
  readonly clause: string
  /** What it was worked out from: asked for only where it is shown, for hundreds of sections are tried. */
  readonly from?: () => CheckInputs
}

/** A check from its demand and capacity, in the same unit. */
export function check(
  id: Check['id'],
  kind: Check['kind'],
  demand: number,
  capacity: number,
  clause: string,
  from?: () => CheckInputs
): Check {
  const ratio = demand / capacity
  return from ? { id, kind, demand, capacity, ratio, clause, from } : { id, kind, demand, capacity, ratio, clause }
}

/** The worse of several checks of one kind. */
export function worse(list: readonly [Check, ...Check[]]): Check {
  return list.reduce((a, c) => (c.ratio > a.ratio ? c : a))
}

/** The check that is used most, or null where there is none. */
export function worst(checks: readonly Check[]): Check | null {
  return checks.reduce<Check | null>((most, c) => (most && most.ratio >= c.ratio ? most : c), null)
}
