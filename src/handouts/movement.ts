/** How timbers move: four pieces of one wood out of alike logs, a housed shoulder, and movement per foot for every wood. */

import { limit } from '../choice/facts'
import { partOf } from '../choice/joints'
import { lengthwiseTotal } from '../choice/piece-facts'
import { computed, limitQuantity } from '../choice/say'
import type { Shoulder } from '../choice/types'
import type { Origin, Quantity } from '../data/quantity'
import type { Reference, Wood } from '../data/reference'
import { FOOT, INCH } from '../data/units'
import { type Band, housedBeam, type JointMovement } from '../wood/joints'
import { type DriedPiece, dryPiece, type LogPiece } from '../wood/log-end'
import { checkOpening, faceStrain, PITH_CLEARANCE } from '../wood/section'
import { shrinkageFromGreen } from '../wood/shrinkage'
import { byKindAndName } from './species-chart'

/** What the sheets show, chosen to be seen well: a wood, moistures, sizes. Facts about wood come from the reference. */
export const SHOWN_WOOD = 'douglas-fir'
export const HEATED = 0.08
export const TARGETS = [0.16, 0.12, 0.08] as const
const TIMES = 3
const LOG = 16 * INCH
const POST = 8 * INCH
const BEAM = 10 * INCH
const LENGTH = 12 * FOOT

export interface ShownPiece {
  readonly id: 'flat' | 'quarter' | 'boxed' | 'free'
  readonly name: string
  readonly piece: LogPiece
  readonly dried: DriedPiece
}

const PIECES: readonly (readonly [ShownPiece['id'], string, Pick<LogPiece, 'left' | 'top' | 'breadth' | 'depth'>])[] = [
  ['flat', 'Flat-sawn plank', { left: -5 * INCH, top: 3.5 * INCH, breadth: 10 * INCH, depth: 2 * INCH }],
  ['quarter', 'Quartered plank', { left: PITH_CLEARANCE, top: -INCH, breadth: 7 * INCH, depth: 2 * INCH }],
  ['boxed', 'Boxed heart', { left: -3 * INCH, top: -3 * INCH, breadth: 6 * INCH, depth: 6 * INCH }],
  ['free', 'Free of heart centre', { left: -3 * INCH, top: PITH_CLEARANCE, breadth: 6 * INCH, depth: 6 * INCH }]
]

/** @throws Error where the engine refuses one: a fault of ours */
export function dried(piece: LogPiece, wood: Wood, to: number, times = TIMES): DriedPiece {
  const made = dryPiece(piece, wood, wood.fibreSaturation, to, times)
  if (!made.ok) throw new Error(`a piece on a handout cannot be drawn: ${made.why}`)
  return made.dried
}

export function woodOf(reference: Reference, id = SHOWN_WOOD): Wood {
  const wood = reference.woods.get(id)
  if (wood === undefined) throw new Error(`no wood "${id}"`)
  return wood
}

export function fourPieces(reference: Reference): readonly ShownPiece[] {
  const wood = woodOf(reference)
  return PIECES.map(([id, name, place]) => {
    const piece: LogPiece = { logDiameter: LOG, pith: [0, 0], sapwood: 1.25 * INCH, ...place }
    return { id, name, piece, dried: dried(piece, wood, HEATED) }
  })
}

/** A length that a formula of `content/formulas.json` gives. */
export const worked = (reference: Reference, formula: string, kind: Quantity['kind'], value: number): Quantity => ({
  kind,
  value,
  origin: computed(reference, formula)
})

export interface ShownShoulder {
  readonly shoulder: Shoulder
  readonly movement: JointMovement
  readonly post: Quantity
  readonly beam: Quantity
  readonly gap: Quantity
  readonly drop: Quantity
  readonly housing: Quantity
  /** The post's face, and the sum of its checks on one face at most. */
  readonly face: Quantity
  readonly check: Quantity
  /** The stick and what its own length loses. */
  readonly length: Quantity
  readonly along: Quantity
}

/** A beam housed in a boxed post, green when cut, come to a heated room. */
export function shownShoulder(reference: Reference): ShownShoulder {
  const wood = woodOf(reference)
  const strain = (total: number) => shrinkageFromGreen(total, HEATED, wood.fibreSaturation)
  const [radial, tangential] = [strain(wood.radial), strain(wood.tangential)]
  const [low, high] = lengthwiseTotal(wood, reference).map(strain) as [number, number]
  const flat = (value: number): Band => ({ value, low: value, high: value })
  const post = faceStrain('boxed', POST, POST, radial, tangential).breadth
  const movement = housedBeam({
    postSide: POST,
    beamDepth: BEAM,
    length: LENGTH,
    post: flat(post),
    beam: flat(faceStrain('boxed', POST, BEAM, radial, tangential).depth),
    along: { value: (low + high) / 2, low, high },
    margin: limit(reference, 'housing-margin') * INCH
  })
  const size = (kind: Quantity['kind'], value: Quantity['value']): Quantity => ({ kind, value, origin: SET })
  return {
    movement,
    shoulder: {
      postSide: POST,
      beamDepth: BEAM,
      housing: movement.housing,
      postShrinks: partOf(movement, 'post').value,
      beamShrinks: partOf(movement, 'length').value,
      drop: movement.drop.value,
      exaggeration: TIMES
    },
    post: size('section', [POST, POST]),
    beam: size('section', [POST, BEAM]),
    gap: { ...worked(reference, 'gap', 'gap', movement.gap.value), low: movement.gap.low, high: movement.gap.high },
    drop: worked(reference, 'drop', 'gap', movement.drop.value),
    housing: worked(reference, 'housing', 'gap', movement.housing),
    face: worked(reference, 'face', 'gap', POST * post),
    check: worked(reference, 'checks', 'gap', checkOpening(POST / 2, radial, tangential)),
    length: size('span', LENGTH),
    along: {
      ...limitQuantity(reference, 'lengthwise-high', 'gap'),
      value: (LENGTH * (low + high)) / 2,
      low: LENGTH * low,
      high: LENGTH * high
    }
  }
}

/** The post of the housed shoulder in its log, with its heart in it. */
export function boxedPost(reference: Reference): Pick<ShownPiece, 'piece' | 'dried'> {
  const piece: LogPiece = {
    logDiameter: 12 * INCH,
    pith: [0, 0],
    left: -POST / 2,
    top: -POST / 2,
    breadth: POST,
    depth: POST,
    sapwood: INCH
  }
  return { piece, dried: dried(piece, woodOf(reference), HEATED) }
}

/** Chosen for the sheet. */
export const SET: Origin = { mark: 'derived', sources: [{ key: 'derived' }] }

export interface MoveRow {
  readonly id: string
  readonly name: string
  /** From green to each target: towards the pith and round the rings. */
  readonly moves: readonly { readonly radial: Move; readonly tangential: Move }[]
  readonly origin: Origin
}
/** What a foot and what a metre of wood moves. */
export interface Move {
  readonly foot: Quantity
  readonly metre: Quantity
}

export function moveRows(reference: Reference): readonly MoveRow[] {
  return [...reference.woods.values()].sort(byKindAndName).map((wood) => {
    const move = (total: number, to: number): Move => {
      const strain = shrinkageFromGreen(total, to, wood.fibreSaturation)
      const on = (size: number): Quantity => ({ kind: 'gap', value: size * strain, origin: wood.shrinkageOrigin })
      return { foot: on(FOOT), metre: on(1000) }
    }
    return {
      id: wood.id,
      name: wood.name,
      origin: wood.shrinkageOrigin,
      moves: TARGETS.map((to) => ({ radial: move(wood.radial, to), tangential: move(wood.tangential, to) }))
    }
  })
}
