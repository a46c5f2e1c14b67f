/** The drying plan: from felling to some years after the raising, each step with when, and what to see to. */
import type { Sentence } from '../../data/quantity'
import { monthOf } from '../clock/clock'
import { monthName } from '../clock/report'
import type { ClockReport, Moment } from '../clock/types'
import type { PlanLine, ShopDetailReport } from '../detail-types'
import { readyFigure } from '../figures'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { computed, PRACTICE, quantity, sentence } from '../say'

const WEEK = 7
const MONTH = 365.25 / 12

interface Step {
  readonly id: string
  readonly label: string
  readonly day: number
  readonly moment: Moment | null
  readonly says: string
}

const DRIED = {
  green: '',
  air: 'Measured at the core, not at the face, before it comes in.',
  kiln: 'Measured at the core. Slow schedules for big timbers; stickers stay in until it is cold.',
  rfv: 'Measured at the core. Big timbers come out evenly dry.'
} as const
const ON_ITS_WAY = {
  air: ['Stickered in the yard', 'Off the ground, in line over the stickers, a roof over it, out of sun and wind.'],
  kiln: ['Into the kiln', 'Stickered in line, weighted on top.'],
  rfv: ['Into the vacuum', 'Stacked as the chamber asks.'],
  green: null
} as const

function stepsOf(judged: Judged, { curve }: ClockReport, c: Context): Step[] {
  const { seasoning } = judged.facts.option
  const dayOf = (id: Moment) => curve.milestones.find((m) => m.id === id)?.day
  const delivered = seasoning === 'green' ? 0 : (dayOf('dried') ?? 0)
  const steps: Step[] = []
  const put = (id: string, label: string, day: number | undefined, moment: Moment | null, says: string) => {
    if (day !== undefined) steps.push({ id, label, day, moment, says })
  }
  const way = ON_ITS_WAY[seasoning]
  // The clock of vacuum-dried timber starts when it is out: what came before is not run.
  put('felled', 'Felled and sawn', dayOf('felled'), 'felled', 'Ends sealed the same day; sawn soon, heart as asked.')
  if (way && seasoning !== 'rfv') put('stickered', way[0], 0, null, way[1])
  put(
    'dried',
    { green: '', air: 'Out of the yard', kiln: 'Out of the kiln', rfv: 'Out of the vacuum' }[seasoning],
    seasoning === 'green' ? undefined : delivered,
    'dried',
    DRIED[seasoning]
  )
  put(
    'shop',
    'Delivered, joinery begins',
    delivered,
    null,
    'Under cover, off the floor, no heating on it; joints cut to a snapped line or to its square core.'
  )
  put(
    'cut',
    'Cut, ready to raise',
    delivered + c.sheet.joineryWeeks * WEEK,
    null,
    'Stacked flat and strapped, ends shaded, until the raising.'
  )
  put('raised', 'Raised', dayOf('raised'), 'raised', 'Pegged up within days, so that the joints hold each other.')
  put(
    'enclosed',
    'Closed in',
    dayOf('enclosed'),
    'enclosed',
    'Aired, not heated: the slower from here, the finer the checks.'
  )
  put('heated', 'First heating', dayOf('heated'), 'heated', 'Low at first, and rising over weeks.')
  put(
    'settled',
    `${c.reference.drying.stages.shownYears} years on`,
    dayOf('settled'),
    'settled',
    'Pegs and shoulders looked at once more; from here it follows the seasons.'
  )
  return steps
}

/** The plan of the leading option. Months follow from the month of felling that the clock takes. */
export function dryingPlan(judged: Judged, clock: ClockReport, c: Context): ShopDetailReport['plan'] {
  // The middle of the month, as the clock has it.
  const start = (clock.curve.felledMonth - 0.5) * MONTH
  const origin = computed(c.reference, 'clock')
  const weeks = (days: number) => quantity('weeks', days / WEEK, origin)
  const steps = stepsOf(judged, clock, c)
  const raised = steps.find((s) => s.id === 'raised')?.day ?? 0
  const lines = steps.map(
    ({ id, label, day, moment, says }): PlanLine => ({
      id,
      label,
      month: monthName(monthOf(start + day)),
      after: weeks(day),
      before: day < raised ? weeks(raised - day) : null,
      moment,
      says: sentence(says)
    })
  )
  const first = judged.facts.option.seasoning === 'rfv' ? 'it comes out of the vacuum' : 'it is felled'
  const says: Sentence[] = [
    sentence(
      `The months are those of a job in which ${first} in ${monthName(clock.curve.felledMonth)}. Another month moves them all, and a yard then dries at another pace.`,
      undefined,
      [PRACTICE],
      'practice'
    )
  ]
  const ready = readyFigure(judged.facts, c.facts, c.reference)
  says.push(
    c.facts.standsWeeks === null
      ? sentence('There is no hurry. By the shop’s own lead times it could stand in {ready} from the order.', { ready })
      : sentence(
          `${c.facts.assumed.includes('stands') ? 'No date was named; taken is {stands} from now' : 'It must stand in {stands}'}; by the shop’s own lead times it could stand in {ready} from the order.`,
          {
            stands: quantity('weeks', c.facts.standsWeeks, { mark: 'seen', sources: [{ key: 'answers' }] }),
            ready
          }
        )
  )
  return { lines, says }
}
