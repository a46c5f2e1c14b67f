/** A job of the size ladder in one wood: its loads, its spec, the sections that there are, its timbers. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Reference, Wood } from '../../data/reference'
import type { ShopSheetContent } from '../../data/shop-schema'
import { FOOT } from '../../data/units'
import { memberParts, type SizedMember, type Values } from '../../frame/member-parts'
import type { MemberSpec } from '../../frame/member-spec'
import type { Section } from '../../frame/values'
import { limit } from '../facts'
import { availableOf, canBeSawn, valuesOf } from '../frame-for'
import { ANSWERED, computed, limitQuantity, listed, quantity, sentence } from '../say'
import { snowOnOneSide, snowOnRoof, usualSpec } from './member-for'
import { sectionsOf } from './series'
import type { LadderJob } from './types'
import { isFloor, isSnowed } from './uses'

const pressureOf = (reference: Reference, of: 'dead' | 'live', id: string) => {
  const found = reference.loads[of].get(id)
  if (!found) throw new Error(`no ${of} load "${id}" in content/loads.json`)
  return found
}
/** A floor's own weight is one for all uses. */
const deadOf = (job: LadderJob, reference: Reference) =>
  pressureOf(reference, 'dead', isFloor(job.bears) ? 'floor' : job.bears)
const liveOf = (job: LadderJob, reference: Reference) =>
  pressureOf(reference, 'live', isFloor(job.bears) ? job.bears : 'roof')

/** Snow sheds off no roof here: what might stop it is not asked. */
const snowOn = (job: LadderJob) => ({
  ground: job.snow,
  heated: job.lives === 'heated',
  slope: job.slope,
  sheds: false
})

/** The job as a spec in one wood. Loads at points are counted as lying for good, which is the careful way. */
export function ladderSpec(job: LadderJob, reference: Reference, wood: Wood): MemberSpec {
  const { kind, span, width, slope, height, bears } = job
  const floor = isFloor(bears)
  const dead = deadOf(job, reference).pressure
  const live = liveOf(job, reference).pressure
  const usual = usualSpec(reference, wood, job.unseasoned, { span, width, slope, height })
  const snow = { load: floor ? job.snow : snowOnRoof(reference, snowOn(job)), duration: 'snow' } as const
  const lies = isSnowed(bears) && snow.load > 0 ? [snow] : []
  const spec: MemberSpec = {
    ...usual,
    // A deck's snow takes turns with its people: as two loads of the floor, of which one acts.
    ...(floor
      ? { floorDead: dead, floor: [{ load: live, duration: 'ten-years' }, ...lies] }
      : { dead, roof: [{ load: live, duration: 'seven-days' }, ...lies] }),
    points: job.points.map(({ at, load }) => ({ at, dead: load, roof: 0, floor: 0 })),
    wet: job.lives === 'weather'
  }
  return { ...spec, oneSided: floor ? null : snowOnOneSide(reference, kind, spec, snowOn(job)) }
}

const roofSnowInputs = (job: LadderJob, reference: Reference) => {
  const { snow } = reference.loads
  return {
    pg: quantity('areaLoad', job.snow, ANSWERED),
    Ce: quantity('ratio', snow.exposureFactor, computed(reference, 'roof-snow')),
    Ct: quantity(
      'ratio',
      job.lives === 'heated' ? snow.thermalHeated : snow.thermalUnheated,
      computed(reference, 'roof-snow')
    )
  }
}

/** What it carries, in words. */
export function loadsSays(job: LadderJob, reference: Reference): Sentence {
  const floor = isFloor(job.bears)
  const dead = deadOf(job, reference)
  const live = liveOf(job, reference)
  const values = {
    dead: quantity('areaLoad', dead.pressure, dead.origin),
    live: quantity('areaLoad', live.pressure, live.origin),
    ground: quantity('areaLoad', job.snow, ANSWERED),
    snow: quantity(
      'areaLoad',
      snowOnRoof(reference, snowOn(job)),
      computed(reference, 'roof-snow', roofSnowInputs(job, reference))
    )
  }
  const snowed =
    job.snow === 0
      ? ' No snow is asked for.'
      : floor
        ? ' Or {ground} of snow, as on the ground.'
        : ' Or {snow} of snow, from {ground} on the ground, none of it taken off for the slope.'
  const uneven = ladderSpec(job, reference, job.wood).oneSided
    ? ' Snow on one side only is tried too, by the code’s rule for gables.'
    : ''
  const text = floor
    ? `It carries {dead} of floor, and {live} of what stands and walks on it.${job.bears === 'deck' ? snowed : ''}`
    : `It carries {dead} of roof, measured up the slope, and {live} of people working on it.${snowed}${uneven}`
  const points = job.points.map(({ at, load }, i) => ({
    words: `{load${i + 1}} at {at${i + 1}}${i === 0 ? ' from one end' : ''}`,
    values: { [`load${i + 1}`]: quantity('force', load, ANSWERED), [`at${i + 1}`]: quantity('span', at, ANSWERED) }
  }))
  const named =
    points.length > 0 ? `${text} And ${listed(points.map((p) => p.words))}, counted as lying there for good.` : text
  const all = Object.assign({}, values, ...points.map((p) => p.values)) as Record<string, Quantity>
  return sentence(named, Object.fromEntries(Object.entries(all).filter(([key]) => named.includes(`{${key}}`))))
}

export interface Tried {
  readonly wood: Wood
  readonly spec: MemberSpec
  /** Sections that this wood can be sawn to, in trying order. */
  readonly series: readonly Section[]
  readonly values: Values
  readonly parts: readonly SizedMember[]
}

/** The job's timbers in one wood; null where no strength is known. A timber of this size is sawn with its heart in the middle. */
export function tryWood(job: LadderJob, reference: Reference, sheet: ShopSheetContent, wood: Wood): Tried | null {
  const available = availableOf(sheet, wood)
  const series = sectionsOf(job.series, sheet).filter((s) => canBeSawn(s, 'boxed', available))
  const values = valuesOf(wood, job.grade, reference)
  if (series.length === 0 || series.every((s) => values(s) === null)) return null
  const spec = ladderSpec(job, reference, wood)
  return { wood, spec, series, values, parts: memberParts(job.kind, spec, series, values) }
}

/** Longest that this wood usually comes, where a stick is longer; else null. mm. */
export function tooLong(tried: Tried, sheet: ShopSheetContent): number | null {
  const { longest } = availableOf(sheet, tried.wood)
  return tried.parts.some((p) => p.length > longest + 0.1 * FOOT) ? longest : null
}

export const liftOf = (mass: number, reference: Reference): 'two' | 'hoist' | 'crane' =>
  mass <= limit(reference, 'two-carry') ? 'two' : mass < limit(reference, 'heavy-stick') ? 'hoist' : 'crane'
export const liftLimit = (reference: Reference, id: 'two-carry' | 'heavy-stick') => limitQuantity(reference, id, 'mass')
