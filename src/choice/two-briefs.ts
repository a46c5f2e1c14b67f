/** Two briefs side by side: what was answered differently, what comes out, and the difference in sentences. */
import type { Quantity, Sentence } from '../data/quantity'
import type { Brief } from './brief-types'
import { listed, middle, sentence } from './say'
import type { OptionReport } from './types'

export interface TwoRow {
  readonly id: string
  readonly label: string
  /** null where that brief does not have it. */
  readonly first: Sentence | null
  readonly second: Sentence | null
  readonly differs: boolean
}

export interface TwoBriefs {
  readonly says: readonly Sentence[]
  /** Questions that matter to either, in the order they are asked. */
  readonly answers: readonly TwoRow[]
  readonly outcomes: readonly TwoRow[]
}

/** What a sentence says, without where it comes from. */
const bare = (s: Sentence | null): string =>
  s === null
    ? ''
    : JSON.stringify([
        s.text,
        Object.entries(s.values ?? {}).map(([k, { kind, value, low, high }]) => [k, kind, value, low, high])
      ])

const row = (id: string, label: string, first: Sentence | null, second: Sentence | null): TwoRow => ({
  id,
  label,
  first,
  second,
  differs: bare(first) !== bare(second)
})

const alone = (value: Quantity | null | undefined): Sentence | null =>
  value === null || value === undefined ? null : sentence('{value}', { value })

function answerRows(a: Brief, b: Brief): TwoRow[] {
  // The second's own questions come where its list has them: after the one that both have before it.
  const ids = a.job.map((line) => line.question)
  for (const [i, { question }] of b.job.entries())
    if (!ids.includes(question)) ids.splice(ids.indexOf(b.job[i - 1]?.question ?? '') + 1, 0, question)
  return ids.map((id) => {
    const of = (brief: Brief) => {
      const line = brief.job.find((l) => l.question === id)
      return line ? (line.assumed ? { ...line.says, text: `${line.says.text} (assumed)` } : line.says) : null
    }
    const label = [...a.job, ...b.job].find((l) => l.question === id)?.label ?? id
    return row(id, label, of(a), of(b))
  })
}

const nameOf = (r: OptionReport): string => `${r.said}, ${r.heartSays}, ${r.seasoningSays}`

/** Sizes of the leading option's sticks. */
function sizesOf(brief: Brief): Sentence | null {
  if (brief.lead === null) return null
  const lines = brief.detail.woods[0]?.cutList.lines ?? []
  const values = Object.fromEntries(lines.map((l, i) => [`s${i}`, l.section]))
  return lines.length > 0 ? sentence(lines.map((l, i) => `${l.name.toLowerCase()} {s${i}}`).join('; '), values) : null
}

function firmness(brief: Brief): Sentence | null {
  const share = brief.sure.weights?.says.values?.['share']
  return share ? sentence('First under {share} of all ways to weigh the points', { share }) : null
}

/** Order, kept by name, of figures that are set beside each other. */
const FIGURES = [
  ['moistureDelivered', 'Moisture when delivered'],
  ['moistureInService', 'Moisture in place'],
  ['shoulderGap', 'Gap at a shoulder'],
  ['twist', 'Twist at a corner, up to'],
  ['checkOpening', 'Checks open, at most'],
  ['durabilityClass', 'Durability class'],
  ['stickWeight', 'Heaviest stick'],
  ['logDiameter', 'Log needed'],
  ['volume', 'Timber, to buy'],
  ['timberCost', 'Timber cost'],
  ['jobCost', 'Whole job'],
  ['readyWeeks', 'Ready to raise in']
] as const

function outcomeRows(a: Brief, b: Brief): TwoRow[] {
  const words = (of: (brief: Brief) => string | null) => (brief: Brief) => {
    const text = of(brief)
    return text === null ? null : sentence(text)
  }
  const both = (id: string, label: string, of: (brief: Brief) => Sentence | null) => row(id, label, of(a), of(b))
  const open = (brief: Brief) => brief.job.filter((l) => l.assumed).length
  return [
    both(
      'wood',
      'Wood',
      words((x) => x.lead?.wood ?? 'Nothing passes')
    ),
    both(
      'heart',
      'Cut',
      words((x) => x.lead?.heartSays ?? null)
    ),
    both(
      'seasoning',
      'Dryness',
      words((x) => x.lead?.seasoningSays ?? null)
    ),
    both(
      'runner',
      'Next best',
      words((x) => x.runnerUp?.wood ?? null)
    ),
    both('sizes', 'Sizes', sizesOf),
    ...FIGURES.map(([id, label]) =>
      both(id, label, (x) =>
        // Free of heart centre: no check to the pith.
        x.lead && id === 'checkOpening' && x.lead.figures[id] === null
          ? sentence('surface only')
          : alone(x.lead?.figures[id])
      )
    ),
    both('firm', 'How firm', firmness),
    both(
      'open',
      'Left open',
      words((x) => (open(x) === 0 ? 'nothing' : `${open(x)} of ${x.job.length} questions`))
    )
  ].filter((r) => r.first !== null || r.second !== null)
}

/** How the wood that leads one brief stands in the other. */
function elsewhere(of: Brief, there: Brief, name: string): Sentence[] {
  const line = there.woods.find((w) => w.species === of.lead?.option.species)
  if (!of.lead || there.lead?.option.species === of.lead.option.species) return []
  const wood = of.lead.wood
  if (!line) return [sentence(`${wood} is not carried by the shop of the ${name}.`)]
  if (line.in && line.report.rank !== null)
    return [sentence(`In the ${name}, ${of.lead.said} comes in at no. ${line.report.rank}.`)]
  const why = line.report.reasons.find((r) => r.effect === 'out')?.short
  return [
    why
      ? {
          ...why,
          text: `In the ${name}, ${of.lead.said} is out: ${why.text.charAt(0).toLowerCase()}${why.text.slice(1)}.`
        }
      : sentence(`In the ${name}, ${of.lead.said} is out.`)
  ]
}

const number = (q: Quantity | undefined): number => (typeof q?.value === 'number' ? q.value : 0)

function saysOf(a: Brief, b: Brief, answers: readonly TwoRow[]): Sentence[] {
  const says: Sentence[] = []
  const [p, q] = [a.lead, b.lead]
  const differing = answers.filter((r) => r.differs).map((r) => r.label.toLowerCase())
  if (p && q)
    says.push(
      sentence(
        p.option.id === q.option.id
          ? `Both come to ${nameOf(p)}.`
          : `The first comes to ${nameOf(p)}; the second to ${nameOf(q)}.`
      )
    )
  else
    says.push(
      sentence(
        p || q
          ? `Only the ${p ? 'first' : 'second'} comes to a wood: ${nameOf((p ?? q) as OptionReport)}. In the other nothing passes.`
          : 'In neither does anything pass.'
      )
    )
  says.push(...elsewhere(a, b, 'second'), ...elsewhere(b, a, 'first'))
  if (p && q) {
    const [x, y] = [p.figures, q.figures]
    const nearly =
      Math.abs(number(x.jobCost) - number(y.jobCost)) < 0.02 * Math.max(number(x.jobCost), number(y.jobCost))
    says.push(
      nearly
        ? sentence('Both cost about the same: some {first} for the whole job.', { first: middle(x.jobCost) })
        : sentence(
            `The ${number(x.jobCost) < number(y.jobCost) ? 'first' : 'second'} is the cheaper: the whole job comes to about {first} in the first, {second} in the second, the timber of it to {t1} and {t2}.`,
            {
              first: middle(x.jobCost),
              second: middle(y.jobCost),
              t1: middle(x.timberCost),
              t2: middle(y.timberCost)
            }
          )
    )
    if (Math.round(number(x.readyWeeks)) !== Math.round(number(y.readyWeeks)))
      says.push(
        sentence('From the order, the first could stand in {first}, the second in {second}.', {
          first: x.readyWeeks,
          second: y.readyWeeks
        })
      )
  }
  if (a.shop.name !== b.shop.name)
    says.push(sentence(`Prices and woods come from two sheets: ${a.shop.name}, and ${b.shop.name}.`))
  says.push(
    sentence(
      differing.length === 0
        ? 'Every answer is the same.'
        : `${differing.length === 1 ? 'One answer differs' : `${differing.length} answers differ`}: ${listed(differing)}.`
    )
  )
  return says
}

/** Set two briefs side by side. Nothing is worked out anew: both say what they say alone. */
export function twoBriefs(a: Brief, b: Brief): TwoBriefs {
  const answers = answerRows(a, b)
  return { says: saysOf(a, b, answers), answers, outcomes: outcomeRows(a, b) }
}
