/**
 * The drying clock: a timber's moisture from felling to years after the raising, through the stages of a job, with how
 * much of its shrinkage is still to come at each.
 */
import type { Reference } from '../../data/reference'
import { CELLS } from '../../wood/diffusion'
import { type Course, dryingCourse, onDay, type Profile } from '../../wood/drying'
import { COARSE, dryingWood } from '../yard'
import { serviceOf, type Timed, timed } from './stages'
import type { Clock, ClockJob, Milestone, Moment } from './types'

const YEAR = 365.25
const WEEK = 7
const FORTNIGHT = 14

/** Month of the year, 1 to 12, of a day counted from the first of some January. */
export const monthOf = (day: number): number => Math.floor(((((day % YEAR) + YEAR) % YEAR) / YEAR) * 12) + 1

/**
 * Run the clock of one timber; without its `band`, low and high are the mean. Deterministic. Years shown after the raising: `drying.stages.shownYears`.
 * @throws RangeError where a size or a time cannot be (see `dryingCourse`).
 */
export function clockOf(job: ClockJob, reference: Reference, band = true): Clock {
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
      stages: plan.stages,
      // The band asks for no more than a coarse grid gives.
      cells: which === 'factor' ? CELLS : COARSE
    })
    return [course, plan]
  }
  const [course, plan] = run('factor')
  const [quick] = band ? run('quickest') : [course]
  const [slow] = band ? run('slowest') : [course]
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
    toCome: days.map(toCome),
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
    if (typeof equilibrium === 'number') return equilibrium
    // Blended between the middles of months, as the drying itself takes it.
    const at = (((((job.felledDay + day) / YEAR) * 12 - 0.5) % 12) + 12) % 12
    const [before, after] = [equilibrium[Math.floor(at)] ?? 0, equilibrium[(Math.floor(at) + 1) % 12] ?? 0]
    return before + (after - before) * (at % 1)
  })
}
