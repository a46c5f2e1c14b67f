/** Curves and bars over the months: moisture outdoors and in service, decay index. */
import { Pic, T } from './parts'

const MONTHS = ['J', 'F', 'M', 'A', 'M', 'J', 'J', 'A', 'S', 'O', 'N', 'D'] as const
const LEFT = 32
const STEP = 24
const monthX = (i: number): number => LEFT + STEP * (i + 0.5)

function MonthLetters({ y }: { readonly y: number }) {
  return (
    <>
      {MONTHS.map((letter, i) => (
        <T key={i} x={monthX(i)} y={y} size={12}>
          {letter}
        </T>
      ))}
    </>
  )
}

export interface ClimateProps {
  /** Equilibrium moisture month by month, fractions: outdoors under cover, and where the timber will live. */
  readonly outdoor: readonly number[]
  readonly service: readonly number[]
}

export function ClimateStrip({ outdoor, service }: ClimateProps) {
  const all = [...outdoor, ...service]
  const low = Math.floor((Math.min(...all) * 100 - 0.5) / 2) * 2
  const high = Math.max(low + 6, Math.ceil((Math.max(...all) * 100 + 0.5) / 2) * 2)
  const step = high - low > 12 ? 4 : 2
  const y = (fraction: number): number => 150 - ((fraction * 100 - low) / (high - low)) * 128
  const path = (list: readonly number[]) =>
    list.map((v, i) => `${i === 0 ? 'M' : 'L'}${monthX(i)} ${y(v).toFixed(1)}`).join('')
  const lines: number[] = []
  for (let v = low; v <= high; v += step) lines.push(v)
  const same = outdoor.every((v, i) => Math.abs(v - (service[i] ?? v)) < 0.002)
  const away = (list: readonly number[], other: readonly number[], i: number) =>
    (list[i] ?? 0) >= (other[i] ?? 0) ? -9 : 18
  return (
    <Pic says="Moisture that wood settles at, month by month: outdoors, and where your timbers will be." h={176}>
      {lines.map((v) => (
        <g key={v}>
          <line class="rule" x1={LEFT} y1={y(v / 100)} x2="320" y2={y(v / 100)} />
          <T x={LEFT - 6} y={y(v / 100) + 4} at="end" size={12}>
            {v} %
          </T>
        </g>
      ))}
      <path class="cut" stroke-dasharray="1 5" d={path(outdoor)} />
      <path class="chalk-line" d={path(service)} />
      <MonthLetters y={169} />
      {!same && (
        <T x={monthX(2)} y={y(outdoor[2] ?? 0) + away(outdoor, service, 2)} ink halo at="start">
          outdoors
        </T>
      )}
      <T x={monthX(6)} y={y(service[6] ?? 0) + away(service, same ? service : outdoor, 6)} chalk halo>
        your timbers
      </T>
    </Pic>
  )
}

export interface DecayProps {
  /** Share of the climate index that each month adds. */
  readonly months: readonly number[]
  readonly total: number
}
export function DecayMonths({ months, total }: DecayProps) {
  const most = Math.max(4, ...months)
  const size = (v: number): number => (Math.max(0, v) / most) * 92
  return (
    <Pic says={`Months in which rot can work at this place; the year adds up to ${Math.round(total)}.`} h={140}>
      {months.map((v, i) => (
        <g key={monthX(i)}>
          <rect class="seen f-wood" x={monthX(i) - 9} y={112 - size(v)} width="18" height={size(v).toFixed(1)} />
          {v >= 0.5 && (
            <T x={monthX(i)} y={107 - size(v)} size={12} ink>
              {Math.round(v)}
            </T>
          )}
        </g>
      ))}
      <line class="cut" x1={LEFT - 2} y1="112" x2="320" y2="112" />
      <MonthLetters y={129} />
    </Pic>
  )
}
export { DecayMonths as MonthBars }
