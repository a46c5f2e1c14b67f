/** The bent, to scale, with a person 1.75 m tall: span, pitch and post height as answered. Lengths in mm, pitch in degrees. */
import { Bar, Both, Dim, Ground, Len, Person, Pic, type Pt, Rafter, T } from './parts'

export interface ElevationProps {
  readonly span: number
  /** Slope of the roof, degrees. */
  readonly pitch?: number
  readonly postHeight?: number
  readonly form?: 'truss' | 'beam' | 'floor'
  /** What props the rafters of a truss. */
  readonly truss?: 'king' | 'struts' | 'queens'
  readonly person?: boolean
  /** False where walls carry it: they are drawn hidden in place of the posts. */
  readonly posts?: boolean
}

export function Elevation({
  span,
  pitch = 34,
  postHeight = 2700,
  form = 'truss',
  truss = 'king',
  person = true,
  posts = true
}: ElevationProps) {
  const tangent = Math.tan((pitch * Math.PI) / 180)
  const over = form === 'truss' ? 450 : 0
  const rise = form === 'truss' ? (span / 2) * tangent + 250 : form === 'floor' ? 1900 : (span / 2) * tangent + 350
  const scale = Math.min(262 / (span + 2 * over), 156 / (postHeight + rise))
  const ground = 16 + (postHeight + rise) * scale
  const middle = 174
  const at = (x: number, up: number): Pt => [middle + x * scale, ground - up * scale]
  const half = span / 2
  const [x0] = at(-half, 0)
  const [x1] = at(half, 0)
  const eave = at(0, postHeight)[1]
  const wide = (mm: number) => Math.max(3, mm * scale)
  const words = {
    truss: 'A roof truss on two posts',
    beam: 'A beam on two posts',
    floor: 'A floor beam on two posts, joists across it'
  }
  return (
    <Pic says={`${words[form]}, drawn to scale beside a person.`} h={ground + 34}>
      {form === 'truss' && (
        <Truss kind={truss} half={half} up={postHeight} over={over} tangent={tangent} at={at} wide={wide} />
      )}
      {form === 'beam' && (
        <g>
          <path
            class="hid"
            d={`M${at(-half - 250, postHeight).join(' ')}L${at(0, postHeight + (half + 250) * tangent).join(' ')}L${at(half + 250, postHeight).join(' ')}`}
          />
          <Bar a={at(-half - 250, postHeight - 150)} b={at(half + 250, postHeight - 150)} wide={wide(300)} />
        </g>
      )}
      {form === 'floor' && <Floor half={half} up={postHeight} at={at} wide={wide} />}
      {[-1, 1].map((side) => (
        <Bar
          key={side}
          a={at(side * half, 0)}
          b={at(side * half, postHeight - (form === 'truss' ? 260 : 300))}
          wide={wide(200)}
          class={posts ? 'seen f-pale' : 'hid'}
        />
      ))}
      {person && <Person x={at(-half * 0.42, 0)[0]} y={ground} scale={scale} />}
      <Ground y={ground} from={26} />
      <Dim from={x0} to={x1} at={ground + 19}>
        <Len mm={span} />
      </Dim>
      <Dim from={eave} to={ground} at={14} along="y">
        <Len mm={postHeight} />
      </Dim>
      <line class="dim" x1="20" y1={eave} x2={x0 - wide(200)} y2={eave} />
      {form !== 'floor' && (
        <Slope peak={at(0, postHeight + half * tangent)} eave={at(half, postHeight)} pitch={pitch} />
      )}
    </Pic>
  )
}

interface Inside {
  readonly half: number
  readonly up: number
  readonly at: (x: number, up: number) => Pt
  readonly wide: (mm: number) => number
}

interface TrussProps extends Inside {
  readonly kind: NonNullable<ElevationProps['truss']>
  readonly over: number
  readonly tangent: number
}

/** Tie and rafters, with what props them: the truss that is sized. */
function Truss({ kind, half, up, over, tangent, at, wide }: TrussProps) {
  const top = up + half * tangent
  const third = half / 3
  const head = up + (half - third) * tangent - 160
  return (
    <g>
      {kind === 'queens' ? (
        <>
          {[-third, third].map((x) => (
            <Bar key={x} a={at(x, up - 100)} b={at(x, head)} wide={wide(200)} />
          ))}
          <Bar a={at(-third, head - 100)} b={at(third, head - 100)} wide={wide(200)} />
        </>
      ) : (
        <Bar a={at(0, up - 100)} b={at(0, top - 160)} wide={wide(200)} />
      )}
      {kind === 'struts' &&
        [-1, 1].map((side) => (
          <Bar key={side} a={at(0, up)} b={at((side * half) / 2, up + (half / 2) * tangent - 120)} wide={wide(150)} />
        ))}
      {[-1, 1].map((side) => (
        <Rafter
          key={side}
          foot={at(side * (half + over), up - over * tangent)}
          peak={at(0, top)}
          deep={wide(220) * Math.hypot(1, tangent)}
        />
      ))}
      <Bar a={at(-half - 120, up - 130)} b={at(half + 120, up - 130)} wide={wide(280)} />
    </g>
  )
}

/** Joist ends stand cut on the beam, the deck over them, walls of the storey above hidden. */
function Floor({ half, up, at, wide }: Inside) {
  const count = Math.max(3, Math.round((2 * half) / 750))
  const ends = Array.from({ length: count + 1 }, (_, i) => -half + (2 * half * i) / count)
  const side = wide(180)
  return (
    <g>
      {ends.map((x) => (
        <rect
          key={x}
          class="cut f-wood thin"
          x={at(x, 0)[0] - side / 2}
          y={at(0, up)[1] - side}
          width={side}
          height={side}
        />
      ))}
      <line
        class="cut"
        x1={at(-half - 200, 0)[0]}
        y1={at(0, up)[1] - side}
        x2={at(half + 200, 0)[0]}
        y2={at(0, up)[1] - side}
      />
      {[-1, 1].map((s) => (
        <line
          key={s}
          class="hid"
          x1={at(s * half, 0)[0]}
          y1={at(0, up)[1] - side}
          x2={at(s * half, 0)[0]}
          y2={at(0, up + 1850)[1]}
        />
      ))}
      <Bar a={at(-half - 100, up - 150)} b={at(half + 100, up - 150)} wide={wide(300)} />
    </g>
  )
}

/** The triangle that says the slope: so much rise in twelve, or degrees. */
function Slope({ peak, eave, pitch }: { readonly peak: Pt; readonly eave: Pt; readonly pitch: number }) {
  const run = 30
  const rise = run * Math.tan((pitch * Math.PI) / 180)
  const x = (peak[0] + eave[0]) / 2 + 12
  const y = (peak[1] + eave[1]) / 2 - 14
  const twelve = Math.round(12 * Math.tan((pitch * Math.PI) / 180))
  return (
    <g>
      <path class="seen" d={`M${x} ${y}v${-rise}l${run} ${rise}z`} transform={`translate(0 ${-2})`} fill="none" />
      <T x={x + run + 5} y={y - rise / 2 + 2} at="start" ink>
        <Both us={`${twelve} in 12`} si={`${Math.round(pitch)}°`} />
      </T>
    </g>
  )
}
