/** The whole job in one function: answers, a shop sheet and the reference in; a Brief out. */
import type { Sentence } from '../data/quantity'
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { climateSection } from './brief/climate'
import { clockSection } from './brief/clock'
import { askOf, cautionsOf } from './brief/closing'
import { differences, LITTLE_BETWEEN } from './brief/compare'
import { costSection } from './brief/cost'
import { durabilitySection } from './brief/durability'
import { finishSection } from './brief/finish'
import { jobLines, titleOf } from './brief/job'
import { movementSection } from './brief/movement'
import { shopDetail } from './brief/shop-detail'
import { sizesSection } from './brief/sizes'
import { carryOpen } from './brief/sure'
import { weightReport } from './brief/weighing'
import type { Brief } from './brief-types'
import { limit } from './facts'
import { type Judged, type Judging, judgeAll } from './judge'
import { reasonsOf, reportOf, seasoningWords } from './report'
import type { Context } from './rule'
import { computed, lean, quantity, sentence } from './say'
import { scheduleOf } from './schedule/schedule'
import { type Steps, toEnd } from './steps'
import { type Answers, CRITERIA, type Judgement, type OptionReport, type Reason, type WoodLine } from './types'

/** The best judged option of every wood, in the order of merit. */
export function bestOfEachWood(order: readonly Judged[]): Judged[] {
  const seen = new Set<string>()
  return order.filter((j) => {
    const fresh = !seen.has(j.facts.option.species)
    seen.add(j.facts.option.species)
    return fresh
  })
}

const firstOf = (reasons: readonly Reason[], effect: Reason['effect']): Reason | undefined =>
  reasons.find((r) => r.effect === effect)

/** The shortest honest word on a wood: why it is out, why it leads, or what most sets it behind the leader. */
function woodSays(report: OptionReport, lead: OptionReport | null, judging: Judging): Sentence {
  if (!report.in) return firstOf(report.reasons, 'out')?.says ?? sentence('Ruled out.')
  if (!lead || report.option.id === lead.option.id)
    return firstOf(report.reasons, 'favour')?.says ?? sentence('Best over all that matters to you.')
  const behind = differences(lead, report, judging.weights, judging.context, 'worse')[0]
  const held = firstOf(report.reasons, 'caution')?.says
  return behind ?? held ?? sentence('Does the job nearly as well.')
}

/** The brief at once; see `briefInSteps`. */
export function makeBrief(answers: Answers, shopSheet: ShopSheetContent, reference: Reference): Brief {
  return toEnd(briefInSteps(answers, shopSheet, reference))
}

/**
 * Judge every option and say what to do about it. Deterministic: the same answers, sheet and reference give the same brief.
 * Answers are taken as valid (see `readAnswers`); open ones are assumed and named. Many open answers take many judgings.
 */
export function* briefInSteps(answers: Answers, shopSheet: ShopSheetContent, reference: Reference): Steps<Brief> {
  const judging = judgeAll(answers, shopSheet, reference)
  const { context: c, weights } = judging
  yield
  const carried = yield* carryOpen(answers, judging, shopSheet, reference)
  const best = bestOfEachWood(carried.order)
  const woods = best.map((j, i) => reportOf(j, c, j.in ? i + 1 : null))
  const leader = best[0]?.in ? best[0] : null
  const lead = leader ? (woods[0] ?? null) : null
  const runnerUp = woods[1]?.in ? woods[1] : null
  const shown = leader ?? best[0]
  const shownReport = woods[0]
  if (!shown || !shownReport) throw new RangeError('the shop sheet carries no wood of the reference')

  const headline = lead
    ? sentence(`${lead.wood}, ${lead.heartSays}, ${seasoningWords(lead.option, lead.seasoningSays)}.`, {
        moisture: lead.figures.moistureDelivered
      })
    : sentence('Nothing in this shop does the job as you have put it.')
  const clock = clockSection(shown, c)
  const job = jobLines(c.facts)
  const sure = {
    ...carried.sure,
    says: withMargin(carried.sure.says, lead, runnerUp, c),
    weights: leader ? weightReport(leader, judging, carried.ways) : null
  }
  const favours = (lead?.reasons ?? []).filter((r) => r.effect === 'favour').map((r) => r.says)
  return {
    version: 1,
    shop: {
      name: shopSheet.name,
      contact: shopSheet.contact ?? null,
      placeholder: shopSheet.placeholder,
      note: shopSheet.note ?? null,
      cautions: shopSheet.cautions ?? []
    },
    answers,
    title: titleOf(c.facts),
    job,
    lead,
    runnerUp,
    headline,
    summary: summaryOf(lead, shownReport, c.facts.loaded),
    difference: lead && runnerUp ? differenceOf(lead, runnerUp, judging) : [],
    sure,
    why:
      favours.length > 0
        ? favours
        : [sentence('It comes out best over all that you put in order, without standing out on any one point.')],
    woods: woods.map(
      (report): WoodLine => ({
        species: report.option.species,
        wood: report.wood,
        in: report.in,
        report,
        note: shopSheet.woods.find((w) => w.species === report.option.species)?.note ?? null,
        says: woodSays(report, lead, judging)
      })
    ),
    options: carried.order.map((j) => judgementOf(j, c)),
    weights: Object.fromEntries(CRITERIA.map((id) => [id, weights[id]])) as Brief['weights'],
    sizes: sizesSection(c, leader),
    movement: movementSection(shownReport, shown, c, clock),
    climate: climateSection(c),
    clock,
    schedule: scheduleOf(shown, judging.judged, clock.curve, c),
    durability: durabilitySection(lead, c),
    finish: finishSection(shown, best, c, clock),
    cost: costSection(
      lead,
      leader,
      woods.filter((w) => w.in),
      c
    ),
    cautions: cautionsOf(lead, leader, c),
    ask: askOf(lead, c),
    detail: shopDetail(judging, best, shownReport, clock, job, sure)
  }
}

/** How far ahead the leader is as answered, in points of 100; or that it is safer though behind. */
function withMargin(says: Sentence, lead: OptionReport | null, runnerUp: OptionReport | null, c: Context): Sentence {
  if (!lead || !runnerUp) return says
  const points = 100 * (lead.total - runnerUp.total)
  const word =
    points < limit(c.reference, 'margin-near')
      ? 'a near thing'
      : points < limit(c.reference, 'margin-clear')
        ? 'clear, not by much'
        : 'by a long way'
  const text =
    points >= 0
      ? `As answered it stands {points} points of 100 ahead of ${runnerUp.said}: ${word}.`
      : `As answered it stands {points} points of 100 behind ${runnerUp.said}, and is put first because it is the safer over what is still open.`
  return {
    ...says,
    text: `${says.text} ${text}`,
    values: { ...says.values, points: quantity('index', Math.abs(points), computed(c.reference, 'total')) }
  }
}

/** An option as it was judged, with every reason. */
function judgementOf(j: Judged, c: Context): Judgement {
  const reasons = reasonsOf(j, c).map((r) => ({ ...r, short: lean(r.short), says: lean(r.says) }))
  return { option: j.facts.option, in: j.in, reasons, scores: j.scores, total: j.total }
}

/** What separates the first two, with what the second is cautioned for and the first is not. */
function differenceOf(lead: OptionReport, runnerUp: OptionReport, judging: Judging): Sentence[] {
  const says = differences(lead, runnerUp, judging.weights, judging.context)
  const known = new Set(lead.reasons.map((r) => r.rule))
  const own = runnerUp.reasons.filter((r) => r.effect === 'caution' && !known.has(r.rule)).map((r) => r.says)
  const all = [...says, ...own.slice(0, 2)]
  return all.length > 0 ? all : [LITTLE_BETWEEN]
}

function summaryOf(lead: OptionReport | null, nearest: OptionReport, loaded: boolean): Sentence[] {
  if (!lead) {
    const why = firstOf(nearest.reasons, 'out')?.says
    return [
      sentence(`What came nearest is ${nearest.said}, ${nearest.heartSays}, ${nearest.seasoningSays}.`),
      ...(why ? [why] : []),
      sentence(
        'Change the answer that rules most out: the size, the dates, the exposure or the limits you set. What each wood fails on stands below.'
      )
    ]
  }
  const f = lead.figures
  return [
    loaded
      ? sentence('A preliminary size of {section} carries it; its shoulders open {gap} as it settles at {service}.', {
          section: f.section,
          gap: f.shoulderGap,
          service: f.moistureInService
        })
      : sentence('Taken at {section}, its shoulders open {gap} as it settles at {service}.', {
          section: f.section,
          gap: f.shoulderGap,
          service: f.moistureInService
        }),
    sentence('It could stand in {ready} from the order.', { ready: f.readyWeeks })
  ]
}
