/** A pegged tenon against a pull: how many pegs, where they lie, and whether tenon and mortised timber hold them. N, mm, MPa. */
import type { JointRules, Wood } from '../data/reference'
import type { Variable } from './cases'
import { loadDurationFactor } from './factors'
import { governingCase, type JointCheck, jointCheck, passes, refuse } from './joint-check'
import { pegDepthNeeded } from './notch'
import { distancesFor, type PegCapacity, pegCapacity } from './pegs'
import type { Piece } from './seat'

/** The wood of a frame as joints need it. */
export interface JointWood {
  readonly id: string
  readonly kind: Wood['kind']
  /** Oven-dry specific gravity, or that on green volume where no table has it, which is lower. */
  readonly gravity: number
}

export interface PeggedTenon {
  /** Pull along the tenon, N. */
  readonly cases: readonly Variable[]
  readonly wood: JointWood
  readonly pegGravity: number
  readonly tenoned: Piece
  /** Width of the tenon, across the pull, and its thickness, mm. */
  readonly width: number
  readonly thickness: number
  readonly mortised: Piece
  /** From the joint to the nearer end of the mortised timber, mm. */
  readonly fromEnd: number
  /** Part of the pull that is shear in the mortised timber beside the joint: a half where it hangs between two supports. */
  readonly shearShare: number
  readonly drawBored: boolean
  readonly wet: boolean
}

export interface PegPlan {
  readonly possible: boolean
  readonly reason: 'tenon-too-narrow' | 'tenon-full' | 'tenon-breaks' | 'timber-too-shallow' | null
  readonly diameter: number
  readonly pegs: number
  /** Most pegs that the tenon's width holds. */
  readonly fit: number
  readonly one: PegCapacity
  readonly distances: {
    /** From the shoulder, which is the face that the pull is towards, to the pegs. */
    readonly edge: number
    /** Relish: from the pegs to the end of the tenon. */
    readonly end: number
    readonly spacing: number
    readonly side: number
    /** Shoulder to end. */
    readonly tenon: number
    /** How much nearer to the shoulder the tenon is bored; 0 where it is not drawn. */
    readonly drawBore: number
  }
  /** Empty where not even one peg fits. */
  readonly checks: readonly JointCheck[]
}

/** Pegs of a diameter that lie side by side in a tenon, 0 and up. Source: derived (geometry of the distances). */
export function pegsThatFit(width: number, diameter: number, side: number, spacing: number): number {
  refuse({ width, diameter, 'side distance': side, spacing })
  const between = width - 2 * side * diameter
  return between < -1e-6 ? 0 : Math.floor(between / (spacing * diameter) + 1e-6) + 1
}

/** One row of pegs across the tenon, so many and so thick. */
function plan(rules: JointRules, spec: PeggedTenon, diameter: number, pegs: number, fit: number): PegPlan {
  const { thickness, width, tenoned, mortised, wood } = spec
  const [breadth, depth] = mortised.section
  const row = distancesFor(rules, wood.id, wood.kind)
  const { load, duration } = governingCase(spec.cases)
  const time = loadDurationFactor(duration)
  const peg = { diameter, gravity: spec.pegGravity }
  const place = {
    tenon: thickness,
    wall: (breadth - thickness) / 2,
    tenonGravity: wood.gravity,
    mortisedGravity: wood.gravity,
    tenonAngle: 0,
    mortisedAngle: Math.PI / 2
  }
  const one = pegCapacity(rules, peg, place, duration, spec.wet)
  const spacing = row.spacing * diameter
  // Tear-out (nds, Appendix E): each peg a row of its own, F'v t l; or the block between the outer two, with its net tension.
  const plane = tenoned.values.shear * time * thickness
  const block = tenoned.values.tension * time * thickness * Math.max(0, pegs - 1) * (spacing - diameter)
  const rowLength = pegs > 0 ? load / (pegs * plane) : 0
  const blockLength = pegs > 1 ? (load - block) / plane : 0
  const ends = spec.drawBored ? Math.max(row.end, rules.drawBore.endDiameters) : row.end
  const end = Math.max(ends * diameter, rowLength, blockLength)
  const split = pegDepthNeeded(
    load * spec.shearShare,
    mortised.values.shear * time,
    breadth - thickness,
    depth,
    spec.fromEnd
  )
  const edge = Math.max(row.edge * diameter, split)
  const net = thickness * (width - pegs * diameter)
  const checks =
    pegs > 0
      ? [
          jointCheck('pegs', 'force', load, pegs * one.load, one.clause),
          jointCheck('tenon-tension', 'stress', load / net, tenoned.values.tension * time, 'nds 3.8.1, E.2'),
          jointCheck('peg-depth', 'gap', edge + end, depth, 'nds 3.4.3.3, E.3; distances')
        ]
      : []
  const failed = checks.find((c) => !passes(c))?.id
  const reason =
    pegs === 0
      ? 'tenon-too-narrow'
      : failed === 'pegs'
        ? 'tenon-full'
        : failed === 'tenon-tension'
          ? 'tenon-breaks'
          : failed
            ? 'timber-too-shallow'
            : null
  return {
    possible: reason === null,
    reason,
    diameter,
    pegs,
    fit,
    one,
    distances: {
      edge,
      end,
      spacing,
      side: rules.tenonSide.diameters * diameter,
      tenon: edge + end,
      drawBore: spec.drawBored ? rules.drawBore.share[wood.kind] * diameter : 0
    },
    checks
  }
}

/** Fewest pegs of a diameter that hold; where none do, as many as fit. */
function withDiameter(rules: JointRules, spec: PeggedTenon, diameter: number): PegPlan {
  const row = distancesFor(rules, spec.wood.id, spec.wood.kind)
  const fit = pegsThatFit(spec.width, diameter, rules.tenonSide.diameters, row.spacing)
  const least = Math.min(rules.tenon.leastPegs, fit)
  let tried = plan(rules, spec, diameter, least, fit)
  for (let pegs = least + 1; pegs <= fit && !tried.possible; pegs++) tried = plan(rules, spec, diameter, pegs, fit)
  return tried
}

/**
 * Pegs for a pull: fewest of the usual size that hold, else of the other sizes; where none hold, the plan that comes nearest and
 * why it fails: joinery alone will not carry it. One row across the tenon. Source: tfec-1 (peg strength, distances;
 * recalled), nds, 12.3.1, 3.8.1, 3.4.3.3 and Appendix E.
 * @throws RangeError for loads below zero, no load case, sizes not above zero, a tenon as thick as the mortised timber, a peg of
 * too light a wood
 */
export function pegsFor(rules: JointRules, spec: PeggedTenon): PegPlan {
  refuse({ width: spec.width, thickness: spec.thickness, gravity: spec.wood.gravity })
  if (!(spec.shearShare >= 0 && spec.shearShare <= 1)) throw new RangeError('a share lies from 0 to 1')
  if (spec.thickness >= spec.mortised.section[0]) throw new RangeError('a mortise leaves walls')
  const worst = (p: PegPlan) => Math.max(...p.checks.map((c) => c.ratio), p.checks.length === 0 ? 1e9 : 0)
  const plans = rules.peg.diameters.map((d) => withDiameter(rules, spec, d))
  const holds = plans.find((p) => p.possible)
  return holds ?? plans.reduce((best, p) => (worst(p) < worst(best) ? p : best))
}
