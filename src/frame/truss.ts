/**
 * A king-post truss without struts under uniform roof load: forces by statics, and its rafter and tie as timbers that
 * are pushed or pulled and bent at once. A first look; joints are not sized here. N, mm, MPa.
 */
import { adjustedBending, momentOfInertia, netSection, sectionModulus, uniformDeflection, uniformMoment } from './beam'
import { largest, loadCases, type Variable } from './cases'
import { type Check, check, worse } from './check'
import { adjustedCompression } from './column'
import { creepFactor, eulerStress, loadDurationFactor } from './factors'
import type { DesignValues, Section } from './values'

export interface TrussForces {
  /** Greatest compression in a rafter, at the foot, N. */
  readonly rafter: number
  /** Tension in the tie, N. */
  readonly tie: number
  /** Tension in the king post from the tie's own load, N. */
  readonly kingPost: number
  /** Moment in a rafter between foot and ridge, N mm. */
  readonly rafterMoment: number
  /** Moment in the tie between foot and king post, N mm. */
  readonly tieMoment: number
  readonly angle: number
}

/**
 * Forces in a king-post truss. The roof loads each rafter evenly over its plan length; half the tie's load hangs on the
 * king post. Source: derived (statics; each rafter is pinned at foot and ridge).
 * @param span between the feet, mm
 * @param pitch rise over run, above 0
 * @param roof line load on plan, N/mm
 * @param tie line load on the tie, N/mm
 */
export function kingPostForces(span: number, pitch: number, roof: number, tie: number): TrussForces {
  const angle = Math.atan(pitch)
  const hung = (tie * span) / 2
  const apex = (roof * span) / 2 + hung // load that arrives at the ridge
  const half = span / 2
  // Ridge joint: two rafters share the apex load. At the foot the rafter also carries its own half of the roof load.
  const thrust = apex / 2 / Math.tan(angle)
  const foot = thrust * Math.cos(angle) + ((roof * half) / 2 + apex / 2) * Math.sin(angle)
  return {
    rafter: foot,
    tie: thrust,
    kingPost: hung,
    rafterMoment: uniformMoment(roof, half),
    tieMoment: uniformMoment(tie, half),
    angle
  }
}

export interface KingPostTruss {
  readonly span: number
  readonly pitch: number
  readonly dead: number
  readonly variable: readonly Variable[]
  readonly tieDead: number
  readonly wet: boolean
  readonly unseasonedOrWet: boolean
  readonly liveRatio: number
  readonly totalRatio: number
  /** Breadth that a mortise takes out where the timber is bent most, mm. */
  readonly mortise: number
}

/** Ratio that stands for a section pushed past buckling, where the formula has no meaning. */
export const BUCKLED = 99

/**
 * Compression with bending about the strong axis: (fc/F'c)^2 + fb/(F'b (1 - fc/FcE)), at most 1 passes.
 * Source: nds, 3.9.2 (eq. 3.9-3). Stresses in one unit; at or past the buckling stress it gives a ratio far above 1.
 */
export function compressionBending(fc: number, along: number, fb: number, bent: number, euler: number): number {
  if (fc >= euler) return BUCKLED
  return Math.min(BUCKLED, (fc / along) ** 2 + fb / (bent * (1 - fc / euler)))
}

/** Combined bending and compression of the rafter (nds, 3.9.2), and its deflection (nds, 3.5.2). Purlins hold it sideways. */
export function checkRafter(truss: KingPostTruss, section: Section, values: DesignValues): Check[] {
  const half = truss.span / 2
  const length = half / Math.cos(Math.atan(truss.pitch))
  const slenderness = length / section[1]
  if (slenderness > 50) return [check('slenderness', 'ratio', slenderness, 50, 'nds 3.7.1.4')]
  const combined = loadCases(truss.dead, truss.variable).map(({ load, duration }) => {
    const forces = kingPostForces(truss.span, truss.pitch, load, truss.tieDead)
    const fc = forces.rafter / (section[0] * section[1])
    const fb = forces.rafterMoment / sectionModulus(netSection(section, truss.mortise))
    const along = adjustedCompression(values, slenderness, duration, truss.wet)
    const bent = adjustedBending(values, section, duration, 0)
    const euler = eulerStress(values.elasticityMin, slenderness)
    const sum = compressionBending(fc, along, fb, bent, euler)
    return check('compression-bending', 'ratio', sum, 1, 'nds 3.9.2')
  })
  // Across the slope the load is w cos^2 per length of rafter, over the sloped length.
  const slope = Math.cos(Math.atan(truss.pitch)) ** 2
  const sag = (load: number) => uniformDeflection(load * slope, length, values.elasticity, momentOfInertia(section))
  const live = sag(largest(truss.variable))
  return [
    worse(combined as [Check, ...Check[]]),
    check('deflection-live', 'gap', live, length / truss.liveRatio, 'ibc Table 1604.3'),
    check(
      'deflection-total',
      'gap',
      creepFactor(truss.unseasonedOrWet) * sag(truss.dead) + live,
      length / truss.totalRatio,
      'nds 3.5.2'
    )
  ]
}

/** Combined bending and tension of the tie on its net section (nds, 3.9.1). */
export function checkTie(truss: KingPostTruss, section: Section, values: DesignValues): Check[] {
  const combined = loadCases(truss.dead, truss.variable).map(({ load, duration }) => {
    const forces = kingPostForces(truss.span, truss.pitch, load, truss.tieDead)
    const ft = forces.tie / (netSection(section, truss.mortise)[0] * section[1])
    const fb = forces.tieMoment / sectionModulus(netSection(section, truss.mortise))
    const pull = values.tension * loadDurationFactor(duration)
    const bent = adjustedBending(values, section, duration, 0)
    return check('tension-bending', 'ratio', ft / pull + fb / bent, 1, 'nds 3.9.1')
  })
  return [worse(combined as [Check, ...Check[]])]
}
