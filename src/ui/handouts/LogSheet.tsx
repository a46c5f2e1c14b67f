/** A log's end on paper, drawn in millimetres: with its piece as sawn, with what became of it, or bare. */
import type { DriedPiece, LogPiece } from '../../wood/log-end'
import { LogFace } from '../log-end/LogFace'
import { ringsOf } from '../pictures/samples'

interface Props {
  readonly id: string
  readonly says: string
  readonly piece: LogPiece
  /** Drawn when given, filled as it dries; else only the dashed outline, or nothing. */
  readonly dried?: DriedPiece
  readonly outline?: boolean
  /** Half of the width shown, mm: alike where drawings share a scale. */
  readonly reach: number
}

const RING_MM = 17

/** The log without a piece, for somebody to draw on. */
function Bare({ id, piece, outline }: Pick<Props, 'id' | 'piece' | 'outline'>) {
  const [x, y] = piece.pith
  const radius = piece.logDiameter / 2
  const reach = radius + Math.hypot(x, y)
  const rings = ringsOf(reach, Math.round(reach / RING_MM))
  return (
    <>
      <clipPath id={`${id}-log`}>
        <circle r={radius} />
      </clipPath>
      <g clip-path={`url(#${id}-log)`}>
        {rings.map((r) => (
          <circle key={r} class="ring" cx={x} cy={y} r={r.toFixed(1)} />
        ))}
      </g>
      {piece.sapwood > 0 && <circle class="ends-edge" r={radius - piece.sapwood} />}
      <circle class="bark" r={radius} />
      <circle class="f-ink" cx={x} cy={y} r={radius * 0.02 + 1.5} />
      {outline && (
        <rect class="cut thin dashed" x={piece.left} y={piece.top} width={piece.breadth} height={piece.depth} />
      )}
    </>
  )
}

export function LogSheet({ id, says, piece, dried, outline = false, reach }: Props) {
  const box = [-reach, -reach, 2 * reach, 2 * reach].map((n) => n.toFixed(0)).join(' ')
  return (
    <svg class="pic log-sheet" role="img" aria-label={says} viewBox={box}>
      {dried ? <LogFace id={id} piece={piece} dried={dried} /> : <Bare id={id} piece={piece} outline={outline} />}
    </svg>
  )
}
