/**
 * The joints of a king-post truss, or of a beam on its posts, as data: what is asked, what joinery gives, how it is cut, and
 * whether steel must be thought of. A first look, never a design. N, mm, MPa, radians.
 */
import type { DesignRow, JointRules, Wood } from '../data/reference'
import type { Variable } from './cases'
import { derivedOf, heaviest, type Joint, type JointSetting, mostUsed, NDS_BEARING, originFrom } from './joint'
import { housedSeat, type Piece, postTop } from './seat'
import type { JointWood } from './tenon'
import { heelJoint, kingFoot, kingHead, type TrussFrame } from './truss-joints'

export interface BeamFrame {
  readonly kind: 'beam'
  /** Reaction at an end, N. */
  readonly cases: readonly Variable[]
  readonly beam: Piece
  readonly post: Piece
}

/**
 * The wood of a frame as joints need it: the table's specific gravity of its group, or its own on green volume, which is lower
 * and so errs to the safe side. Source: nds, Table 12.3.3A, by the rows of design values.
 */
export function jointWood(wood: Wood, design: readonly DesignRow[]): JointWood {
  const row = design.find((r) => r.group === wood.designGroup && r.gravity !== null)
  return { id: wood.id, kind: wood.kind, gravity: row?.gravity ?? wood.gravityGreen }
}

function seatJoint(id: 'post-top' | 'housed', rules: JointRules, frame: BeamFrame, setting: JointSetting): Joint {
  const { beam, post, cases } = frame
  const top = id === 'post-top'
  const spec = { cases, beam, post, tenon: top ? setting.tenon : 0, wet: setting.wet, fromEnd: 0 }
  const seat = (top ? postTop : housedSeat)(rules, spec)
  return {
    id,
    verdict: seat.possible ? 'joinery' : 'steel',
    reason: seat.reason,
    force: heaviest(cases),
    checks: seat.checks,
    governing: mostUsed(seat.checks),
    pegs: null,
    lost: top ? null : seat.length / post.section[1],
    sizes: { seat: seat.length, 'seat-needed': seat.needed, 'seat-most': seat.most },
    cautions: derivedOf(beam, post),
    origin: top ? NDS_BEARING : originFrom('mixed', NDS_BEARING, rules.housing.origin)
  }
}

/**
 * The joints of a frame. A truss: its heel, the king post's foot and head, and the tie on its post where one stands under it. A
 * beam: on the post's top, or housed into its side; one of the two is cut. Source: nds, 3.10, 3.9.1, 12.3 and
 * Appendix E, tfec-1 (recalled); forces come from the caller's statics.
 * @throws RangeError for impossible sizes, angles and forces
 */
export function jointsFor(
  rules: JointRules,
  frame: TrussFrame | BeamFrame,
  wood: JointWood,
  setting: JointSetting
): readonly Joint[] {
  if (frame.kind === 'beam')
    return [seatJoint('post-top', rules, frame, setting), seatJoint('housed', rules, frame, setting)]
  const reactions = frame.cases.map((c) => ({ load: c.reaction, duration: c.duration }))
  return [
    heelJoint(rules, frame, setting),
    kingFoot(rules, frame, wood, setting),
    kingHead(rules, frame, setting),
    ...(frame.post
      ? [seatJoint('post-top', rules, { kind: 'beam', cases: reactions, beam: frame.tie, post: frame.post }, setting)]
      : [])
  ]
}
