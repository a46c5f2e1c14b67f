/**
 * Every drawing in use: named props, and what a person must be able to tell from it. Tests render each one and run
 * the accessibility checks over them. Figures are invented.
 */
import { type Attributes, type FunctionComponent, h, type VNode } from 'preact'
import type { Clock, ClockReport } from '../choice/clock/types'
import { QUESTIONS } from '../choice/questions'
import type { Answers } from '../choice/types'
import type { Origin, Quantity } from '../data/quantity'
import { CostBars, Money, Order, ScoreBars, Timeline } from './pictures/bars'
import { ClimateStrip, DecayMonths } from './pictures/charts'
import { DryingClock } from './pictures/DryingClock'
import { Elevation } from './pictures/Elevation'
import { Exposure } from './pictures/Exposure'
import { FrameKinds } from './pictures/FrameKinds'
import { Knots, LocalWoods, Pitch, Swatches, Upkeep } from './pictures/faces'
import { Joint, Load, Plan, Role, Stick } from './pictures/framing'
import { LogEndPair } from './pictures/LogEndPair'
import { QuestionPicture } from './pictures/QuestionPicture'
import { SizeLadder } from './pictures/SizeLadder'
import { FINISH_NAMES, ROUGH_SWATCHES } from './pictures/samples'

export interface Example {
  readonly name: string
  /** What a person must be able to tell from it. */
  readonly tells: string
  readonly node: VNode
}

const one = <P extends object>(name: string, tells: string, part: (props: P) => VNode, props: P): Example => ({
  name,
  tells,
  node: h(part as FunctionComponent<P>, props as P & Attributes) as VNode
})

const wave = (low: number, high: number, shift = 0) =>
  Array.from({ length: 12 }, (_, i) => low + ((high - low) * (1 - Math.cos(((i - shift) / 12) * 2 * Math.PI))) / 2)

/** A timber that dries evenly from green to a heated room: shell first, core last. */
function clockExample(): ClockReport {
  const days = Array.from({ length: 140 }, (_, i) => i * 14)
  const falls = (years: number, to: number) => days.map((day) => to + (0.6 - to) * Math.exp(-day / (365 * years)))
  const origin: Origin = { mark: 'placeholder', sources: [] }
  const moisture = (value: number): Quantity => ({ kind: 'moisture', value, origin })
  const curve: Clock = {
    felledMonth: 1,
    fibreSaturation: 0.3,
    service: 0.08,
    days,
    mean: falls(1, 0.1),
    low: falls(0.8, 0.09),
    high: falls(1.3, 0.12),
    shell: falls(0.3, 0.09),
    core: falls(1.6, 0.12),
    air: days.map((day) => 0.09 + 0.02 * Math.sin(day / 58)),
    toCome: days.map((day) => Math.exp(-day / 700)),
    milestones: (['felled', 'raised', 'settled'] as const).map((id, i) => {
      const day = [0, 120, 1946][i] ?? 0
      return { id, day, month: 1, mean: 0.2, low: 0.2, high: 0.2, shell: 0.2, core: 0.2, toCome: 0.5, profile: [] }
    }),
    half: 400,
    most: null,
    steepest: { day: 200, shell: 0.1, core: 0.3 }
  }
  const lines = curve.milestones.map(({ id, day }) => ({
    id,
    label: id === 'settled' ? '5 years on' : id,
    month: 'January',
    after: { kind: 'weeks', value: day / 7, origin } as const,
    mean: moisture(0.2),
    shell: moisture(0.2),
    core: moisture(0.2),
    toCome: { kind: 'percent', value: 0.5, origin } as const
  }))
  const asked: ClockReport['asked'] = {
    wood: 'invented',
    breadth: 203,
    depth: 203,
    place: 'nowhere',
    exposure: 'heated',
    seasoning: 'green',
    felledMonth: 1,
    yardWeeks: 0,
    kilnWeeks: 1,
    shopWeeks: 8,
    heating: 'first-winter'
  }
  return { asked, curve, lines, says: [] }
}

export const EXAMPLES: readonly Example[] = [
  one('FrameKinds, hall', 'which kind of frame is meant', FrameKinds, { chosen: 'room' as const }),
  one('Role, carries', 'a beam that carries against one that is only seen', Role, { role: 'carries' as const }),
  ...(['heated', 'unheated', 'roofed', 'weather', 'ground'] as const).map((at) =>
    one(`Exposure, ${at}`, 'where in or about the house the timber is', Exposure, { at })
  ),
  one('Climate', 'indoors is drier than outdoors, and when', ClimateStrip, {
    outdoor: wave(0.15, 0.12),
    service: wave(0.055, 0.105)
  }),
  one('Drying clock', 'how wet it is when, and what is still to come', DryingClock, { report: clockExample() }),
  one('Decay months', 'rot works in the warm months', DecayMonths, {
    months: [0, 0, 0, 2, 5, 9, 11, 10, 6, 2, 0, 0],
    total: 45
  }),
  one('Truss', 'span, height and pitch beside a person', Elevation, { span: 7315, pitch: 33.7, postHeight: 3048 }),
  one('Small porch', 'span, height and pitch beside a person', Elevation, { span: 2438, pitch: 18, postHeight: 2400 }),
  one('Beam', 'a beam between posts, the roof hidden', Elevation, {
    span: 4877,
    pitch: 33.7,
    postHeight: 2743,
    form: 'beam' as const
  }),
  one('Floor', 'joists on a beam, room above', Elevation, { span: 3658, postHeight: 2500, form: 'floor' as const }),
  one('Wide low truss', 'a low roof over a wide hall', Elevation, { span: 15240, pitch: 14, postHeight: 3600 }),
  one('Plan, six', 'how many bents and how far apart', Plan, { count: 6, spacing: 3658, span: 7315 }),
  one('Plan, two', 'how many bents and how far apart', Plan, { count: 2, spacing: 3048, span: 3658 }),
  one('Load, roof in snow', 'snow lies on the roof, the roof on the timbers', Load, {
    carries: 'roof' as const,
    snow: 3350
  }),
  one('Load, floor', 'people stand on what the timbers carry', Load, { carries: 'floor' as const }),
  one('Load, none', 'nothing rests on it', Load, { carries: 'none' as const }),
  one('Stick', 'how long a timber is against a person', Stick, {
    length: 7315,
    section: [203, 305] as const,
    limit: true
  }),
  one('Log ends', 'boxed opens, free of heart does not and needs a bigger log', LogEndPair, { dims: true }),
  one('Joint, open', 'the shoulder stands off the post', Joint, { gap: 9 }),
  one('Joint, tight', 'the shoulder meets the post', Joint, { gap: 0 }),
  one('Swatches', 'how six finishes look on three woods', Swatches, {
    woods: ROUGH_SWATCHES,
    finishes: FINISH_NAMES,
    chosen: 1
  }),
  one('Knots, some', 'few, some and many knots', Knots, { level: 1 }),
  one('Pitch', 'resin that weeps against resin that is set', Pitch, { matters: true }),
  one('Upkeep, often', 'how many coats in thirty years', Upkeep, { every: [2, 3] as const }),
  one('Upkeep, none', 'no coats', Upkeep, {}),
  one('Timeline', 'what takes how many weeks', Timeline, {
    total: 84,
    items: [
      { label: 'felled, dried, cut', from: 0, to: 49 },
      { label: 'cut timbers wait', from: 49, to: 52 },
      { label: 'raised, not yet heated', from: 52, to: 72 },
      { label: 'lived in', from: 72, to: 84 }
    ]
  }),
  one('Money', 'timber is one part of the bill', Money, { share: 0.28 }),
  one('Map', 'near, next, far', LocalWoods, {
    reach: 1,
    place: 'Duluth',
    near: ['Red pine', 'White spruce'],
    far: ['Douglas-fir', 'Redwood']
  }),
  one('Order', 'what comes first', Order, {
    items: [
      'It stays put',
      'It lasts where it stands',
      'It costs less',
      'It looks as wanted',
      'Slender timbers',
      'It is ready soon',
      'It grew near by'
    ]
  }),
  one('Score bars', 'where an option is strong, and how much that counts', ScoreBars, {
    scores: { cost: 0.55, movement: 0.9, durability: 0.6, look: 0.8, stoutness: 0.75, time: 0.4, local: 0.2 },
    weights: { cost: 0.15, movement: 0.35, durability: 0.15, look: 0.2, stoutness: 0.05, time: 0.05, local: 0.05 },
    against: { cost: 0.8, movement: 0.4, durability: 0.9, look: 0.5, stoutness: 0.6, time: 0.7, local: 0.9 }
  }),
  one('Cost bars', 'what timber and job cost, option by option', CostBars, {
    items: [
      { label: 'Douglas-fir, free, kiln', timber: 41200, rest: 98000, text: '$139,000', lead: true },
      { label: 'White oak, boxed, green', timber: 38900, rest: 96000, text: '$135,000' },
      { label: 'Western redcedar, free, air', timber: 63400, rest: 99000, text: '$162,000' }
    ]
  }),
  one('Size ladder', 'which wood needs the stouter timber', SizeLadder, {
    items: [
      { label: 'Douglas-fir', section: [203, 305] as const, lead: true },
      { label: 'White oak', section: [203, 305] as const },
      { label: 'Southern pine', section: [203, 305] as const },
      { label: 'Eastern hemlock', section: [203, 356] as const },
      { label: 'E. white pine', section: [254, 356] as const, out: true },
      { label: 'Western redcedar', section: [254, 356] as const },
      { label: 'N. white-cedar', section: [305, 406] as const }
    ]
  })
]

const ANSWERS: Answers = {
  project: 'pavilion',
  role: 'structure',
  exposure: 'roofed',
  carries: 'truss',
  span: 6096,
  slope: 2 / 3,
  snow: 2873,
  order: ['durability', 'cost', 'look', 'movement', 'stoutness', 'time', 'local']
}

/** The picture of every question, unanswered and answered. */
export const QUESTION_EXAMPLES: readonly Example[] = QUESTIONS.flatMap((question) =>
  [{}, ANSWERS].map((answers, i) =>
    one(`${question.id}, ${i === 0 ? 'unanswered' : 'answered'}`, question.title, QuestionPicture, {
      question,
      answers
    })
  )
)
