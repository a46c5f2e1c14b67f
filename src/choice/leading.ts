/** The option that comes first, and nothing else: for lists that judge the job a hundred times over. */
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { contextOf, least } from './context'
import { factsFrom } from './facts'
import type { OptionFacts } from './option-facts'
import type { Context, EarlyRule, Rule } from './rule'
import { RULES } from './rules'
import { scoresOf, totalOf } from './score'
import type { Answers } from './types'
import { criterionWeights } from './weights'
import { workOutLazily } from './work-out'

const OUT = RULES.filter((rule) => rule.effect === 'out')
const isEarly = (rule: Rule): rule is EarlyRule => rule.early === true
const EARLY = OUT.filter(isEarly)
const LATE = OUT.filter((rule) => !isEarly(rule))

/**
 * The first of `judgeAll`, or null where nothing passes: an option is worked out only as far as it takes to rule it out.
 * Deterministic. Answers are taken as valid (see `readAnswers`).
 */
export function leading(answers: Answers, sheet: ShopSheetContent, reference: Reference): OptionFacts | null {
  const facts = factsFrom(answers, reference)
  const { bases, full } = workOutLazily(facts, sheet, reference)
  const first = contextOf(bases, facts, sheet, reference)
  const passes = (o: OptionFacts, c: Context) => !LATE.some((rule) => rule.when(o, c))
  const able: OptionFacts[] = []
  for (const basis of bases) {
    if (EARLY.some((rule) => rule.when(basis, first))) continue
    const o = full(basis)
    if (passes(o, first)) able.push(o)
  }
  const sum = facts.budgetSum
  const affordable = sum === null ? null : able.some((o) => o.bill.low <= sum)
  const second: Context = { ...first, affordable }
  const left = sum === null ? able : able.filter((o) => passes(o, second))
  const context: Context = { ...second, cheapest: least(left, (o) => o.timberCost) }
  const weights = criterionWeights(facts.order, facts.budget)
  let lead: OptionFacts | null = null
  let most = Number.NEGATIVE_INFINITY
  for (const o of left) {
    const total = totalOf(scoresOf(o, context), weights)
    if (total < most || (total === most && lead && lead.option.id < o.option.id)) continue
    lead = o
    most = total
  }
  return lead
}
