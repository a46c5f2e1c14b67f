/** A post and the beam on it: where water gets in and rot starts first, by the details that keep it off or hold it. */
import type { Details } from '../../wood/decay'
import { Ground, Pic, T } from './parts'

/** Where rot starts: x, y, the name, and on which side of the mark it stands. */
type Spot = readonly [number, number, string, 'start' | 'end']
const SPOTS: Readonly<Record<Details, readonly Spot[]>> = {
  sheltered: [],
  usual: [
    [86, 75, 'end grain', 'end'],
    [150, 160, 'post foot', 'start']
  ],
  holding: [
    [86, 75, 'end grain', 'end'],
    [150, 90, 'joint', 'start'],
    [232, 66, 'check on top', 'start'],
    [150, 160, 'post foot', 'start']
  ]
}
export function WaterMarks({ kept, roofed }: { readonly kept: Details; readonly roofed: boolean }) {
  const dry = kept === 'sheltered'
  // Deep eaves keep slanting rain off; usual ones stop short of it.
  const eave = dry ? 8 : 62
  // Rain from above does not reach the top of a beam under a roof.
  const spots = SPOTS[kept].filter(([, , name]) => !(roofed && name === 'check on top'))
  const says = dry
    ? 'water is kept off from above, the end grain is covered and the foot stands clear, so no place holds water'
    : `rot starts first at the ${spots.map(([, , name]) => name).join(', ')}`
  return (
    <Pic says={`A post and a beam ${roofed ? 'under a roof' : 'in the weather'}: ${says}.`} h={192}>
      {!(roofed && dry) && <path class="dim" d="M46 40l-8 24M22 70l-8 24M44 96l-8 24M26 126l-8 24" />}
      <path
        class="dim"
        d={
          roofed
            ? 'M40 8l-8 24M84 4l-8 24M132 0l-8 24'
            : 'M110 8l-8 24M150 12l-8 24M190 6l-8 24M262 8l-8 24M296 12l-8 24M30 12l-8 24'
        }
      />
      {roofed && <path class="cut" d={`M${eave} 52L320 14`} />}
      <rect class="seen f-wood" x="86" y="64" width="226" height="26" />
      <rect class="seen f-wood" x="136" y="90" width="28" height={dry ? 58 : 72} />
      {dry && <path class="cut thin" d="M150 148v14M138 162h24M136 148h28" />}
      {dry && !roofed && <path class="cut" d="M78 70V60H320" />}
      {dry && roofed && <path class="cut" d="M82 64v26" />}
      {kept === 'holding' && <path class="cut thin" d={`M96 162q54 -8 108 0${roofed ? '' : 'M222 64q10 9 20 0'}`} />}
      <Ground y={162} />
      {spots.map(([x, y, name, at]) => (
        <g key={name}>
          <circle class="f-caution" cx={x} cy={y} r="6" />
          <circle class="cut thin" cx={x} cy={y} r="10" />
          <T
            x={at === 'start' ? x + 18 : x - 4}
            y={at === 'start' && y < 80 ? y - 14 : y + (at === 'end' ? 32 : 18)}
            at={at}
            ink
            halo
          >
            {name}
          </T>
        </g>
      ))}
      {dry && (
        <T x={176} y={142} at="start" ink>
          sheds water and dries
        </T>
      )}
    </Pic>
  )
}
