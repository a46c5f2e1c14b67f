/** Two options held against each other: their figures in pairs, which is better on each point, and what separates them. */
import type { Quantity, Sentence } from '../../data/quantity'
import { differences, LITTLE_BETWEEN } from '../brief/compare'
import type { Judged, Judging } from '../judge'
import { reportOf } from '../report'
import { bare, computed, lean, quantity } from '../say'
import { criterionMatters } from '../score'
import { CRITERIA, type Criterion, type Option, type OptionReport } from '../types'

export type FigureId = keyof OptionReport['figures']

/** Figures that two options are compared by, in the order in which they are read. */
const PAIRED: readonly FigureId[] = [
  'section',
  'shoulderGap',
  'faceShrinkage',
  'twist',
  'checkOpening',
  'moistureDelivered',
  'readyWeeks',
  'durabilityClass',
  'stickWeight',
  'timberCost',
  'jobCost'
]

export interface Side {
  readonly option: Option
  readonly wood: string
  readonly said: string
  readonly short: string
  readonly heartSays: string
  readonly seasoningSays: string
  readonly in: boolean
  /** What is held against this one and not against the other: why it is out, else its cautions. */
  readonly against: readonly Sentence[]
}

export interface Pair {
  readonly figure: FigureId
  /** null where the figure does not exist for it, such as checks in a piece free of heart. */
  readonly a: Quantity | null
  readonly b: Quantity | null
}

export interface PointBetween {
  readonly criterion: Criterion
  /** null where they do equally well. */
  readonly better: 'a' | 'b' | null
  readonly weight: Quantity
  /** What the point adds to the better one's lead, in points of 100: weight × difference of the scores. */
  readonly by: Quantity
}

export interface SideBySide {
  readonly a: Side
  readonly b: Side
  readonly figures: readonly Pair[]
  /** Points that tell anything in this job, those that separate the two most first. */
  readonly points: readonly PointBetween[]
  /** About the second against the first, weightiest first. */
  readonly says: readonly Sentence[]
}

/** Two scores nearer than this are alike: rounding. */
const ALIKE = 1e-9

function sideOf(report: OptionReport, other: OptionReport): Side {
  const known = new Set(other.reasons.map((r) => r.rule))
  const effect = report.in ? 'caution' : 'out'
  const own = report.reasons.filter((r) => r.effect === effect && (effect === 'out' || !known.has(r.rule)))
  const { option, wood, said, short, heartSays, seasoningSays } = report
  return {
    option,
    wood,
    said,
    short,
    heartSays,
    seasoningSays,
    in: report.in,
    against: own.map((r) => lean(r.short))
  }
}

/** Hold two judged options of one judging against each other. Figures name their formula and source, not what went in. */
export function sideBySide(a: Judged, b: Judged, { context: c, weights }: Judging): SideBySide {
  const [one, two] = [reportOf(a, c, null), reportOf(b, c, null)]
  const points = CRITERIA.filter((id) => criterionMatters(id, c.facts))
    .map((criterion) => ({ criterion, by: 100 * weights[criterion] * (one.scores[criterion] - two.scores[criterion]) }))
    .sort((p, q) => Math.abs(q.by) - Math.abs(p.by))
  const told = differences(one, two, weights, c).map(lean)
  return {
    a: sideOf(one, two),
    b: sideOf(two, one),
    figures: PAIRED.map((figure) => {
      const [x, y] = [one.figures[figure], two.figures[figure]]
      return { figure, a: x && bare(x), b: y && bare(y) }
    }).filter((pair) => pair.a !== null || pair.b !== null),
    points: points.map(({ criterion, by }) => ({
      criterion,
      better: Math.abs(by) < ALIKE ? null : by > 0 ? 'a' : 'b',
      weight: quantity('percent', weights[criterion], computed(c.reference, 'total')),
      by: quantity('index', Math.abs(by), computed(c.reference, 'total'))
    })),
    says: told.length > 0 ? told : [LITTLE_BETWEEN]
  }
}
