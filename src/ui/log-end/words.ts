/** What the bench says in words: what kind of piece it is now, and why a setting cannot be drawn. */
import type { Origin, Quantity, QuantityKind, Sentence } from '../../data/quantity'
import type { DriedPiece, FaceId, LogPiece } from '../../wood/log-end'
import { SMALLEST_GAP_MM } from '../format/length'
import { NBSP } from '../format/number'
import { type Bench, type BenchWood, chosenOf, smallestLog, type View } from './model'
import { percentText } from './read'

export const FACES: readonly FaceId[] = ['top', 'right', 'bottom', 'left']
export const FACE_NAMES: Readonly<Record<FaceId, string>> = {
  top: 'Top',
  right: 'Right',
  bottom: 'Bottom',
  left: 'Left'
}

const SET: Origin = { mark: 'derived', sources: [{ key: 'derived' }] }
/** A figure as set here, or worked out from what is. */
export const figure = (kind: QuantityKind, value: number, origin = SET): Quantity => ({ kind, value, origin })

const by = (formula: string, inputs: Readonly<Record<string, Quantity>> = {}): Origin => ({
  mark: 'derived',
  sources: [],
  formula,
  inputs
})

function strain(total: number, part: 'radial' | 'tangential', value: number, bench: Bench): Quantity {
  const { wood, from, to } = bench
  const { mark, sources } = wood.shrinkage
  return figure('percent', Math.abs(value), {
    // A recalled shrinkage makes a recalled figure.
    mark: mark === 'seen' ? 'derived' : mark,
    sources,
    formula: 'log-strain',
    inputs: {
      [`S₀, ${part}, to oven-dry`]: figure('percent', total),
      Mf: figure('moisture', wood.fibreSaturation),
      'M now': figure('moisture', from),
      'M later': figure('moisture', to)
    }
  })
}

/** The figures of one piece, each with how it is worked out. */
export function figuresOf(bench: Bench, piece: LogPiece, d: DriedPiece) {
  const radial = strain(bench.wood.radial, 'radial', d.radial, bench)
  const tangential = strain(bench.wood.tangential, 'tangential', d.tangential, bench)
  const strains = { eR: figure('percent', d.radial), eT: figure('percent', d.tangential) }
  const face = by(d.boxed ? 'log-face-boxed' : 'log-face', strains)
  const check = by('log-check', strains)
  const diameter = (mm: number) => figure('diameter', mm, by('log-here'))
  return {
    radial,
    tangential,
    face: (mm: number) => figure('gap', Math.abs(mm), face),
    check: (mm: number) => figure('gap', mm, check),
    sapwood: figure('percent', d.sapwoodShare, by('log-sapwood', { width: figure('gap', piece.sapwood) })),
    smallest: diameter(smallestLog(piece))
  }
}
export const section = ({ breadth, depth }: LogPiece): Quantity => ({
  ...figure('section', 0),
  value: [breadth, depth]
})
export const timesWords = (times: number): string => (times === 1 ? 'true to size' : `${times} times larger`)
export const length = (mm: number): Quantity => figure('gap', Math.abs(mm))

/** Wetter later than now. */
export const swells = (d: DriedPiece): boolean => d.tangential < 0

/** A movement that no rule can show is none. */
export const VISIBLE = SMALLEST_GAP_MM

export const kindOf = (dried: DriedPiece): string => (dried.boxed ? 'Boxed heart' : 'Free of heart centre')

/** The face that opens or changes most. */
export function mostOf(what: (id: FaceId) => number): FaceId {
  return FACES.reduce((best, id) => (what(id) > what(best) + 1e-6 ? id : best))
}

export function sentenceOf(view: View): Sentence {
  const { shown, dried } = view
  const d = dried[shown.chosen]
  const change = (id: FaceId) => d.faces[id].before - d.faces[id].after
  const still = FACES.every((id) => Math.abs(change(id)) < VISIBLE)
  if (still) return { text: 'Between these two moistures the piece does not move.' }
  if (swells(d)) {
    const widest = mostOf((id) => -change(id))
    return {
      text: `Wetter later than now: it swells. The ${widest} face gains {change}, and what had opened closes.`,
      values: { change: length(change(widest)) }
    }
  }
  if (d.boxed) {
    const worst = mostOf((id) => d.faces[id].check)
    const even = FACES.every((id) => d.faces[worst].check - d.faces[id].check < VISIBLE)
    const where = even ? 'on any one face' : `on the ${worst} face`
    return {
      text: `The pith is inside: it will check, up to {check} ${where} if that face takes all of it.`,
      values: { check: length(d.faces[worst].check) }
    }
  }
  const widest = mostOf(change)
  const values = { change: length(change(widest)), off: length(d.outOfSquare) }
  const square = d.outOfSquare < VISIBLE
  return {
    text: `The pith is outside: it can stay whole. The ${widest} face loses {change}${square ? ', and it stays square.' : '; it ends {off} out of square, corner to corner.'}`,
    values
  }
}

export interface Complaint {
  readonly says: Sentence
  /** The fields that it concerns. */
  readonly at: readonly string[]
  /** Told once for all of them. */
  readonly together?: boolean
}

const SIZES = ['breadth', 'depth', 'logDiameter', 'sapwood'] as const
const NEEDS = 'Type a size above zero.'

export function complaintOf(view: View): Complaint | null {
  const { refused, asked } = view
  if (refused === null) return null
  switch (refused.why) {
    case 'outside':
      return {
        says: { text: 'The piece reaches {by} out of the log.', values: { by: length(refused.by) } },
        at: ['left', 'top', 'breadth', 'depth', 'logDiameter'],
        together: true
      }
    case 'pith':
      return { says: { text: 'The pith has to lie inside the log.' }, at: ['pithX', 'pithY'] }
    case 'size': {
      const bad = SIZES.filter((id) => !(chosenOf(asked)[id] > 0 || (id === 'sapwood' && chosenOf(asked)[id] === 0)))
      return { says: { text: bad.includes('sapwood') ? 'Type a width of zero or more.' : NEEDS }, at: bad }
    }
    case 'moisture':
      return {
        says: { text: moistureAsked(asked.wood, refused.most) },
        at: (['from', 'to'] as const).filter((id) => !(asked[id] >= 0 && asked[id] <= refused.most))
      }
    case 'exaggeration':
      return { says: { text: 'Enlarge the movement 1 to 10 times.' }, at: ['exaggeration'] }
  }
}

const moistureAsked = (wood: BenchWood, most: number): string =>
  `Type a moisture from 0 to ${percentText(most)}${NBSP}%, the most that ${wood.said} holds when green.`

/** What the picture shows, for those who do not see it. */
export function pictureSays(bench: Bench, dried: View['dried']): string {
  const [a, b] = dried
  const name = (d: DriedPiece) => (d.boxed ? 'a piece with the pith inside' : 'a piece beside the pith')
  return `Two log ends of ${bench.wood.said} to one scale: ${name(a)} on the left, ${name(b)} on the right, each as sawn and as ${swells(a) ? 'swollen' : 'dried'}.`
}
