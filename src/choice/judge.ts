/** Every option judged: in or out, which rules spoke, scores, and the order. */
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { type Facts, factsFrom } from './facts'
import { type Frame, frameOf, seriesOf } from './frame-for'
import { type OptionFacts, optionFacts } from './option-facts'
import { optionsOf } from './options'
import type { Context, Rule } from './rule'
import { RULES } from './rules'
import { scoresOf, totalOf } from './score'
import type { Answers, Criterion } from './types'
import { criterionWeights } from './weights'

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

/** Frames already sized, so that ways of one job that differ only in taste or time share them. */
export type FrameCache = Map<string, Frame>

/** All that a frame's size hangs on, besides the wood. */
const frameSignature = (f: Facts): string =>
  [
    f.loaded,
    f.carries,
    f.truss,
    f.span,
    f.spacing,
    f.slope,
    f.variable.map((v) => `${v.load}${v.duration}`),
    f.groundSnow,
    f.dead.id,
    f.postHeight,
    f.size,
    f.depthLimit,
    f.joints === 'tight',
    f.wet
  ].join()

/** Judge every option of the sheet under these answers. Deterministic; equal totals are told apart by the option's id. */
export function judgeAll(
  answers: Answers,
  sheet: ShopSheetContent,
  reference: Reference,
  frames: FrameCache = new Map()
): Judging {
  const facts = factsFrom(answers, reference)
  const all = workOut(facts, sheet, reference, frames)
  const passing = all.filter((o) => facts.loaded && o.frame.passes)
  const least = (items: readonly OptionFacts[], of: (o: OptionFacts) => number) =>
    items.reduce((m, o) => Math.min(m, of(o)), Number.POSITIVE_INFINITY)
  const leanest = passing.length > 0 ? least(passing, (o) => o.section[0] * o.section[1]) : null
  const leastNeeded = passing.length > 0 ? least(passing, (o) => o.frame.neededArea) : null
  const first: Context = { facts, reference, sheet, leanest, leastNeeded, cheapest: 0, affordable: null }
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

/** The numbers of every option; the frame is sized once a wood, heart and dryness, and shared. */
function workOut(facts: Facts, sheet: ShopSheetContent, reference: Reference, frames: FrameCache): OptionFacts[] {
  const series = seriesOf(sheet)
  const signature = frameSignature(facts)
  return optionsOf(sheet, reference).map((option) => {
    const unseasoned = option.seasoning === 'green' || option.seasoning === 'air'
    const key = `${option.species}/${option.heart}/${unseasoned}/${signature}`
    let frame = frames.get(key)
    if (!frame) {
      const wood = reference.woods.get(option.species)
      if (!wood) throw new Error(`no wood "${option.species}"`)
      frame = frameOf(facts, reference, sheet, wood, option.heart, unseasoned, series)
      frames.set(key, frame)
    }
    return optionFacts(option, facts, reference, sheet, frame)
  })
}
