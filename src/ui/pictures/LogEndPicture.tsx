/**
 * A section in its log: as sawn (dashed) and as it dries (cut line). Every outline comes computed; this only draws.
 * How many times the movement is enlarged belongs in the caption.
 */
import type { LogEnd } from '../../choice/types'
import { Both, Pic, type Pt, points, T } from './parts'

interface Props {
  readonly logEnd: LogEnd
  /** Half the width of the drawing in mm, so that two drawings can share one scale. */
  readonly reach?: number
  readonly dims?: boolean
  /** Letters in units of the drawing: larger where two drawings share a phone's width. */
  readonly letters?: number
}

/** The log that has to be found: rounded up to the next inch, or 10 mm. */
const logWords = (mm: number) => ({ us: `${Math.ceil(mm / 25.4)} in log`, si: `${Math.ceil(mm / 10) * 10} mm log` })

const says = {
  boxed:
    'End of a timber sawn round the centre of its log. Drying leaves it smaller, with one check open to the centre.',
  free: 'End of a timber sawn beside the centre of its log. Drying leaves it smaller and a little out of square, unbroken.'
}

export function LogEndPicture({ logEnd, reach = logEnd.logRadius * 1.03, dims = false, letters = 13 }: Props) {
  const { heart, logRadius, ringRadii, before, after, exaggeration } = logEnd
  const scale = 150 / reach
  const middle = 160
  const place = ([x, y]: Pt): Pt => [middle + x * scale, 156 + y * scale]
  const [cx, cy] = place([0, 0])
  // A clip needs an id; one made of the shape repeats only where the clip is the same.
  const id = `wood-${heart}-${[logRadius, scale, exaggeration, ...(after[5] ?? [])].map((n) => Math.round(n * 1000)).join('-')}`
  const solid = points(after.map(place))
  const rings = ringRadii.map((r) => <circle key={r} class="ring" cx={cx} cy={cy} r={(r * scale).toFixed(1)} />)
  const left = middle - logRadius * scale
  const right = middle + logRadius * scale
  return (
    <Pic says={says[heart]} h={dims ? 328 + letters * 0.7 : 312} class="pic-log">
      <clipPath id={id}>
        <polygon points={solid} />
      </clipPath>
      <circle class="bark" cx={cx} cy={cy} r={logRadius * scale} />
      <g opacity="0.55">{rings}</g>
      <polygon class="f-wood" points={solid} />
      <g clip-path={`url(#${id})`}>{rings}</g>
      <polygon class="hid" points={points(before.map(place))} />
      <polygon class="cut" points={solid} />
      <circle class="f-chalk" cx={cx} cy={cy} r="3" />
      {dims && (
        <g>
          <line class="dim" x1={left} y1={cy + 4} x2={left} y2="334" />
          <line class="dim" x1={right} y1={cy + 4} x2={right} y2="334" />
          <line class="dim" x1={left} y1="328" x2={right} y2="328" />
          {[left, right].map((x) => (
            <line key={x} class="tick" x1={x - 3.2} y1="331.2" x2={x + 3.2} y2="324.8" />
          ))}
          <T x={middle} y={328 + letters * 0.36} size={letters} ink halo>
            <Both {...logWords(logRadius * 2)} />
          </T>
        </g>
      )}
    </Pic>
  )
}
