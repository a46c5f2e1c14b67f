/** A joint as the page tells it: data and ids, no words. N, mm, MPa. */
import type { Origin } from '../data/quantity'
import type { Mark } from '../data/schema'
import type { Variable } from './cases'
import type { Heel } from './heel'
import { type JointCheck, worstOf } from './joint-check'
import type { PegModeId } from './pegs'
import type { Piece, Seat } from './seat'
import type { PegPlan } from './tenon'

export type JointId = 'heel' | 'king-foot' | 'king-head' | 'post-top' | 'housed'
export type SizeId =
  | 'step'
  | 'step-most'
  | 'plane'
  | 'peg-edge'
  | 'peg-end'
  | 'peg-spacing'
  | 'peg-side'
  | 'tenon-length'
  | 'draw-bore'
  | 'contact'
  | 'head'
  | 'seat'
  | 'seat-needed'
  | 'seat-most'
/** What to say beside a joint. */
export type JointCaution =
  | 'peg-strength-recalled'
  | 'peg-bending-in-doubt'
  | 'distances-not-tested'
  | 'rules-recalled'
  | 'strength-derived'

export interface Joint {
  readonly id: JointId
  /** `steel`: joinery of these sizes will not carry it; larger or longer timbers (as `reason` says) or steel must be thought of. */
  readonly verdict: 'joinery' | 'steel'
  readonly reason: Heel['reason'] | PegPlan['reason'] | Seat['reason'] | 'face-too-small'
  /** What the joint carries under the heaviest case, N. */
  readonly force: number
  readonly checks: readonly JointCheck[]
  /** The check that is used most; null where nothing could be checked. */
  readonly governing: JointCheck | null
  readonly pegs: {
    readonly count: number
    readonly fit: number
    readonly diameter: number
    /** Adjusted capacity of one, N, and the mode that gives it. */
    readonly each: number
    readonly mode: PegModeId
  } | null
  /** Share of a timber's depth that is cut away; null where the joint cuts none of it. */
  readonly lost: number | null
  /** mm. */
  readonly sizes: Readonly<Partial<Record<SizeId, number>>>
  readonly cautions: readonly JointCaution[]
  readonly origin: Origin
}

export interface JointSetting {
  readonly pegGravity: number
  /** Thickness of tenons, mm. */
  readonly tenon: number
  readonly drawBored: boolean
  readonly wet: boolean
}

/** The largest load, N. */
export const heaviest = (cases: readonly Variable[]): number => cases.reduce((most, c) => Math.max(most, c.load), 0)
/** The check that is used most, or null where there is none. */
export const mostUsed = (checks: readonly JointCheck[]): JointCheck | null => {
  const [first, ...rest] = checks
  return first ? worstOf([first, ...rest]) : null
}
/** Cautions of pieces whose strength no table holds. */
export const derivedOf = (...pieces: readonly Piece[]): readonly JointCaution[] =>
  pieces.some((p) => p.values.derived) ? ['strength-derived'] : []
/** One origin from several. */
export const originFrom = (mark: Mark, ...from: readonly Origin[]): Origin => ({
  mark,
  sources: from.flatMap((o) => o.sources)
})
export const NDS_BEARING: Origin = { mark: 'seen', sources: [{ key: 'nds', where: '3.10' }] }
