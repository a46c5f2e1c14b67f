/** The timbers of a simple frame line, sized: a truss or a beam across the span, and its posts. N, mm, MPa, Pa. */
import { GRAVITY } from '../data/units'
import { checkBeam, type UniformBeam } from './beam'
import { checkPost } from './column'
import type { Duration } from './factors'
import { lineLoad } from './loads'
import { type Sized, smallestSection } from './sizing'
import { checkRafter, checkTie } from './truss'
import type { DesignValues, Section } from './values'

export type Carries = 'truss' | 'beam' | 'floor'

export interface FrameJob {
  readonly carries: Carries
  readonly span: number
  readonly spacing: number
  /** Rise over run of the roof; 0 under a floor. */
  readonly slope: number
  /** Permanent load on the roof's slope or on the floor, Pa. */
  readonly dead: number
  /** Variable load on plan, Pa. */
  readonly live: number
  readonly liveDuration: Duration
  /** null where walls carry. */
  readonly postHeight: number | null
  readonly eave: number
  readonly liveRatio: number
  readonly totalRatio: number
  readonly wet: boolean
  readonly unseasoned: boolean
  /** Share of the section left after joinery. */
  readonly net: number
  /** Timber with its water, kg/m3. */
  readonly density: number
}

export type MemberId = 'rafter' | 'tie' | 'beam' | 'post'
export interface Member {
  readonly id: MemberId
  /** Length of one stick, mm, and how many there are in a frame line. */
  readonly length: number
  readonly pieces: number
  readonly sized: Sized
}

/** Line load of a timber's own weight, N/mm. Source: derived (statics). */
const ownWeight = ([b, d]: Section, density: number): number => (density * GRAVITY * b * d) / 1e9

/** Line loads on the main timber, permanent and variable, N/mm on plan; the roof's permanent load lies along its slope. */
export function mainLineLoads(job: FrameJob): { readonly dead: number; readonly live: number } {
  const slopeFactor = job.carries === 'floor' ? 1 : Math.sqrt(1 + job.slope * job.slope)
  return { dead: lineLoad(job.dead * slopeFactor, job.spacing), live: lineLoad(job.live, job.spacing) }
}

/**
 * Every timber of a frame line with the smallest section that passes. Main timbers are tried in `series`, posts in the
 * squares of `posts` no thinner than what lands on them.
 */
export function sizeFrame(
  job: FrameJob,
  series: readonly Section[],
  posts: readonly Section[],
  valuesFor: (section: Section) => DesignValues | null
): Member[] {
  const { dead, live } = mainLineLoads(job)
  const common = {
    span: job.span,
    live,
    liveDuration: job.liveDuration,
    liveRatio: job.liveRatio,
    totalRatio: job.totalRatio,
    unseasonedOrWet: job.unseasoned || job.wet,
    net: job.net
  }
  const members: Member[] = []
  if (job.carries === 'truss') {
    const truss = (s: Section) => ({
      ...common,
      pitch: job.slope,
      dead: dead + ownWeight(s, job.density) * Math.sqrt(1 + job.slope * job.slope),
      tieDead: ownWeight(s, job.density),
      wet: job.wet
    })
    const length = (job.span / 2) * Math.sqrt(1 + job.slope * job.slope)
    members.push({
      id: 'rafter',
      length,
      pieces: 2,
      sized: smallestSection(series, valuesFor, (s, v) => checkRafter(truss(s), s, v))
    })
    members.push({
      id: 'tie',
      length: job.span,
      pieces: 1,
      sized: smallestSection(series, valuesFor, (s, v) => checkTie(truss(s), s, v))
    })
  } else {
    const beam = (s: Section): UniformBeam => ({ ...common, dead: dead + ownWeight(s, job.density), unsupported: 0 })
    members.push({
      id: 'beam',
      length: job.span,
      pieces: 1,
      sized: smallestSection(series, valuesFor, (s, v) => checkBeam(beam(s), s, v))
    })
  }
  if (job.postHeight !== null) {
    const width = job.span / 2 + job.eave
    const main = members[0]?.sized.section
    const own = main ? (ownWeight(main, job.density) * job.span) / 2 : 0
    const post = {
      height: job.postHeight,
      dead: dead * width + own,
      live: live * width,
      liveDuration: job.liveDuration,
      wet: job.wet
    }
    const fit = posts.filter((s) => s[0] === s[1] && (!main || s[0] >= main[0]))
    members.push({
      id: 'post',
      length: job.postHeight,
      pieces: 2,
      sized: smallestSection(fit, valuesFor, (s, v) => checkPost(post, s, v))
    })
  }
  return members
}
