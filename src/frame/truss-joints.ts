/** The joints of a king-post truss: rafter heel, the king post's foot and its head. N, mm, MPa, radians. */
import type { JointRules } from '../data/reference'
import { loadDurationFactor } from './factors'
import { type HeelCase, planeNeeded, rafterHeel } from './heel'
import { derivedOf, heaviest, type Joint, type JointSetting, mostUsed, NDS_BEARING, originFrom } from './joint'
import { governingCase, jointCheck, passes } from './joint-check'
import { distancesFor } from './pegs'
import { bearingAcross, bearingAlong, hankinson, type Piece } from './seat'
import { type JointWood, pegsFor } from './tenon'

/** Forces of a truss under one load case, N. */
export interface TrussCase extends HeelCase {
  readonly kingPost: number
  /** What the foot brings to its post. */
  readonly reaction: number
}

export interface TrussFrame {
  readonly kind: 'king-post'
  readonly cases: readonly TrussCase[]
  readonly span: number
  readonly angle: number
  readonly rafter: Piece
  readonly tie: Piece
  readonly king: Piece
  /** null where walls carry. */
  readonly post: Piece | null
  /** Wood of the tie beyond the step, mm, or null where it may be as long as is needed. */
  readonly beyond: number | null
}

/** The rafter's foot in the tie. Source: nds, 3.10.3, with din-1052 and Appendix E.3 (recalled). */
export function heelJoint(rules: JointRules, frame: TrussFrame, setting: JointSetting): Joint {
  const heel = rafterHeel(rules, { ...frame, tenon: setting.tenon, wet: setting.wet })
  return {
    id: 'heel',
    verdict: heel.possible ? 'joinery' : 'steel',
    reason: heel.reason,
    force: heaviest(frame.cases.map((c) => ({ load: c.tie, duration: c.duration }))),
    checks: heel.checks,
    governing: mostUsed(heel.checks),
    pegs: null,
    lost: heel.lost,
    sizes: { step: heel.step, 'step-most': heel.deepest, plane: heel.plane },
    cautions: ['rules-recalled', ...derivedOf(frame.rafter, frame.tie)],
    origin: originFrom('derived', NDS_BEARING, rules.step.origin, rules.plane.origin)
  }
}

/** The king post's tenon in the tie, which hangs on its pegs. Source: tfec-1 (recalled), with nds, 12.3.1. */
export function kingFoot(rules: JointRules, frame: TrussFrame, wood: JointWood, setting: JointSetting): Joint {
  const cases = frame.cases.map((c) => ({ load: c.kingPost, duration: c.duration }))
  const plan = pegsFor(rules, {
    cases,
    wood,
    pegGravity: setting.pegGravity,
    tenoned: frame.king,
    width: frame.king.section[1],
    thickness: setting.tenon,
    mortised: frame.tie,
    fromEnd: frame.span / 2,
    shearShare: 0.5,
    drawBored: setting.drawBored,
    wet: setting.wet
  })
  const { distances } = plan
  const row = distancesFor(rules, wood.id, wood.kind)
  return {
    id: 'king-foot',
    verdict: plan.possible ? 'joinery' : 'steel',
    reason: plan.reason,
    force: heaviest(cases),
    checks: plan.checks,
    governing: mostUsed(plan.checks),
    pegs: { count: plan.pegs, fit: plan.fit, diameter: plan.diameter, each: plan.one.load, mode: plan.one.mode },
    lost: null,
    sizes: {
      'peg-edge': distances.edge,
      'peg-end': distances.end,
      'peg-spacing': distances.spacing,
      'peg-side': distances.side,
      'tenon-length': distances.tenon,
      'draw-bore': distances.drawBore
    },
    cautions: [
      'peg-strength-recalled',
      ...(plan.one.bendingGoverns ? (['peg-bending-in-doubt'] as const) : []),
      ...(row.origin.mark === 'derived' ? (['distances-not-tested'] as const) : []),
      ...derivedOf(frame.king, frame.tie)
    ],
    origin: originFrom('memory', plan.one.origin, row.origin, rules.drawBore.origin)
  }
}

/**
 * Rafters cut plumb against the king post: the thrust presses its side across the grain, and the rafter's end at the slope to its
 * grain. What hangs on the king post shears its head off above the rafters, in two planes. Source: nds, 3.10.2 and 3.10.3; the planes after Appendix E.3 (recalled).
 */
export function kingHead(rules: JointRules, frame: TrussFrame, setting: JointSetting): Joint {
  const { angle, rafter, king } = frame
  const breadth = Math.min(rafter.section[0], king.section[0]) - setting.tenon
  const contact = rafter.section[1] / Math.cos(angle)
  const checks = frame.cases.flatMap(({ tie, duration }) => {
    const stress = tie / (breadth * contact)
    const across = bearingAcross(king.values, setting.wet)
    const along = bearingAlong(rafter.values, duration, setting.wet)
    const sloped = hankinson(along, bearingAcross(rafter.values, setting.wet), angle)
    return [
      jointCheck('bearing-across', 'stress', stress, across, 'nds 3.10.2'),
      jointCheck('bearing-slope', 'stress', stress, sloped, 'nds 3.10.3')
    ]
  })
  const governing = mostUsed(checks)
  const hung = governingCase(frame.cases.map((c) => ({ load: c.kingPost, duration: c.duration })))
  const shear = king.values.shear * loadDurationFactor(hung.duration)
  const possible = checks.every(passes)
  return {
    id: 'king-head',
    verdict: possible ? 'joinery' : 'steel',
    reason: possible ? null : 'face-too-small',
    force: heaviest(frame.cases.map((c) => ({ load: c.tie, duration: c.duration }))),
    checks: governing ? [governing] : [],
    governing,
    pegs: null,
    lost: null,
    sizes: { contact, head: planeNeeded(rules, hung.load / 2, king.section[0], shear) },
    cautions: derivedOf(rafter, king),
    origin: originFrom('derived', NDS_BEARING, rules.plane.origin)
  }
}
