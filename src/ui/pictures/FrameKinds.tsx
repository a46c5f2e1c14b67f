/** What is being built: outlines of four frames. The chosen one is drawn as cut, the rest as hidden. */
import { Bar, Ground, Person, Pic, type Pt, Rafter, T } from './parts'

export type FrameKind = 'room' | 'whole' | 'pavilion' | 'floor'

const all: readonly { kind: FrameKind; label: string }[] = [
  { kind: 'room', label: 'a hall or great room' },
  { kind: 'whole', label: 'a house or barn frame' },
  { kind: 'pavilion', label: 'a roof on posts' },
  { kind: 'floor', label: 'beams in a room' }
]

export function FrameKinds({ chosen }: { readonly chosen?: FrameKind | undefined }) {
  const label = all.find(({ kind }) => kind === chosen)?.label
  return (
    <Pic
      says={
        label
          ? `Four kinds of frame; chosen: ${label}.`
          : 'Four kinds of frame: trusses over a hall, a whole frame, a roof on posts, beams in a room.'
      }
      h={232}
    >
      {all.map(({ kind, label: name }, i) => (
        <g
          key={kind}
          transform={`translate(${(i % 2) * 166} ${Math.floor(i / 2) * 118})`}
          class={chosen && chosen !== kind ? 'dimmed' : undefined}
        >
          <Outline kind={kind} strong={chosen === kind} />
          <T x={77} y={110} ink={chosen !== kind} chalk={chosen === kind}>
            {name}
          </T>
        </g>
      ))}
    </Pic>
  )
}

function Outline({ kind, strong }: { readonly kind: FrameKind; readonly strong: boolean }) {
  const line = `${strong ? 'cut f-wood' : 'seen f-pale'}`
  const bar = (a: Pt, b: Pt, wide = 6) => <Bar a={a} b={b} wide={wide} class={line} />
  const rafters = (x: number, low: number, high: number, deep = 7) =>
    [x, 154 - x].map((foot) => <Rafter key={foot} foot={[foot, low]} peak={[77, high]} deep={deep} class={line} />)
  const walls = <path class="hid" d="M22 92V48M132 92V48" />
  const person = <Person x={kind === 'floor' ? 52 : 60} y={92} scale={kind === 'whole' ? 0.0155 : 0.0195} />
  return (
    <g>
      {kind === 'room' && (
        <g>
          {walls}
          {bar([77, 46], [77, 12])}
          {bar([50, 28], [74, 42], 4)}
          {bar([104, 28], [80, 42], 4)}
          {rafters(12, 52, 8)}
          {bar([16, 47], [138, 47])}
        </g>
      )}
      {kind === 'whole' && (
        <g>
          {rafters(12, 44, 3, 6)}
          {bar([24, 62], [130, 62], 5)}
          {bar([24, 40], [130, 40], 5)}
          {bar([77, 62], [77, 92], 5)}
          {bar([24, 92], [24, 38], 5)}
          {bar([130, 92], [130, 38], 5)}
          {bar([26, 80], [42, 64], 4)}
          {bar([128, 80], [112, 64], 4)}
        </g>
      )}
      {kind === 'pavilion' && (
        <g>
          {rafters(4, 50, 18)}
          {bar([26, 45], [128, 45])}
          {bar([30, 92], [30, 44])}
          {bar([124, 92], [124, 44])}
          {bar([32, 66], [50, 48], 4)}
          {bar([122, 66], [104, 48], 4)}
        </g>
      )}
      {kind === 'floor' && (
        <g>
          <path class="hid" d="M18 92V14M136 92V14" />
          {[30, 48, 66, 84, 102, 120].map((x) => (
            <rect key={x} class={line} x={x - 4} y="30" width="8" height="8" />
          ))}
          <path class="cut thin" d="M18 29H136" />
          {bar([14, 43], [140, 43], 10)}
          {bar([77, 48], [77, 92], 7)}
        </g>
      )}
      {person}
      <Ground y={92} from={4} to={150} />
    </g>
  )
}
