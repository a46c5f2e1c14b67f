/**
 * Any rectangle anywhere in a log, before and after drying: what a sawyer chooses when the log lies on the carriage.
 * Wood shrinks by eR towards the pith and eT round it (see polar.ts). Lengths in mm from the centre of the log's end,
 * x to the right, y downwards; moisture and strains as fractions. Source: derived (plane polar shrinkage about the pith).
 */
import { driedPoint, type Point } from './polar'
import { boxedShares, type Heart, logDiameterNeeded, PITH_CLEARANCE } from './section'
import { changeBetween } from './shrinkage'

export interface LogPiece {
  /** Small end, under bark, mm. */
  readonly logDiameter: number
  /** Where the pith lies, mm from the centre of the log's end. */
  readonly pith: Point
  readonly left: number
  readonly top: number
  readonly breadth: number
  readonly depth: number
  /** Width of the sapwood band under the bark, mm. */
  readonly sapwood: number
}

export interface WoodStrain {
  /** Shrinkage green to oven-dry, fractions. */
  readonly radial: number
  readonly tangential: number
  readonly fibreSaturation: number
  /** Greatest moisture that the green wood holds, fraction; WETTEST where nothing is known of it. */
  readonly wettest?: number
}

export type FaceId = 'top' | 'right' | 'bottom' | 'left'

export interface Face {
  readonly before: number
  /** Straight across, corner to corner. */
  readonly after: number
  /** How far the middle of the face stands off that line, mm; positive hollow. */
  readonly cup: number
  /** Sum of check openings if all the missing angle opened on this face, mm; 0 free of heart centre. */
  readonly check: number
}

export interface DriedPiece {
  readonly boxed: boolean
  readonly radial: number
  readonly tangential: number
  readonly before: readonly Point[]
  /** How many times the movement is drawn larger: as asked, or as far as the outline does not fold over itself. */
  readonly drawnTimes: number
  /** Movement multiplied by `drawnTimes`. A boxed piece is drawn with one check in its nearest face. */
  readonly after: readonly Point[]
  readonly faces: Readonly<Record<FaceId, Face>>
  /** Difference of the two diagonals when dry, mm: how far out of square. */
  readonly outOfSquare: number
  /** Angle that fails to close round the pith, radians; 0 free of heart centre. */
  readonly missingAngle: number
  /** Share of the section that is sapwood, 0 to 1. */
  readonly sapwoodShare: number
}

/** Why a piece is refused: it is no size, reaches out of the log by `by` mm, the pith is outside, or a moisture is beyond 0 to `most`. */
export type Refusal =
  | { readonly ok: false; readonly why: 'size' | 'pith' | 'exaggeration' }
  | { readonly ok: false; readonly why: 'moisture'; readonly most: number }
  | { readonly ok: false; readonly why: 'outside'; readonly by: number }

/** Strain round the rings beyond which a drawn outline falls apart, fraction. */
const MOST_DRAWN = 0.5

const STEPS = 20
const ORDER: readonly FaceId[] = ['top', 'right', 'bottom', 'left']

/** Greatest moisture that a living tree is taken to hold, fraction. Source: wood-handbook-2010, Table 4-1 (sapwood to about 2.5). */
const WETTEST = 3

function corners(p: LogPiece): readonly [Point, Point, Point, Point] {
  const { left, top, breadth, depth } = p
  return [
    [left, top],
    [left + breadth, top],
    [left + breadth, top + depth],
    [left, top + depth]
  ]
}

/** By how much the piece's far corner lies outside the log, mm; 0 or less where it fits. Source: derived. */
export function outsideBy(piece: LogPiece): number {
  return Math.max(...corners(piece).map(([x, y]) => Math.hypot(x, y))) - piece.logDiameter / 2
}

const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]
const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1])

/** Points round the piece from its top-left corner, clockwise as drawn, each side in equal steps. */
function round(piece: LogPiece): Point[] {
  const c = corners(piece)
  return c.flatMap((from, side) => {
    const to = c[(side + 1) % 4] as Point
    return Array.from({ length: STEPS }, (_, i) => between(from, to, i / STEPS))
  })
}

/** Share of the piece's area that lies in the sapwood band, by a fine grid of its section. Source: derived. */
function sapwoodShare(piece: LogPiece): number {
  const heart = piece.logDiameter / 2 - piece.sapwood
  const n = 24
  let outside = 0
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const x = piece.left + (piece.breadth * (i + 0.5)) / n
      const y = piece.top + (piece.depth * (j + 0.5)) / n
      if (Math.hypot(x, y) > heart) outside++
    }
  }
  return outside / (n * n)
}

/** Signed distance of a point from the line a to b, positive to the right of the way from a to b. */
function offLine(a: Point, b: Point, p: Point): number {
  const length = apart(a, b)
  return length === 0 ? 0 : ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / length
}

/**
 * A piece dried from one moisture to another. Free of heart centre the outline follows the rings without stress; with the
 * pith inside it cannot close, and the missing angle opens as one check in the nearest face: an upper bound.
 * Source: derived; strains by wood-handbook-2010, eq. 13-3.
 * @param from moisture now, fraction; above fibre saturation nothing moves
 * @param to moisture later, fraction; above `from` the piece swells, and its strains are below zero
 * @param exaggeration factor on the drawn movement, 1 to 10; figures are never exaggerated
 */
export function dryPiece(
  piece: LogPiece,
  wood: WoodStrain,
  from: number,
  to: number,
  exaggeration = 1
): { readonly ok: true; readonly dried: DriedPiece } | Refusal {
  const { breadth, depth, logDiameter, pith } = piece
  const sizes = [breadth, depth, logDiameter]
  if (!sizes.every((n) => Number.isFinite(n) && n > 0) || !(piece.sapwood >= 0)) return { ok: false, why: 'size' }
  if (!(Math.hypot(...pith) < logDiameter / 2)) return { ok: false, why: 'pith' }
  const most = wood.wettest ?? WETTEST
  if (![from, to].every((m) => m >= 0 && m <= most)) return { ok: false, why: 'moisture', most }
  if (!(exaggeration >= 1 && exaggeration <= 10)) return { ok: false, why: 'exaggeration' }
  const by = outsideBy(piece)
  if (!(by <= 1e-6)) return { ok: false, why: 'outside', by }

  const limit = (m: number) => Math.min(m, wood.fibreSaturation)
  const strain = (total: number) => changeBetween(total, limit(from), limit(to), wood.fibreSaturation)
  const radial = strain(wood.radial)
  const tangential = strain(wood.tangential)
  const inside =
    pith[0] > piece.left && pith[0] < piece.left + breadth && pith[1] > piece.top && pith[1] < piece.top + depth
  const move = mover(piece, inside, radial, tangential)
  const before = round(piece)
  const drawnTimes = Math.min(exaggeration, MOST_DRAWN / Math.max(Math.abs(tangential), 1e-9))
  return {
    ok: true,
    dried: {
      boxed: inside,
      radial,
      tangential,
      before,
      drawnTimes,
      after: drawn(piece, inside, before, radial * drawnTimes, tangential * drawnTimes),
      faces: facesOf(piece, inside, before, move, tangential - radial),
      outOfSquare: outOfSquare(piece, inside, move),
      missingAngle: inside ? Math.max(0, (2 * Math.PI * (tangential - radial)) / (1 - radial)) : 0,
      sapwoodShare: sapwoodShare(piece)
    }
  }
}

type Move = (p: Point) => Point

/** Where points go about the pith; the way from the pith to the middle of the piece keeps its direction. */
function mover(piece: LogPiece, inside: boolean, radial: number, tangential: number): Move {
  const [px, py] = piece.pith
  // Boxed, the figures of faces use the mean strain of each way across: checks upset any single map.
  if (inside) {
    const { left, top, breadth, depth } = piece
    const share = boxedShares({ left: px - left, right: left + breadth - px, up: py - top, down: top + depth - py })
    const keeps = (part: number) => 1 - radial - part * (tangential - radial)
    return ([x, y]) => [px + (x - px) * keeps(share.breadth), py + (y - py) * keeps(share.depth)]
  }
  const axis = Math.atan2(piece.top + piece.depth / 2 - py, piece.left + piece.breadth / 2 - px)
  return ([x, y]) => {
    const [dx, dy] = driedPoint([x - px, y - py], radial, tangential, axis)
    return [px + dx, py + dy]
  }
}

function facesOf(
  piece: LogPiece,
  inside: boolean,
  before: readonly Point[],
  move: Move,
  difference: number
): DriedPiece['faces'] {
  const c = corners(piece)
  const [px, py] = piece.pith
  const toFace: Record<FaceId, number> = {
    top: py - piece.top,
    right: piece.left + piece.breadth - px,
    bottom: piece.top + piece.depth - py,
    left: px - piece.left
  }
  const entries = ORDER.map((id, side) => {
    const a = move(c[side] as Point)
    const b = move(c[(side + 1) % 4] as Point)
    const middle = move(before[side * STEPS + STEPS / 2] as Point)
    const face: Face = {
      before: apart(c[side] as Point, c[(side + 1) % 4] as Point),
      after: apart(a, b),
      // Clockwise as drawn (y down), the inside of the piece lies to the right of each side.
      cup: offLine(a, b, middle),
      check: inside ? Math.max(0, 2 * Math.PI * toFace[id] * difference) : 0
    }
    return [id, face] as const
  })
  return Object.fromEntries(entries) as Record<FaceId, Face>
}

function outOfSquare(piece: LogPiece, inside: boolean, move: Move): number {
  if (inside) return 0
  const [a, b, c, d] = corners(piece).map(move) as [Point, Point, Point, Point]
  return Math.abs(apart(a, c) - apart(b, d))
}

/** The outline as drawn. A boxed piece that shrinks opens from the pith to the middle of its nearest face. */
function drawn(
  piece: LogPiece,
  inside: boolean,
  before: readonly Point[],
  radial: number,
  tangential: number
): Point[] {
  if (!inside || tangential <= radial) return before.map(mover(piece, inside, radial, tangential))
  const [px, py] = piece.pith
  const near = (
    [
      [piece.top + piece.depth - py, Math.PI / 2],
      [py - piece.top, -Math.PI / 2],
      [px - piece.left, Math.PI],
      [piece.left + piece.breadth - px, 0]
    ] as const
  ).reduce((best, side) => (side[0] < best[0] - 1e-9 ? side : best))
  const [distance, open] = near
  const shrink = (1 - tangential) / (1 - radial)
  const half = Math.PI * (1 - shrink)
  const at = (turn: number, r: number): Point => {
    const angle = open + half + turn * shrink
    return [px + r * (1 - radial) * Math.cos(angle), py + r * (1 - radial) * Math.sin(angle)]
  }
  const turned = before
    .map(([x, y]) => {
      let turn = Math.atan2(y - py, x - px) - open
      while (turn < 0) turn += 2 * Math.PI
      while (turn >= 2 * Math.PI) turn -= 2 * Math.PI
      return { turn, r: Math.hypot(x - px, y - py) }
    })
    .filter(({ turn }) => turn > 1e-9)
    .sort((p, q) => p.turn - q.turn)
  return [piece.pith, at(0, distance), ...turned.map(({ turn, r }) => at(turn, r)), at(2 * Math.PI, distance)]
}

/** A section where it sits in the smallest log that gives it, before and after; mm about the pith. */
export interface SectionShape {
  readonly heart: Heart
  readonly logRadius: number
  readonly before: readonly Point[]
  readonly after: readonly Point[]
}

/**
 * The outline of a section before and after drying, boxed about the pith or below it, in the smallest log that holds it.
 * Source: derived. `exaggeration` multiplies both strains, for drawing only.
 * @throws RangeError where a size is not above zero or a strain is not in 0 to 0.6.
 */
export function sectionShape(spec: {
  readonly heart: Heart
  readonly breadth: number
  readonly depth: number
  readonly radial: number
  readonly tangential: number
  readonly exaggeration?: number
}): SectionShape {
  const { heart, breadth, depth } = spec
  const scale = spec.exaggeration ?? 1
  const radial = spec.radial * scale
  const tangential = spec.tangential * scale
  if (!(breadth > 0 && depth > 0)) throw new RangeError('section sizes must be above zero')
  if (!(radial >= 0 && tangential >= radial && tangential < 0.6)) throw new RangeError('shrinkage out of range')
  const logDiameter = logDiameterNeeded(heart, breadth, depth)
  // Free of heart centre the piece stands in the log the way that needs the smaller one; drawn below the pith either way.
  const lying = Math.hypot(depth + PITH_CLEARANCE, breadth / 2) <= Math.hypot(breadth + PITH_CLEARANCE, depth / 2)
  const [b, d] = heart === 'boxed' || lying ? [breadth, depth] : [depth, breadth]
  const top = heart === 'boxed' ? -d / 2 : PITH_CLEARANCE
  const piece: LogPiece = { logDiameter, pith: [0, 0], left: -b / 2, top, breadth: b, depth: d, sapwood: 0 }
  const before = round(piece)
  return {
    heart,
    logRadius: logDiameter / 2,
    before,
    after: drawn(piece, heart === 'boxed', before, radial, tangential)
  }
}
