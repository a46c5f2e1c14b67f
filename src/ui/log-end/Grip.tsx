/**
 * What a hand or a key takes hold of: the piece as asked for, and its corners. Corners are for pointers alone; by
 * keyboard the fields size the piece.
 */
import { $units } from '../../stores/units'
import { useSaved } from '../../stores/use-saved'
import { MM_PER_INCH } from '../format/length'
import { useBench, useDrawn } from './bench'
import { chosenOf, withPiece } from './model'
import { type Pull, useDrag } from './use-drag'

const WAYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1]
}
const CORNERS: readonly Pull[] = [
  { x: -1, y: -1 },
  { x: 1, y: -1 },
  { x: 1, y: 1 },
  { x: -1, y: 1 }
]
const MOVE: Pull = { x: 0, y: 0 }

/** `unit`: a hundredth of the drawing's width, mm. */
function Corner({ pull, x, y, unit }: { readonly pull: Pull; x: number; y: number; unit: number }) {
  const drag = useDrag(pull)
  const half = unit * 1.1
  return (
    <g class={pull.x === pull.y ? 'ends-corner' : 'ends-corner ends-corner--up'} {...drag}>
      <circle class="ends-reach" cx={x} cy={y} r={unit * 3.6} />
      <rect class="ends-handle" x={x - half} y={y - half} width={2 * half} height={2 * half} />
    </g>
  )
}

export function Grip({ unit }: { readonly unit: number }) {
  const { move } = useBench()
  const { asked, refused } = useDrawn()
  const system = useSaved($units)
  const drag = useDrag(MOVE)
  const { left, top, breadth, depth } = chosenOf(asked)
  if (!(breadth > 0 && depth > 0)) return null
  const box = { x: left, y: top, width: breadth, height: depth }

  const press = (event: KeyboardEvent) => {
    const way = WAYS[event.key]
    if (way === undefined || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    const [small, large] = system === 'us' ? [MM_PER_INCH / 4, MM_PER_INCH] : [5, 25]
    const step = event.shiftKey ? large : small
    move((now) => {
      const piece = chosenOf(now)
      return withPiece(now, { left: piece.left + way[0] * step, top: piece.top + way[1] * step })
    })
  }
  return (
    <>
      {/* biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: the one role with which a screen reader hands on the arrow keys */}
      <g
        class="ends-piece"
        role="application"
        tabIndex={0}
        aria-label="The piece. Arrow keys move it, with Shift in larger steps."
        aria-describedby="ends-says"
        onKeyDown={press}
        {...drag}
      >
        <rect class="ends-reach" {...box} />
        {refused !== null && <rect class="ends-refused" {...box} />}
        <rect class="ends-focus" {...box} />
      </g>
      {CORNERS.map((pull) => (
        <Corner
          key={`${pull.x} ${pull.y}`}
          pull={pull}
          x={pull.x < 0 ? left : left + breadth}
          y={pull.y < 0 ? top : top + depth}
          unit={unit}
        />
      ))}
    </>
  )
}
