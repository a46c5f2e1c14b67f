/** What really separates two options, in sentences, weightiest first. */
import type { Quantity, Sentence } from '../../data/quantity'
import type { Context } from '../rule'
import { capital, computed, listed, quantity, sentence } from '../say'
import { criterionMatters } from '../score'
import { CRITERIA, type Criterion, type OptionReport } from '../types'

/** Said where nothing tells two options apart. */
export const LITTLE_BETWEEN = sentence('Little separates them: ask which your framer would rather cut, and see both.')

const value = (q: Quantity): number => (typeof q.value === 'number' ? q.value : q.value[0] * q.value[1])

/** Difference between two gaps that an eye would notice, mm. */
const SEEN_GAP = 1

/** What it is about its look that sets one wood behind another. */
function lookWords(lead: OptionReport, other: OptionReport, c: Context): string {
  const of = (r: OptionReport) => {
    const traits = c.reference.woods.get(r.option.species)?.traits
    const set = c.reference.seasonings.get(r.option.seasoning)?.setsPitch ?? false
    return {
      knots: traits?.knots.level ?? 0,
      pitch: set ? 0 : (traits?.pitch.level ?? 0),
      heart: r.option.heart === 'boxed' ? 1 : 0
    }
  }
  const a = of(lead)
  const b = of(other)
  const words = [
    ...(b.knots > a.knots ? ['it is knottier'] : []),
    ...(b.pitch > a.pitch ? ['it may weep pitch'] : []),
    ...(b.heart > a.heart ? ['its heart inside makes it check'] : [])
  ]
  return words.length > 0 ? capital(listed(words)) : 'Its colour suits the finish less'
}

/** The sentence for one criterion, or null where the two are too near to tell apart. */
function sentenceFor(id: Criterion, lead: OptionReport, other: OptionReport, c: Context): Sentence | null {
  const a = lead.figures
  const b = other.figures
  const more = (x: number, y: number) => Math.abs(x - y) > 0.08 * Math.max(x, y, 1e-9)
  switch (id) {
    case 'cost': {
      if (!more(value(a.timberCost), value(b.timberCost))) return null
      const timber = value(b.timberCost) / value(a.timberCost) - 1
      const whole = value(b.jobCost) / value(a.jobCost) - 1
      const share = (n: number) =>
        quantity('percent', Math.abs(n), {
          ...computed(c.reference, 'times', { [other.short]: b.timberCost, [lead.short]: a.timberCost }),
          mark: a.timberCost.origin.mark
        })
      return sentence(
        `Its timber costs {timber} ${timber > 0 ? 'more' : 'less'}, the whole frame {whole} ${whole > 0 ? 'more' : 'less'}.`,
        { timber: share(timber), whole: share(whole) }
      )
    }
    case 'movement': {
      if (Math.abs(value(a.shoulderGap) - value(b.shoulderGap)) > SEEN_GAP)
        return sentence('Its shoulders open {other}, against {lead}.', { other: b.shoulderGap, lead: a.shoulderGap })
      if (lead.option.heart !== other.option.heart)
        return sentence(
          other.option.heart === 'boxed'
            ? 'It has its heart inside, so it checks.'
            : 'It is free of heart centre, so it checks less.'
        )
      return Math.abs(lead.scores.movement - other.scores.movement) > 0.04 &&
        Math.abs(value(a.twist) - value(b.twist)) > SEEN_GAP
        ? sentence('It may twist up to {other} out of true, against {lead}.', { other: b.twist, lead: a.twist })
        : null
    }
    case 'durability':
      if (value(a.durabilityClass) === value(b.durabilityClass)) return null
      return sentence(
        `Its heartwood lasts ${value(b.durabilityClass) < value(a.durabilityClass) ? 'longer' : 'less long'} outdoors: class {other}, against {lead}.`,
        {
          other: b.durabilityClass,
          lead: a.durabilityClass
        }
      )
    case 'stoutness':
      if (!more(value(a.section), value(b.section))) return null
      return sentence('It needs {other} where the first needs {lead}.', { other: b.section, lead: a.section })
    case 'time':
      if (Math.abs(value(a.readyWeeks) - value(b.readyWeeks)) < 2) return null
      return sentence('It can stand in {other}, against {lead}.', { other: b.readyWeeks, lead: a.readyWeeks })
    case 'look':
      if (Math.abs(lead.scores.look - other.scores.look) < 0.08) return null
      return sentence(
        other.scores.look > lead.scores.look ? 'It suits the look you want better.' : `${lookWords(lead, other, c)}.`
      )
    case 'local':
      if (Math.abs(lead.scores.local - other.scores.local) < 0.2) return null
      return sentence(other.scores.local > lead.scores.local ? 'It grows nearer by.' : 'It comes from further away.')
  }
}

/**
 * Sentences about `other` against `lead`, in the order in which the points weigh here.
 * @param which all that separates them, or only where the other is worse
 */
export function differences(
  lead: OptionReport,
  other: OptionReport,
  weights: Readonly<Record<Criterion, number>>,
  c: Context,
  which: 'all' | 'worse' = 'all'
): Sentence[] {
  return CRITERIA.filter(
    (id) => criterionMatters(id, c.facts) && (which === 'all' || other.scores[id] < lead.scores[id])
  )
    .map((id) => ({ id, by: Math.abs(weights[id] * (lead.scores[id] - other.scores[id])) }))
    .sort((p, q) => q.by - p.by)
    .map(({ id }) => sentenceFor(id, lead, other, c))
    .filter((s): s is Sentence => s !== null)
}
