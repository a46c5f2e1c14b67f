/** Both log ends in one drawing and to one scale, so that the larger log shows. Drawn in millimetres. */
import { useMemo } from 'preact/hooks'
import { useDrawn } from './bench'
import { Grip } from './Grip'
import { LogFace, type LogFaceProps } from './LogFace'
import { SIDES } from './model'
import { pictureSays } from './words'

const MARGIN = 6

export function Drawing() {
  const { shown, dried } = useDrawn()
  const [a, b] = shown.pieces.map((piece) => piece.logDiameter / 2) as [number, number]
  const gap = (a + b) * 0.12
  const width = 2 * (a + b) + gap + 2 * MARGIN
  const height = 2 * Math.max(a, b) + 2 * MARGIN
  const middle = [MARGIN + a, MARGIN + 2 * a + gap + b] as const
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be a drawing, and an image would hide what moves in it
    <svg
      class="pic ends-pic"
      role="group"
      aria-label={pictureSays(shown, dried)}
      viewBox={`0 0 ${width.toFixed(0)} ${height.toFixed(0)}`}
    >
      {SIDES.map((side) => (
        <g key={side} transform={`translate(${middle[side].toFixed(1)} ${(height / 2).toFixed(1)})`}>
          <Still id={`end-${side}`} piece={shown.pieces[side]} dried={dried[side]} />
          {side === shown.chosen && <Grip unit={width / 100} />}
        </g>
      ))}
    </svg>
  )
}

/** The log end that is not worked on is not drawn again. */
function Still({ id, piece, dried }: LogFaceProps) {
  return useMemo(() => <LogFace id={id} piece={piece} dried={dried} />, [id, piece, dried])
}
