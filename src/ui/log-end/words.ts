/** What the bench says in words: what kind of piece it is now, and why a setting cannot be drawn. */
import type { Quantity, QuantityKind, Sentence } from '../../data/quantity'
import type { DriedPiece, FaceId, LogPiece } from '../../wood/log-end'
import { SMALLEST_GAP_MM } from '../format/length'
import { type Bench, chosenOf, type View } from './model'

export const FACES: readonly FaceId[] = ['top', 'right', 'bottom', 'left']
export const FACE_NAMES: Readonly<Record<FaceId, string>> = {
  top: 'Top',
  right: 'Right',
  bottom: 'Bottom',
  left: 'Left'
}

/** A figure of the bench. Its sources stand in the margin of the page, once for all. */
export const figure = (kind: QuantityKind, value: number): Quantity => ({
  kind,
  value,
  origin: { mark: 'derived', sources: [{ key: 'derived' }] }
})
export const section = ({ breadth, depth }: LogPiece): Quantity => ({
  ...figure('section', 0),
  value: [breadth, depth]
})
export const timesWords = (times: number): string => (times === 1 ? 'true to size' : `${times} times larger`)
export const length = (mm: number): Quantity => figure('gap', Math.abs(mm))

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
  const grows = shown.to > shown.from
  const still = FACES.every((id) => Math.abs(change(id)) < VISIBLE)
  if (still) return { text: 'Between these two moistures the piece does not move.' }
  if (grows) return { text: 'Wetter later than now: the piece swells, and what had opened closes.' }
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
        says: { text: 'No wood holds that. Type a moisture from 0 to 300 %.' },
        at: (['from', 'to'] as const).filter((id) => !(asked[id] >= 0 && asked[id] <= MOST))
      }
    case 'exaggeration':
      return { says: { text: 'Enlarge the movement 1 to 10 times.' }, at: ['exaggeration'] }
  }
}
/** Only to tell which of the two moistures was refused; the engine does the refusing. */
const MOST = 3

/** What the picture shows, for those who do not see it. */
export function pictureSays(bench: Bench, dried: View['dried']): string {
  const [a, b] = dried
  const name = (d: DriedPiece) => (d.boxed ? 'a piece with the pith inside' : 'a piece beside the pith')
  return `Two log ends of ${bench.wood.said} to one scale: ${name(a)} on the left, ${name(b)} on the right, each as sawn and as dried.`
}
