/**
 * Moving and sizing a piece by pointer: from where the pointer went down, at most once a frame. Positions settle on
 * the divisions of a rule, so that the fields show what can be measured.
 */
import { useRef } from 'preact/hooks'
import { $units } from '../../stores/units'
import type { LogPiece } from '../../wood/log-end'
import { MM_PER_INCH } from '../format/length'
import type { System } from '../format/quantity'
import { useBench } from './bench'
import { type Bench, chosenOf, withPiece } from './model'

/** Which sides a pull moves: 0 none, -1 left or top, 1 right or bottom; all of them is a move. */
export interface Pull {
  readonly x: -1 | 0 | 1
  readonly y: -1 | 0 | 1
}

const SMALLEST = MM_PER_INCH
const settled = (mm: number, system: System): number => {
  const step = system === 'us' ? MM_PER_INCH / 8 : 2
  return Math.round(mm / step) * step
}

export function pulled(start: LogPiece, pull: Pull, dx: number, dy: number, system: System): Partial<LogPiece> {
  const { left, top, breadth, depth } = start
  if (pull.x === 0 && pull.y === 0) return { left: settled(left + dx, system), top: settled(top + dy, system) }
  // A side that is pulled moves; the one opposite stays.
  const along = (low: number, size: number, end: -1 | 0 | 1, d: number): [number, number] => {
    if (end === 0) return [low, size]
    if (end === 1) return [low, Math.max(SMALLEST, settled(low + size + d, system) - low)]
    const next = Math.min(settled(low + d, system), low + size - SMALLEST)
    return [next, low + size - next]
  }
  const [x, b] = along(left, breadth, pull.x, dx)
  const [y, d] = along(top, depth, pull.y, dy)
  return { left: x, breadth: b, top: y, depth: d }
}

export function useDrag(pull: Pull) {
  const { $view, change, move } = useBench()
  const from = useRef<{ id: number; x: number; y: number; perPixel: number; piece: LogPiece } | null>(null)
  const next = useRef<Partial<LogPiece> | null>(null)

  /** Where the pull has got to, if it has moved since this was asked last. */
  const taken = (): ((asked: Bench) => Bench) | null => {
    const pull_ = next.current
    next.current = null
    return pull_ && ((asked) => withPiece(asked, pull_))
  }
  const end = (event: PointerEvent) => {
    if (from.current?.id !== event.pointerId) return
    from.current = null
    change(taken() ?? ((asked) => asked))
  }
  return {
    onPointerDown(event: PointerEvent & { currentTarget: SVGGraphicsElement }) {
      if (!event.isPrimary || event.button !== 0) return
      const perPixel = 1 / (event.currentTarget.ownerSVGElement?.getScreenCTM()?.a ?? 1)
      const piece = chosenOf($view.get().asked)
      from.current = { id: event.pointerId, x: event.clientX, y: event.clientY, perPixel, piece }
      event.currentTarget.setPointerCapture(event.pointerId)
    },
    onPointerMove(event: PointerEvent) {
      const start = from.current
      if (start === null || start.id !== event.pointerId) return
      const dx = (event.clientX - start.x) * start.perPixel
      const dy = (event.clientY - start.y) * start.perPixel
      const waiting = next.current !== null
      next.current = pulled(start.piece, pull, dx, dy, $units.get())
      if (waiting) return
      requestAnimationFrame(() => {
        const how = taken()
        if (how !== null) move(how)
      })
    },
    onPointerUp: end,
    onPointerCancel: end
  }
}
