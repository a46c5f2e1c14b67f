/** About the client: what matters most and how firmly, and what they were unsure of. */
import type { Sentence } from '../../data/quantity'
import type { Reference } from '../../data/reference'
import type { Brief } from '../brief-types'
import type { ClientDetail, UnsureLine } from '../detail-types'
import type { Judging } from '../judge'
import { questionOf } from '../questions'
import { computed, quantity, sentence } from '../say'
import { criterionMatters } from '../score'
import { CRITERIA, type Criterion, type JobLine } from '../types'

const named = (id: Criterion): string => {
  const order = questionOf('order')
  return (order?.kind === 'order' ? order.choices.find((choice) => choice.id === id)?.label : undefined) ?? id
}

/** Points that tell anything in this job, weightiest first; weights sum to 1 over them. */
function matters({ context: { facts, reference }, weights }: Judging): ClientDetail['matters'] {
  const telling = CRITERIA.filter((id) => criterionMatters(id, facts))
  const sum = telling.reduce((s, id) => s + weights[id], 0)
  const given = (id: Criterion) => facts.order?.indexOf(id) ?? 0
  return [...telling]
    .sort((p, q) => weights[q] - weights[p] || given(p) - given(q))
    .map((criterion) => ({
      criterion,
      name: named(criterion),
      weight: quantity('percent', sum > 0 ? weights[criterion] / sum : 0, computed(reference, 'weight-of-point'))
    }))
}

function unsureLines(job: readonly JobLine[], sure: Brief['sure']): UnsureLine[] {
  const lines = job
    .filter((line) => line.assumed)
    .map((line): UnsureLine => {
      const open = sure.settle.find((s) => s.question === line.question)
      return { label: line.label, assumed: line.says, says: open?.says ?? null, moves: open?.moves ?? false }
    })
  // What could change the choice comes first.
  return [...lines.filter((l) => l.moves), ...lines.filter((l) => !l.moves)]
}

/** How much was left open, and how often the choice stands whatever comes of it. */
function openSays(open: number, { firstIn, of }: Brief['sure'], reference: Reference): Sentence[] {
  if (open === 0) return [sentence('They answered every question that matters here.')]
  const left = `They left ${open === 1 ? 'one question' : `${open} questions`} open; what was taken instead is told below.`
  if (of <= 1) return [sentence(left)]
  const count = (n: number) => quantity('count', n, computed(reference, 'share'))
  return [
    sentence(`${left} This wood and cut comes first in {first} of {of} ways in which those could turn out.`, {
      first: count(firstIn),
      of: count(of)
    })
  ]
}

/** How far the choice hangs on what each point weighs. */
function firmSays(ordered: boolean, { weights }: Brief['sure']): Sentence[] {
  const share = weights?.says.values?.['share']
  if (!share) return []
  return [
    sentence(
      ordered
        ? 'They put the points in order. Of all ways to weigh them in that order, it comes first in {share}.'
        : 'They did not put the points in order. Of all ways to weigh them, it comes first in {share}.',
      { share }
    )
  ]
}

export function clientDetail(judging: Judging, job: readonly JobLine[], sure: Brief['sure']): ClientDetail {
  const { facts, reference } = judging.context
  return {
    says: [...openSays(facts.assumed.length, sure, reference), ...firmSays(facts.order !== null, sure)],
    matters: matters(judging),
    ordered: facts.order !== null,
    unsure: unsureLines(job, sure)
  }
}
