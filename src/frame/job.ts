/** The timbers of a simple frame line, sized: a truss or a beam across the span, and its posts. N, mm, MPa, Pa. */
import { GRAVITY } from '../data/units'
import { bearingLength, checkBeam, type UniformBeam } from './beam'
import { largest, type Variable } from './cases'
import { checkPost } from './column'
import { lineLoad } from './loads'
import { type Sized, smallestSection } from './sizing'
import { checkRafter, checkTie, kingPostForces } from './truss'
import type { PartId } from './truss-forces'
import { piecesOf, sizeTruss, stickLength } from './truss-size'
import type { DesignValues, Section } from './values'

export type Carries = 'truss' | 'beam' | 'floor'

export interface FrameJob {
  readonly carries: Carries
  /** Which truss; a king post without struts where nothing is said. */
  readonly form?: 'king' | 'king-struts'
  readonly span: number
  readonly spacing: number
  /** Rise over run of the roof; 0 under a floor. */
  readonly slope: number
  /** Permanent load on the roof's slope or on the floor, Pa. */
  readonly dead: number
  /** Variable loads on plan, Pa, each acting alone. */
  readonly variable: readonly Variable[]
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

function trussMembers(job: FrameJob, series: readonly Section[], valuesFor: Values, settled: boolean): Member[] {
  const { dead, variable } = mainLineLoads(job)
  if (job.form && job.form !== 'king') return formMembers(job, job.form, series, valuesFor, settled)
  const along = Math.hypot(1, job.slope)
  const truss = (s: Section) => ({
    ...job,
    pitch: job.slope,
    variable,
    dead: dead + ownWeight(s, job.density) * along,
    tieDead: ownWeight(s, job.density),
    unseasonedOrWet: job.unseasoned || job.wet
  })
  const rafter = smallestSection(series, valuesFor, (s, v) => checkRafter(truss(s), s, v))
  // The rafter steps into the tie and the king post is mortised through it, so a tie is never slighter than that needs.
  const least = rafter.section?.[0] ?? 0
  const ties = settled ? series : series.filter((s) => s[0] >= least - 0.1 && s[1] >= job.tieLeastDepth - 0.1)
  const tie = smallestSection(ties, valuesFor, (s, v) => checkTie(truss(s), s, v))
  const forcesOf = (s: Section | null) =>
    s ? kingPostForces(job.span, job.slope, truss(s).dead + largest(variable), truss(s).tieDead) : null
  const rafterLength = (job.span / 2 + job.eave) * along + job.ends / 2
  return [
    {
      id: 'rafter',
      length: rafterLength,
      pieces: 2,
      sized: rafter,
      force: forcesOf(rafter.section)?.rafter ?? null,
      bearing: null
    },
    {
      id: 'tie',
      length: job.span + job.ends,
      pieces: 1,
      sized: tie,
      force: forcesOf(rafter.section)?.tie ?? null,
      bearing: null
    }
  ]
}

/** A truss with struts. Snow lies evenly on it, as on the king post without. */
function formMembers(
  job: FrameJob,
  form: 'king-struts',
  series: readonly Section[],
  valuesFor: Values,
  settled: boolean
): Member[] {
  const { dead, variable } = mainLineLoads(job)
  const shape = { span: job.span, pitch: job.slope, queenAt: 0 }
  const parts = sizeTruss(
    {
      ...job,
      form,
      shape,
      dead,
      tieDead: 0,
      roof: variable,
      floor: [],
      oneSided: null,
      unseasonedOrWet: job.unseasoned || job.wet,
      floorLiveRatio: job.liveRatio,
      floorTotalRatio: job.totalRatio,
      tieLeastDepth: settled ? 0 : job.tieLeastDepth
    },
    series,
    valuesFor
  )
  return parts.map(({ id, sized, push, pull }) => ({
    id,
    length: stickLength(id, form, { ...job, ...shape }),
    pieces: piecesOf(id),
    sized,
    force: sized.section ? Math.max(push, -pull) : null,
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
  return { id: 'beam', length: job.span + job.ends, pieces: 1, sized, force: null, bearing }
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
  return { id: 'post', length: height, pieces: 2, sized, force: post.dead + largest(post.variable), bearing: null }
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
