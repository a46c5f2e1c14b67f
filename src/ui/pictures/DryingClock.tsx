/**
 * The drying clock: moisture from felling to years after the raising, with the winters behind it; under it, on the same
 * axis, how much of the shrinkage is still to come. Drawn narrow for a phone and wide for a sheet; the style sheet picks.
 */
import type { Clock, ClockReport } from '../../choice/clock/types'
import { NBSP } from '../format/number'
import { formatUs } from '../format/quantity'
import {
  moistureScale,
  pathOf,
  placeNames,
  simplified,
  spread,
  stepsOf,
  type Wanted,
  wintersBetween
} from './clock-scale'
import { Both, Pic, type Pt, T } from './parts'
import './drying-clock.css'

/** A curve that was kept to compare with, and what it is called in both unit systems. */
export interface KeptCurve {
  readonly curve: Clock
  readonly us: string
  readonly si: string
}
export interface DryingClockProps {
  readonly report: ClockReport
  readonly kept?: KeptCurve | undefined
}

interface Layout {
  readonly w: number
  readonly left: number
  readonly plot: number
  readonly strip: number
  readonly size: number
  readonly class: string
}
const NARROW: Layout = { w: 320, left: 38, plot: 176, strip: 38, size: 12.5, class: 'pic--narrow' }
const WIDE: Layout = { w: 640, left: 44, plot: 236, strip: 48, size: 14.5, class: 'pic--wide' }

const YEAR = 365.25
const KEYS = 'ABCDEFGH'
export const keyOf = (index: number): string => KEYS[index] ?? ''

const raisedOf = (curve: Clock): number => curve.milestones.find((m) => m.id === 'raised')?.day ?? 0

export function DryingClock(props: DryingClockProps) {
  return (
    <div class="ladder clock">
      <Sheet {...props} layout={NARROW} />
      <Sheet {...props} layout={WIDE} />
    </div>
  )
}

/** What the drawing leaves to its caption. */
export function clockScaleWords({ curve }: ClockReport): string | null {
  const { closer, saturation } = moistureScale(wettestOf(curve), curve.fibreSaturation, 0, 1)
  if (closer !== null) return `Above ${closer}${NBSP}% the scale is drawn closer.`
  return saturation ? null : `All of it is below fibre saturation, ${Math.round(curve.fibreSaturation * 100)}${NBSP}%.`
}

const wettestOf = (curve: Clock, kept?: Clock): number =>
  Math.max(...[curve, ...(kept ? [kept] : [])].flatMap((c) => [...c.mean, ...c.high, ...c.core, ...c.shell, ...c.air]))

export function clockSays({ curve, lines }: ClockReport): string {
  const told = lines.map((line) => `${line.label.toLowerCase()} (${line.month}) ${formatUs(line.mean)}`)
  const raised = lines.find((line) => line.id === 'raised')
  const last = lines.at(-1)
  const ahead = curve.shell.some((m, i) => m < (curve.core[i] ?? m) - 0.01)
  return `Mean moisture over time: ${told.join(', ')}.${ahead ? ' The outside dries ahead of the middle.' : ''} Of its shrinkage ${raised ? formatUs(raised.toCome) : ''} is still to come at the raising, ${last ? formatUs(last.toCome) : ''} at the end.`
}

/** Letters of the condensed face are a little under half as wide as high. */
const widthOf = (text: string, size: number): number => text.length * size * 0.46

function Sheet({ report, kept, layout }: DryingClockProps & { readonly layout: Layout }) {
  const { curve } = report
  const { w, left, size } = layout
  const right = w - 8
  const top = 26
  const bottom = top + layout.plot
  const stripTop = bottom + size + 13
  const stripBottom = stripTop + layout.strip
  const raised = raisedOf(curve)
  // Days from the raising, so that a kept curve lies true to it.
  const ends = (c: Clock) => [-raisedOf(c), (c.days.at(-1) ?? 0) - raisedOf(c)] as const
  const [from, to] = [curve, ...(kept ? [kept.curve] : [])]
    .map(ends)
    .reduce(([a, b], [c, d]) => [Math.min(a, c), Math.max(b, d)])
  const x = (day: number): number => left + ((day - from) / (to - from)) * (right - left)
  const scale = moistureScale(wettestOf(curve, kept?.curve), curve.fibreSaturation, top, bottom)
  const line = (list: readonly number[], c = curve): Pt[] => {
    const zero = raisedOf(c)
    return list.map((m, i) => [x((c.days[i] ?? 0) - zero), scale.y(m)])
  }
  const lines = {
    mean: line(curve.mean),
    middle: line(curve.core),
    outside: line(curve.shell),
    air: line(curve.air)
  }
  const low = line(curve.low.map((m, i) => Math.min(m, curve.high[i] ?? m, curve.mean[i] ?? m)))
  const high = line(curve.high.map((m, i) => Math.max(m, curve.low[i] ?? m, curve.mean[i] ?? m)))
  const keptLine = kept ? line(kept.curve.mean, kept.curve) : null
  const saturationY = scale.y(curve.fibreSaturation)
  const saturation: Pt[] = [
    [left, saturationY],
    [right, saturationY]
  ]
  const wanted: Wanted[] = [
    ...(scale.saturation ? [{ id: SATURATION, width: widthOf(SATURATION, size), line: saturation, from: 0.9 }] : []),
    { id: 'mean', width: widthOf('mean', size), line: lines.mean, from: 0.5 },
    ...(keptLine && kept ? [{ id: KEPT, width: widthOf(longer(kept), size), line: keptLine, from: 0.35 }] : []),
    { id: 'middle', width: widthOf('middle', size), line: lines.middle, from: 0.3 },
    { id: 'outside', width: widthOf('outside', size), line: lines.outside, from: 0.4 },
    { id: 'air', width: widthOf('air', size), line: lines.air, from: 0.2 }
  ]
  const names = placeNames(wanted, { left, right, top: top + 2, bottom: bottom - 2 }, size)
  const at = curve.milestones.map((m) => x(m.day - raised))
  const keys = spread(at, size * 1.05, left + 3, right - 3)
  const share = (part: number): number => stripBottom - part * layout.strip
  const shares: Pt[] = curve.toCome.map((part, i) => [x((curve.days[i] ?? 0) - raised), share(part)])
  const area: Pt[] = [
    [shares[0]?.[0] ?? left, stripBottom],
    ...simplified(shares),
    [shares.at(-1)?.[0] ?? right, stripBottom]
  ]

  return (
    <Pic says={clockSays(report)} w={w} h={stripBottom + 2 * size + 14} class={layout.class}>
      {wintersBetween(curve.felledMonth, from + raised, to + raised).map(([a, b]) => (
        <g key={a} class="clock-winter">
          <rect x={x(a - raised).toFixed(1)} y={top} width={(x(b) - x(a)).toFixed(1)} height={bottom - top} />
          <rect x={x(a - raised).toFixed(1)} y={stripTop} width={(x(b) - x(a)).toFixed(1)} height={layout.strip} />
        </g>
      ))}
      {scale.ticks.map((tick) => {
        const y = round(scale.y(tick / 100))
        return (
          <g key={tick}>
            <line class="rule clock-grid" x1={left} y1={y} x2={right} y2={y} />
            <T x={left - 5} y={round(y + size * 0.35)} at="end" size={size}>
              {tick} %
            </T>
          </g>
        )
      })}
      {scale.closer !== null && <Break x={left} y={scale.y(scale.closer / 100) - 7} />}
      <path class="clock-band" d={`${stepsOf([...simplified(low), ...[...simplified(high)].reverse()])}z`} />
      {scale.saturation && <path class="clock-saturation" d={pathOf(saturation)} />}
      <path class="clock-air" d={pathOf(lines.air)} />
      {at.map((place, i) => (
        <path
          key={keyOf(i)}
          class="dim"
          d={`M${keys[i]?.toFixed(1)} ${top - 10}L${place.toFixed(1)} ${top - 1}V${bottom}M${place.toFixed(1)} ${stripTop}V${stripBottom}`}
        />
      ))}
      <path class="clock-middle" d={pathOf(lines.middle)} />
      <path class="clock-outside" d={pathOf(lines.outside)} />
      {keptLine && <path class="clock-kept" d={pathOf(keptLine)} />}
      <path class="chalk-line" d={pathOf(lines.mean)} />
      <line class="seen" x1={left} y1={bottom} x2={right} y2={bottom} />
      {at.map((_, i) => (
        <T key={keyOf(i)} x={round(keys[i] ?? 0)} y={top - 13} size={size} ink>
          {keyOf(i)}
        </T>
      ))}
      {names.map(({ id, x: nx, y }) => (
        <T key={id} x={round(nx)} y={round(y)} size={size} ink chalk={id === 'mean'} halo>
          {id === KEPT && kept ? <Both us={kept.us} si={kept.si} /> : id}
        </T>
      ))}
      <T x={left} y={stripTop - 5} at="start" size={size} ink>
        shrinkage still to come
      </T>
      {[1, 0].map((part) => (
        <T key={part} x={left - 5} y={round(share(part) + size * 0.35)} at="end" size={size}>
          {part * 100} %
        </T>
      ))}
      <path class="clock-left" d={`${stepsOf(area)}z`} />
      <line class="rule clock-grid" x1={left} y1={stripTop} x2={right} y2={stripTop} />
      <line class="seen" x1={left} y1={stripBottom} x2={right} y2={stripBottom} />
      <Years from={from} to={to} x={x} y={stripBottom} size={size} />
      <T x={(left + right) / 2} y={stripBottom + 2 * size + 9} size={size}>
        years from the raising
      </T>
    </Pic>
  )
}

/** A tenth of a drawing unit is finer than a pen. */
const round = (n: number): number => Math.round(n * 10) / 10

const SATURATION = 'shrinks below this'
const KEPT = 'kept'
const longer = ({ us, si }: KeptCurve): string => (us.length > si.length ? us : si)
/** Whole years before and after the raising, as many as stand clear of each other. */
function Years({
  from,
  to,
  x,
  y,
  size
}: {
  readonly from: number
  readonly to: number
  readonly x: (day: number) => number
  readonly y: number
  readonly size: number
}) {
  const wide = x(YEAR) - x(0)
  const step = [1, 2, 5, 10].find((n) => n * wide >= size * 2) ?? 20
  const years: number[] = []
  for (let n = Math.ceil(from / YEAR / step) * step; n * YEAR <= to; n += step) years.push(n)
  return (
    <>
      {years.map((n) => (
        <g key={n}>
          <line class="dim" x1={round(x(n * YEAR))} y1={y} x2={round(x(n * YEAR))} y2={y + 4} />
          <T x={round(x(n * YEAR))} y={y + size + 5} size={size} ink={n === 0}>
            {n < 0 ? `−${-n}` : n}
          </T>
        </g>
      ))}
    </>
  )
}

/** The sign of a broken scale, on the axis. */
const Break = ({ x, y }: { readonly x: number; readonly y: number }) => (
  <path class="seen" d={`M${x} ${y + 6}l-4 -2 8 -4 -4 -2`} />
)
