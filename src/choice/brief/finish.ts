/** The section on look and upkeep: the finish wanted on the leading woods, when, how often, for how much, and how it looks. */
import type { Sentence } from '../../data/quantity'
import { originOf, type Sourced } from '../../data/reference'
import type { FinishContent } from '../../data/schema'
import { clockOf } from '../clock/clock'
import type { ClockReport } from '../clock/types'
import { coatMoisture, finishLine } from '../finish/lines'
import { isIndoors, laterYears, plannedYears, woodLook } from '../finish/looks'
import { coatYears } from '../finish/years'
import type { Judged } from '../judge'
import type { Context } from '../rule'
import { computed, PRACTICE, quantity, sentence } from '../say'
import type { FinishReport, FinishView } from '../types'
import { clockJobOf } from './clock'

/** Woods shown beside each other: enough to compare, few enough to see. */
const MOST = 4

/** The leader, the second, the cheapest that does the job, then as they come. */
function shownWoods(shown: Judged, best: readonly Judged[]): (readonly [Judged, string | null])[] {
  const still = best.filter((j) => j.in)
  if (still.length === 0) return [[shown, null]]
  const cheapest = still.reduce((a, b) => (b.facts.jobCost < a.facts.jobCost ? b : a))
  const first = still.slice(0, MOST)
  const picked = first.includes(cheapest) ? first : [...first.slice(0, MOST - 1), cheapest]
  return picked.map((j, i) => [
    j,
    [i === 0 && 'first choice', i === 1 && 'second', j === cheapest && 'cheapest'].filter(Boolean).join(', ') || null
  ])
}

const lowered = (text: string) => `${text.charAt(0).toLowerCase()}${text.slice(1)}`

function laterSays(finish: FinishContent, c: Context): string {
  const years = laterYears(finish, c.facts, c.reference)
  if (isIndoors(c.facts)) return `After ${years} years of light`
  if (finish.build === 'none') return `After ${years} years outside`
  return plannedYears(c.facts, c.reference) === null
    ? `After ${years} years, never recoated`
    : `After ${years} years, before the next coat`
}

function viewOf(finish: FinishContent, woods: readonly Judged[], c: Context): FinishView {
  return {
    id: finish.id,
    name: finish.id === 'grey' && isIndoors(c.facts) ? 'Left bare' : finish.name,
    later: laterSays(finish, c),
    looks: woods.map(({ facts: { wood } }) => woodLook(wood, finish, coatYears(wood, finish, c), c.facts, c.reference))
  }
}

/** What the finish is, how long a coat stands, and whether the upkeep planned keeps it. */
function finishSays(finish: FinishContent, wood: Judged['facts']['wood'], c: Context): Sentence[] {
  const { facts, reference } = c
  const own = originOf(finish as Sourced)
  const indoors = isIndoors(facts)
  if (indoors && finish.build === 'none')
    return [
      sentence('Left bare indoors, wood does not grey: light yellows or browns it.', undefined, [PRACTICE], 'practice')
    ]
  const bare = finish.build === 'none' ? ' The job’s price counts a coat all the same.' : ''
  const says = [sentence(`${finish.name}: ${lowered(finish.says)}${bare}`, undefined, own.sources, finish.mark)]
  const life = coatYears(wood, finish, c)
  if (life && !indoors) {
    const planned = plannedYears(facts, reference)
    const years = quantity(
      'years',
      (life.low + life.high) / 2,
      { ...computed(reference, 'coat-years'), sources: own.sources },
      life
    )
    const where = facts.exposure === 'roofed' ? 'Under a deep roof' : 'In the weather'
    const kept =
      planned === null
        ? ' With no upkeep planned, leaving the wood to grey is the honest finish.'
        : planned > life.high
          ? ` The upkeep you plan, every ${planned} years or so, comes too late for it.`
          : planned > life.low
            ? ` The upkeep you plan, every ${planned} years or so, is just about enough.`
            : ''
    says.push(sentence(`${where} such a coat lasts about {years}.${kept}`, { years }))
  }
  const needs = coatMoisture(finish, c)
  if (needs)
    says.push(
      finish.build === 'film'
        ? sentence('The outside must be at {needs} or drier before it is coated: a film over wet wood blisters.', {
            needs
          })
        : sentence('The outside must be at {needs} or drier, or nothing soaks in. What has soaked in cannot peel.', {
            needs
          })
    )
  return says
}

/** The light that a dark heartwood lacks: computed, and said of the woods shown. */
function reachSays(view: FinishView, finish: FinishContent, woods: readonly Judged[]): Sentence[] {
  const dark = woods.filter((_, i) => view.looks[i]?.reached === false)
  if (dark.length === 0) return []
  const values = Object.fromEntries(
    dark.map(({ facts: { wood } }, i) => [`own${i}`, quantity('index', wood.colour.L, wood.colour.origin)])
  )
  const names = dark.map(({ facts: { wood } }, i) => `${i === 0 ? wood.name : wood.said} {own${i}}`)
  return [
    sentence(
      `Too dark to come as light as that: ${names.join(', ')}, where the finish aims at {aim} (0 is black, 100 white). A see-through finish takes light away and gives next to none back.`,
      {
        ...values,
        aim: quantity('index', finish.targetL ?? 0, { mark: 'practice', sources: [{ key: 'bentwise-scale' }] })
      }
    )
  ]
}

const CAUTION: readonly Sentence[] = [
  sentence(
    'Colours on a screen mislead, and boards of one tree differ more than these do. Ask for a sample finished on the wood itself, and look at it in your own light.',
    undefined,
    [PRACTICE],
    'practice'
  )
]

/** @param best the best option of each wood, in the order of merit */
export function finishSection(shown: Judged, best: readonly Judged[], c: Context, clock: ClockReport): FinishReport {
  const { facts, reference } = c
  const finish = reference.finishes.find((f) => f.id === facts.finish) as FinishContent
  const picked = shownWoods(shown, best)
  const woods = picked.map(([j]) => j)
  const views = reference.finishes.map((f) => viewOf(f, woods, c))
  const chosen = views.find((v) => v.id === finish.id) as FinishView
  return {
    says: [...finishSays(finish, shown.facts.wood, c), ...reachSays(chosen, finish, woods)],
    chosen: finish.id,
    views,
    lines: picked.map(([j, role]) =>
      finishLine(j, role, finish, j === shown ? clock.curve : clockOf(clockJobOf(j, c), reference), c)
    ),
    caution: CAUTION
  }
}
