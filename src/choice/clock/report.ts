/** The drying clock in words and figures that open: what a page or a brief shows of one timber. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import { percent } from '../../data/units'
import { limit } from '../facts'
import { MONTHS } from '../months'
import { computed, quantity, sentence } from '../say'
import { clockOf, monthOf } from './clock'
import type { Clock, ClockAsked, ClockJob, ClockLine, ClockReport, Milestone, Moment } from './types'

const WEEK = 7
const OUT_OF: Readonly<Record<ClockJob['seasoning'], string>> = {
  green: 'Out of the yard',
  air: 'Out of the yard',
  kiln: 'Out of the kiln',
  rfv: 'Out of the vacuum'
}

const labelOf = ({ id }: Milestone, job: ClockJob, years: number): string =>
  ({
    felled: 'Felled and sawn',
    dried: OUT_OF[job.seasoning],
    raised: 'Raised',
    enclosed: 'Closed in',
    heated: 'First heating',
    settled: `${years} years on`
  })[id]

export const monthName = (month: number): string => MONTHS[month - 1] ?? ''

/** What goes into every figure of the clock. */
const inputsOf = (job: ClockJob, reference: Reference): Record<string, Quantity> => {
  const { min, max, origin } = job.wood.airDays
  return {
    'M at the saw': quantity('moisture', job.wood.greenWhole, job.wood.greenOrigin),
    Gb: quantity('ratio', job.wood.gravityGreen, job.wood.gravityOrigin),
    k: quantity('ratio', job.wood.drying.factor, computed(reference, 'drying-fit'), {
      low: job.wood.drying.slowest,
      high: job.wood.drying.quickest
    }),
    'days for a 1 in board': quantity('count', Math.round(Math.sqrt(min * max)), origin, { low: min, high: max })
  }
}

function lineOf(m: Milestone, job: ClockJob, reference: Reference): ClockLine {
  const origin = computed(reference, 'clock', inputsOf(job, reference))
  // What is equal is to read equal: sums differ in their last digits, and 65 % is rounded to tens on either side.
  const even = (share: number) => Number(share.toFixed(6))
  const moisture = (share: number) => quantity('moisture', even(share), origin)
  return {
    id: m.id,
    label: labelOf(m, job, reference.drying.stages.shownYears),
    month: monthName(m.month),
    after: quantity('weeks', m.day / WEEK, computed(reference, 'clock')),
    mean: { ...moisture(m.mean), low: even(Math.min(m.low, m.mean)), high: even(Math.max(m.high, m.mean)) },
    shell: moisture(m.shell),
    core: moisture(m.core),
    toCome: quantity(
      'percent',
      m.toCome,
      computed(reference, 'to-come', {
        Mf: quantity('moisture', job.wood.fibreSaturation, job.wood.fibreSaturationOrigin)
      })
    )
  }
}

/** "of the first year after the raising" */
const yearWords = (days: number): string =>
  `of the ${ORDINALS[Math.floor(days / 365.25)] ?? 'last'} year after the raising`
const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth']

function saysOf(curve: Clock, lines: readonly ClockLine[], job: ClockJob, reference: Reference): Sentence[] {
  const line = (id: Moment) => lines.find((l) => l.id === id)
  const raised = line('raised')
  const settled = line('settled')
  if (!raised || !settled) return []
  const left = Number(raised.toCome.value)
  const time = (days: number) => quantity('weeks', days / WEEK, computed(reference, 'shows'))
  const years = reference.drying.stages.shownYears
  const start = job.seasoning === 'rfv' ? 'Out of the vacuum' : `Felled in ${monthName(curve.felledMonth)}`
  const says: Sentence[] = [
    sentence(
      `${start}, it is raised {after} later, in ${raised.month}, at {mean} on the average: {shell} in the outer half inch, {core} in the middle.`,
      { after: raised.after, mean: raised.mean, shell: raised.shell, core: raised.core }
    )
  ]
  if (left < 0.02) {
    says.push(sentence('By then it has made all the shrinkage that it will: from there it only follows the seasons.'))
  } else {
    const half = curve.half === null ? null : time(curve.half)
    const most = curve.most === null ? null : time(curve.most)
    says.push(
      sentence(
        `Of all its shrinkage {left} is still to come in the frame. ${
          half
            ? 'Half of that shows within {half} of the raising'
            : `Less than half of that shows within ${years} years`
        }${half ? (most ? ', nine tenths within {most}.' : `; nine tenths take more than ${years} years.`) : '.'}`,
        { left: raised.toCome, ...(half ? { half } : {}), ...(most ? { most } : {}) }
      )
    )
  }
  const { shell, core, day } = curve.steepest
  if (Math.min(core, curve.fibreSaturation) - shell > percent(limit(reference, 'steep-gradient'))) {
    const origin = computed(reference, 'clock')
    const raisedOn = curve.milestones.find((m) => m.id === 'raised')?.day ?? 0
    const values = { shell: quantity('moisture', shell, origin), core: quantity('moisture', core, origin) }
    says.push(
      day > raisedOn
        ? sentence(
            `The outside has shrunk furthest ahead of the core in ${monthName(monthOf(job.felledDay + day))} ${yearWords(day - raisedOn)}, at {shell} against {core}: that is when checks stand widest open.`,
            values
          )
        : sentence(
            'Its outside comes ahead of its core, {shell} against {core}: what opened on the way is there to be seen when you choose.',
            values
          )
    )
  }
  return says
}

/** A job as it would be asked for. Ground contact is asked for as the weather, whose air it has. */
function askedOf(job: ClockJob, { felledMonth }: Clock): ClockAsked {
  const { wood, place, section, exposure, seasoning, yardWeeks, kilnWeeks, shopWeeks, heating } = job
  return {
    wood: wood.id,
    breadth: section[0],
    depth: section[1],
    place: place.id,
    exposure: exposure === 'ground' ? 'weather' : exposure,
    seasoning,
    felledMonth,
    yardWeeks,
    kilnWeeks,
    shopWeeks,
    heating
  }
}

/** The clock of a job, its moments as lines of figures, and what it comes to in sentences. */
export function clockReport(job: ClockJob, reference: Reference): ClockReport {
  const curve = clockOf(job, reference)
  const lines = curve.milestones.map((m) => lineOf(m, job, reference))
  return { asked: askedOf(job, curve), curve, lines, says: saysOf(curve, lines, job, reference) }
}
