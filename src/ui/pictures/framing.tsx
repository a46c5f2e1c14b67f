/** Drawings of framing: what a beam does, bents in plan, what rests on a roof or floor, one timber by a person. */
import { Bar, Both, Dim, Ground, Inch, Len, Person, Pic, type Pt, points, Rafter, T } from './parts'

/** Does it carry, or is it only seen. */
export function Role({ role }: { readonly role?: 'carries' | 'seen' | undefined }) {
  const dim = (mine: 'carries' | 'seen') => (role && role !== mine ? 'dimmed' : undefined)
  return (
    <Pic
      says="Left, a beam that carries the floor above. Right, a beam fixed under a ceiling that carries itself."
      h={150}
    >
      <g class={dim('carries')}>
        <path class="chalk-line thin" d="M30 6v22m-4-6l4 6 4-6M76 6v22m-4-6l4 6 4-6M122 6v22m-4-6l4 6 4-6" />
        <path class="cut" d="M6 34H146" />
        {[18, 42, 66, 90, 114, 134].map((x) => (
          <rect key={x} class="cut f-wood thin" x={x - 4} y="36" width="8" height="16" />
        ))}
        <rect class={role === 'carries' ? 'cut f-wood' : 'seen f-pale'} x="2" y="54" width="148" height="22" />
        <Bar a={[14, 76]} b={[14, 128]} wide={14} />
        <Bar a={[138, 76]} b={[138, 128]} wide={14} />
        <Ground y={128} from={0} to={152} />
        <T x={76} y={146} ink>
          carries
        </T>
      </g>
      <g class={dim('seen')} transform="translate(168 0)">
        <path class="cut" d="M6 34H146M6 56H146" />
        {[18, 42, 66, 90, 114, 134].map((x) => (
          <rect key={x} class="hid" x={x - 2} y="36" width="4" height="18" />
        ))}
        <rect class={role === 'seen' ? 'cut f-wood' : 'seen f-pale'} x="2" y="60" width="148" height="20" />
        <path class="cut thin" d="M4 128V34M148 128V34" />
        <Ground y={128} from={0} to={152} />
        <T x={76} y={146} ink>
          only seen
        </T>
      </g>
    </Pic>
  )
}

/** Bents in a row from above: how many, how far apart, how wide. mm. */
export function Plan({
  count,
  spacing,
  span
}: {
  readonly count: number
  readonly spacing: number
  readonly span: number
}) {
  const n = Math.max(1, Math.min(14, Math.round(count)))
  const run = Math.max(spacing, (n - 1) * spacing)
  const scale = Math.min(270 / run, 150 / span)
  const x0 = 30 + (270 - run * scale) / 2
  const tall = span * scale
  const x = (i: number): number => x0 + i * spacing * scale
  return (
    <Pic says={`${n} frames in a row, seen from above.`} h={tall + 62}>
      {[0, 0.5, 1].map((part) => (
        <line key={part} class="hid" x1={x(0) - 6} y1={14 + tall * part} x2={x(n - 1) + 6} y2={14 + tall * part} />
      ))}
      {Array.from({ length: n }, (_, i) => (
        <rect key={x(i)} class="seen f-wood" x={x(i) - 3.5} y="8" width="7" height={tall + 12} />
      ))}
      {n > 1 && (
        <Dim from={x(0)} to={x(1)} at={tall + 40}>
          <Len mm={spacing} />
        </Dim>
      )}
      {n > 2 && (
        <T x={Math.max(x(1) + 40, x(n - 1))} y={tall + 44.5} at={x(n - 1) - x(1) > 90 ? 'end' : 'start'}>
          {n} frames
        </T>
      )}
      <Dim from={14} to={14 + tall} at={Math.max(10, x0 - 18)} along="y">
        <Len mm={span} />
      </Dim>
    </Pic>
  )
}

export interface LoadProps {
  readonly carries?: 'roof' | 'floor' | 'both' | 'none' | undefined
  /** Weight of snow on the ground, Pa. */
  readonly snow?: number
  readonly heavy?: boolean
}
/** What rests on the timbers: the roof's own layers, snow to scale of its weight, people and things on a floor. */
export function Load({ carries = 'roof', snow = 1500, heavy = false }: LoadProps) {
  const roof = carries === 'roof' || carries === 'both'
  const floor = carries === 'floor' || carries === 'both'
  const deep = Math.min(40, (snow / 4800) * 40)
  return (
    <Pic
      says={
        carries === 'none'
          ? 'A timber that carries nothing but itself.'
          : `What rests on the timbers: ${[roof && 'roof and snow', floor && 'a floor with people'].filter(Boolean).join(', ')}.`
      }
      h={206}
    >
      {roof && (
        <g transform="translate(0 20)">
          {deep > 1 && (
            <polygon
              class="seen f-paper"
              points={points([
                [22, 92],
                [160, 22],
                [298, 92],
                [298, 92 - deep],
                [160, 22 - deep * 0.55],
                [22, 92 - deep]
              ] as Pt[])}
            />
          )}
          <path class={heavy ? 'cut thick' : 'cut'} d="M18 94L160 22 302 94" />
          {deep > 8 && (
            <T x={66} y={72 - deep * 0.4} halo ink size={12}>
              snow
            </T>
          )}
        </g>
      )}
      {[22, 298].map((x) => (
        <Rafter key={x} foot={[x, 116]} peak={[160, 45]} deep={12} class={roof ? 'seen f-wood' : 'hid'} />
      ))}
      {floor && (
        <g>
          <path class="cut" d="M40 122H280" />
          <Person x={120} y={121} scale={0.026} />
          <Person x={196} y={121} scale={0.026} />
        </g>
      )}
      <Bar a={[30, 131]} b={[290, 131]} wide={14} class={floor || carries === 'none' ? 'cut f-wood' : 'seen f-pale'} />
      <Bar a={[46, 138]} b={[46, 196]} wide={12} />
      <Bar a={[274, 138]} b={[274, 196]} wide={12} />
      {carries !== 'none' && <path class="chalk-line thin" d="M46 146v34m-5-8l5 8 5-8M274 146v34m-5-8l5 8 5-8" />}
      <Ground y={196} />
    </Pic>
  )
}

/** One timber lying beside a person, to scale, its end beside it. mm. */
export function Stick({
  length,
  section,
  limit = false
}: {
  readonly length: number
  readonly section?: readonly [number, number]
  readonly limit?: boolean
}) {
  const [b, d] = section ?? [200, 200]
  const scale = Math.min(204 / length, 0.05)
  const end = Math.min(0.16, 62 / d)
  const ground = 116
  const deep = Math.max(3, d * scale)
  return (
    <Pic says="One timber beside a person, to scale, and its end drawn larger." h={150}>
      <Person x={20} y={ground} scale={scale} />
      <rect class="seen f-wood" x="40" y={ground - deep} width={length * scale} height={deep} />
      <Ground y={ground} />
      <Dim from={40} to={40 + length * scale} at={ground + 19}>
        <Len mm={length} />
      </Dim>
      <g>
        <rect class="cut f-wood" x={282 - (b * end) / 2} y={80 - d * end} width={b * end} height={d * end} />
        <path
          class="ring"
          d={`M${282 - (b * end) / 2 + 2} ${80 - d * end * 0.35}q${(b * end) / 2 - 2} ${-b * end * 0.3} ${b * end - 4} 0M${282 - (b * end) / 2 + 2} ${80 - d * end * 0.65}q${(b * end) / 2 - 2} ${-b * end * 0.3} ${b * end - 4} 0`}
        />
        {limit && (
          <line class="chalk-line" stroke-dasharray="5 4" x1="248" y1={80 - d * end} x2="318" y2={80 - d * end} />
        )}
        <T x={282} y={97} ink>
          <Both us={inchPair(b, d)} si={`${Math.round(b)} × ${Math.round(d)}`} />
        </T>
      </g>
    </Pic>
  )
}
const inchPair = (b: number, d: number): string => `${Math.round(b / 25.4)} × ${Math.round(d / 25.4)} in`

/** A shoulder as cut, and as it stands when dry, the opening to the same scale. mm. */
export function Joint({ gap, says }: { readonly gap: number; readonly says?: string | undefined }) {
  const scale = 0.5
  const open = Math.min(24, gap * scale)
  const one = (dx: number, g: number, strong: boolean) => (
    <g transform={`translate(${dx} 0)`}>
      <rect class="seen f-pale" x="8" y="6" width="50" height="134" />
      <path class="hid" d="M58 54H26V96H58" />
      <rect class={strong ? 'cut f-wood' : 'seen f-wood'} x={58 + g} y="30" width={90 - g} height="86" />
      <path class="hid" d={`M${58 + g} 58H${28 + g}V92H${58 + g}`} />
      <circle class="seen f-paper" cx="42" cy="75" r="6" />
      {g > 0 && <path class="chalk-line" d={`M58 30V116M${58 + g} 30V116`} />}
    </g>
  )
  return (
    <Pic says="A beam's shoulder against a post: tight as cut, and open when the timbers have dried." h={172}>
      {one(0, 0, false)}
      {one(166, open, true)}
      <T x={78} y={164}>
        as cut
      </T>
      <T x={238} y={164} ink>
        {says ? (
          says
        ) : gap > 0.2 ? (
          <>
            dry: <Inch mm={Math.max(gap, 0.8)} /> open
          </>
        ) : (
          'dry: stays tight'
        )}
      </T>
    </Pic>
  )
}
