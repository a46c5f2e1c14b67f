/** A beam with an even load and loads at points, over one span or two equal ones. N, mm, MPa. */
import { momentOfInertia, netSection, sectionModulus } from './beam'
import type { Combination } from './cases'
import { type Check, type CheckInputs, check, worse } from './check'
import {
  beamStabilityFactor,
  creepFactor,
  type Duration,
  effectiveLengthPoints,
  effectiveLengthUniform,
  loadDurationFactor,
  sizeFactor
} from './factors'
import { largestDeflection, largestMoment, largestShear, reactions, type SpanLoad } from './span'
import type { DesignValues, Section } from './values'

/** Largest slenderness ratio R_B of a beam. Source: nds, 3.3.3.7. */
const MAX_BEAM_SLENDERNESS = 50

/** A load at a point: what hangs there for good, from the roof and from the floor above, N. */
export interface LoadedPoint {
  readonly at: number
  readonly dead: number
  readonly roof: number
  readonly floor: number
}

export interface LoadedBeam {
  readonly span: number
  /** 1, or 2 equal spans in one stick. */
  readonly spans: 1 | 2
  /** Permanent line load with the own weight, N/mm. */
  readonly dead: number
  readonly combinations: readonly Combination[]
  /** Point loads on a span; of two spans, on each of them alike. */
  readonly points: readonly LoadedPoint[]
  /** Distance between points held sideways, mm; 0 where planks or joists hold the top edge. */
  readonly unsupported: number
  readonly liveRatio: number
  readonly totalRatio: number
  readonly unseasonedOrWet: boolean
  readonly mortise: number
}

/** Hogging moment over the middle support of two equal spans loaded alike, N mm. Source: derived (three moments). */
export function middleMoment(
  span: number,
  even: number,
  points: readonly { readonly at: number; readonly load: number }[]
) {
  // Each span's loads turn its end at the middle support; the moment there turns them back.
  return points.reduce(
    (sum, { at, load }) => sum + (load * at * (span * span - at * at)) / (2 * span * span),
    (even * span * span) / 8
  )
}

/** The loads of a combination as a span; live load alone where `live`, all of it otherwise. */
function spanOf(beam: LoadedBeam, c: Combination, part: 'all' | 'live' | 'dead'): SpanLoad {
  const dead = part === 'live' ? 0 : 1
  const share = part === 'dead' ? 0 : c.share
  const even = dead * beam.dead + share * ((c.roof?.load ?? 0) + (c.floor?.load ?? 0))
  const points = beam.points.map((p) => ({
    at: p.at,
    load: dead * p.dead + share * ((c.roof ? p.roof : 0) + (c.floor ? p.floor : 0))
  }))
  return { span: beam.span, even, points, held: beam.spans === 2 ? middleMoment(beam.span, even, points) : 0 }
}

/**
 * Of two spans, live load on one of them alone bends that one more: the middle holds it half as much.
 * Source: derived (three moments). What lies for good is on both.
 */
function patterned(beam: LoadedBeam, c: Combination, withDead: boolean): SpanLoad {
  const live = spanOf(beam, c, 'live')
  if (!withDead) return { ...live, held: live.held / 2 }
  const all = spanOf(beam, c, 'all')
  return { ...all, held: all.held - live.held / 2 }
}

/** Effective length for the loads that it bears. Source: nds, Table 3.3.3. */
function effectiveLength(beam: LoadedBeam, depth: number): number {
  if (beam.points.length === 0) return effectiveLengthUniform(beam.unsupported, depth)
  const central = beam.points.length === 1 && Math.abs((beam.points[0]?.at ?? 0) - beam.span / 2) < 1
  return effectiveLengthPoints(beam.unsupported, depth, central)
}

/** Adjusted bending stress. Source: nds, 3.3. */
function bendingStress(beam: LoadedBeam, [b, d]: Section, values: DesignValues, duration: Duration): number {
  const star = values.bending * loadDurationFactor(duration) * sizeFactor(d)
  if (beam.unsupported <= 0) return star
  return star * beamStabilityFactor(effectiveLength(beam, d), b, d, star, values.elasticityMin)
}

/**
 * Checks of a beam: bending on the net section (nds, 3.3), shear with all the load (nds, 3.4), deflection with creep on what
 * lies for good (nds, 3.5.2). The worst combination governs each; a beam too slender to stand upright fails by that alone
 * (nds, 3.3.3.7). Source: nds, 3.3 to 3.5.
 */
export function checkLoadedBeam(beam: LoadedBeam, section: Section, values: DesignValues): Check[] {
  const [b, d] = section
  const slender = beam.unsupported > 0 && d > b ? Math.sqrt((effectiveLength(beam, d) * d) / (b * b)) : 0
  if (slender > MAX_BEAM_SLENDERNESS)
    return [check('slenderness', 'ratio', slender, MAX_BEAM_SLENDERNESS, 'nds 3.3.3.7')]
  const area = b * d
  const inertia = momentOfInertia(section)
  const modulus = sectionModulus(netSection(section, beam.mortise))
  const sag = (load: SpanLoad) => largestDeflection(load, values.elasticity, inertia)
  const bending: Check[] = []
  const shear: Check[] = []
  let live = 0
  for (const c of beam.combinations) {
    const whole = spanOf(beam, c, 'all')
    const shapes = beam.spans === 2 ? [whole, patterned(beam, c, true)] : [whole]
    const moment = Math.max(...shapes.map(largestMoment))
    const force = Math.max(...shapes.map(largestShear))
    const allowed = bendingStress(beam, section, values, c.duration)
    bending.push(
      check('bending', 'stress', moment / modulus, allowed, 'nds 3.3', () => ({
        ...laden(whole),
        M: ['moment', moment],
        'net b × d': ['section', netSection(section, beam.mortise)],
        Fb: ['stress', values.bending],
        CD: ['ratio', loadDurationFactor(c.duration)],
        CF: ['ratio', sizeFactor(d)]
      }))
    )
    const along = values.shear * loadDurationFactor(c.duration)
    shear.push(
      check('shear', 'stress', (1.5 * force) / area, along, 'nds 3.4', () => ({
        ...laden(whole),
        V: ['force', force],
        'b × d': ['section', section],
        Fv: ['stress', values.shear],
        CD: ['ratio', loadDurationFactor(c.duration)]
      }))
    )
    if (c.roof || c.floor) live = Math.max(live, sag(patternedOrWhole(beam, c)))
  }
  const dead = sag(spanOf(beam, beam.combinations[0] as Combination, 'dead'))
  const creep = creepFactor(beam.unseasonedOrWet)
  const total = creep * dead + live
  const stiff = { L: ['span', beam.span], E: ['stress', values.elasticity], 'b × d': ['section', section] } as const
  return [
    worse(bending as [Check, ...Check[]]),
    worse(shear as [Check, ...Check[]]),
    check('deflection-live', 'gap', live, beam.span / beam.liveRatio, 'ibc Table 1604.3', () => ({
      ...stiff,
      'code’s ratio': ['count', beam.liveRatio]
    })),
    check('deflection-total', 'gap', total, beam.span / beam.totalRatio, 'nds 3.5.2', () => ({
      ...stiff,
      'permanent part': ['gap', dead],
      'creep factor': ['ratio', creep],
      'live part': ['gap', live],
      'code’s ratio': ['count', beam.totalRatio]
    }))
  ]
}

/** Its span, its even load and the loads at points, as they stand in a check. */
function laden({ span, even, points }: SpanLoad): CheckInputs {
  const each = points.map((p, i) => [`P${i + 1}`, ['force', p.load]] as const)
  const where = points.map((p, i) => [`P${i + 1} from the end`, ['span', p.at]] as const)
  return { L: ['span', span], w: ['lineLoad', even], ...Object.fromEntries(each.flatMap((e, i) => [e, where[i] ?? e])) }
}

const patternedOrWhole = (beam: LoadedBeam, c: Combination): SpanLoad =>
  beam.spans === 2 ? patterned(beam, c, false) : spanOf(beam, c, 'live')

/** Greatest push on an end support and on the middle one (0 of a single span), N. Source: derived (statics). */
export function supportForces(beam: LoadedBeam): { readonly end: number; readonly middle: number } {
  const ends = beam.combinations.flatMap((c) => {
    const whole = spanOf(beam, c, 'all')
    return (beam.spans === 2 ? [whole, patterned(beam, c, true)] : [whole]).map(reactions)
  })
  const outer = ends.map(([left, right]) => (beam.spans === 2 ? left : Math.max(left, right)))
  const middle =
    beam.spans === 2 ? Math.max(...beam.combinations.map((c) => 2 * reactions(spanOf(beam, c, 'all'))[1])) : 0
  return { end: Math.max(...outer), middle }
}
