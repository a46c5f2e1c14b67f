/**
 * What the drawings share: the sheet, letters, lengths in both unit systems, dimension lines, timbers, a person.
 * All coordinates are in the units of the viewBox, about 320 wide, so that letters of 14 come to 12 px or more on a phone.
 * Line weights are classes of styles/pictures.css: .cut heavy, .seen light, .hid dashed, .dim thin.
 */
import type { ComponentChildren } from 'preact'
import { feetAndInches, inchesIn, inInches, MM_PER_INCH, metres } from '../format/length'

export type Pt = readonly [number, number]
export const points = (list: readonly Pt[]): string => list.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')

interface PicProps {
  /** What the picture shows, in a sentence: read out in place of the drawing. */
  readonly says: string
  readonly w?: number
  readonly h: number
  readonly class?: string
  readonly children: ComponentChildren
}
export function Pic({ says, w = 320, h, class: extra, children }: PicProps) {
  return (
    <svg class={extra ? `pic ${extra}` : 'pic'} role="img" aria-label={says} viewBox={`0 0 ${w} ${h.toFixed(0)}`}>
      {children}
    </svg>
  )
}

interface TProps {
  readonly x: number
  readonly y: number
  readonly at?: 'start' | 'middle' | 'end'
  readonly size?: number
  /** soft unless told; halo keeps letters clear of lines behind them. */
  readonly ink?: boolean
  readonly chalk?: boolean
  readonly halo?: boolean
  readonly turn?: boolean
  readonly children: ComponentChildren
}
export function T({ x, y, at = 'middle', size = 14, ink, chalk, halo, turn, children }: TProps) {
  const names = ['t', ink && 't-ink', chalk && 't-chalk', halo && 't-halo'].filter(Boolean).join(' ')
  return (
    <text
      class={names}
      x={x}
      y={y}
      text-anchor={at}
      font-size={size}
      transform={turn ? `rotate(-90 ${x} ${y})` : undefined}
    >
      {children}
    </text>
  )
}

export function Both({ us, si }: { readonly us: string; readonly si: string }) {
  if (us === si) return <>{us}</>
  return (
    <>
      <tspan class="us">{us}</tspan>
      <tspan class="si">{si}</tspan>
    </>
  )
}
export const Len = ({ mm }: { readonly mm: number }) => <Both us={feetAndInches(mm)} si={metres(mm)} />
/** Whole inches, or mm. */
export const Inch = ({ mm }: { readonly mm: number }) => (
  <Both us={`${inchesIn(mm / MM_PER_INCH)} in`} si={`${Math.round(mm)} mm`} />
)
export const Sec = ({ of: [b, d] }: { readonly of: readonly [number, number] }) => (
  <Both
    us={
      inInches(b, d)
        ? `${inchesIn(b / MM_PER_INCH, 4)} × ${inchesIn(d / MM_PER_INCH, 4)}`
        : `${Math.round(b)} × ${Math.round(d)}`
    }
    si={`${Math.round(b)} × ${Math.round(d)}`}
  />
)

/** A dimension line between two points along x or along y, ticked like a carpenter's. */
export function Dim({
  from,
  to,
  at,
  along = 'x',
  children
}: {
  readonly from: number
  readonly to: number
  readonly at: number
  readonly along?: 'x' | 'y'
  readonly children: ComponentChildren
}) {
  const flat = along === 'x'
  const p = (t: number, off = 0): Pt => (flat ? [t, at + off] : [at + off, t])
  const line = (a: Pt, b: Pt, kind: string) => <line class={kind} x1={a[0]} y1={a[1]} x2={b[0]} y2={b[1]} />
  const mid = (from + to) / 2
  return (
    <g>
      {line(p(from), p(to), 'dim')}
      {[from, to].map((t) => (
        <g key={t}>
          {line(p(t, -5), p(t, 5), 'dim')}
          <line class="tick" x1={p(t)[0] - 3.2} y1={p(t)[1] + 3.2} x2={p(t)[0] + 3.2} y2={p(t)[1] - 3.2} />
        </g>
      ))}
      {flat ? (
        <T x={mid} y={at + 4.5} ink halo>
          {children}
        </T>
      ) : (
        <T x={at + 4.5} y={mid} ink halo turn>
          {children}
        </T>
      )}
    </g>
  )
}

/** A timber seen from the side: a straight bar between two points. */
export function Bar({
  a,
  b,
  wide,
  class: names = 'seen f-pale'
}: {
  readonly a: Pt
  readonly b: Pt
  readonly wide: number
  readonly class?: string
}) {
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1
  const nx = (-(b[1] - a[1]) / long) * (wide / 2)
  const ny = ((b[0] - a[0]) / long) * (wide / 2)
  const corners: Pt[] = [
    [a[0] + nx, a[1] + ny],
    [b[0] + nx, b[1] + ny],
    [b[0] - nx, b[1] - ny],
    [a[0] - nx, a[1] - ny]
  ]
  return <polygon class={names} points={points(corners)} />
}

/** A rafter with plumb cuts, from its foot to the ridge; `deep` is measured plumb, downwards. */
export function Rafter({
  foot,
  peak,
  deep,
  class: names = 'seen f-pale'
}: {
  readonly foot: Pt
  readonly peak: Pt
  readonly deep: number
  readonly class?: string
}) {
  const list: Pt[] = [foot, peak, [peak[0], peak[1] + deep], [foot[0], foot[1] + deep]]
  return <polygon class={names} points={points(list)} />
}

export const Ground = ({
  y,
  from = 0,
  to = 320
}: {
  readonly y: number
  readonly from?: number
  readonly to?: number
}) => <line class="cut" x1={from} y1={y} x2={to} y2={y} />

export const PERSON_MM = 1750
/** Someone 1.75 m tall, for scale. `scale` is drawing units per mm; x is between the feet, y the ground. */
export function Person({ x, y, scale }: { readonly x: number; readonly y: number; readonly scale: number }) {
  return (
    <g class="f-soft" transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) scale(${scale.toFixed(5)})`}>
      <circle cx="0" cy="-1630" r="120" />
      <path d="M-215-1465Q-200-1490-120-1490L120-1490Q200-1490 215-1465L275-820 205-805 165-1220 160-800 140-20 195 0 25 0 0-760-25 0-195 0-140-20-160-800-165-1220-205-805-275-820Z" />
    </g>
  )
}

/** Snow, soil or stone shown as a row of short strokes under or over a line. */
export function Hatch({
  from,
  to,
  y,
  step = 9,
  size = 6
}: {
  readonly from: number
  readonly to: number
  readonly y: number
  readonly step?: number
  readonly size?: number
}) {
  const n = Math.max(0, Math.floor((to - from) / step))
  let d = ''
  for (let i = 0; i <= n; i++) d += `M${(from + i * step).toFixed(1)} ${y}l${-size} ${size}`
  return <path class="dim" d={d} />
}
