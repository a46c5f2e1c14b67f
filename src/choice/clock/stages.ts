/** The stages of a timber's way into a job: yard or kiln, shop, open frame, closed frame, where it lives. */
import type { Place, Reference } from '../../data/reference'
import { percent } from '../../data/units'
import { type DryingWood, dryingCourse, type Stage } from '../../wood/drying'
import { type Exposure, type ServiceMoisture, serviceMoisture } from '../../wood/service'
import { limit } from '../facts'
import type { ClockJob, Heating, Moment } from './types'

const YEAR = 365.25
const WEEK = 7

/** Moisture in service as the rest of the engine takes it. */
export function serviceOf(place: Place, exposure: Exposure, reference: Reference): ServiceMoisture {
  return serviceMoisture(place, exposure === 'ground' ? 'weather' : exposure, reference.room, {
    weatherAdds: percent(limit(reference, 'weather-adds')),
    weatherWettest: percent(limit(reference, 'weather-wettest'))
  })
}

export interface Timed {
  readonly stages: readonly Stage[]
  /** Which stage ends at which moment. */
  readonly moments: readonly { readonly id: Moment; readonly afterStage: number }[]
  readonly start: number
}

/** Days from the enclosing to the first heating: none in the heating season, else until it starts. */
function waitsForHeat(heating: Heating, enclosed: number, { drying }: Reference): number {
  if (heating === 'at-once') return 0
  const { heatingMonth, heatingEndsMonth } = drying.stages
  const untilMonth = (month: number) => (((((month - 1) * YEAR) / 12 - enclosed) % YEAR) + YEAR) % YEAR
  const untilStart = untilMonth(heatingMonth)
  // In the season, its end comes before its next start.
  const soon = untilMonth(heatingEndsMonth) < untilStart ? 0 : untilStart
  return heating === 'next-year' ? soon + YEAR : soon
}

/** A kiln's schedule as stages, paced so that the mean comes down to `dried` in the weeks that the shop gives it. */
function kilnStages(job: ClockJob, wood: DryingWood, reference: Reference): Stage[] {
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
    moisture: job.wood.greenWhole,
    startDay: 0,
    stages
  })
  const own = course.days.at(-1) ?? 0
  // All rates of the model go with its factor, so a run that is k times as fast is the same run in time over k.
  const pace = own / Math.max(1, job.kilnWeeks * WEEK)
  return stages.map((stage) => ({ ...stage, pace }))
}

/** The plan of a job whose wood dries like `wood`, raised `raisedAt` days after felling. */
export function timed(job: ClockJob, wood: DryingWood, reference: Reference, raisedAt: number): Timed {
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
  return { stages, moments, start: seasoning === 'rfv' ? job.dried : job.wood.greenWhole }
}
