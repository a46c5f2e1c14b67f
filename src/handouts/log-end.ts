/** Log ends to work on: six logs of one wood with their pieces, and what the engine says of each. */
import type { Reference, Wood } from '../data/reference'
import { INCH } from '../data/units'
import { type DriedPiece, type FaceId, type LogPiece, outsideBy } from '../wood/log-end'
import { PITH_CLEARANCE } from '../wood/section'
import { dried, woodOf } from './movement'

export const EXERCISE_WOOD = 'white-oak'
export const EXERCISE_TO = 0.12
/** Side of the square asked for free of heart centre, mm. */
export const ASKED_FREE = 6 * INCH
const TIMES = 3

export interface LogTask {
  readonly number: number
  readonly piece: LogPiece
  readonly dried: DriedPiece
  /** The piece is shown on the sheet of tasks; else it is to be drawn. */
  readonly given: boolean
}

const log = (inches: number, pith: readonly [number, number], sapwood: number) => ({
  logDiameter: inches * INCH,
  pith: [pith[0] * INCH, pith[1] * INCH] as const,
  sapwood: sapwood * INCH
})
const at = (left: number, top: number, breadth: number, depth: number) => ({
  left: left * INCH,
  top: top * INCH,
  breadth: breadth * INCH,
  depth: depth * INCH
})

/** The largest square with the pith at its middle that the log holds, in whole half inches, mm. Source: derived */
export function largestBoxed(end: Pick<LogPiece, 'logDiameter' | 'pith' | 'sapwood'>): LogPiece {
  const [x, y] = end.pith
  const square = (side: number): LogPiece => ({
    ...end,
    left: x - side / 2,
    top: y - side / 2,
    breadth: side,
    depth: side
  })
  let side = Math.floor(end.logDiameter / (INCH / 2)) * (INCH / 2)
  while (side > INCH && outsideBy(square(side)) > 0) side -= INCH / 2
  return square(side)
}

/** The square free of heart centre below the pith, turned to lie as near to it as the saw leaves it. */
function squareFree(end: Pick<LogPiece, 'logDiameter' | 'pith' | 'sapwood'>, side: number): LogPiece {
  const [x, y] = end.pith
  return { ...end, left: x - side / 2, top: y + PITH_CLEARANCE, breadth: side, depth: side }
}

export function logTasks(reference: Reference): readonly LogTask[] {
  const wood: Wood = woodOf(reference, EXERCISE_WOOD)
  const given: LogPiece[] = [
    { ...log(14, [0.5, 0.3], 1), ...at(-3.5, -4, 8, 8) },
    { ...log(16, [-1, -1.5], 1), ...at(-4.5, 2, 9, 4) },
    { ...log(16, [0, 0], 1), ...at(0.6, -1, 7, 2) },
    { ...log(16, [-1.2, -1], 1), ...at(-0.5, -0.3, 5, 5) }
  ]
  const bare = [largestBoxed(log(15, [0.8, -0.6], 1.2)), squareFree(log(16, [0.4, -1], 1.2), ASKED_FREE)]
  return [...given, ...bare].map((piece, i) => ({
    number: i + 1,
    piece,
    dried: dried(piece, wood, EXERCISE_TO, TIMES),
    given: i < given.length
  }))
}

const FACES: readonly FaceId[] = ['top', 'right', 'bottom', 'left']

/** The face of which `what` is greatest. */
export function most(piece: DriedPiece, what: 'check' | 'cup'): FaceId {
  return FACES.reduce((best, id) => (piece.faces[id][what] > piece.faces[best][what] + 1e-6 ? id : best))
}

/** The nearest face to the pith, where the picture opens the check; null where all lie alike. */
export function nearest(piece: DriedPiece): FaceId | null {
  const best = FACES.reduce((b, id) => (piece.faces[id].check < piece.faces[b].check - 1e-6 ? id : b))
  const far = piece.faces[most(piece, 'check')].check
  return far - piece.faces[best].check < 1e-6 ? null : best
}
