/** Moisture across a timber, face to face, at the moments of its drying clock: the gradient that opens checks. */
import type { Milestone } from '../../choice/clock/types'
import { moistureScale, spread } from './clock-scale'
import { Inch, Pic, T } from './parts'

interface Props {
  readonly moments: readonly Milestone[]
  /** What each moment is called, by id. */
  readonly labels: Readonly<Record<string, string>>
  readonly fibreSaturation: number
  /** Of the thinner side, mm. */
  readonly thickness: number
}

const LEFT = 38
const RIGHT = 214
const TOP = 10
const LOW = 150
/** Least distance between the labels' lines. */
const APART = 15

/** Labels beside the ends of their lines, moved apart where they would touch; order from wet to dry is kept. */
export function beside(wanted: readonly number[], apart: number, top: number, low: number): number[] {
  const order = wanted.map((_, i) => i).sort((p, q) => (wanted[p] ?? 0) - (wanted[q] ?? 0))
  const at = spread(
    order.map((i) => wanted[i] ?? 0),
    apart,
    top,
    low
  )
  return wanted.map((_, i) => at[order.indexOf(i)] ?? 0)
}

export function AcrossTimber({ moments, labels, fibreSaturation, thickness }: Props) {
  const wettest = Math.max(...moments.flatMap((m) => m.profile.map((p) => p.moisture)))
  const { y, ticks, closer, saturation } = moistureScale(wettest, fibreSaturation, TOP, LOW)
  const x = (mm: number) => LEFT + (mm / thickness) * (RIGHT - LEFT)
  const path = ({ profile }: Milestone) => {
    const half = profile.map((p) => [p.from, p.moisture] as const)
    const both = [...half, ...[...half].reverse().map(([from, m]) => [thickness - from, m] as const)]
    return both.map(([from, m], i) => `${i === 0 ? 'M' : 'L'}${x(from).toFixed(1)} ${y(m).toFixed(1)}`).join('')
  }
  const ends = moments.map((m) => y(m.profile[0]?.moisture ?? 0))
  const at = beside(ends, APART, TOP + 4, LOW)
  const say = moments.map((m) => {
    const percent = (share: number | undefined) => Math.round((share ?? 0) * 100)
    return `${labels[m.id]}: ${percent(m.profile[0]?.moisture)} % at the face, ${percent(m.profile.at(-1)?.moisture)} % in the middle`
  })
  return (
    <Pic says={`Moisture across the timber. ${say.join('; ')}.`} h={176}>
      {ticks.map((percent) => (
        <g key={percent}>
          <line class="rule" x1={LEFT} y1={y(percent / 100)} x2={RIGHT} y2={y(percent / 100)} />
          <T x={LEFT - 5} y={y(percent / 100) + 4} at="end" size={12}>
            {percent} %
          </T>
        </g>
      ))}
      {closer !== null && (
        <path class="cut thin" d={`M${LEFT - 4} ${y(closer / 100) + 3}l8 -3M${LEFT - 4} ${y(closer / 100)}l8 -3`} />
      )}
      {saturation && <line class="hid" x1={LEFT} y1={y(fibreSaturation)} x2={RIGHT} y2={y(fibreSaturation)} />}
      {moments.map((m, i) => (
        <g key={m.id}>
          <path class={i === moments.length - 1 ? 'chalk-line' : 'cut thin'} d={path(m)} />
          <line class="dim" x1={RIGHT} y1={ends[i]} x2={RIGHT + 10} y2={at[i]} />
          <T
            x={RIGHT + 13}
            y={(at[i] ?? 0) + 4}
            at="start"
            size={12}
            ink={i < moments.length - 1}
            chalk={i === moments.length - 1}
          >
            {labels[m.id]}
          </T>
        </g>
      ))}
      <T x={LEFT} y={168} at="start" size={12}>
        face
      </T>
      <T x={(LEFT + RIGHT) / 2} y={168} size={12}>
        middle of <Inch mm={thickness} />
      </T>
      <T x={RIGHT} y={168} at="end" size={12}>
        face
      </T>
    </Pic>
  )
}
