/** The schedule in sentences: what a row of the timeline shows, told in full. */
import type { Quantity, Sentence } from '../../data/quantity'
import { monthOf } from '../clock/clock'
import { monthName } from '../clock/report'
import type { Clock } from '../clock/types'
import type { Judged } from '../judge'
import { HEART_SAYS } from '../report'
import type { Context } from '../rule'
import { ON_THE_DATE } from '../rules/time'
import { ANSWERED, computed, limitQuantity, PRACTICE, quantity, sentence } from '../say'
import type { ScheduleMark } from './types'

/** What is known of a row. */
export interface Told {
  readonly name: string
  readonly ready: Quantity
  readonly marks: readonly ScheduleMark[]
  readonly curve: Clock
  /** It cannot be dried so. */
  readonly barred: boolean
  /** Why it is ruled out, in a few words. */
  readonly out: Sentence | null
  readonly orderDay: number
  readonly named: boolean
}

/** Month by name; what falls on the first of a month is not to slip into the one before by rounding. */
const monthAt = (orderDay: number, week: number): string => monthName(monthOf(orderDay + 7 * week + 1e-6))

/** How a week lies to the date, with the words for each case. */
function against(weeks: number, { facts, reference }: Context, before: string, on: string, after: string) {
  if (facts.standsWeeks === null) return null
  const early = facts.standsWeeks - weeks
  const spare = quantity('weeks', Math.abs(early), computed(reference, 'to-date'))
  return { late: early < -ON_THE_DATE, spare, text: early < -ON_THE_DATE ? after : early < ON_THE_DATE ? on : before }
}

/** Why a row is ruled out, its figures named apart from the row's own. */
const apart = ({ text, values = {} }: Sentence): Sentence =>
  sentence(
    text.replace(/\{/g, '{why'),
    Object.fromEntries(Object.entries(values).map(([name, q]) => [`why${name}`, q]))
  )

/** Beside its row: "5 weeks, 11 months early". */
export function rowShort({ ready, out }: Told, c: Context): Sentence {
  if (out) return { ...out, text: `ruled out: ${out.text}` }
  const date = against(Number(ready.value), c, ', {spare} early', ', on your date', ', {spare} late')
  return sentence(`{ready}${date?.text ?? ''}`, { ready, ...(date ? { spare: date.spare } : {}) })
}

/** A row in full: when it is ready, against the date, and what follows from the raising on. */
export function rowSays({ name, ready, marks, curve, barred, out, orderDay, named }: Told, c: Context): Sentence {
  const why = out && apart(out)
  if (barred) return sentence(`${name}: ruled out, ${why?.text}.`, why?.values)
  const values: Record<string, Quantity> = { ...why?.values, ready }
  const weekOf = (id: ScheduleMark['id']) => marks.find((m) => m.id === id)?.week ?? null
  const raised = weekOf('raised') ?? 0
  const clock = computed(c.reference, 'clock')
  const date = against(
    Number(ready.value),
    c,
    ', {spare} before your date',
    ', on your date',
    ', {spare} after your date'
  )
  if (date) values['spare'] = date.spare
  const slow = against(ready.high ?? 0, c, '', '', ', {slow} after it if it dries as slowly as it may')
  const slower = slow?.late && !date?.late
  if (slow && slower) values['slow'] = slow.spare
  const lying = against(raised, c, '', '', ' Lying cut, it would be raised {lying} after it.')
  const lies = lying?.late && !date?.late
  if (lying && lies) values['lying'] = lying.spare
  values['mean'] = quantity('moisture', curve.milestones.find((m) => m.id === 'raised')?.mean ?? 0, clock)
  /** A moment after the raising: its weeks among the values, or its month where that is told. */
  const moment = (id: ScheduleMark['id'], already: string, later: string, never: string): string => {
    const week = weekOf(id)
    if (week === null) return never
    if (week - raised < ON_THE_DATE) return already
    values[id] = quantity('weeks', week - raised, clock)
    return later
  }
  const month = named ? `, in ${monthAt(orderDay, Number(ready.value))}` : ''
  const heating = named ? `in ${monthAt(orderDay, weekOf('heated') ?? 0)}` : '{heated} later'
  const { shownYears } = c.reference.drying.stages
  const text = [
    `${name}: ${why ? `ruled out, ${why.text}; ` : ''}ready in {ready}${month}${date?.text ?? ''}${slower ? slow.text : ''}.`,
    lies ? lying.text : '',
    ' Raised at {mean} moisture',
    moment('heated', ', heated at once', `, first heated ${heating}`, ''),
    moment('outside', '; dry outside by then', '; dry outside {outside} after', '; never dry outside'),
    moment('settled', ', and settled.', ', settled {settled} after.', `, not settled within ${shownYears} years.`)
  ].join('')
  return sentence(text, Object.fromEntries(Object.entries(values).filter(([key]) => text.includes(`{${key}}`))))
}

/** What the timeline is of, and where the client's date lies on it. */
export function introSays(first: Judged, orderDay: number, named: boolean, { facts }: Context): Sentence {
  const { wood, option } = first.facts
  const assumed = facts.assumed.includes('stands')
  const origin = assumed ? ({ mark: 'practice', sources: [PRACTICE] } as const) : ANSWERED
  const [ordered, felled] = [monthAt(orderDay, 0), monthName(facts.felledMonth)]
  const when = !named
    ? `, for a felling in ${felled}, since you named no season`
    : ordered === felled
      ? `, ordered and felled in ${felled}`
      : `, ordered in ${ordered} and felled in ${felled}`
  const date =
    facts.standsWeeks === null
      ? 'You set no date.'
      : `${assumed ? 'You named no date; taken is' : 'Your date is'} {stands} from the order${named ? `, in ${monthAt(orderDay, facts.standsWeeks)}` : ''}.`
  return sentence(
    `How long ${wood.said}, ${HEART_SAYS[option.heart]}, takes from the order, dried each way that this shop offers${when}. ${date}`,
    facts.standsWeeks === null ? undefined : { stands: quantity('weeks', facts.standsWeeks, origin) }
  )
}

/** What the words of the rows mean. */
export const wordsSay = ({ reference }: Context): Sentence =>
  sentence(
    'Counted from the raising: dry outside when the outer half inch first comes to {dry}, settled when the mean first comes within {near} points of that in service.',
    {
      dry: limitQuantity(reference, 'outside-dry', 'percent', 0.01),
      near: limitQuantity(reference, 'settled-near', 'count')
    }
  )
