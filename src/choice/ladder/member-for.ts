/** A single member in one wood, from the reference: what the person does not say is filled with what is usual. SI. */
import type { Reference, Wood } from '../../data/reference'
import { FOOT, INCH, POUND_FORCE, PSF, percent } from '../../data/units'
import { oneSidedSnow, roofSnow, slopeFactor } from '../../frame/loads'
import { isTruss, type MemberKind, type MemberRanges, type MemberSpec } from '../../frame/member-spec'
import { densityAt } from '../../wood/weight'
import { limit } from '../facts'

/** Permitted ranges of a single member, in SI. */
export function memberRanges(reference: Reference): MemberRanges {
  const of = (id: string) => limit(reference, id)
  return {
    span: { least: of('member-span-least') * FOOT, most: of('member-span-most') * FOOT },
    width: { least: of('member-width-least') * FOOT, most: of('member-width-most') * FOOT },
    height: { least: of('member-height-least') * FOOT, most: of('member-height-most') * FOOT },
    slope: { least: of('member-slope-least'), most: of('member-slope-most') },
    load: { least: 0, most: of('member-load-most') * PSF },
    point: { least: 0, most: of('member-point-most') * POUND_FORCE },
    seat: { least: 0, most: of('member-seat-most') * INCH },
    queenAt: { least: of('member-queen-least'), most: of('member-queen-most') }
  }
}

/** Everything of a spec but its loads, as it usually is; what the page asks is laid over it. */
export function usualSpec(
  reference: Reference,
  wood: Wood,
  unseasoned: boolean,
  measures: Pick<MemberSpec, 'span' | 'width' | 'slope' | 'height'>
): MemberSpec {
  const of = (id: string) => limit(reference, id)
  const ratios = (id: string) => reference.loads.deflection.find((d) => d.id === id)
  return {
    ...measures,
    dead: 0,
    floorDead: 0,
    roof: [],
    floor: [],
    oneSided: null,
    points: [],
    spans: 1,
    unsupported: 0,
    seat: 0,
    queenAt: of('queen-usual'),
    ridgeBeam: true,
    eave: of('eave') * FOOT,
    ends: of('end-allowance') * FOOT,
    mortise: of('mortise-width') * INCH,
    tieLeastDepth: of('tie-least-depth') * INCH,
    liveRatio: ratios('roof')?.liveRatio ?? 0,
    totalRatio: ratios('roof')?.totalRatio ?? 0,
    floorLiveRatio: ratios('floor')?.liveRatio ?? 0,
    floorTotalRatio: ratios('floor')?.totalRatio ?? 0,
    wet: false,
    unseasoned,
    density: densityAt(wood.gravityGreen, unseasoned ? wood.greenWhole : percent(of('dry-density-moisture')))
  }
}

export interface SnowOn {
  /** Snow on the ground, Pa. */
  readonly ground: number
  readonly heated: boolean
  /** Rise over run. */
  readonly slope: number
  /** True only where slippery roofing sheds with nothing in the way; otherwise no snow is taken off for slope. */
  readonly sheds: boolean
}

/** Snow on a roof, Pa on plan: as in the brief, less where it sheds. */
export function snowOnRoof(reference: Reference, { ground, heated, slope, sheds }: SnowOn): number {
  const { snow } = reference.loads
  const thermal = heated ? snow.thermalHeated : snow.thermalUnheated
  const flat = roofSnow(ground, snow.flatRoofFactor, snow.exposureFactor, thermal)
  return sheds ? flat * slopeFactor(slope, thermal, true, snow.slope) : flat
}

/** Snow on one side, Pa, for a rafter (its run) or a truss (its span); null for other members and where none is asked. */
export function snowOnOneSide(reference: Reference, kind: MemberKind, spec: MemberSpec, on: SnowOn) {
  if (!isTruss(kind) && kind !== 'rafter') return null
  const run = isTruss(kind) ? spec.span / 2 : spec.span
  const panel = kind === 'king-struts' ? run / 2 : kind === 'queen' ? run - spec.queenAt * spec.span : run
  return oneSidedSnow(on.ground, snowOnRoof(reference, on), on.slope, run, panel, reference.loads.snow.oneSided)
}
