/**
 * What would change the choice: every other single answer tried, and the numbers at which it tips, found by halving. The job
 * is taken as answered, open answers as assumed. It is worked off in small steps, so that a page can stay awake between.
 */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import type { ShopSheetContent } from '../../data/shop-schema'
import { factsFrom } from '../facts'
import { leading } from '../leading'
import type { OptionFacts } from '../option-facts'
import { askedQuestions } from '../questions'
import { HEART_SAYS, seasoningWords } from '../report'
import { ANSWERED, capital, computed, quantity, sentence } from '../say'
import { type Steps, toEnd } from '../steps'
import { type Answer, type Answers, CRITERIA, type Question } from '../types'
import { workOut } from '../work-out'

/** What a changed answer does, the gravest first. */
export const EFFECTS = ['none-passes', 'wood', 'heart', 'seasoning', 'size', 'price', 'nothing'] as const
export type ChangeEffect = (typeof EFFECTS)[number]

/** One answer that leads there. */
export interface When {
  readonly question: string
  readonly label: string
  /** The other answer, in its own words. */
  readonly words: string
}

/** Another choice, and every single answer that would lead to it. */
export interface Turn {
  readonly effect: ChangeEffect
  /** The option; null where nothing would pass. */
  readonly says: Sentence | null
  readonly when: readonly When[]
}

export interface Tipping {
  readonly question: string
  readonly says: Sentence
}

export interface WhatIf {
  /** Another wood, cut, dryness or size, gravest first. */
  readonly turns: readonly Turn[]
  readonly tipping: readonly Tipping[]
  /** Labels of the questions of which no other answer changes more than the price. */
  readonly idle: readonly string[]
}

/** Numbers whose tipping points are looked for. */
const TIPPED = ['span', 'spacing', 'snow'] as const
/** Steps outward by this ratio, then halvings until the number is known to this part of itself. */
const OUTWARD = 1.25
const STEPS = 6
const NEAR = 0.01

type Lead = OptionFacts | null

const sameSection = (a: OptionFacts, b: OptionFacts): boolean =>
  a.section[0] === b.section[0] && a.section[1] === b.section[1]

/** How one leading option differs from another, by what matters most; null where nothing passes. */
export function effectOf(a: Lead, b: Lead): ChangeEffect {
  if (!b) return a ? 'none-passes' : 'nothing'
  if (!a) return 'wood'
  if (a.option.species !== b.option.species) return 'wood'
  if (a.option.heart !== b.option.heart) return 'heart'
  if (a.option.seasoning !== b.option.seasoning) return 'seasoning'
  if (!sameSection(a, b)) return 'size'
  return Math.abs(a.jobCost - b.jobCost) > 0.005 * Math.max(a.jobCost, 1) ? 'price' : 'nothing'
}

/** The same choice of wood, cut and dryness. */
const sameChoice = (a: Lead, b: Lead): boolean => ['size', 'price', 'nothing'].includes(effectOf(a, b))

/** The option in words, with its moisture and section. */
function optionWords(facts: OptionFacts, reference: Reference): { text: string; values: Record<string, Quantity> } {
  const { option, wood, seasoning } = facts
  return {
    text: `${wood.said}, ${HEART_SAYS[option.heart]}, ${seasoningWords(option, seasoning.short)}, {section}`,
    values: {
      moisture: quantity('moisture', facts.delivered, computed(reference, 'clock')),
      section: quantity('section', facts.section, computed(reference, 'section'))
    }
  }
}

/** "Black cherry, boxed heart, green, 8 x 8 in" as a sentence, after a lead where there is one. */
function said(lead: string, after: Lead, reference: Reference, more: Record<string, Quantity> = {}): Sentence {
  if (!after) return sentence(`${lead}: nothing in this shop would pass.`, more)
  const words = optionWords(after, reference)
  const used = Object.entries(words.values).filter(([name]) => words.text.includes(`{${name}}`))
  const text = lead === '' ? capital(words.text) : `${lead}: ${words.text}.`
  return sentence(text, { ...more, ...Object.fromEntries(used) })
}

interface Other {
  readonly answer: Answer
  readonly words: string
}

/** The other answers of a question that are tried one by one. */
function othersOf(question: Question, now: Answer | undefined): Other[] {
  if (question.kind === 'order') {
    const first = Array.isArray(now) ? now[0] : undefined
    return CRITERIA.filter((c) => c !== first).map((c) => ({
      answer: [c, ...(Array.isArray(now) ? now : CRITERIA).filter((other) => other !== c)] as readonly string[],
      words: `${question.choices.find((choice) => choice.id === c)?.label ?? c} first`
    }))
  }
  if (question.kind !== 'choice') return []
  return question.choices
    .filter((choice) => choice.id !== now)
    .map((choice) => ({ answer: choice.id, words: choice.label }))
}

/**
 * Work the list off. Each step that is yielded has judged once; the last value is the list.
 * Deterministic. Answers are taken as valid (see `readAnswers`).
 */
export function* whatIf(answers: Answers, sheet: ShopSheetContent, reference: Reference): Steps<WhatIf> {
  const lead = (change: Answers): Lead => leading({ ...answers, ...change }, sheet, reference)
  const facts = factsFrom(answers, reference)
  // Worked out whole and kept: changes of taste share its numbers.
  workOut(facts, sheet, reference)
  const base = lead({})
  yield
  const taken = facts.answers
  const turns = new Map<string, { effect: ChangeEffect; says: Sentence | null; when: When[] }>()
  const idle: string[] = []
  for (const question of askedQuestions(answers)) {
    const others = othersOf(question, answers[question.id] ?? taken[question.id])
    let moves = false
    for (const { answer, words } of others) {
      const best = lead({ [question.id]: answer })
      const effect = effectOf(base, best)
      if (effect !== 'price' && effect !== 'nothing') {
        moves = true
        const key = best ? `${best.option.id} ${best.section.join('x')}` : 'none'
        const turn = turns.get(key) ?? { effect, says: best && said('', best, reference), when: [] }
        turn.when.push({ question: question.id, label: question.label, words })
        turns.set(key, turn)
      }
      yield
    }
    if (others.length > 0 && !moves) idle.push(question.label)
  }
  const tipping: Tipping[] = []
  for (const question of askedQuestions(answers)) {
    const now = answers[question.id]
    if (!TIPPED.some((id) => id === question.id) || question.kind !== 'number' || typeof now !== 'number') continue
    for (const way of [1, -1] as const) {
      const point = yield* tip(question, now, way, (value) => lead({ [question.id]: value }), base)
      if (!point) continue
      const at = quantity(question.quantity === 'areaLoad' ? 'areaLoad' : 'span', point.at, ANSWERED)
      tipping.push({
        question: question.id,
        says: said(`${question.label} ${way > 0 ? 'above' : 'below'} {at}`, point.best, reference, { at })
      })
    }
  }
  const order = (t: Turn) => EFFECTS.indexOf(t.effect)
  const sorted = [...turns.values()].sort((p, q) => order(p) - order(q) || q.when.length - p.when.length)
  return { turns: sorted, tipping, idle }
}

interface TippingPoint {
  readonly at: number
  readonly best: Lead
}

/** The nearest number, outward from `now`, at which another wood, cut or dryness comes first; null within the range. */
function* tip(
  { min, max }: Extract<Question, { kind: 'number' }>,
  now: number,
  way: 1 | -1,
  bestAt: (value: number) => Lead,
  base: Lead
): Steps<TippingPoint | null> {
  let same = now
  for (let i = 0; i < STEPS; i++) {
    const next = Math.min(max, Math.max(min, way > 0 ? Math.max(same, 1) * OUTWARD : same / OUTWARD))
    if (next === same) return null
    let best = bestAt(next)
    yield
    if (sameChoice(base, best)) {
      same = next
      continue
    }
    let other = next
    while (Math.abs(other - same) > NEAR * now) {
      const middle = (same + other) / 2
      const there = bestAt(middle)
      yield
      if (sameChoice(base, there)) same = middle
      else {
        other = middle
        best = there
      }
    }
    return { at: other, best }
  }
  return null
}

/** The whole list at once. */
export function whatIfNow(answers: Answers, sheet: ShopSheetContent, reference: Reference): WhatIf {
  return toEnd(whatIf(answers, sheet, reference))
}
