/** Drawings of a timber's face and its keeping: knots, pitch, finishes, years between coats, where woods come from. */
import { Pic, T } from './parts'

const KNOTS: readonly (readonly [number, number, number])[] = [
  [40, 14, 3],
  [88, 27, 4],
  [150, 11, 5],
  [196, 26, 3.5],
  [236, 15, 6],
  [278, 25, 4],
  [120, 20, 7],
  [20, 27, 4],
  [212, 12, 5],
  [172, 28, 4],
  [60, 10, 4],
  [258, 30, 5]
]
/** Three faces: few and small, some, many. `level` 0 to 2 marks one. */
export function Knots({
  level,
  labels = ['few, small', 'some', 'as they come']
}: {
  readonly level?: number | undefined
  readonly labels?: readonly string[]
}) {
  const counts = [2, 6, 12]
  return (
    <Pic says="Three faces of a timber: few small knots, some knots, many knots." h={198}>
      {counts.map((n, i) => (
        <g
          key={n}
          transform={`translate(0 ${i * 66})`}
          class={level !== undefined && level !== i ? 'dimmed' : undefined}
        >
          <rect class={level === i ? 'cut f-wood' : 'seen f-pale'} x="2" y="2" width="316" height="38" />
          <path class="ring" d="M2 12Q90 6 160 12T318 10M2 22Q70 18 150 24T318 20M2 32Q100 28 180 33T318 30" />
          {KNOTS.slice(0, n).map(([x, y, r]) => (
            <g key={x}>
              <ellipse class="f-ring" cx={x} cy={y} rx={r * (i === 0 ? 0.7 : 1)} ry={r * (i === 0 ? 0.6 : 0.85)} />
              <path
                class="ring"
                d={`M${x - r * 2.6} ${y}Q${x} ${y - r * 2.4} ${x + r * 2.6} ${y}Q${x} ${y + r * 2.4} ${x - r * 2.6} ${y}`}
              />
            </g>
          ))}
          <T x={2} y={56} at="start" ink={level !== i} chalk={level === i}>
            {labels[i]}
          </T>
        </g>
      ))}
    </Pic>
  )
}

/** Resin that runs in warmth, and resin that heat has set. */
export function Pitch({ matters }: { readonly matters?: boolean | undefined }) {
  const drop = (x: number, long: number) => (
    <path
      key={x}
      class="seen f-ring"
      d={`M${x} 18q-5 ${long * 0.6} -5 ${long}a5 5 0 0 0 10 0q0 ${-long * 0.4} -5 ${-long}z`}
    />
  )
  return (
    <Pic
      says="Left, a resinous timber that weeps pitch in warmth. Right, one whose pitch has been set by heat in the kiln."
      h={128}
    >
      <g class={matters === true ? 'dimmed' : undefined}>
        <rect class="seen f-wood" x="4" y="4" width="146" height="92" />
        <path class="ring" d="M4 20Q70 12 150 20M4 44Q70 36 150 44M4 68Q70 60 150 68M4 88Q70 80 150 88" />
        {drop(36, 34)}
        {drop(82, 52)}
        {drop(118, 24)}
        <T x={77} y={118} ink>
          may weep
        </T>
      </g>
      <g transform="translate(166 0)">
        <rect class="seen f-wood" x="4" y="4" width="146" height="92" />
        <path class="ring" d="M4 20Q70 12 150 20M4 44Q70 36 150 44M4 68Q70 60 150 68M4 88Q70 80 150 88" />
        {[36, 82, 118].map((x) => (
          <circle key={x} class="f-ring" cx={x} cy="26" r="4" />
        ))}
        <T x={77} y={118} ink>
          set by heat
        </T>
      </g>
    </Pic>
  )
}

/** Thirty years on a line, a stroke for every coat. `every` is the years between coats, from and to. */
export function Upkeep({ every }: { readonly every?: readonly [number, number] | undefined }) {
  const years = 30
  const x = (y: number): number => 6 + (y / years) * 308
  const coats: number[] = []
  const mean = every ? (every[0] + every[1]) / 2 : 0
  for (let y = mean; mean > 0 && y <= years; y += mean) coats.push(y)
  return (
    <Pic
      says={
        every
          ? `Over thirty years, a coat every ${every[0]} to ${every[1]} years.`
          : 'Thirty years without a coat: the wood is left to weather.'
      }
      h={84}
    >
      {coats.map((y) => (
        <path key={y} class="chalk-line" d={`M${x(y).toFixed(1)} 46V22`} />
      ))}
      <line class="cut" x1="6" y1="46" x2="314" y2="46" />
      {[0, 5, 10, 15, 20, 25, 30].map((y) => (
        <g key={y}>
          <line class="dim" x1={x(y)} y1="46" x2={x(y)} y2="53" />
          <T x={y === 30 ? 318 : x(y)} y={68} size={12} at={y === 30 ? 'end' : 'middle'}>
            {y === 30 ? '30 yr' : y}
          </T>
        </g>
      ))}
      <T x={6} y={14} at="start" ink>
        {every
          ? `a coat every ${every[0]}${every[0] === every[1] ? '' : ` to ${every[1]}`} years`
          : 'no coats: left to grey'}
      </T>
    </Pic>
  )
}

export interface SwatchRow {
  readonly label: string
  /** One CSS colour for each finish, in order. */
  readonly colours: readonly string[]
}
/** Finishes over woods: a row for each wood, a column for each finish; one column may be marked. */
export function Swatches({
  woods,
  finishes,
  chosen
}: {
  readonly woods: readonly SwatchRow[]
  readonly finishes: readonly string[]
  readonly chosen?: number | undefined
}) {
  const left = 84
  const step = 234 / Math.max(1, finishes.length)
  return (
    <Pic
      says={`How ${finishes.join(', ')} look on ${woods.map((w) => w.label).join(', ')}.`}
      h={woods.length * 36 + 26}
    >
      {finishes.map((name, i) => (
        <T key={name} x={left + (i + 0.5) * step} y={13} size={12} chalk={chosen === i} ink={chosen !== i}>
          {name}
        </T>
      ))}
      {woods.map((wood, r) => (
        <g key={wood.label}>
          <T x={0} y={r * 36 + 42} at="start" ink>
            {wood.label}
          </T>
          {wood.colours.map((colour, i) => (
            <rect key={i} class="swatch" fill={colour} x={left + i * step} y={r * 36 + 22} width={step} height="32" />
          ))}
        </g>
      ))}
      {chosen !== undefined && (
        <rect class="chalk-line" x={left + chosen * step} y="21" width={step} height={woods.length * 36 - 2} />
      )}
    </Pic>
  )
}

/** How far the wood has come, as rings about the place. `reach` 0 the region, 1 the next, 2 anywhere. */
export function LocalWoods({
  reach,
  place,
  near = [],
  far = []
}: {
  readonly reach?: number | undefined
  readonly place?: string | undefined
  readonly near?: readonly string[]
  readonly far?: readonly string[]
}) {
  const rings = [34, 66, 98]
  const names = ['your forest region', 'the next regions', 'from afar']
  return (
    <Pic says="Where the wood grows: your own forest region, the next ones, or far away." h={210}>
      {rings.map((r, i) => (
        <circle key={r} class={reach === i ? 'chalk-line' : i === 0 ? 'cut' : 'ring'} cx="104" cy="104" r={r} />
      ))}
      <circle class="f-chalk" cx="104" cy="104" r="4" />
      {place && (
        <T x={104} y={95} ink halo>
          {place}
        </T>
      )}
      {names.map((name, i) => {
        const y = [30, 86, 128][i] ?? 0
        const edge = 104 + Math.sqrt(Math.max(0, (rings[2 - i] ?? 0) ** 2 - (y - 104) ** 2))
        const index = 2 - i
        const list = index === 0 ? near : index === 1 ? [] : far
        return (
          <g key={name}>
            <path class="dim" d={`M${Math.min(edge, 206).toFixed(1)} ${y - 4}H214`} />
            <T x={218} y={y} at="start" ink={reach !== index} chalk={reach === index}>
              {names[index]}
            </T>
            {list.slice(0, 2).map((wood, k) => (
              <T key={wood} x={218} y={y + 15 + k * 14} at="start" size={12}>
                {wood}
              </T>
            ))}
          </g>
        )
      })}
    </Pic>
  )
}
