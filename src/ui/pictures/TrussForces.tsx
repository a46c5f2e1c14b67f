/**
 * A truss, or one timber, to scale beside a person, with what goes along each of its timbers. Push and pull are told apart
 * by line and by arrow, not by colour: a push is a whole line whose arrows press on the joints, a pull a dashed one whose
 * arrows draw away from them. Letters lead to a key, so that it is read at any slope and on a phone.
 */
import type { Quantity } from '../../data/quantity'
import { formatSi, formatUs } from '../format/quantity'
import { Bar, Both, Dim, Ground, Len, Person, Pic, type Pt, T } from './parts'
import { type FrameKind, type Shape, type Stick, sticksOf, supportsOf } from './truss-shapes'

export interface ForcePart {
  readonly id: string
  readonly name: string
  /** mm. */
  readonly section: readonly [number, number]
  /** Greatest push and greatest pull along it; null where there is none. */
  readonly push: Quantity | null
  readonly pull: Quantity | null
}
export interface TrussForcesProps extends Shape {
  readonly parts: readonly ForcePart[]
  /** What an end brings to its support. */
  readonly end?: Quantity | null
  /** Loads at points: mm from the left support. */
  readonly points?: readonly { readonly at: number; readonly load: Quantity }[]
}

const TITLE: Readonly<Record<FrameKind, string>> = {
  king: 'King-post truss',
  'king-struts': 'King-post truss with struts',
  queen: 'Queen-post truss',
  rafter: 'Rafter on a wall and a ridge beam',
  post: 'Post',
  beam: 'Beam on two posts',
  joist: 'Floor joist on two beams',
  purlin: 'Purlin on two supports',
  ridge: 'Ridge beam on two posts'
}
type Sense = 'push' | 'pull' | 'none'
const size = (q: Quantity | null): number => (q && typeof q.value === 'number' ? q.value : 0)
const senseOf = ({ push, pull }: ForcePart): Sense =>
  !push && !pull ? 'none' : size(push) >= size(pull) ? 'push' : 'pull'
const LETTERS = 'ABCDEFG'
const ROW = 19
const ARROW = 30
/** Room of the drawing itself, in its units. */
const WIDE = 268
const TALL = 150

export function TrussForces({ parts, end = null, points = [], ...shape }: TrussForcesProps) {
  // Loads come from above: the letter of what bears them goes below.
  const sticks = sticksOf(shape).map((s): Stick => (points.length > 0 ? { ...s, side: -1 } : s))
  const supports = supportsOf(shape)
  const top = Math.max(1900, ...sticks.flatMap((s) => [s.a[1], s.b[1]]))
  const scale = Math.min(WIDE / Math.max(shape.kind === 'post' ? 0 : shape.span, 1000), TALL / top)
  const ground = 22 + (points.length > 0 ? ARROW + 14 : 0) + top * scale
  const at = ([x, y]: Pt): Pt => [(shape.kind === 'post' ? 190 : 160) + x * scale, ground - y * scale]
  const known = parts.filter((p) => sticks.some((s) => s.part === p.id))
  const span = shape.kind !== 'post'
  const key = ground + (span ? 46 : 24)
  const rows = known.length + (end ? 1 : 0) + points.length
  const told = known.map((p) => `${p.name.toLowerCase()} ${SAID[senseOf(p)]}`).join(', ')
  return (
    <Pic says={`${TITLE[shape.kind]}, drawn to scale beside a person: ${told}.`} h={key + rows * ROW}>
      {supports.map(([a, b]) => (
        <Bar key={String(a)} a={at(a)} b={at(b)} wide={Math.max(5, 200 * scale)} class="hid" />
      ))}
      {sticks.map((s, i) => (
        <Timber key={i} stick={s} part={known.find((p) => p.id === s.part)} at={at} scale={scale} />
      ))}
      {sticks.map((s, i) => {
        const index = known.findIndex((p) => p.id === s.part)
        const part = known[index]
        // Of two alike the first bears the letter.
        const first = sticks.findIndex((other) => other.part === s.part) === i
        return (
          part && (
            <Force key={i} stick={s} part={part} letter={first ? (LETTERS[index] ?? '') : ''} at={at} scale={scale} />
          )
        )
      })}
      {points.map((p, i) => (
        <Load key={i} at={at([p.at - shape.span / 2, shape.height])} above={deepest(parts) * scale} n={i + 1} />
      ))}
      <Person x={at([shape.kind === 'post' ? -1300 : -shape.span * 0.24, 0])[0]} y={ground} scale={scale} />
      <Ground y={ground} from={10} to={310} />
      {span && (
        <Dim from={at([-shape.span / 2, 0])[0]} to={at([shape.span / 2, 0])[0]} at={ground + 19}>
          <Len mm={shape.span} />
        </Dim>
      )}
      {known.map((p, i) => (
        <Row key={p.id} y={key + (i + 0.5) * ROW} part={p} letter={LETTERS[i] ?? ''} />
      ))}
      {points.map((p, i) => (
        <T key={i} x={58} y={key + (known.length + i + 0.5) * ROW + 4.5} at="start">
          load {i + 1}{' '}
          <tspan class="t-ink">
            <Both us={formatUs(p.load)} si={formatSi(p.load)} />
          </tspan>{' '}
          at <Len mm={p.at} />
        </T>
      ))}
      {end && (
        <T x={58} y={key + (known.length + points.length + 0.5) * ROW + 4.5} at="start">
          on {points.length > 0 ? 'the heavier end' : 'each support'}{' '}
          <tspan class="t-ink">{<Both us={formatUs(end)} si={formatSi(end)} />}</tspan>
        </T>
      )}
    </Pic>
  )
}
const deepest = (parts: readonly ForcePart[]): number => Math.max(200, ...parts.map((p) => p.section[1])) / 2

/** A load at a point: an arrow down to the timber's upper edge, its number over it. */
function Load({ at: [x, y], above, n }: { readonly at: Pt; readonly above: number; readonly n: number }) {
  const foot = y - above - 2
  return (
    <g>
      <line class="cut thin" x1={x} y1={foot - ARROW} x2={x} y2={foot - 4} />
      <Head tip={[x, foot - 5]} along={[0, 1]} way={1} />
      <T x={x} y={foot - ARROW - 4} size={13} ink>
        {n}
      </T>
    </g>
  )
}

const SAID: Readonly<Record<Sense, string>> = { push: 'pushed', pull: 'pulled', none: 'bent only' }

interface Drawn {
  readonly stick: Stick
  readonly at: (p: Pt) => Pt
  readonly scale: number
}
const thick = (part: ForcePart | undefined, scale: number): number => Math.max(3.5, (part?.section[1] ?? 200) * scale)

function Timber({ stick, part, at, scale }: Drawn & { readonly part: ForcePart | undefined }) {
  return <Bar a={at(stick.a)} b={at(stick.b)} wide={thick(part, scale)} />
}

/** Its force as a line beside it, arrows at both ends, its letter in the middle. */
function Force({ stick, part, letter, at, scale }: Drawn & { readonly part: ForcePart; readonly letter: string }) {
  const [a, b] = [at(stick.a), at(stick.b)]
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1
  const along: Pt = [(b[0] - a[0]) / long, (b[1] - a[1]) / long]
  const off = (thick(part, scale) / 2 + 7) * stick.side
  // To the left of a to b on a sheet whose y runs down.
  const point = (t: number): Pt => [
    a[0] + along[0] * long * t + along[1] * off,
    a[1] + along[1] * long * t - along[0] * off
  ]
  const sense = senseOf(part)
  const [from, to] = [point(0.16), point(0.84)]
  const middle = point(0.5)
  return (
    <g>
      {sense !== 'none' && (
        <>
          <Shaft a={from} b={to} sense={sense} />
          <Head tip={from} along={along} way={sense === 'push' ? -1 : 1} />
          <Head tip={to} along={along} way={sense === 'push' ? 1 : -1} />
        </>
      )}
      {letter !== '' && <Letter at={middle} letter={letter} />}
    </g>
  )
}

const Shaft = ({ a, b, sense }: { readonly a: Pt; readonly b: Pt; readonly sense: Sense }) => (
  <line
    class={`cut thin force-${sense}`}
    x1={a[0]}
    y1={a[1]}
    x2={b[0]}
    y2={b[1]}
    stroke-dasharray={sense === 'pull' ? '4 4' : undefined}
  />
)

/** An arrowhead of which the middle is at `tip`, pointing along (1) or against (-1). */
function Head({ tip: [x, y], along: [u, v], way }: { readonly tip: Pt; readonly along: Pt; readonly way: 1 | -1 }) {
  const p = (f: number, s: number) => `${(x + u * f * way - v * s).toFixed(1)} ${(y + v * f * way + u * s).toFixed(1)}`
  return <path class="f-ink" d={`M${p(5, 0)}L${p(-4, 4)}L${p(-4, -4)}Z`} />
}

const Letter = ({ at: [x, y], letter }: { readonly at: Pt; readonly letter: string }) => (
  <g>
    <circle class="seen f-paper" cx={x} cy={y} r="8" />
    <T x={x} y={y + 4.5} size={13} ink>
      {letter}
    </T>
  </g>
)

/** A line of the key: letter, how its force is drawn, name and force. */
function Row({ y, part, letter }: { readonly y: number; readonly part: ForcePart; readonly letter: string }) {
  const sense = senseOf(part)
  const way = sense === 'push' ? 1 : -1
  const said = (['push', 'pull'] as const).flatMap((s) => {
    const q = part[s]
    return q ? [{ s, q }] : []
  })
  return (
    <g>
      <Letter at={[12, y]} letter={letter} />
      {sense !== 'none' && (
        <>
          <Shaft a={[29, y]} b={[49, y]} sense={sense} />
          <Head tip={[29, y]} along={[1, 0]} way={way === 1 ? -1 : 1} />
          <Head tip={[49, y]} along={[1, 0]} way={way} />
        </>
      )}
      <T x={58} y={y + 4.5} at="start">
        {part.name.toLowerCase()}{' '}
        {said.length === 0
          ? 'bends'
          : said.map(({ s, q }, i) => (
              <>
                {i > 0 && ' or '}
                {s} <tspan class="t-ink">{<Both us={formatUs(q)} si={formatSi(q)} />}</tspan>
              </>
            ))}
      </T>
    </g>
  )
}
