/**
 * What is on the bench: two log ends under one wood, one drying and one enlargement. The engine judges every setting;
 * what it refuses stays in the fields, and the picture stays at the last setting that it could draw.
 */
import type { Origin } from '../../data/quantity'
import type { Wood } from '../../data/reference'
import { type DriedPiece, dryPiece, type LogPiece, outsideBy, type Refusal } from '../../wood/log-end'
import { PITH_CLEARANCE } from '../../wood/section'
import { MM_PER_INCH } from '../format/length'
import type { System } from '../format/quantity'

/** What the page hands to the browser of each wood. */
export type BenchWood = Pick<Wood, 'id' | 'name' | 'said' | 'radial' | 'tangential' | 'fibreSaturation'> & {
  /** Moisture of the green heartwood, fraction. */
  readonly green: number
  /** Moisture of its wettest part when green, fraction. */
  readonly wettest: number
  readonly shrinkage: Origin
}

/** `sapwood`: moisture of the green sapwood, fraction, where the data give it. */
export const benchWood = (wood: Wood, sapwood = 0): BenchWood => {
  const { id, name, said, radial, tangential, fibreSaturation, greenHeartwood: green } = wood
  const wettest = Math.max(green, wood.greenWhole, sapwood)
  return { id, name, said, radial, tangential, fibreSaturation, green, wettest, shrinkage: wood.shrinkageOrigin }
}

export type Side = 0 | 1
export const SIDES: readonly Side[] = [0, 1]

export interface Bench {
  readonly pieces: readonly [LogPiece, LogPiece]
  /** The log end that is worked on; the other stays for comparison. */
  readonly chosen: Side
  readonly wood: BenchWood
  readonly from: number
  /** Moisture now is that of the green heartwood, whichever wood it is: nobody has typed another. */
  readonly green: boolean
  readonly to: number
  readonly exaggeration: number
}

export interface View {
  /** What the fields say. */
  readonly asked: Bench
  readonly refused: Refusal | null
  /** What the picture shows: the last setting that could be drawn. */
  readonly shown: Bench
  readonly dried: readonly [DriedPiece, DriedPiece]
}

export const chosenOf = (bench: Bench): LogPiece => bench.pieces[bench.chosen]

export function withPiece(bench: Bench, change: Partial<LogPiece>): Bench {
  const [a, b] = bench.pieces
  return { ...bench, pieces: bench.chosen === 0 ? [{ ...a, ...change }, b] : [a, { ...b, ...change }] }
}

/** The engine's answer to a setting; `last` is what stays on show where it refuses. */
export function judge(asked: Bench, last: View | null): View {
  const { wood, from, to, exaggeration } = asked
  const was = last?.shown
  const sameDrying = was?.wood === wood && was.from === from && was.to === to && was.exaggeration === exaggeration
  // What lies as it lay is not worked out again: one of the two, while the other is dragged.
  const dry = (side: Side): ReturnType<typeof dryPiece> =>
    last !== null && sameDrying && last.shown.pieces[side] === asked.pieces[side]
      ? { ok: true, dried: last.dried[side] }
      : dryPiece(asked.pieces[side], wood, from, to, exaggeration)
  const [a, b] = [dry(0), dry(1)]
  if (a.ok && b.ok) return { asked, refused: null, shown: asked, dried: [a.dried, b.dried] }
  if (last === null) throw new Error('the first setting must be one that can be drawn')
  const own = asked.chosen === 0 ? a : b
  const refused = own.ok ? (a.ok ? b : a) : own
  return { ...last, asked, refused: refused.ok ? null : refused }
}

/** The step that a log or a press of a key is measured in. */
export const logStep = (system: System): number => (system === 'us' ? MM_PER_INCH : 10)

/** Diameter of the smallest log about its own middle that holds the piece where it lies, mm. */
export const smallestLog = (piece: LogPiece): number => piece.logDiameter + 2 * outsideBy(piece)

/** The piece in the smallest log of a whole step that holds it. */
export function fitted(piece: LogPiece, system: System): LogPiece {
  const step = logStep(system)
  return { ...piece, logDiameter: Math.ceil(smallestLog(piece) / step - 1e-6) * step }
}

export const PICKS = ['boxed', 'free', 'quartered'] as const
export type Pick3 = (typeof PICKS)[number]

/** A piece of the same size sawn one of the usual ways about its pith, in the log that this asks for. */
export function sawn(pick: Pick3, piece: LogPiece, system: System): LogPiece {
  const [x, y] = piece.pith
  const left = pick === 'quartered' ? x + PITH_CLEARANCE : x - piece.breadth / 2
  const top = pick === 'boxed' ? y - piece.depth / 2 : y + PITH_CLEARANCE
  return fitted({ ...piece, left, top }, system)
}

/** An 8 in square with the heart in it beside one without, from green to a heated room. */
export function startBench(wood: BenchWood): Bench {
  const size = 8 * MM_PER_INCH
  const piece: LogPiece = {
    logDiameter: 2 * size,
    pith: [0, 0],
    left: 0,
    top: 0,
    breadth: size,
    depth: size,
    sapwood: 1.5 * MM_PER_INCH
  }
  return {
    pieces: [sawn('boxed', piece, 'us'), sawn('free', piece, 'us')],
    chosen: 1,
    wood,
    from: wood.green,
    green: true,
    to: 0.08,
    exaggeration: 3
  }
}
