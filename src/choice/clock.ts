/**
 * The drying clock: a timber's moisture from felling to years after the raising, through the stages of a job, with how
 * much of its shrinkage is still to come at each.
 */
import type { Place, Reference, Wood } from '../data/reference'
import { percent } from '../data/units'
import type { Section } from '../frame/values'
import { type Course, dryingCourse, onDay, type Profile, type Stage } from '../wood/drying'
import { type Exposure, type ServiceMoisture, serviceMoisture } from '../wood/service'
import { limit } from './facts'
import type { Seasoning } from './types'
import { dryingWood, greenOf } from './yard'

export interface ClockJob {
  readonly wood: Wood
  readonly section: Section
  readonly place: Place
  /** Where it will live. */
  readonly exposure: Exposure
  readonly seasoning: Seasoning
  /** Day of the year on which it is felled, 0 for the first of January. */
  readonly felledDay: number
  /** Weeks in the yard; air-dried only. */
  readonly yardWeeks: number
  /** Weeks in the kiln; kiln-dried only. */
  readonly kilnWeeks: number
  /** Mean moisture out of the kiln or the vacuum, fraction. */
  readonly dried: number
  /** Weeks under cover from the saw, yard or kiln until it is raised: cutting, and lying cut. */
  readonly shopWeeks: number
  readonly heating: Heating
}
export const HEATINGS = ['at-once', 'first-winter', 'next-year'] as const
export type Heating = (typeof HEATINGS)[number]

export const MOMENTS = ['felled', 'dried', 'raised', 'enclosed', 'heated', 'settled'] as const
export type Moment = (typeof MOMENTS)[number]

export interface Milestone {
  readonly id: Moment
  /** Days from felling. */
  readonly day: number
  /** Month of the year, 1 to 12. */
  readonly month: number
  readonly mean: number
  readonly low: number
  readonly high: number
  readonly shell: number
  readonly core: number
  /** Part of the shrinkage from green to the mean of service that is still to come, 0 to 1. */
  readonly toCome: number
  /** Across the thinner side, face to middle. */
  readonly profile: Profile
}

export interface Clock {
  /** Month of felling, 1 to 12. */
  readonly felledMonth: number
  readonly fibreSaturation: number
  /** Mean moisture in service. */
  readonly service: number
  /** Every fortnight from felling: days, and moisture as fractions. */
  readonly days: readonly number[]
  readonly mean: readonly number[]
  /** The mean, if it dries as the quickest and as the slowest of the published boards of this wood. */
  readonly low: readonly number[]
  readonly high: readonly number[]
  readonly shell: readonly number[]
  readonly core: readonly number[]
  /** What the air asks for. */
  readonly air: readonly number[]
  readonly milestones: readonly Milestone[]
  /** Days from the raising until half, and nine tenths, of what was then to come is made; null where it takes longer than shown. */
  readonly half: number | null
  readonly most: number | null
  /** The day, from the raising on, when the shell has shrunk furthest ahead of the core, and both their moistures. */
  readonly steepest: { readonly day: number; readonly shell: number; readonly core: number }
}

const YEAR = 365.25
const WEEK = 7
const FORTNIGHT = 14

/** Month of the year, 1 to 12, of a day counted from the first of some January. */
export const monthOf = (day: number): number => Math.floor(((((day % YEAR) + YEAR) % YEAR) / YEAR) * 12) + 1

/** Moisture in service as the rest of the engine takes it. */
export function serviceOf(place: Place, exposure: Exposure, reference: Reference): ServiceMoisture {
  return serviceMoisture(place, exposure === 'ground' ? 'weather' : exposure, reference.room, {
    weatherAdds: percent(limit(reference, 'weather-adds')),
    weatherWettest: percent(limit(reference, 'weather-wettest'))
  })
}

interface Timed {
  readonly stages: readonly Stage[]
  /** Which stage ends at which moment. */
  readonly moments: readonly { readonly id: Moment; readonly afterStage: number }[]
  readonly start: number
}

/** Days from the enclosing to the first heating. */
function waitsForHeat(heating: Heating, enclosed: number, { drying }: Reference): number {
  if (heating === 'at-once') return 0
  const autumn = ((drying.stages.heatingMonth - 1) * YEAR) / 12
  const wait = (((autumn - enclosed) % YEAR) + YEAR) % YEAR
  // Enclosed in winter: the heating goes on then.
  const soon = wait > YEAR / 2 ? 0 : wait
  return heating === 'next-year' ? soon + YEAR : soon
}

/** A kiln's schedule as stages, paced so that the mean comes down to `dried` in the weeks that the shop gives it. */
function kilnStages(job: ClockJob, wood: ReturnType<typeof dryingWood>, reference: Reference): Stage[] {
  const steps = reference.drying.kiln[job.wood.traits.hardToDry.level] ?? []
  const long = 20 * YEAR
  const stages = steps.map(
    (step): Stage => ({
      air: step,
      days: long,
      untilMean: Math.max(step.above, job.dried),
      surface: reference.drying.open
    })
  )
  const course = dryingCourse({
    wood,
    breadth: job.section[0],
    depth: job.section[1],
    moisture: greenOf(job.wood),
    startDay: 0,
    stages
  })
  const own = course.days.at(-1) ?? 0
  // All rates of the model go with its factor, so a run that is k times as fast is the same run in time over k.
  const pace = own / Math.max(1, job.kilnWeeks * WEEK)
  return stages.map((stage) => ({ ...stage, pace }))
}

function timed(job: ClockJob, wood: ReturnType<typeof dryingWood>, reference: Reference, raisedAt: number): Timed {
  const { place, exposure, seasoning } = job
  const { pile, open, stages: usual } = reference.drying
  const inService = serviceOf(place, exposure, reference)
  const outdoors = { temperatureC: place.temperatureC, equilibrium: inService.outdoor }
  const inside = { temperatureC: inService.temperatureC, equilibrium: inService.months }
  const stages: Stage[] = []
  const moments: { id: Moment; afterStage: number }[] = []
  const ends = (id: Moment) => moments.push({ id, afterStage: stages.length - 1 })
  if (seasoning === 'air') stages.push({ air: outdoors, days: job.yardWeeks * WEEK, surface: pile })
  if (seasoning === 'kiln') stages.push(...kilnStages(job, wood, reference))
  if (seasoning === 'air' || seasoning === 'kiln') ends('dried')
  stages.push({ air: outdoors, days: job.shopWeeks * WEEK, surface: open })
  ends('raised')
  let until = job.felledDay + raisedAt
  if (exposure === 'heated' || exposure === 'unheated') {
    const days = usual.enclosedWeeks * WEEK
    stages.push({ air: outdoors, days, surface: open })
    ends('enclosed')
    until += days
  }
  if (exposure === 'heated') {
    stages.push({ air: outdoors, days: waitsForHeat(job.heating, until, reference), surface: open })
    ends('heated')
  }
  stages.push({ air: inside, days: usual.shownYears * YEAR, surface: open })
  ends('settled')
  return { stages, moments, start: seasoning === 'rfv' ? job.dried : greenOf(job.wood) }
}

/**
 * Run the clock of one timber. Deterministic. Years shown after the raising: `drying.stages.shownYears`.
 * @throws RangeError where a size or a time cannot be (see `dryingCourse`).
 */
export function clockOf(job: ClockJob, reference: Reference): Clock {
  const before = job.seasoning === 'air' ? job.yardWeeks : job.seasoning === 'kiln' ? job.kilnWeeks : 0
  const raisedAt = (before + job.shopWeeks) * WEEK
  const run = (which: 'factor' | 'slowest' | 'quickest'): readonly [Course, Timed] => {
    const wood = dryingWood(job.wood, which)
    const plan = timed(job, wood, reference, raisedAt)
    const [breadth, depth] = job.section
    const course = dryingCourse({
      wood,
      breadth,
      depth,
      moisture: plan.start,
      startDay: job.felledDay,
      stages: plan.stages
    })
    return [course, plan]
  }
  const [course, plan] = run('factor')
  const [quick] = run('quickest')
  const [slow] = run('slowest')
  const { mean: service } = serviceOf(job.place, job.exposure, reference)
  const whole = Math.max(1e-9, 1 - service / job.wood.fibreSaturation)
  const toCome = (day: number) => Math.max(0, 1 - onDay(course, course.shrunk, day) / whole)
  const at = (id: Moment, day: number, profile: Profile): Milestone => ({
    id,
    day,
    month: monthOf(job.felledDay + day),
    mean: onDay(course, course.mean, day),
    low: onDay(quick, quick.mean, day),
    high: onDay(slow, slow.mean, day),
    shell: onDay(course, course.shell, day),
    core: onDay(course, course.core, day),
    toCome: toCome(day),
    profile
  })
  // It starts the same right through.
  const even = (course.profiles[0] ?? []).map(({ from }) => ({ from, moisture: plan.start }))
  const milestones = [
    at(job.seasoning === 'rfv' ? 'dried' : 'felled', 0, even),
    ...plan.moments.map(({ id, afterStage }) =>
      at(id, course.ends[afterStage] ?? 0, course.profiles[afterStage] ?? even)
    )
  ]
  const raised = milestones.find((m) => m.id === 'raised')?.day ?? 0
  const end = course.days.at(-1) ?? 0
  const count = Math.floor(end / FORTNIGHT) + 1
  const days = Array.from({ length: count }, (_, i) => i * FORTNIGHT)
  const along = (c: Course, figure: readonly number[]) => days.map((day) => onDay(c, figure, day))
  const left = toCome(raised)
  const madeBy = (part: number): number | null => {
    const day = days.find((d) => d >= raised && toCome(d) <= left * (1 - part))
    return left > 0 && day !== undefined ? day - raised : null
  }
  // Above fibre saturation nothing has shrunk, however wet the core.
  const held = (m: number | undefined) => Math.min(m ?? 0, job.wood.fibreSaturation)
  const ahead = (i: number) => held(course.core[i]) - held(course.shell[i])
  const after = course.days.flatMap((day, i) => (day >= raised ? [i] : []))
  const steep = after.reduce((best, i) => (ahead(i) > ahead(best) ? i : best), after[0] ?? 0)
  return {
    felledMonth: monthOf(job.felledDay),
    fibreSaturation: job.wood.fibreSaturation,
    service,
    days,
    mean: along(course, course.mean),
    low: along(quick, quick.mean),
    high: along(slow, slow.mean),
    shell: along(course, course.shell),
    core: along(course, course.core),
    air: airAlong(job, plan, course.ends, days),
    milestones,
    half: madeBy(0.5),
    most: madeBy(0.9),
    steepest: { day: course.days[steep] ?? 0, shell: course.shell[steep] ?? 0, core: course.core[steep] ?? 0 }
  }
}

/** The equilibrium that the air of each stage asks for, day by day. */
function airAlong(job: ClockJob, { stages }: Timed, ends: readonly number[], days: readonly number[]): number[] {
  return days.map((day) => {
    const stage = stages[ends.findIndex((end) => day <= end)] ?? stages.at(-1)
    const equilibrium = stage?.air.equilibrium ?? 0
    return typeof equilibrium === 'number' ? equilibrium : (equilibrium[monthOf(job.felledDay + day) - 1] ?? 0)
  })
}
