/** One log's end in millimetres about its middle: bark, sapwood, rings, the piece as sawn (dashed) and as it dries. */
import { useMemo } from 'preact/hooks'
import type { DriedPiece, LogPiece } from '../../wood/log-end'
import { points } from '../pictures/parts'
import { ringsOf } from '../pictures/samples'

/** Rings as far apart in every log, so that two logs can be compared; how many a real one has is not known. */
const RING_MM = 17

interface LogProps {
  readonly radius: number
  readonly pithX: number
  readonly pithY: number
  readonly sapwood: number
}

/** A ring-shaped area between two circles about the middle. */
const band = (outer: number, inner: number): string => {
  const circle = (r: number) => `M${-r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`
  return circle(outer) + circle(Math.max(0, inner))
}

function Rings({ radius, pithX, pithY }: Omit<LogProps, 'sapwood'>) {
  const reach = radius + Math.hypot(pithX, pithY)
  const count = Math.max(4, Math.min(40, Math.round(reach / RING_MM)))
  return (
    <>
      {ringsOf(reach, count).map((r) => (
        <circle key={r} class="ring" cx={pithX} cy={pithY} r={r.toFixed(1)} />
      ))}
    </>
  )
}

function Log({ radius, pithX, pithY, sapwood, id }: LogProps & { readonly id: string }) {
  return (
    <>
      <clipPath id={`${id}-log`}>
        <circle r={radius} />
      </clipPath>
      <path class="ends-sapwood" fill-rule="evenodd" d={band(radius, radius - sapwood)} />
      <g clip-path={`url(#${id}-log)`} opacity="0.5">
        <Rings radius={radius} pithX={pithX} pithY={pithY} />
      </g>
      {sapwood > 0 && sapwood < radius && <circle class="ends-edge" r={radius - sapwood} />}
      <circle class="bark" r={radius} />
    </>
  )
}

export interface LogFaceProps {
  readonly id: string
  readonly piece: LogPiece
  readonly dried: DriedPiece
}

export function LogFace({ id, piece, dried }: LogFaceProps) {
  const [pithX, pithY] = piece.pith
  const radius = piece.logDiameter / 2
  const { sapwood } = piece
  const solid = points(dried.after)
  // The log does not change while a piece is dragged, so it is not drawn again.
  const log = useMemo(
    () => <Log id={id} radius={radius} pithX={pithX} pithY={pithY} sapwood={sapwood} />,
    [id, radius, pithX, pithY, sapwood]
  )
  const rings = useMemo(
    () => (
      <>
        <path class="ends-sapwood" fill-rule="evenodd" d={band(radius, radius - sapwood)} />
        <Rings radius={radius} pithX={pithX} pithY={pithY} />
      </>
    ),
    [radius, pithX, pithY, sapwood]
  )
  return (
    <>
      {log}
      <clipPath id={`${id}-piece`}>
        <polygon points={solid} />
      </clipPath>
      <polygon class="f-wood" points={solid} />
      <g clip-path={`url(#${id}-piece)`}>{rings}</g>
      <rect class="hid" x={piece.left} y={piece.top} width={piece.breadth} height={piece.depth} />
      <polygon class="cut" points={solid} />
      <circle class="f-chalk" cx={pithX} cy={pithY} r={radius * 0.02 + 1.5} />
    </>
  )
}
