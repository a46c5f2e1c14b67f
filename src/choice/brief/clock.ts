/** The drying clock of the leading option, and what it makes of its joints as time goes on. */
import type { Sentence } from '../../data/quantity'
import { clockReport } from '../clock/report'
import type { ClockJob, ClockReport, Heating } from '../clock/types'
import { chamberDays } from '../delivery'
import { jointsOf, strainsAt } from '../joints'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { computed, quantity, sentence } from '../say'
import { felledDay } from '../yard'

/** The timber of an option on its way into this job. */
export function clockJobOf({ facts: o }: Judged, { facts, reference, sheet }: Context): ClockJob {
  const { waitsWeeks } = reference.drying.stages
  const waits = waitsWeeks[facts.waits as keyof typeof waitsWeeks] ?? waitsWeeks.weeks
  return {
    wood: o.wood,
    section: o.section,
    place: facts.place,
    exposure: facts.exposure,
    seasoning: o.option.seasoning,
    felledDay: felledDay(facts),
    yardWeeks: o.yardWeeks,
    kilnWeeks: chamberDays(o.seasoning, o.section[0]) / 7,
    dried: o.delivered,
    shopWeeks: sheet.joineryWeeks + waits,
    heating: facts.heating as Heating
  }
}

/** When a housed shoulder opens: how far it stands at the first heating, and two years after the raising. */
function gapSays(judged: Judged, { curve }: ClockReport, c: Context): Sentence[] {
  const { facts: o } = judged
  const heated = curve.milestones.find((m) => m.id === 'heated')
  const raised = curve.milestones.find((m) => m.id === 'raised')
  if (!heated || !raised) return []
  const whole = 1 - curve.service / curve.fibreSaturation
  const gapAt = (toCome: number) => {
    const { gap } = jointsOf(o, c.facts, c.reference, strainsAt(o, whole * (1 - toCome), c.reference)).housed
    return quantity('gap', gap.value, computed(c.reference, 'gap'))
  }
  const end = curve.milestones.at(-1)
  const last = gapAt(end?.toCome ?? 0)
  if (Number(last.value) < 0.5) return []
  return [
    sentence(
      `A housed shoulder stands open {heated} when the heating first goes on, and {last} ${c.reference.drying.stages.shownYears} years after.`,
      { heated: gapAt(heated.toCome), last }
    )
  ]
}

export function clockSection(judged: Judged, c: Context): ClockReport {
  const report = clockReport(clockJobOf(judged, c), c.reference)
  return { ...report, says: [...report.says, ...gapSays(judged, report, c)] }
}
