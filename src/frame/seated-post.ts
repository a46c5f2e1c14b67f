/** A post whose load sits off its axis. N, mm, MPa. */
import { adjustedBending } from './beam'
import { type Check, check, worse } from './check'
import { adjustedCompression, MAX_SLENDERNESS } from './column'
import { BUCKLED } from './compression-bending'
import { type Duration, eulerStress, loadDurationFactor } from './factors'
import type { DesignValues, Section } from './values'

export interface SeatedPost {
  /** Between points held sideways, mm, pinned at both ends. */
  readonly height: number
  /** From the post's axis to where the load sits, mm; 0 where it stands in the middle. */
  readonly seat: number
  readonly loads: readonly { readonly load: number; readonly duration: Duration }[]
  readonly wet: boolean
}

/**
 * Compression with the bending of a load that sits off the axis at the head: (fc/F'c)^2 + fc (6 e/d)(1 + 0.234 fc/FcE) /
 * (F'b (1 - fc/FcE)), at most 1 passes. Source: nds, 15.4.1 (eq. 15.4-1 without side loads; recalled).
 * Stresses in one unit; at or past the buckling stress it gives a ratio far above 1.
 * @param offset e over the side of the post that it bends about
 */
export function seatedCompression(fc: number, along: number, offset: number, bent: number, euler: number): number {
  if (fc >= euler) return BUCKLED
  const bending = (6 * offset * fc * (1 + (0.234 * fc) / euler)) / (bent * (1 - fc / euler))
  return Math.min(BUCKLED, (fc / along) ** 2 + bending)
}

/** Slenderness (nds, 3.7.1.4), compression (nds, 3.7), and with the seat's bending (nds, 15.4.1). Source: nds, 3.7 and 15.4.1. */
export function checkSeatedPost(post: SeatedPost, section: Section, values: DesignValues): Check[] {
  const slenderness = post.height / section[0]
  const slender = check('slenderness', 'ratio', slenderness, MAX_SLENDERNESS, 'nds 3.7.1.4', () => ({
    le: ['span', post.height],
    d: ['gap', section[0]]
  }))
  if (slender.ratio > 1) return [slender]
  const area = section[0] * section[1]
  const along = (d: Duration) => adjustedCompression(values, slenderness, d, post.wet)
  const push = post.loads.map(({ load, duration }) =>
    check('compression', 'stress', load / area, along(duration), 'nds 3.7', () => ({
      P: ['force', load],
      'b × d': ['section', section],
      'le/d': ['ratio', slenderness],
      Fc: ['stress', values.compression],
      CD: ['ratio', loadDurationFactor(duration)]
    }))
  )
  const checks = [slender, worse(push as [Check, ...Check[]])]
  if (post.seat === 0) return checks
  const seated = post.loads.map(({ load, duration }) => {
    const bent = adjustedBending(values, section, duration, post.height)
    const euler = eulerStress(values.elasticityMin, post.height / section[1])
    const sum = seatedCompression(load / area, along(duration), post.seat / section[1], bent, euler)
    return check('compression-bending', 'ratio', sum, 1, 'nds 15.4.1')
  })
  return [...checks, worse(seated as [Check, ...Check[]])]
}
