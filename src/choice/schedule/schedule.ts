/**
 * From the order to a settled frame: every way in which the shop dries the leading wood, on one line of weeks, against the
 * client's date. The line is hung up by the leading option, which is felled in the middle of the month of the brief.
 */
import { percent } from '../../data/units'
import { clockJobOf } from '../brief/clock'
import { clockOf } from '../clock/clock'
import type { Clock } from '../clock/types'
import { chamberWeeks, shopWeeks, yardTime } from '../delivery'
import { limit } from '../facts'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { capital, computed, quantity, sentence } from '../say'
import { felledDay } from '../yard'
import { introSays, rowSays, rowShort, type Told, wordsSay } from './says'
import type { Schedule, ScheduleMark, ScheduleRow, ScheduleStage, ScheduleStageId } from './types'

const WEEK = 7
const LABELS: Readonly<Record<ScheduleStageId, string>> = {
  asked: 'asked for',
  lead: 'lead time',
  yard: 'yard',
  kiln: 'kiln',
  vacuum: 'vacuum',
  joinery: 'joinery',
  waits: 'lies cut'
}

/** Weeks of each stage up to the raising, and the drying as it may turn out. */
interface Weeks {
  readonly asked: number
  readonly lead: number
  readonly dry: { readonly id: 'yard' | 'kiln' | 'vacuum'; readonly weeks: number; low: number; high: number } | null
  readonly joinery: number
  readonly waits: number
}

function weeksOf({ facts: o }: Judged, { facts, reference, sheet }: Context): Weeks {
  const { asked, lead, joinery, fixed, mostYard } = shopWeeks(sheet, o.wood, o.option.heart, o.seasoning)
  const { waitsWeeks } = reference.drying.stages
  const waits = waitsWeeks[facts.waits as keyof typeof waitsWeeks] ?? waitsWeeks.weeks
  const { seasoning } = o.option
  if (seasoning === 'green') return { asked, lead, dry: null, joinery, waits }
  if (seasoning === 'air') {
    const { weeks, low, high } = yardTime(facts, reference, o.wood, o.section, mostYard, fixed)
    return { asked, lead, dry: { id: 'yard', weeks, low, high }, joinery, waits }
  }
  const { value: weeks, low, high } = chamberWeeks(o.seasoning, o.section[0])
  const id = seasoning === 'kiln' ? 'kiln' : 'vacuum'
  return { asked, lead, dry: { id, weeks, low, high }, joinery, waits }
}

/** Weeks from the order to the start of the clock: felled and sawn, or out of the vacuum. */
const clockWeek = ({ asked, lead, dry }: Weeks): number => asked + lead + (dry?.id === 'vacuum' ? dry.weeks : 0)

function stagesOf({ asked, lead, dry, joinery, waits }: Weeks): ScheduleStage[] {
  const list: [ScheduleStageId, number][] = [
    ['asked', asked],
    ['lead', lead],
    ...(dry ? [[dry.id, dry.weeks] as [ScheduleStageId, number]] : []),
    ['joinery', joinery],
    ['waits', waits]
  ]
  let week = 0
  return list
    .filter(([, weeks]) => weeks > 0)
    .map(([id, weeks]) => {
      const from = week
      week += weeks
      return { id, label: LABELS[id], from, to: week }
    })
}

/** First day from `from` on when a figure of the clock is at or below `most`, between its fortnights; null if never. */
function dayBelow({ days }: Clock, figure: readonly number[], from: number, most: number): number | null {
  const i = days.findIndex((day, n) => day >= from && (figure[n] ?? 1) <= most)
  if (i < 0) return null
  const [d0, d1] = [days[i - 1] ?? from, days[i] ?? from]
  const [m0, m1] = [figure[i - 1] ?? most, figure[i] ?? most]
  return m0 <= most ? Math.max(from, d0) : Math.max(from, d0 + ((d1 - d0) * (m0 - most)) / (m0 - m1))
}

const LATER: Readonly<Record<ScheduleMark['id'], string>> = {
  raised: 'raised',
  heated: 'first heating',
  outside: 'outside dry',
  settled: 'settled'
}

/** The moments from the raising on, from the option's own drying clock. */
function marksOf(curve: Clock, startWeek: number, { reference }: Context): ScheduleMark[] {
  const raised = curve.milestones.find((m) => m.id === 'raised')?.day ?? 0
  const heated = curve.milestones.find((m) => m.id === 'heated')?.day ?? null
  const off = curve.mean.map((m) => Math.abs(m - curve.service))
  const days: [ScheduleMark['id'], number | null][] = [
    ['raised', raised],
    ['heated', heated],
    ['outside', dayBelow(curve, curve.shell, raised, percent(limit(reference, 'outside-dry')))],
    ['settled', dayBelow(curve, off, raised, percent(limit(reference, 'settled-near')))]
  ]
  return days.flatMap(([id, day]) => (day === null ? [] : [{ id, label: LATER[id], week: startWeek + day / WEEK }]))
}

function readyOf(
  { facts: o }: Judged,
  { asked, lead, dry, joinery }: Weeks,
  { reference }: Context
): ScheduleRow['ready'] {
  const own = (weeks: number) => quantity('weeks', weeks, { mark: 'practice', sources: [{ key: 'shop-sheet' }] })
  const origin = computed(reference, 'ready', {
    ...(asked > 0 ? { 'asking for the wood': own(asked) } : {}),
    'lead time': own(lead),
    ...(dry ? { [`in the ${dry.id}`]: quantity('weeks', dry.weeks, computed(reference, 'ready'), dry) } : {}),
    joinery: own(joinery)
  })
  return quantity('weeks', o.readyWeeks, origin, dry ? { low: o.readyLow, high: o.readyHigh } : {})
}

/** The schedule of one wood and cut: `first` the option that the brief puts first, `curve` its clock. Deterministic. */
export function scheduleOf(first: Judged, judged: readonly Judged[], curve: Clock, c: Context): Schedule {
  const orderDay = felledDay(c.facts) - WEEK * clockWeek(weeksOf(first, c))
  const named = !c.facts.assumed.includes('begins')
  const rowOf = (j: Judged): ScheduleRow => {
    const { option, seasoning } = j.facts
    const weeks = weeksOf(j, c)
    const start = clockWeek(weeks)
    const own =
      j === first ? curve : clockOf({ ...clockJobOf(j, c), felledDay: orderDay + WEEK * start }, c.reference, false)
    const outs = j.fired.filter((r) => r.effect === 'out')
    // What cannot be dried so has no times.
    const undried = outs.find((r) => r.about === 'drying')
    const barred = undried !== undefined
    const out = undried ?? outs[0]
    const marks = barred ? [] : marksOf(own, start, c)
    const ready = readyOf(j, weeks, c)
    const told: Told = {
      name: capital(seasoning.short),
      ready,
      marks,
      curve: own,
      barred,
      // How late stands beside it.
      out: out ? (out.id === 'time-late' ? sentence('too late') : out.short(j.facts, c)) : null,
      orderDay,
      named
    }
    return {
      option: option.id,
      seasoning: option.seasoning,
      name: told.name,
      first: j === first,
      in: j.in,
      stages: barred ? [] : stagesOf(weeks),
      ready,
      marks,
      short: rowShort(told, c),
      says: rowSays(told, c)
    }
  }
  const { species, heart } = first.facts.option
  const same = judged.filter(({ facts: { option } }) => option.species === species && option.heart === heart)
  const ways = c.sheet.seasonings.flatMap(({ id }) => same.filter((j) => j.facts.option.seasoning === id))
  return {
    orderDay,
    named,
    dateWeek: c.facts.standsWeeks,
    says: introSays(first, orderDay, named, c),
    means: wordsSay(c),
    rows: ways.map(rowOf)
  }
}
