/** One member sized, for a page where a framer plays with it. Preliminary: what is not checked is listed. N, mm, MPa, Pa. */
import { memberParts, type SizedMember, type Values } from './member-parts'
import { isTruss, type MemberKind, type MemberRanges, type MemberSpec, outOfRange, type Refusal } from './member-spec'
import type { Section } from './values'
import { type WayOut, wayOut } from './way-out'

/** What a preliminary size leaves out. */
export type NotChecked =
  | 'joints'
  | 'notches'
  | 'wind-uplift'
  | 'earthquake'
  | 'drift'
  | 'vibration'
  | 'down-slope' // a purlin's push along the slope, which the planks take
  | 'feet' // what holds leaning rafters together
  | 'sway' // a post's braces; a queen-post truss's sag under one-sided load
  | 'post-bending' // struts that push a king post sideways

export interface MemberSize {
  readonly ok: true
  readonly kind: MemberKind
  readonly members: readonly SizedMember[]
  /** True where every timber has a section that passes. */
  readonly passes: boolean
  readonly notChecked: readonly NotChecked[]
  /** What would make it possible; null where it is. */
  readonly wayOut: WayOut | null
}

function left(kind: MemberKind, spec: MemberSpec): NotChecked[] {
  const out: NotChecked[] = ['joints', 'wind-uplift', 'earthquake']
  if (spec.roof.length > 0) out.push('drift')
  if (!isTruss(kind) && kind !== 'post') out.push('notches')
  if (spec.floor.length > 0 && kind !== 'post') out.push('vibration')
  if (kind === 'purlin') out.push('down-slope')
  if (kind === 'rafter' && !spec.ridgeBeam) out.push('feet')
  if (kind === 'post' || (kind === 'queen' && spec.oneSided)) out.push('sway')
  if (kind === 'king-struts' && spec.oneSided) out.push('post-bending')
  return out
}

/**
 * Size one member: every timber of it with the smallest section of the series that passes, its checks with their clauses,
 * what governs, the next lighter section with what it lacks, pushes and pulls. What is out of range is refused with the
 * range; a member that no section can carry comes back with what would make it possible, worked out.
 * Source: nds, 3.3 to 3.9 and 15.4; asce-7, 2.4.1 and 7; derived (statics).
 * @param series actual sizes in trying order (`inTryingOrder`), mm @param valuesFor design values, null where the wood has none
 */
export function sizeMember(
  kind: MemberKind,
  spec: MemberSpec,
  series: readonly Section[],
  valuesFor: Values,
  ranges: MemberRanges
): MemberSize | Refusal {
  const refused = outOfRange(kind, spec, ranges)
  if (refused) return refused
  if (series.length === 0) return { ok: false, why: 'no-sections' }
  if (series.every((s) => valuesFor(s) === null)) return { ok: false, why: 'no-values' }
  const members = memberParts(kind, spec, series, valuesFor)
  const passes = members.every((m) => m.sized.section !== null)
  return {
    ok: true,
    kind,
    members,
    passes,
    notChecked: left(kind, spec),
    wayOut: passes ? null : wayOut(kind, spec, series, valuesFor, ranges)
  }
}
