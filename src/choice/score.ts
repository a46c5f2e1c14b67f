/**
 * The value of an option on each criterion, 0 worst to 1 best acceptable, on scales stated in `content/limits.json`.
 * Source of the scales: bentwise-scale.
 */
import { INCH } from '../data/units'
import { type Facts, limit } from './facts'
import type { OptionFacts } from './option-facts'
import type { Context } from './rule'
import { paleShortfall } from './rules/look'
import { CRITERIA, type Criterion } from './types'

const clamp = (x: number) => Math.min(1, Math.max(0, x))

/** 1 at the cheapest option of the sheet, 0 at four times its cost, even by ratio between. */
function cost(o: OptionFacts, c: Context): number {
  if (!(c.cheapest > 0)) return 1
  return clamp(1 - Math.log(o.timberCost / c.cheapest) / Math.log(limit(c.reference, 'scale-cost-worst')))
}

/** Shoulder gap with what it does each year, check opening and tendency to twist; whoever minds less, sees less difference. */
function movement(o: OptionFacts, c: Context): number {
  const gap = clamp(1 - (o.gap + o.swing + o.swelling) / (limit(c.reference, 'scale-gap-worst') * INCH))
  const checks = clamp(1 - o.checkOpening / (limit(c.reference, 'scale-check-worst') * INCH))
  const freed = o.option.heart === 'free' ? 0.35 : 1
  const strainShare = clamp(o.tangentialToCome / Math.max(o.wood.tangential, 1e-9))
  const twist = clamp(1 - (o.wood.traits.twist.level / 2) * freed * strainShare)
  const waits =
    c.facts.waits === 'year' && o.option.seasoning === 'green'
      ? 0.5
      : c.facts.waits === 'months' && o.option.seasoning === 'green'
        ? 0.8
        : 1
  const value = (0.6 * gap + 0.25 * checks + 0.15 * twist) * waits
  const indifference = (c.facts.joints === 'fine' ? 0.25 : 0) + (c.facts.checks === 'fine' ? 0.15 : 0)
  return indifference + (1 - indifference) * value
}

function durability(o: OptionFacts, { facts, reference }: Context): number {
  if (facts.exposure === 'heated') return 1
  const loss = limit(reference, `durability-loss-${facts.exposure}-${facts.hazard}`)
  return clamp(1 - loss * (o.durabilityClass - 1))
}

function look(o: OptionFacts, c: Context): number {
  const { facts } = c
  const { traits } = o.wood
  let value = 1
  value -= clamp(paleShortfall(o, c) / (2 * limit(c.reference, 'pale-shortfall-out')))
  const pitchLeft = o.seasoning.setsPitch ? 0 : traits.pitch.level
  value -= pitchLeft * (facts.resin === 'never' ? 0.25 : facts.resin === 'rather-not' ? 0.12 : 0.02)
  value -= traits.knots.level * (facts.knots === 'clear' ? 0.25 : facts.knots === 'some' ? 0.08 : 0)
  if (facts.finish === 'painted' || facts.finish === 'pale') value -= traits.tannin.level * 0.1
  if (o.option.heart === 'boxed') value -= facts.checks === 'few' ? 0.25 : facts.checks === 'some' ? 0.06 : 0
  return clamp(value)
}

/** 1 at the leanest section of all woods, 0 at two and a half times its area. For looks only, no size is better. */
function stoutness(o: OptionFacts, c: Context): number {
  if (!c.facts.loaded || c.leanest === null) return 1
  const times = (o.section[0] * o.section[1]) / c.leanest
  return clamp(1 - (times - 1) / (limit(c.reference, 'scale-stout-worst') - 1))
}

/** Weeks to spare, full at half a year; no hurry, no difference. */
function time(o: OptionFacts, { facts, reference }: Context): number {
  if (facts.standsWeeks === null) return 1
  return clamp(0.3 + (0.7 * (facts.standsWeeks - o.readyWeeks)) / limit(reference, 'scale-slack-best'))
}

function local(o: OptionFacts, { facts }: Context): number {
  if (facts.local === 'no-matter') return 1
  const grows = (regions: readonly string[]) => o.wood.regions.some((r) => regions.includes(r))
  return grows(facts.regions) ? 1 : grows(facts.nearRegions) ? 0.6 : 0.2
}

const SCALES: Readonly<Record<Criterion, (o: OptionFacts, c: Context) => number>> = {
  cost,
  movement,
  durability,
  look,
  stoutness,
  time,
  local
}

export function scoresOf(o: OptionFacts, c: Context): Record<Criterion, number> {
  return Object.fromEntries(CRITERIA.map((id) => [id, SCALES[id](o, c)])) as Record<Criterion, number>
}

/** Weighted sum of the scores, 0 to 1. */
export function totalOf(
  scores: Readonly<Record<Criterion, number>>,
  weights: Readonly<Record<Criterion, number>>
): number {
  return CRITERIA.reduce((sum, id) => sum + weights[id] * scores[id], 0)
}

/** Whether a criterion can tell options apart under these answers. */
export function criterionMatters(id: Criterion, facts: Facts): boolean {
  if (id === 'durability') return facts.exposure !== 'heated'
  if (id === 'stoutness') return facts.loaded
  if (id === 'time') return facts.standsWeeks !== null
  if (id === 'local') return facts.local !== 'no-matter'
  return true
}
