/** How firm the choice is: what was left open is carried through, and each open question weighed. */
import type { Reference } from '../../data/reference'
import type { ShopSheetContent } from '../../data/shop-schema'
import type { Brief } from '../brief-types'
import { plausibleAnswers } from '../facts'
import { evenAt, evenSteps } from '../firm/even'
import { type Judged, type Judging, judgeAll } from '../judge'
import { questionOf } from '../questions'
import { computed, listed, quantity, sentence } from '../say'
import type { Steps } from '../steps'
import { type Answer, type Answers, CRITERIA, type OpenQuestion } from '../types'

/** Ways in which the open answers are tried together. */
const TOGETHER = 64

/** Share of cases below which a change is put down to the coarseness of trying only so many ways. */
const LEAST_CHANGE = 0.01

type Plausible = readonly { readonly answer: Answer; readonly weight: number }[]
interface Open {
  readonly id: string
  readonly values: Plausible
}

/** An open order may be any with one criterion first. */
const plausible = (reference: Reference, id: string): Plausible =>
  id === 'order' ? CRITERIA.map((c) => ({ answer: [c], weight: 1 })) : plausibleAnswers(reference, id)

/** Index of the value at `u` (0 to 1) of a weighted list. */
function at(values: Plausible, u: number): number {
  const sum = values.reduce((s, v) => s + v.weight, 0)
  let run = 0
  for (const [i, v] of values.entries()) {
    run += v.weight / sum
    if (u < run) return i
  }
  return values.length - 1
}

/** One way in which the open questions could turn out: which value each takes, and what every option is then worth. */
interface Way {
  readonly picks: readonly number[]
  /** Total of every option; half of it where it is ruled out. */
  readonly worth: ReadonlyMap<string, number>
  readonly first: string
  readonly judging: Judging
}

/** Wood and cut of an option: the id without its seasoning. */
export const cut = (optionId: string): string => optionId.split('/').slice(0, 2).join('/')

function* ways(
  answers: Answers,
  open: readonly Open[],
  sheet: ShopSheetContent,
  reference: Reference
): Steps<readonly Way[]> {
  const steps = evenSteps(open.length)
  const tried: Way[] = []
  for (let n = 0; n < TOGETHER; n++) {
    const picks = open.map((q, d) => at(q.values, evenAt(n + 1, steps[d] ?? 0)))
    const taken = Object.fromEntries(open.map((q, d) => [q.id, q.values[picks[d] ?? 0]?.answer ?? '']))
    const judging = judgeAll({ ...answers, ...taken }, sheet, reference)
    const { judged } = judging
    const first = judged[0]
    tried.push({
      picks,
      worth: new Map(judged.map((j) => [j.facts.option.id, j.in ? j.total : j.total / 2])),
      first: first?.in ? cut(first.facts.option.id) : 'none',
      judging
    })
    yield
  }
  return tried
}

/** Mean worth of every option over some ways. */
function meanWorth(some: readonly Way[]): Map<string, number> {
  const sums = new Map<string, number>()
  for (const way of some) for (const [id, worth] of way.worth) sums.set(id, (sums.get(id) ?? 0) + worth / some.length)
  return sums
}

function best(worth: ReadonlyMap<string, number>): { readonly id: string; readonly worth: number } {
  let top = { id: '', worth: Number.NEGATIVE_INFINITY }
  for (const [id, w] of worth) if (w > top.worth) top = { id, worth: w }
  return top
}

export interface Carried {
  /** Options in the order of merit over all that was left open. */
  readonly order: readonly Judged[]
  readonly sure: Omit<Brief['sure'], 'weights'>
  /** The judging of every way that was tried; the one as answered where nothing is open. */
  readonly ways: readonly Judging[]
}

/**
 * Carry the open answers. Together they are tried by a fixed, evenly spread sequence, so that the same answers always give
 * the same brief; options are ranked by their mean worth. A question's value is how much better one could choose, on the
 * average, with its answer known: sum over its values of the best mean worth, less the best mean worth without it.
 * Source: lahdelma-salminen-2001 (acceptability by counting first ranks), derived (value of information).
 */
export function* carryOpen(
  answers: Answers,
  base: Judging,
  sheet: ShopSheetContent,
  reference: Reference
): Steps<Carried> {
  const { assumed } = base.context.facts
  const open: Open[] = assumed
    .map((id) => ({ id, values: plausible(reference, id) }))
    .filter((q) => q.values.length > 1)
  if (open.length === 0) {
    const says =
      assumed.length > 0
        ? 'What you left open is taken as usual and not varied.'
        : 'Every question that matters is answered; the choice rests on your answers as they stand.'
    return { order: base.judged, sure: { firstIn: 1, of: 1, says: sentence(says), settle: [] }, ways: [base] }
  }
  const tried = yield* ways(answers, open, sheet, reference)
  const mean = meanWorth(tried)
  const worth = (j: Judged) => mean.get(j.facts.option.id) ?? 0
  const order = [...base.judged].sort((p, q) => Number(q.in) - Number(p.in) || (p.in ? worth(q) - worth(p) : 0))
  const lead = order[0]?.in ? cut(order[0].facts.option.id) : 'none'
  const firstIn = tried.filter((w) => w.first === lead).length
  return {
    order,
    sure: { firstIn, of: TOGETHER, ...inWords(open, tried, lead, firstIn, mean, reference) },
    ways: tried.map((way) => way.judging)
  }
}

function inWords(
  open: readonly Open[],
  tried: readonly Way[],
  lead: string,
  firstIn: number,
  mean: ReadonlyMap<string, number>,
  reference: Reference
): Pick<Brief['sure'], 'says' | 'settle'> {
  const unknown = best(mean).worth
  const weighed = open.map((q, d) => {
    let known = 0
    let changes = 0
    for (let i = 0; i < q.values.length; i++) {
      const those = tried.filter((w) => w.picks[d] === i)
      if (those.length === 0) continue
      const top = best(meanWorth(those))
      known += (top.worth * those.length) / tried.length
      if (cut(top.id) !== lead) changes += those.length / tried.length
    }
    return { id: q.id, changes, value: known - unknown }
  })
  const settle = weighed
    .sort((p, q) => q.value - p.value)
    .map(
      ({ id, changes }): OpenQuestion => ({
        question: id,
        title: questionOf(id)?.title ?? id,
        label: questionOf(id)?.label ?? id,
        moves: changes > LEAST_CHANGE,
        changes,
        says: sentence(
          changes > LEAST_CHANGE
            ? 'Known for certain, it would put another wood or cut first in about {share} of cases.'
            : 'Whatever the answer, the same comes first.',
          { share: quantity('percent', changes, computed(reference, 'share')) }
        )
      })
    )
  const count = (n: number) => quantity('count', n, computed(reference, 'share'))
  const tenths = Math.round((10 * firstIn) / tried.length)
  const openWords = open.length === 1 ? 'your open question' : `your ${open.length} open questions`
  const movers = settle
    .filter((s) => s.moves)
    .slice(0, 3)
    .map((s) => `“${s.label.toLowerCase()}”`)
  const text =
    lead === 'none'
      ? 'As far as it is answered, nothing passes.'
      : tenths === 0
        ? `It is the safest on average, but it seldom comes first outright: ${openWords} ${open.length === 1 ? 'leaves' : 'leave'} the choice wide open.`
        : tenths >= 10
          ? `It comes first whichever way ${openWords} ${open.length === 1 ? 'turns' : 'turn'} out.`
          : `It comes first in about {first} of {of} ways ${openWords} could turn out.`
  const tail = movers.length > 0 ? ` Answer ${listed(movers)} and most of that is settled.` : ''
  return { says: sentence(text + tail, { first: count(tenths), of: count(10) }), settle }
}
