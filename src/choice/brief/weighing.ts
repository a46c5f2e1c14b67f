/** How far the choice hangs on what each point weighs: every way of weighing that agrees with the client's order. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import { limit } from '../facts'
import { type Firsts, firstShares, undominated, weightSpace } from '../firm/acceptability'
import type { Judged, Judging } from '../judge'
import { HEART_SAYS } from '../report'
import { capital, computed, quantity, sentence } from '../say'
import { criterionMatters, totalOf } from '../score'
import { CRITERIA, type Criterion, type OtherFirst, type WeightReport } from '../types'
import { costFactor } from '../weights'
import { type Confidence, confidence } from './confidence'
import { cut } from './sure'

type Weights = Readonly<Record<Criterion, number>>

/** Others worth telling of. */
const MOST = 3

const WORDS: Readonly<Record<Criterion, string>> = {
  cost: 'cost',
  movement: 'staying put',
  durability: 'lasting',
  look: 'the look',
  stoutness: 'slender timbers',
  time: 'being ready soon',
  local: 'growing near by'
}

/** Weights over the points that tell anything here, summing to 1. */
function telling(weights: Weights, matters: readonly Criterion[]): Weights {
  const sum = matters.reduce((s, id) => s + weights[id], 0)
  return Object.fromEntries(CRITERIA.map((id) => [id, matters.includes(id) ? weights[id] / sum : 0])) as Weights
}

/** `own` with the named weights moved to where they are in `there`; the rest share what is left as before. */
function withNamed(own: Weights, there: Weights, named: readonly Criterion[]): Weights {
  const sum = (w: Weights, ids: readonly Criterion[]) => ids.reduce((s, id) => s + w[id], 0)
  const rest = CRITERIA.filter((id) => !named.includes(id))
  const left = sum(own, rest)
  const factor = left > 0 ? (1 - sum(there, named)) / left : 0
  return Object.fromEntries(CRITERIA.map((id) => [id, named.includes(id) ? there[id] : own[id] * factor])) as Weights
}

/** First under some weights, as the judging orders them: the highest total, then the id. */
const firstUnder = (options: readonly Judged[], weights: Weights): Judged | undefined => {
  let best: Judged | undefined
  let most = Number.NEGATIVE_INFINITY
  for (const j of options) {
    const total = totalOf(j.scores, weights)
    if (total > most) {
      most = total
      best = j
    }
  }
  return best
}

const leadsUnder = (options: readonly Judged[], weights: Weights): string =>
  cut(firstUnder(options, weights)?.facts.option.id ?? '')

/**
 * The fewest points, and of as few those that differ most, whose weights alone put the wood and cut `wanted` first; none where it
 * is first as it is. All of them together always do, for then the weights are those `there`.
 */
function namedFor(
  wanted: string,
  there: Weights,
  own: Weights,
  matters: readonly Criterion[],
  options: readonly Judged[]
): Criterion[] {
  const by = (ids: readonly Criterion[]) => ids.reduce((s, id) => s + Math.abs(there[id] - own[id]), 0)
  const sets = Array.from({ length: 2 ** matters.length }, (_, n) => matters.filter((_, k) => (n >> k) & 1))
  const found = sets
    .sort((p, q) => p.length - q.length || by(q) - by(p))
    .find((ids) => leadsUnder(options, withNamed(own, there, ids)) === wanted)
  return [...(found ?? matters)].sort((p, q) => Math.abs(there[q] - own[q]) - Math.abs(there[p] - own[p]))
}

/** Shares by wood and cut, with the option of each that comes first most often. */
function byCut(options: readonly Judged[], firsts: Firsts) {
  const cuts = new Map<string, { share: number; most: number; best: number }>()
  for (const [i, j] of options.entries()) {
    const share = firsts.share[i] ?? 0
    const key = cut(j.facts.option.id)
    const known = cuts.get(key) ?? { share: 0, most: -1, best: i }
    cuts.set(key, {
      share: known.share + share,
      ...(share > known.most ? { most: share, best: i } : { most: known.most, best: known.best })
    })
  }
  return cuts
}

/**
 * The share of all weights agreeing with the client's order that puts the leading wood and cut first, the others that some
 * put first, and whose weights those are. The scores stay as judged; how safe each is where they do not, its confidence says.
 * Source: lahdelma-salminen-2001, acceptability.
 * @param ways the judging of every way in which the open answers turn out; the one as answered where none is open
 */
export function weightReport(
  lead: Judged,
  { context: c, judged, weights }: Judging,
  ways: readonly Judging[]
): WeightReport {
  const { facts, reference } = c
  const safety = confidence(ways)
  // Alike in all scores, the judging puts the lower id first.
  const standing = judged.filter((j) => j.in).sort((p, q) => (p.facts.option.id < q.facts.option.id ? -1 : 1))
  const matters = CRITERIA.filter((id) => criterionMatters(id, facts))
  // What another equals or betters on every point is first under no weights at all.
  const options = undominated(standing.map((j) => matters.map((id) => j.scores[id]))).flatMap((i) => standing[i] ?? [])
  const firsts = firstShares(
    options.map((j) => CRITERIA.map((id) => j.scores[id])),
    weightSpace(CRITERIA.length, {
      order: facts.order?.map((id) => CRITERIA.indexOf(id)) ?? null,
      matters: CRITERIA.map((id) => matters.includes(id)),
      factors: CRITERIA.map((id) => (id === 'cost' ? costFactor(facts.budget) : 1))
    })
  )
  const cuts = byCut(options, firsts)
  const origin = computed(reference, 'acceptability', {
    'weights tried': quantity('count', firsts.samples, computed(reference, 'acceptability')),
    'may be off by': quantity('percent', firsts.error, computed(reference, 'acceptability'))
  })
  const percent = (share: number) => quantity('percent', share, origin)
  const heldFigure = (held: number) =>
    quantity(
      'percent',
      held,
      computed(reference, 'confidence', {
        'cases tried': quantity('count', safety.cases, computed(reference, 'confidence')),
        'may be off by': quantity('percent', safety.error, computed(reference, 'confidence'))
      })
    )
  const own = telling(weights, matters)
  const leading = cut(lead.facts.option.id)
  const others = [...cuts]
    // Less than the error of counting is not told apart from nothing.
    .filter(([key, { share }]) => key !== leading && share > firsts.error)
    .sort(([, p], [, q]) => q.share - p.share)
    .slice(0, MOST)
    .flatMap(([, { share, best }]): OtherFirst[] => {
      const other = options[best]
      const central = firsts.central[best]
      if (!other || !central) return []
      const there = weightsOf(central)
      const held = safety.of(cut(other.facts.option.id), there)
      const named = namedFor(cut(other.facts.option.id), there, own, matters, options)
      const says = otherSays(other, percent(share), there, own, named, heldFigure(held), (w) =>
        quantity('percent', w, computed(reference, 'central-weight'))
      )
      return [{ option: other.facts.option.id, share, weights: there, named, confidence: held, says }]
    })
  const share = cuts.get(leading)?.share ?? 0
  const ordered = facts.order !== null
  const says = sentence(firmness(share, ordered, leadsUnder(options, own) === leading, reference), {
    share: percent(share)
  })
  const middle = firsts.central[cuts.get(leading)?.best ?? -1]
  const held = middle ? safety.of(leading, weightsOf(middle)) : null
  return {
    ordered,
    share,
    samples: firsts.samples,
    error: firsts.error,
    confidence: held,
    confidenceError: safety.error,
    says,
    holds: held === null ? null : holdsSays(heldFigure(held), safety, reference),
    others
  }
}

const weightsOf = (list: readonly number[]): Weights =>
  Object.fromEntries(CRITERIA.map((id, k) => [id, list[k] ?? 0])) as Weights

/** How safe the leader is at the middle of the weights that put it first. */
function holdsSays(held: Quantity, safety: Confidence, reference: Reference): Sentence {
  const varies = safety.open ? 'Timber varies, and your open answers may fall either way' : 'No two timbers are alike'
  return sentence(
    `${varies}: weighed in the middle of the ways that put it first, it stays first in {held} of such cases, give or take {error}.`,
    { held, error: quantity('percent', safety.error, computed(reference, 'confidence')) }
  )
}

function firmness(share: number, ordered: boolean, leads: boolean, reference: Reference): string {
  const all = `Of all ways to weigh the points${ordered ? ' in your order' : ''}, it comes first in {share}`
  if (!leads)
    return `${all}: it leads as the safer over your open answers, so settle those before you weigh the points.`
  if (share === 1) return `${all}: however you weigh them, the choice stays.`
  if (share >= limit(reference, 'share-firm')) return `${all}: the choice hardly hangs on that.`
  if (share >= limit(reference, 'share-holds')) return `${all}: it holds for most, not for all.`
  return ordered
    ? `${all}: the choice hangs on how much each point weighs, so see whose weights suit another.`
    : `${all}: the choice hangs on what matters to you, so put the points in order.`
}

function otherSays(
  other: Judged,
  share: Quantity,
  there: Weights,
  own: Weights,
  named: readonly Criterion[],
  held: Quantity,
  weight: (w: number) => Quantity
): Sentence {
  const values: Record<string, Quantity> = { share }
  const more = named.filter((id) => there[id] > own[id])
  const less = named.filter((id) => there[id] <= own[id])
  const told = more[0] ?? less[0]
  const part = (id: Criterion) => {
    values[`${id}There`] = weight(there[id])
    values[`${id}Own`] = weight(own[id])
    return `${WORDS[id]}, {${id}There}${id === told ? ' of the weight' : ''} against {${id}Own} now`
  }
  const name = `${capital(other.facts.wood.said)}, ${HEART_SAYS[other.facts.option.heart]}, {share}`
  if (named.length === 0)
    return sentence(`${name}: first as you answered, but less safe over what is still open.`, values)
  const cares = [...more.map(part), ...less.map(part)]
  // "more about" before the first that weighs more, "less about" before the first that weighs less.
  if (more.length > 0) cares[0] = `more about ${cares[0]}`
  if (less.length > 0) cares[more.length] = `less about ${cares[more.length]}`
  values['held'] = held
  return sentence(
    `${name}: first for someone who cares ${cares.join(', and ')}; it stays so in {held} of cases.`,
    values
  )
}
