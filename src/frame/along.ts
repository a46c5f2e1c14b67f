/** Timbers that are pushed or pulled along their length, bent or not. N, mm, MPa. */
import { adjustedBending, netSection, sectionModulus } from './beam'
import { type Check, type CheckInputs, check } from './check'
import { adjustedCompression, MAX_SLENDERNESS } from './column'
import { compressionBending } from './compression-bending'
import { type Duration, eulerStress, loadDurationFactor } from './factors'
import type { DesignValues, Section } from './values'

export interface Pushed {
  /** N, above zero. */
  readonly push: number
  /** About the strong axis, N mm. */
  readonly moment: number
  /** Between points held in the plane of bending, mm. */
  readonly length: number
  /** Between points held sideways, mm; 0 where purlins or planks hold it. */
  readonly sideways: number
  readonly duration: Duration
  readonly wet: boolean
  readonly mortise: number
}

/** What is found for a pushed timber before it is put into words: MPa, and the ratio that decides. */
function pushedStress(p: Pushed, section: Section, values: DesignValues) {
  const [b, d] = section
  const inPlane = p.length / d
  const slenderness = Math.max(inPlane, p.sideways / b)
  const fc = p.push / (b * d)
  if (slenderness > MAX_SLENDERNESS)
    return { slenderness, fc, along: 0, fb: 0, bent: 0, euler: 0, ratio: slenderness / MAX_SLENDERNESS }
  const along = adjustedCompression(values, slenderness, p.duration, p.wet)
  if (p.moment === 0) return { slenderness, fc, along, fb: 0, bent: 0, euler: 0, ratio: fc / along }
  const fb = p.moment / sectionModulus(netSection(section, p.mortise))
  const bent = adjustedBending(values, section, p.duration, p.sideways)
  const euler = eulerStress(values.elasticityMin, inPlane)
  return { slenderness, fc, along, fb, bent, euler, ratio: compressionBending(fc, along, fb, bent, euler) }
}

/** The ratio of `checkPushed` alone, where hundreds of sections are tried. Source: nds, 3.7 and 3.9.2. */
export function pushedRatio(p: Pushed, section: Section, values: DesignValues): number {
  return pushedStress(p, section, values).ratio
}

/**
 * Compression (nds, 3.7), with bending on the net section where there is any (nds, 3.9.2), and slenderness (nds, 3.7.1.4).
 * Source: nds, 3.7 and 3.9.2.
 */
export function checkPushed(p: Pushed, section: Section, values: DesignValues): Check {
  const { slenderness, fc, along, fb, bent, euler, ratio } = pushedStress(p, section, values)
  if (slenderness > MAX_SLENDERNESS) return check('slenderness', 'ratio', slenderness, MAX_SLENDERNESS, 'nds 3.7.1.4')
  const pushed = (): CheckInputs => ({
    P: ['force', p.push],
    'b × d': ['section', section],
    CD: ['ratio', loadDurationFactor(p.duration)],
    Fc: ['stress', values.compression],
    'le/d': ['ratio', slenderness]
  })
  if (p.moment === 0) return check('compression', 'stress', fc, along, 'nds 3.7', pushed)
  return check('compression-bending', 'ratio', ratio, 1, 'nds 3.9.2', () => ({
    ...pushed(),
    M: ['moment', p.moment],
    'mortise, out of b': ['gap', p.mortise],
    Fb: ['stress', values.bending],
    fc: ['stress', fc],
    'F′c': ['stress', along],
    fb: ['stress', fb],
    'F′b': ['stress', bent],
    FcE: ['stress', euler]
  }))
}

export interface Pulled {
  /** N, above zero. */
  readonly pull: number
  /** About the strong axis, N mm. */
  readonly moment: number
  readonly duration: Duration
  readonly mortise: number
}

/** The same of a pulled timber. */
function pulledStress({ pull, moment, duration, mortise }: Pulled, section: Section, values: DesignValues) {
  const net = netSection(section, mortise)
  const ft = pull / (net[0] * net[1])
  const allowed = values.tension * loadDurationFactor(duration)
  if (moment === 0) return { net, ft, allowed, fb: 0, bent: 0, ratio: ft / allowed }
  const fb = moment / sectionModulus(net)
  const bent = adjustedBending(values, section, duration, 0)
  return { net, ft, allowed, fb, bent, ratio: ft / allowed + fb / bent }
}

/** The ratio of `checkPulled` alone. Source: nds, 3.8 and 3.9.1. */
export function pulledRatio(p: Pulled, section: Section, values: DesignValues): number {
  return pulledStress(p, section, values).ratio
}

/** Tension on the net section (nds, 3.8), with bending where there is any (nds, 3.9.1). Source: nds, 3.8 and 3.9.1. */
export function checkPulled(p: Pulled, section: Section, values: DesignValues): Check {
  const { pull, moment, duration } = p
  const { net, ft, allowed, fb, bent, ratio } = pulledStress(p, section, values)
  const pulled = (): CheckInputs => ({
    P: ['force', pull],
    'net b × d': ['section', net],
    CD: ['ratio', loadDurationFactor(duration)],
    Ft: ['stress', values.tension]
  })
  if (moment === 0) return check('tension', 'stress', ft, allowed, 'nds 3.8', pulled)
  return check('tension-bending', 'ratio', ratio, 1, 'nds 3.9.1', () => ({
    ...pulled(),
    M: ['moment', moment],
    Fb: ['stress', values.bending],
    ft: ['stress', ft],
    'F′t': ['stress', allowed],
    fb: ['stress', fb],
    'F*b': ['stress', bent]
  }))
}
