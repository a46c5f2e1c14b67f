/**
 * The value of an option on each criterion, 0 worst to 1 best acceptable, on scales stated in `content/limits.json`.
 * Source of the scales: bentwise-scale.
 */

import type { Reference } from '../data/reference'
import { FOOT, INCH } from '../data/units'
import { cornerOff } from '../wood/twist'
import { type Facts, limit } from './facts'
import type { OptionFacts } from './option-facts'
import type { Context } from './rule'
import { paleShortfall } from './rules/look'
import { CRITERIA, type Criterion } from './types'

const clamp = (x: number) => Math.min(1, Math.max(0, x))

/** 1 at the cheapest option of the sheet, 0 at four times its cost, even by ratio between. */
export function costAt(timber: number, cheapest: number, reference: Reference): number {
  if (!(cheapest > 0)) return 1
  return clamp(1 - Math.log(timber / cheapest) / Math.log(limit(reference, 'scale-cost-worst')))
}

/** At a shoulder gap of `opening`, mm: the gap with what it does each year, check opening and twist that may come; whoever minds less, sees less difference. */
export function movementAt(o: OptionFacts, c: Context, opening: number): number {
  const gap = clamp(1 - (opening + o.swing + o.swelling) / (limit(c.reference, 'scale-gap-worst') * INCH))
  const checks = clamp(1 - o.checkOpening / (limit(c.reference, 'scale-check-worst') * INCH))
  const part = (id: string) => limit(c.reference, id)
  // Woods are compared over one length, so that a long job still tells them apart.
  const turn = (o.twist.high * part('twist-length') * FOOT) / c.facts.stick
  const twist = clamp(1 - cornerOff(turn, o.section[1]) / (part('scale-twist-worst') * INCH))
  const green = o.option.seasoning === 'green'
  const waits =
    !green || c.facts.waits === 'weeks' ? 1 : part(c.facts.waits === 'year' ? 'score-waits-year' : 'score-waits-months')
  const hot = green && c.facts.exposure === 'heated' && c.facts.heating === 'at-once' ? part('score-hot-green') : 1
  const value = (part('score-gap') * gap + part('score-checks') * checks + part('score-twist') * twist) * waits * hot
  const indifference =
    (c.facts.joints === 'fine' ? part('score-mind-gap') : 0) +
    (c.facts.checks === 'fine' ? part('score-mind-checks') : 0)
  return indifference + (1 - indifference) * value
}

/** At a durability class, 1 best to 5. */
export function durabilityAt(durabilityClass: number, { facts, reference }: Context): number {
  if (facts.useClass === '1') return 1
  const loss = limit(reference, `durability-loss-${facts.useClass}-${facts.hazard}`)
  return clamp(1 - loss * (durabilityClass - 1))
}

function look(o: OptionFacts, c: Context): number {
  const { facts } = c
  const { traits } = o.wood
  const lost = (id: string) => limit(c.reference, id)
  const pitchLeft = o.seasoning.setsPitch ? 0 : traits.pitch.level
  const pitch = { never: 'score-pitch-never', 'rather-not': 'score-pitch-rather' }[facts.resin] ?? 'score-pitch-fine'
  let value = 1 - clamp(paleShortfall(o, c) / (2 * lost('pale-shortfall-out'))) - pitchLeft * lost(pitch)
  if (facts.knots === 'clear') value -= traits.knots.level * lost('score-knots-clear')
  if (facts.knots === 'some') value -= traits.knots.level * lost('score-knots-some')
  if (facts.finish === 'painted' || facts.finish === 'pale') value -= traits.tannin.level * lost('score-tannin')
  if (o.option.heart === 'boxed' && facts.checks === 'few') value -= lost('score-heart-few')
  if (o.option.heart === 'boxed' && facts.checks === 'some') value -= lost('score-heart-some')
  return clamp(value)
}

/** 1 for the wood that needs least, 0 at two and a half times its area. For looks only, no size is better. */
function stoutness(o: OptionFacts, c: Context): number {
  if (!c.facts.loaded || !c.leastNeeded) return 1
  const times = o.frame.neededArea / c.leastNeeded
  return clamp(1 - (times - 1) / (limit(c.reference, 'scale-stout-worst') - 1))
}

/** Weeks to spare, full at half a year; no hurry, no difference. */
export function timeAt(readyWeeks: number, { facts, reference }: Context): number {
  if (facts.standsWeeks === null) return 1
  const least = limit(reference, 'score-time-least')
  return clamp(least + ((1 - least) * (facts.standsWeeks - readyWeeks)) / limit(reference, 'scale-slack-best'))
}

function local(o: OptionFacts, { facts, reference }: Context): number {
  if (facts.local === 'no-matter') return 1
  const grows = (regions: readonly string[]) => o.wood.regions.some((r) => regions.includes(r))
  return grows(facts.regions)
    ? 1
    : grows(facts.nearRegions)
      ? limit(reference, 'score-local-near')
      : limit(reference, 'score-local-far')
}

const SCALES: Readonly<Record<Criterion, (o: OptionFacts, c: Context) => number>> = {
  cost: (o, c) => costAt(o.timberCost, c.cheapest, c.reference),
  movement: (o, c) => movementAt(o, c, o.gap),
  durability: (o, c) => durabilityAt(o.durabilityClass, c),
  look,
  stoutness,
  time: (o, c) => timeAt(o.readyWeeks, c),
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
