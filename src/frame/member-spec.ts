/** A single timber or truss to play with: what it is asked, the ranges that are permitted, and what is refused. N, mm, Pa. */
import type { Variable } from './cases'
import type { LoadedPoint } from './loaded-beam'
import type { OneSided } from './loads'
import type { TrussForm } from './truss-forces'

export type BeamKind = 'beam' | 'joist' | 'purlin' | 'ridge'
export type MemberKind = BeamKind | 'rafter' | 'post' | TrussForm
export const isTruss = (kind: MemberKind): kind is TrussForm =>
  kind === 'king' || kind === 'king-struts' || kind === 'queen'

export interface MemberSpec {
  /** Clear span; of a rafter its run on plan; of a truss between its feet; of a post what it carries along the beam, mm. */
  readonly span: number
  /** Width that it carries on plan, mm: the spacing of joists, purlins, rafters or bents. */
  readonly width: number
  /** Rise over run; 0 under a floor. */
  readonly slope: number
  /** Of a post between points held sideways, mm. */
  readonly height: number
  /** What lies for good, Pa: on the roof's slope, and on the floor. */
  readonly dead: number
  readonly floorDead: number
  /** Variable loads on plan, Pa; a truss bears the floor's on its tie. */
  readonly roof: readonly Variable[]
  readonly floor: readonly Variable[]
  /** Snow on one side, Pa on plan; for rafters and trusses. */
  readonly oneSided: OneSided | null
  /** Loads at points of a beam, or on top of a post. */
  readonly points: readonly LoadedPoint[]
  /** One span, or two equal ones in one stick; for beams. */
  readonly spans: 1 | 2
  /** Between points where a beam is held sideways, mm; 0 where planks or joists hold it. */
  readonly unsupported: number
  /** From a post's axis to where its load sits, mm. */
  readonly seat: number
  /** Distance of queen posts from the feet over the span. */
  readonly queenAt: number
  /** False where rafters lean on each other. */
  readonly ridgeBeam: boolean
  readonly eave: number
  readonly ends: number
  readonly mortise: number
  readonly tieLeastDepth: number
  readonly liveRatio: number
  readonly totalRatio: number
  readonly floorLiveRatio: number
  readonly floorTotalRatio: number
  readonly wet: boolean
  readonly unseasoned: boolean
  readonly density: number
}

export interface Range {
  readonly least: number
  readonly most: number
}

/** Permitted ranges, from `content/limits.json`; mm, rise over run, Pa, N, share. */
export type RangeId = 'span' | 'width' | 'height' | 'slope' | 'load' | 'point' | 'seat' | 'queenAt'
export type MemberRanges = Readonly<Record<RangeId, Range>>

export type Refusal =
  | {
      readonly ok: false
      readonly why: 'range'
      /** The field of the spec that is out of range. */
      readonly field: keyof MemberSpec
      readonly value: number
      readonly permitted: Range
    }
  | { readonly ok: false; readonly why: 'no-sections' | 'no-values' }

/** The first field that is out of its range, or null. A number that is none (NaN) is out of every range. */
export function outOfRange(kind: MemberKind, spec: MemberSpec, ranges: MemberRanges): Refusal | null {
  const sloped = isTruss(kind) || kind === 'rafter'
  const within: [keyof MemberSpec, readonly number[], Range][] = [
    ['span', [spec.span], ranges.span],
    ['width', [spec.width], ranges.width],
    ['slope', [spec.slope], { least: sloped ? ranges.slope.least : 0, most: ranges.slope.most }],
    ['dead', [spec.dead], ranges.load],
    ['floorDead', [spec.floorDead], ranges.load],
    ['roof', spec.roof.map((v) => v.load), ranges.load],
    ['floor', spec.floor.map((v) => v.load), ranges.load],
    ['oneSided', spec.oneSided ? [spec.oneSided.leeward, spec.oneSided.windward] : [], ranges.load],
    ['points', spec.points.flatMap((p) => [p.dead, p.roof, p.floor]), ranges.point],
    ['points', kind === 'post' ? [] : spec.points.map((p) => p.at), { least: 0, most: spec.span }],
    ['unsupported', [spec.unsupported], { least: 0, most: spec.span }]
  ]
  if (kind === 'post') within.push(['height', [spec.height], ranges.height], ['seat', [spec.seat], ranges.seat])
  if (kind === 'queen') within.push(['queenAt', [spec.queenAt], ranges.queenAt])
  for (const [field, values, permitted] of within) {
    const value = values.find((v) => !(v >= permitted.least && v <= permitted.most))
    if (value !== undefined) return { ok: false, why: 'range', field, value, permitted }
  }
  return null
}
