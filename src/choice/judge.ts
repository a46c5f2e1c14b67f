/** Every option judged: in or out, which rules spoke, scores, and the order. */
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { contextOf, least } from './context'
import { factsFrom } from './facts'
import type { OptionFacts } from './option-facts'
import type { Context, Rule } from './rule'
import { RULES } from './rules'
import { scoresOf, totalOf } from './score'
import type { Answers, Criterion } from './types'
import { criterionWeights } from './weights'
import { workOut } from './work-out'

export interface Judged {
  readonly facts: OptionFacts
  readonly in: boolean
  /** Rules that spoke, in the order of the list. */
  readonly fired: readonly Rule[]
  readonly scores: Readonly<Record<Criterion, number>>
  readonly total: number
}

export interface Judging {
  readonly context: Context
  readonly weights: Readonly<Record<Criterion, number>>
  /** In first, best first; then out, fewest reasons against first. */
  readonly judged: readonly Judged[]
}

const byMerit = (p: Judged, q: Judged): number => {
  if (p.in !== q.in) return p.in ? -1 : 1
  const outs = (j: Judged) => j.fired.filter((r) => r.effect === 'out').length
  return (p.in ? 0 : outs(p) - outs(q)) || q.total - p.total || (p.facts.option.id < q.facts.option.id ? -1 : 1)
}

/** Judge every option of the sheet under these answers. Deterministic; equal totals are told apart by the option's id. */
export function judgeAll(answers: Answers, sheet: ShopSheetContent, reference: Reference): Judging {
  const facts = factsFrom(answers, reference)
  const all = workOut(facts, sheet, reference)
  const first = contextOf(all, facts, sheet, reference)
  const passes = (fired: readonly Rule[]) => !fired.some((r) => r.effect === 'out')
  const able = all.map((o) => RULES.filter((rule) => rule.when(o, first)))
  const sum = facts.budgetSum
  // Money rules out only what something that else does the job stays below.
  const affordable = sum === null ? null : all.some((o, i) => passes(able[i] ?? []) && o.bill.low <= sum)
  const second: Context = { ...first, affordable }
  const spoken = sum === null ? able : all.map((o) => RULES.filter((rule) => rule.when(o, second)))
  const isIn = spoken.map(passes)
  // The cheapest that can really be had sets the scale of cost; where nothing can, the cheapest of all.
  const can = all.filter((_, i) => isIn[i])
  const context: Context = { ...second, cheapest: least(can.length > 0 ? can : all, (o) => o.timberCost) }
  const weights = criterionWeights(facts.order, facts.budget)
  const judged = all.map((o, i): Judged => {
    const scores = scoresOf(o, context)
    return { facts: o, in: isIn[i] ?? false, fired: spoken[i] ?? [], scores, total: totalOf(scores, weights) }
  })
  return { context, weights, judged: judged.sort(byMerit) }
}
