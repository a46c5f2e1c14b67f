/** A log's end with its parts named. A drawing, not a measured log: it gives no number. */
import { Pic, T } from '../pictures/parts'
import { ringsOf } from '../pictures/samples'

const X = 112
const Y = 118
const R = 108
const PITH = [104, 108] as const
const NAMES = [
  ['bark', 175, 30, 26],
  ['sapwood', 199, 69, 62],
  ['juvenile wood', 128, 92, 98],
  ['heartwood', 176, 128, 134],
  ['pith', PITH[0], PITH[1], 170],
  ['rings', 150, 190, 206]
] as const

export function LogParts() {
  return (
    <Pic says="End of a log with its parts named: bark, sapwood, heartwood, juvenile wood, pith, rings." h={232}>
      <clipPath id="parts-log">
        <circle cx={X} cy={Y} r={R} />
      </clipPath>
      <circle class="ends-sapwood" cx={X} cy={Y} r={R} />
      <circle class="f-wood" cx={X} cy={Y} r={R * 0.84} />
      <circle class="ends-sapwood" cx={PITH[0]} cy={PITH[1]} r={34} />
      <g clip-path="url(#parts-log)">
        {ringsOf(R * 1.15, 17).map((r) => (
          <circle key={r} class="ring" cx={PITH[0]} cy={PITH[1]} r={r.toFixed(1)} />
        ))}
      </g>
      <circle class="ends-edge" cx={X} cy={Y} r={R * 0.84} />
      <circle class="hid" cx={PITH[0]} cy={PITH[1]} r={34} />
      <circle class="bark" cx={X} cy={Y} r={R} />
      <circle class="f-ink" cx={PITH[0]} cy={PITH[1]} r={3} />
      {NAMES.map(([name, x, y, at]) => (
        <g key={name}>
          <path class="seen" d={`M${x.toFixed(0)} ${y.toFixed(0)}L234 ${at - 4}`} />
          <T x={238} y={at} at="start" ink>
            {name}
          </T>
        </g>
      ))}
    </Pic>
  )
}
