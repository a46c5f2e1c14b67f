/**
 * A king-post truss without struts under uniform roof load: forces by statics, and its rafter and tie as timbers that
 * are pushed or pulled and bent at once. A first look; joints are not sized here. N, mm, MPa.
 */
import { adjustedBending, momentOfInertia, sectionModulus, uniformDeflection, uniformMoment } from './beam'
import { type Check, check } from './check'
import { adjustedCompression } from './column'
import { creepFactor, type Duration, eulerStress, loadDurationFactor } from './factors'
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
  readonly live: number
  readonly tieDead: number
  readonly liveDuration: Duration
  readonly wet: boolean
  readonly unseasonedOrWet: boolean
  readonly liveRatio: number
  readonly totalRatio: number
  /** Share of the section left where a mortise or housing is cut. */
  readonly net: number
}

/** Combined bending and compression of the rafter (nds, 3.9.2), and its deflection (nds, 3.5.2). Purlins hold it sideways. */
export function checkRafter(truss: KingPostTruss, section: Section, values: DesignValues): Check[] {
  const half = truss.span / 2
  const length = half / Math.cos(Math.atan(truss.pitch))
  const slenderness = length / section[1]
  if (slenderness > 50) return [check('slenderness', 'ratio', slenderness, 50, 'nds 3.7.1.4')]
  const combined = (
    [
      [0, 'permanent'],
      [truss.live, truss.liveDuration]
    ] as const
  ).map(([live, duration]) => {
    const forces = kingPostForces(truss.span, truss.pitch, truss.dead + live, truss.tieDead)
    const fc = forces.rafter / (section[0] * section[1])
    const fb = forces.rafterMoment / (sectionModulus(section) * truss.net)
    const along = adjustedCompression(values, slenderness, duration, truss.wet)
    const bent = adjustedBending(values, section, duration, 0)
    const euler = eulerStress(values.elasticityMin, slenderness)
    const sum = fc >= euler ? Number.POSITIVE_INFINITY : (fc / along) ** 2 + fb / (bent * (1 - fc / euler))
    return check('compression-bending', 'ratio', Math.min(sum, 99), 1, 'nds 3.9.2')
  })
  // Across the slope the load is w cos^2 per length of rafter, over the sloped length.
  const slope = Math.cos(Math.atan(truss.pitch)) ** 2
  const sag = (load: number) => uniformDeflection(load * slope, length, values.elasticity, momentOfInertia(section))
  const live = sag(truss.live)
  return [
    combined.reduce((a, c) => (c.ratio > a.ratio ? c : a)),
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
  const combined = (
    [
      [0, 'permanent'],
      [truss.live, truss.liveDuration]
    ] as const
  ).map(([live, duration]) => {
    const forces = kingPostForces(truss.span, truss.pitch, truss.dead + live, truss.tieDead)
    const ft = forces.tie / (section[0] * section[1] * truss.net)
    const fb = forces.tieMoment / (sectionModulus(section) * truss.net)
    const pull = values.tension * loadDurationFactor(duration)
    const bent = adjustedBending(values, section, duration, 0)
    return check('tension-bending', 'ratio', ft / pull + fb / bent, 1, 'nds 3.9.1')
  })
  return [combined.reduce((a, c) => (c.ratio > a.ratio ? c : a))]
}
