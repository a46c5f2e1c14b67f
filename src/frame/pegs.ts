/**
 * One wooden peg that holds a tenon against a pull. The peg's own strengths are recalled, not read: what comes out is an
 * indication. N, mm, MPa.
 */
import type { Origin } from '../data/quantity'
import type { DistanceRow, JointRules, PegStrength, Wood } from '../data/reference'
import { bearingAcrossGrain, bearingAlongGrain, doubleShear, type YieldMode, type YieldModeId } from './dowel'
import { type Duration, loadDurationFactor } from './factors'
import { refuse } from './joint-check'
import { hankinson } from './seat'

export interface Peg {
  readonly diameter: number
  readonly gravity: number
}

/** The peg in its joint: lengths in mm, angle of the pull to each timber's grain in radians. */
export interface PegPlace {
  readonly tenon: number
  readonly wall: number
  readonly tenonGravity: number
  readonly mortisedGravity: number
  readonly tenonAngle: number
  readonly mortisedAngle: number
}

export type PegModeId = YieldModeId | 'V'
export interface PegCapacity {
  /** Adjusted capacity of one peg, N. */
  readonly load: number
  readonly mode: PegModeId
  readonly clause: string
  /** Every mode before adjustment, N. */
  readonly modes: readonly YieldMode<PegModeId>[]
  /** True where peg bending governs, which is the constant in most doubt. */
  readonly bendingGoverns: boolean
  readonly origin: Origin
}

/** A strength of a peg, MPa, from its specific gravity and the timber's. Source: tfec-1, peg strengths (recalled). */
export function pegStrength(rule: PegStrength, peg: number, timber: number): number {
  refuse({ 'specific gravity of a peg': peg, 'specific gravity of a timber': timber })
  return rule.stress * peg ** rule.pegPower * timber ** rule.timberPower
}

/**
 * Bearing between a peg and a timber at an angle to the timber's grain, MPa: the lesser of what the peg bears and of what the
 * timber would bear under a steel dowel. Source: tfec-1, peg bearing (recalled), and nds, 12.3.3 and 12.3.4.
 */
export function pegBearing(rules: JointRules, peg: Peg, timber: number, angle: number): number {
  const { bearingAlong, bearingAcross } = rules.strength
  const along = Math.min(pegStrength(bearingAlong, peg.gravity, timber), bearingAlongGrain(timber))
  const across = Math.min(pegStrength(bearingAcross, peg.gravity, timber), bearingAcrossGrain(timber, peg.diameter))
  return hankinson(along, across, angle)
}

/**
 * What one peg carries: the least of the yield modes in double shear and of the peg sheared through at both faces,
 * mode V, pi D^2 F_vy / (2 R_d); times C_D and, in wet service, C_M. Source: tfec-1, mode V (recalled), and nds, 12.3.1, 11.3.
 * @throws RangeError for a peg lighter than the rules let in, or outside the diameters that they cover
 */
export function pegCapacity(
  rules: JointRules,
  peg: Peg,
  place: PegPlace,
  duration: Duration,
  wet: boolean
): PegCapacity {
  const sizes = rules.peg.diameters
  if (!(peg.gravity >= rules.peg.gravityLeast)) throw new RangeError('the peg is of too light a wood')
  if (!(peg.diameter >= Math.min(...sizes) - 1e-6 && peg.diameter <= Math.max(...sizes) + 1e-6))
    throw new RangeError('the peg is thinner or thicker than the rules cover')
  // The weaker of the two timbers shears the peg.
  const softer = Math.min(place.tenonGravity, place.mortisedGravity)
  const shear = pegStrength(rules.strength.shear, peg.gravity, softer)
  const modes: readonly [YieldMode<PegModeId>, ...YieldMode<PegModeId>[]] = [
    { id: 'V', load: (Math.PI * peg.diameter ** 2 * shear) / (2 * rules.strength.shearDivisor) },
    ...doubleShear({
      diameter: peg.diameter,
      bending: pegStrength(rules.strength.bending, peg.gravity, softer),
      main: place.tenon,
      mainBearing: pegBearing(rules, peg, place.tenonGravity, place.tenonAngle),
      side: place.wall,
      sideBearing: pegBearing(rules, peg, place.mortisedGravity, place.mortisedAngle),
      angle: Math.max(place.tenonAngle, place.mortisedAngle)
    })
  ]
  const least = modes.reduce((a, m) => (m.load < a.load ? m : a))
  return {
    load: least.load * loadDurationFactor(duration) * (wet ? rules.service.wet : 1),
    mode: least.id,
    clause: least.id === 'V' ? 'tfec-1 mode V' : `nds 12.3.1 mode ${least.id}`,
    modes,
    bendingGoverns: least.id === 'IIIs' || least.id === 'IV',
    origin: { mark: 'memory', sources: [...rules.strength.origin.sources, { key: 'nds', where: '12.3.1' }] }
  }
}

/**
 * Peg distances of a wood, in diameters: its own row, or, where none was tested, the largest of each distance in any row of its
 * kind. Source: schmidt-daniels-1999 (recalled), schmidt-scholl (Douglas-fir, read); the rest derived.
 */
export function distancesFor(rules: JointRules, wood: string, kind: Wood['kind']): Omit<DistanceRow, 'woods'> {
  const own = rules.distances.find((r) => r.woods.includes(wood))
  if (own) return own
  const rows = rules.distances.filter((r) => r.kind === kind)
  const most = (of: 'edge' | 'end' | 'spacing') => Math.max(...rows.map((r) => r[of]))
  const keys = new Set(rows.flatMap((r) => r.origin.sources.map((s) => s.key)))
  return {
    kind,
    edge: most('edge'),
    end: most('end'),
    spacing: most('spacing'),
    origin: { mark: 'derived', sources: [...keys].map((key) => ({ key })) }
  }
}
