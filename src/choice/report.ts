/** One judged option as the brief tells it: every figure a quantity, every reason a sentence. */
import type { Sentence } from '../data/quantity'
import type { Check } from '../frame/check'
import type { Member } from '../frame/job'
import {
  breadthFigure,
  checkFigures,
  checksFigure,
  deliveredFigure,
  durabilityFigure,
  faceFigure,
  gapFigure,
  lengthFigure,
  logFigure,
  moneyFigures,
  readyFigure,
  sectionFigure,
  serviceMoistureFigure,
  swingFigure,
  twistFigure,
  weightFigure
} from './figures'
import type { Judged } from './judge'
import { MEMBER_NAMES } from './member-names'
import type { Context } from './rule'
import { CHECK_NAMES } from './rules/strength'
import { capital, computed, quantity, sentence } from './say'
import type { CheckReport, MemberReport, Option, OptionReport, Reason } from './types'

export const HEART_SAYS = { boxed: 'boxed heart', free: 'free of heart centre' } as const
/** "kiln-dried to about {moisture}", "green" */
export function seasoningWords(option: Option, short: string): string {
  return option.seasoning === 'green' ? 'green' : `${short} to about {moisture}`
}

export function reasonsOf(j: Judged, c: Context): Reason[] {
  return j.fired.map((rule) => {
    const said = rule.says(j.facts, c)
    return {
      rule: rule.id,
      about: rule.about,
      effect: rule.effect,
      short: rule.short(j.facts, c),
      says: { ...said, sources: said.sources ?? rule.sources, mark: said.mark ?? rule.mark }
    }
  })
}

function checkReport(check: Check, c: Context): CheckReport {
  return {
    id: check.id,
    name: capital(CHECK_NAMES[check.id] ?? check.id),
    ...checkFigures(check, c.reference),
    passes: check.ratio <= 1
  }
}

function memberReport(m: Member, c: Context): MemberReport {
  const { section, checks, governing, values } = m.sized
  const name = MEMBER_NAMES[m.id]
  const ratio = governing ? quantity('ratio', governing.ratio, computed(c.reference, governing.id)) : null
  const why = governing ? CHECK_NAMES[governing.id] : ''
  const says: Sentence = section
    ? sentence(
        governing && governing.ratio < 0.5
          ? `${name} {section}: the smallest that fits there, used to {ratio}.`
          : `${name} {section}: ${why} governs, used to {ratio}.`,
        {
          section: quantity('section', section, {
            ...computed(c.reference, 'section'),
            ...(values ? { mark: values.origin.mark, sources: [...values.origin.sources, { key: 'nds' }] } : {})
          }),
          // To whole hundredths: no load is known better.
          ...(ratio ? { ratio: { ...ratio, kind: 'percent', value: Math.round(Number(ratio.value) * 100) / 100 } } : {})
        }
      )
    : sentence(`${name}: no section of the series passes${why ? `, for ${why}` : ''}.`)
  return {
    id: m.id,
    name,
    section: section ? quantity('section', section, computed(c.reference, 'section')) : null,
    checks: checks.map((k) => checkReport(k, c)),
    governing: governing?.id ?? null,
    says
  }
}

/** The whole report of a judged option. @param rank 1 for the leader, null where it is out */
export function reportOf(j: Judged, c: Context, rank: number | null): OptionReport {
  const { facts: o } = j
  const { facts, reference, sheet } = c
  const of = <T>(figure: (o: Judged['facts'], f: typeof facts, r: typeof reference) => T): T =>
    figure(o, facts, reference)
  return {
    option: o.option,
    wood: o.wood.name,
    said: o.wood.said,
    short: o.wood.short,
    heartSays: HEART_SAYS[o.option.heart],
    seasoningSays: o.seasoning.short,
    in: j.in,
    rank,
    total: j.total,
    scores: j.scores,
    reasons: reasonsOf(j, c),
    members: o.frame.members.map((m) => memberReport(m, c)),
    figures: {
      section: of(sectionFigure),
      moistureDelivered: of(deliveredFigure),
      moistureInService: serviceMoistureFigure(facts, reference),
      faceShrinkage: of(faceFigure),
      breadthShrinkage: of(breadthFigure),
      lengthChange: of(lengthFigure),
      yearlySwing: of(swingFigure),
      twist: of(twistFigure),
      shoulderGap: of(gapFigure),
      checkOpening: o.option.heart === 'boxed' ? of(checksFigure) : null,
      logDiameter: of(logFigure),
      stickWeight: of(weightFigure),
      durabilityClass: of(durabilityFigure),
      readyWeeks: of(readyFigure),
      ...moneyFigures(o, reference, sheet.placeholder)
    }
  }
}
