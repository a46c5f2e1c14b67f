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

/**
 * Compression (nds, 3.7), with bending on the net section where there is any (nds, 3.9.2), and slenderness (nds, 3.7.1.4).
 * Source: nds, 3.7 and 3.9.2.
 */
export function checkPushed(p: Pushed, section: Section, values: DesignValues): Check {
  const [b, d] = section
  const inPlane = p.length / d
  const slenderness = Math.max(inPlane, p.sideways / b)
  if (slenderness > MAX_SLENDERNESS) return check('slenderness', 'ratio', slenderness, MAX_SLENDERNESS, 'nds 3.7.1.4')
  const fc = p.push / (b * d)
  const along = adjustedCompression(values, slenderness, p.duration, p.wet)
  const pushed = (): CheckInputs => ({
    P: ['force', p.push],
    'b × d': ['section', section],
    CD: ['ratio', loadDurationFactor(p.duration)],
    Fc: ['stress', values.compression],
    'le/d': ['ratio', slenderness]
  })
  if (p.moment === 0) return check('compression', 'stress', fc, along, 'nds 3.7', pushed)
  const fb = p.moment / sectionModulus(netSection(section, p.mortise))
  const bent = adjustedBending(values, section, p.duration, p.sideways)
  const euler = eulerStress(values.elasticityMin, inPlane)
  const sum = compressionBending(fc, along, fb, bent, euler)
  return check('compression-bending', 'ratio', sum, 1, 'nds 3.9.2', () => ({
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

/** Tension on the net section (nds, 3.8), with bending where there is any (nds, 3.9.1). Source: nds, 3.8 and 3.9.1. */
export function checkPulled(
  pull: number,
  moment: number,
  duration: Duration,
  mortise: number,
  section: Section,
  values: DesignValues
): Check {
  const net = netSection(section, mortise)
  const ft = pull / (net[0] * net[1])
  const allowed = values.tension * loadDurationFactor(duration)
  const pulled = (): CheckInputs => ({
    P: ['force', pull],
    'net b × d': ['section', net],
    CD: ['ratio', loadDurationFactor(duration)],
    Ft: ['stress', values.tension]
  })
  if (moment === 0) return check('tension', 'stress', ft, allowed, 'nds 3.8', pulled)
  const fb = moment / sectionModulus(net)
  const bent = adjustedBending(values, section, duration, 0)
  return check('tension-bending', 'ratio', ft / allowed + fb / bent, 1, 'nds 3.9.1', () => ({
    ...pulled(),
    M: ['moment', moment],
    Fb: ['stress', values.bending],
    ft: ['stress', ft],
    'F′t': ['stress', allowed],
    fb: ['stress', fb],
    'F*b': ['stress', bent]
  }))
}
