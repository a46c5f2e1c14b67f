/** The timbers of a single member, each with the smallest section that passes and what the next lighter one lacks. N, mm, MPa. */
import { GRAVITY } from '../data/units'
import { bearingLength } from './beam'
import { combinations, type Variable } from './cases'
import { type Check, worst } from './check'
import { checkLoadedBeam, type LoadedBeam, supportForces } from './loaded-beam'
import { lineLoad } from './loads'
import { type BeamKind, isTruss, type MemberKind, type MemberSpec } from './member-spec'
import { checkLoneRafter, type Rafter, rafterThrust } from './rafter'
import { checkSeatedPost } from './seated-post'
import { type Sized, smallestSection } from './sizing'
import type { PartId, TrussForm } from './truss-forces'
import { piecesOf, sizeTruss, stickLength, type TrussTimbers } from './truss-size'
import type { DesignValues, Section } from './values'

export type Values = (section: Section) => DesignValues | null

/** The section tried before the one found, and why it does not do. */
export interface Lighter {
  readonly section: Section
  readonly checks: readonly Check[]
  readonly governing: Check | null
}

export interface SizedMember {
  readonly id: BeamKind | 'post' | PartId
  /** Length of one stick, mm, and how many there are. */
  readonly length: number
  readonly pieces: number
  readonly sized: Sized
  /** null where the lightest section of the series passes, or none does. */
  readonly lighter: Lighter | null
  /** Greatest push (above zero) and greatest pull (below zero) along it, N; 0 where there is none. */
  readonly push: number
  readonly pull: number
  /** Greatest push of an end on its support, and of two spans on the middle one, N; null where it does not lie on supports. */
  readonly ends: { readonly end: number; readonly middle: number } | null
  /** Bearing that an end needs and, of two spans, the middle, mm. */
  readonly bearing: { readonly end: number; readonly middle: number } | null
  /** What leaning rafters thrust outwards, N; 0 on a ridge beam. */
  readonly thrust: number
}

const ownWeight = ([b, d]: Section, density: number): number => (density * GRAVITY * b * d) / 1e9
const lines = (loads: readonly Variable[], width: number): Variable[] =>
  loads.map((v) => ({ ...v, load: lineLoad(v.load, width) }))

type ChecksFor = (section: Section, values: DesignValues) => Check[]

function lighterOf(sized: Sized, series: readonly Section[], valuesFor: Values, checksFor: ChecksFor): Lighter | null {
  const at = sized.section ? series.indexOf(sized.section) : -1
  for (let i = at - 1; i >= 0; i--) {
    const section = series[i] as Section
    const values = valuesFor(section)
    if (!values) continue
    const checks = checksFor(section, values)
    return { section, checks, governing: worst(checks) }
  }
  return null
}

const NOTHING = { push: 0, pull: 0, ends: null, bearing: null, thrust: 0 } as const

function beam(kind: BeamKind, spec: MemberSpec, series: readonly Section[], valuesFor: Values): SizedMember {
  const roof = lines(spec.roof, spec.width)
  const floor = lines(spec.floor, spec.width)
  const dead = lineLoad(spec.dead * Math.hypot(1, spec.slope) + spec.floorDead, spec.width)
  // People notice a floor that gives; where a beam bears one, its limits hold.
  const floored = floor.length > 0
  const loaded = (s: Section): LoadedBeam => ({
    ...spec,
    dead: dead + ownWeight(s, spec.density),
    combinations: combinations(roof, floor),
    liveRatio: floored ? Math.max(spec.floorLiveRatio, spec.liveRatio) : spec.liveRatio,
    totalRatio: floored ? Math.max(spec.floorTotalRatio, spec.totalRatio) : spec.totalRatio,
    unseasonedOrWet: spec.unseasoned || spec.wet
  })
  const checks: ChecksFor = (s, v) => checkLoadedBeam(loaded(s), s, v)
  const sized = smallestSection(series, valuesFor, checks)
  const { section, values } = sized
  const ends = section ? supportForces(loaded(section)) : null
  const bears = (push: number) => (section && values ? bearingLength(push, section[0], values, spec.wet) : 0)
  return {
    ...NOTHING,
    id: kind,
    length: spec.spans * spec.span + spec.ends,
    pieces: 1,
    sized,
    lighter: lighterOf(sized, series, valuesFor, checks),
    ends,
    bearing: ends ? { end: bears(ends.end), middle: bears(ends.middle) } : null
  }
}

function loneRafter(spec: MemberSpec, series: readonly Section[], valuesFor: Values): SizedMember {
  const along = Math.hypot(1, spec.slope)
  const oneSided = spec.oneSided && {
    leeward: lineLoad(spec.oneSided.leeward, spec.width),
    windward: lineLoad(spec.oneSided.windward, spec.width)
  }
  const rafter = (s: Section): Rafter => ({
    ...spec,
    run: spec.span,
    pitch: spec.slope,
    dead: lineLoad(spec.dead * along, spec.width) + ownWeight(s, spec.density) * along,
    roof: lines(spec.roof, spec.width),
    oneSided,
    unseasonedOrWet: spec.unseasoned || spec.wet
  })
  const checks: ChecksFor = (s, v) => checkLoneRafter(rafter(s), s, v)
  const sized = smallestSection(series, valuesFor, checks)
  return {
    ...NOTHING,
    id: 'rafter',
    length: (spec.span + spec.eave) * along + spec.ends / 2,
    pieces: 1,
    sized,
    lighter: lighterOf(sized, series, valuesFor, checks),
    ...(sized.section ? rafterThrust(rafter(sized.section)) : {})
  }
}

function post(spec: MemberSpec, series: readonly Section[], valuesFor: Values): SizedMember {
  const area = (spec.width * spec.span) / 1e6
  const sum = (of: 'dead' | 'roof' | 'floor') => spec.points.reduce((n, p) => n + p[of], 0)
  const dead = (spec.dead * Math.hypot(1, spec.slope) + spec.floorDead) * area + sum('dead')
  const all = (s: Section) =>
    combinations(spec.roof, spec.floor).map((c) => {
      const roof = c.roof ? c.roof.load * area + sum('roof') : 0
      const floor = c.floor ? c.floor.load * area + sum('floor') : 0
      const own = ownWeight(s, spec.density) * spec.height
      return { load: dead + own + c.share * (roof + floor), duration: c.duration }
    })
  const checks: ChecksFor = (s, v) => checkSeatedPost({ ...spec, loads: all(s) }, s, v)
  const square = series.filter((s) => Math.abs(s[1] - s[0]) < 0.1)
  const tried = square.length > 0 ? square : series
  const sized = smallestSection(tried, valuesFor, checks)
  return {
    ...NOTHING,
    id: 'post',
    length: spec.height,
    pieces: 1,
    sized,
    lighter: lighterOf(sized, tried, valuesFor, checks),
    push: sized.section ? Math.max(...all(sized.section).map((l) => l.load)) : 0
  }
}

/** A truss of the spec as `sizeTruss` takes it. Line loads, N/mm. */
export function trussOf(form: TrussForm, spec: MemberSpec): TrussTimbers {
  return {
    ...spec,
    form,
    shape: { span: spec.span, pitch: spec.slope, queenAt: spec.queenAt },
    dead: lineLoad(spec.dead * Math.hypot(1, spec.slope), spec.width),
    tieDead: lineLoad(spec.floorDead, spec.width),
    roof: lines(spec.roof, spec.width),
    floor: lines(spec.floor, spec.width),
    oneSided: spec.oneSided && {
      leeward: lineLoad(spec.oneSided.leeward, spec.width),
      windward: lineLoad(spec.oneSided.windward, spec.width)
    },
    unseasonedOrWet: spec.unseasoned || spec.wet
  }
}

function truss(form: TrussForm, spec: MemberSpec, series: readonly Section[], valuesFor: Values): SizedMember[] {
  const parts = sizeTruss(trussOf(form, spec), series, valuesFor)
  return parts.map(({ id, sized, checksFor, series: tried, push, pull }) => ({
    ...NOTHING,
    id,
    length: stickLength(id, form, { ...spec, pitch: spec.slope }),
    pieces: piecesOf(id),
    sized,
    lighter: lighterOf(sized, tried, valuesFor, checksFor),
    push,
    pull
  }))
}

/** Size every timber of a member; the spec is taken as it is. Source: nds, 3.3 to 3.9; derived (statics). */
export function memberParts(
  kind: MemberKind,
  spec: MemberSpec,
  series: readonly Section[],
  valuesFor: Values
): SizedMember[] {
  if (isTruss(kind)) return truss(kind, spec, series, valuesFor)
  if (kind === 'rafter') return [loneRafter(spec, series, valuesFor)]
  if (kind === 'post') return [post(spec, series, valuesFor)]
  return [beam(kind, spec, series, valuesFor)]
}
