/** The timbers of a simple frame line, sized: a truss or a beam across the span, and its posts. N, mm, MPa, Pa. */
import { GRAVITY } from '../data/units'
import { bearingLength, checkBeam, type UniformBeam } from './beam'
import { largest, type Variable } from './cases'
import { checkPost } from './column'
import { lineLoad, type OneSided } from './loads'
import { type Sized, smallestSection } from './sizing'
import type { PartId, TrussForm } from './truss-forces'
import { piecesOf, sizeTruss, stickLength, type TrussTimbers } from './truss-size'
import type { DesignValues, Section } from './values'

export type Carries = 'truss' | 'beam' | 'floor'

export interface FrameJob {
  readonly carries: Carries
  /** Which truss; of no meaning to beams. */
  readonly form: TrussForm
  /** Queen posts from the feet, over the span. */
  readonly queenAt: number
  readonly span: number
  readonly spacing: number
  /** Rise over run of the roof; 0 under a floor. */
  readonly slope: number
  /** Permanent load on the roof's slope or on the floor, Pa. */
  readonly dead: number
  /** Variable loads on plan, Pa, each acting alone. */
  readonly variable: readonly Variable[]
  /** Snow on one side of a truss, Pa on plan; null where none is asked. */
  readonly oneSided: OneSided | null
  /** null where walls carry. */
  readonly postHeight: number | null
  readonly eave: number
  readonly liveRatio: number
  readonly totalRatio: number
  readonly wet: boolean
  readonly unseasoned: boolean
  /** Breadth that a mortise takes out of a timber, mm. */
  readonly mortise: number
  /** Least depth of a tie, mm, for the joints at its ends and middle. */
  readonly tieLeastDepth: number
  /** What a stick needs beyond its clear length for both its ends, mm. */
  readonly ends: number
  /** Timber with its water, kg/m3. */
  readonly density: number
}

export type MemberId = 'beam' | 'post' | PartId
export interface Member {
  readonly id: MemberId
  /** Length of one stick, mm, and how many there are in a frame line. */
  readonly length: number
  readonly pieces: number
  readonly sized: Sized
  /** Push or pull along it under the heaviest case, N; null for beams. */
  readonly force: number | null
  /** True where that is a pull. */
  readonly pulled: boolean
  /** Bearing that each end needs, mm; null where it does not bear across the grain. */
  readonly bearing: number | null
}

/** Line load of a timber's own weight, N/mm. Source: derived (statics). */
export const ownWeight = ([b, d]: Section, density: number): number => (density * GRAVITY * b * d) / 1e9

/** Line loads on the main timber, permanent and variable, N/mm on plan; the roof's permanent load lies along its slope. */
export function mainLineLoads(job: FrameJob): { readonly dead: number; readonly variable: readonly Variable[] } {
  const slopeFactor = job.carries === 'floor' ? 1 : Math.hypot(1, job.slope)
  return {
    dead: lineLoad(job.dead * slopeFactor, job.spacing),
    variable: job.variable.map((v) => ({ ...v, load: lineLoad(v.load, job.spacing) }))
  }
}

type Values = (section: Section) => DesignValues | null

/** A truss as `sizeTruss` takes it. Line loads, N/mm. */
export function trussTimbers(job: FrameJob, settled: boolean): TrussTimbers {
  const { dead, variable } = mainLineLoads(job)
  const { oneSided } = job
  return {
    ...job,
    shape: { span: job.span, pitch: job.slope, queenAt: job.queenAt },
    dead,
    tieDead: 0,
    roof: variable,
    floor: [],
    oneSided: oneSided && {
      leeward: lineLoad(oneSided.leeward, job.spacing),
      windward: lineLoad(oneSided.windward, job.spacing)
    },
    unseasonedOrWet: job.unseasoned || job.wet,
    floorLiveRatio: job.liveRatio,
    floorTotalRatio: job.totalRatio,
    tieLeastDepth: settled ? 0 : job.tieLeastDepth
  }
}

function trussMembers(job: FrameJob, series: readonly Section[], valuesFor: Values, settled: boolean): Member[] {
  const timbers = trussTimbers(job, settled)
  const ends = { ...timbers.shape, eave: job.eave, ends: job.ends }
  return sizeTruss(timbers, series, valuesFor).map(({ id, sized, push, pull }) => ({
    id,
    length: stickLength(id, job.form, ends),
    pieces: piecesOf(id),
    sized,
    force: sized.section ? Math.max(push, -pull) : null,
    pulled: -pull > push,
    bearing: null
  }))
}

function beamMember(job: FrameJob, series: readonly Section[], valuesFor: Values): Member {
  const { dead, variable } = mainLineLoads(job)
  const total = (s: Section) => dead + ownWeight(s, job.density)
  const beam = (s: Section): UniformBeam => ({
    ...job,
    variable,
    dead: total(s),
    unsupported: 0,
    unseasonedOrWet: job.unseasoned || job.wet
  })
  const sized = smallestSection(series, valuesFor, (s, v) => checkBeam(beam(s), s, v))
  const { section, values } = sized
  const reaction = section ? ((total(section) + largest(variable)) * job.span) / 2 : 0
  const bearing = section && values ? bearingLength(reaction, section[0], values, job.wet) : null
  return { id: 'beam', length: job.span + job.ends, pieces: 1, sized, force: null, pulled: false, bearing }
}

function postMember(job: FrameJob, posts: readonly Section[], valuesFor: Values, main: Section | null): Member {
  const { dead, variable } = mainLineLoads(job)
  // A post under beams may stand between two spans and carry half of each; one under trusses carries half and the eave.
  const width = job.carries === 'truss' ? job.span / 2 + job.eave : job.span
  const own = main ? ownWeight(main, job.density) * job.span : 0
  const height = job.postHeight ?? 0
  const post = {
    height,
    dead: dead * width + own,
    variable: variable.map((v) => ({ ...v, load: v.load * width })),
    wet: job.wet
  }
  const square = posts.filter((s) => s[0] === s[1])
  const wide = square.filter((s) => !main || s[0] >= main[0] - 0.1)
  const sized = smallestSection(wide.length > 0 ? wide : square, valuesFor, (s, v) => checkPost(post, s, v))
  return {
    id: 'post',
    length: height,
    pieces: 2,
    sized,
    force: post.dead + largest(post.variable),
    pulled: false,
    bearing: null
  }
}

/**
 * Every timber of a frame line with the smallest section that passes. Main timbers are tried in `series`, posts in the
 * squares of `posts`, no thinner than what lands on them where such are sawn.
 * @param settled true where the size was given: then every main timber is held to it
 */
export function sizeFrame(
  job: FrameJob,
  series: readonly Section[],
  posts: readonly Section[],
  valuesFor: Values,
  settled = false
): Member[] {
  const members =
    job.carries === 'truss' ? trussMembers(job, series, valuesFor, settled) : [beamMember(job, series, valuesFor)]
  if (job.postHeight === null) return members
  return [...members, postMember(job, posts, valuesFor, members[0]?.sized.section ?? null)]
}
