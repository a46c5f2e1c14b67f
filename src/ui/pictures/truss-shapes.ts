/** Where the timbers of a drawn member lie: lines in mm, y up from the ground. Geometry of the drawing only. */
import type { Pt } from './parts'

export type FrameKind = 'king' | 'king-struts' | 'queen' | 'rafter' | 'post' | 'beam' | 'joist' | 'purlin' | 'ridge'

export interface Shape {
  readonly kind: FrameKind
  /** Between the feet or supports; of a rafter its run, mm. */
  readonly span: number
  /** Rise over run. */
  readonly slope: number
  /** Height of the post, or of what the rest stands on, mm. */
  readonly height: number
  /** Queen posts from the feet, over the span. */
  readonly queenAt: number
}
export interface Stick {
  readonly part: string
  readonly a: Pt
  readonly b: Pt
  /** The side on which its force is drawn: 1 to the left of a to b, -1 to the right. */
  readonly side: 1 | -1
}

/** A truss's left half mirrored: what lies in the middle once. */
function mirrored(sticks: readonly Stick[]): Stick[] {
  return sticks.flatMap((s) => [s, { ...s, a: [-s.a[0], s.a[1]], b: [-s.b[0], s.b[1]], side: s.side === 1 ? -1 : 1 }])
}

export function sticksOf({ kind, span, slope, height: h, queenAt }: Shape): Stick[] {
  const half = span / 2
  const foot: Pt = [-half, h]
  const apex: Pt = [0, h + half * slope]
  const tie: Stick = { part: 'tie', a: foot, b: [half, h], side: -1 }
  const king: Stick = { part: 'king-post', a: [0, h], b: apex, side: -1 }
  switch (kind) {
    case 'king':
      return [king, tie, ...mirrored([{ part: 'rafter', a: foot, b: apex, side: 1 }])]
    case 'king-struts': {
      const strut: Stick = { part: 'strut', a: [0, h], b: [-half / 2, h + (half / 2) * slope], side: 1 }
      return [...mirrored([strut]), king, tie, ...mirrored([{ part: 'rafter', a: foot, b: apex, side: 1 }])]
    }
    case 'queen': {
      const out = half - queenAt * span
      const head: Pt = [-out, h + queenAt * span * slope]
      return [
        ...mirrored([{ part: 'queen-post', a: [-out, h], b: head, side: -1 }]),
        { part: 'straining-beam', a: head, b: [out, head[1]], side: -1 },
        tie,
        ...mirrored([
          { part: 'rafter', a: foot, b: head, side: 1 },
          { part: 'upper-rafter', a: head, b: apex, side: 1 }
        ])
      ]
    }
    case 'rafter':
      return [{ part: 'rafter', a: foot, b: [half, h + span * slope], side: 1 }]
    case 'post':
      return [{ part: 'post', a: [0, 0], b: [0, h], side: -1 }]
    default:
      return [{ part: kind, a: foot, b: [half, h], side: 1 }]
  }
}

/** What it stands on, drawn hidden: from the ground up. */
export function supportsOf({ kind, span, slope, height }: Shape): [Pt, Pt][] {
  if (kind === 'post') return []
  const right = kind === 'rafter' ? height + span * slope : height
  return [
    [
      [-span / 2, 0],
      [-span / 2, height]
    ],
    [
      [span / 2, 0],
      [span / 2, right]
    ]
  ]
}
