/** A house cut open, and the five places a timber can live in; the chosen one is struck in chalk. */
import { Ground, Hatch, Pic, T } from './parts'

export type Where = 'heated' | 'unheated' | 'roofed' | 'weather' | 'ground'

const words: Readonly<Record<Where, string>> = {
  heated: 'in the heated room',
  unheated: 'dry, but not heated',
  roofed: 'under a roof, outside',
  weather: 'rain and sun reach it',
  ground: 'touching the ground'
}
/** Where each place's timber is: x, y, width, height. */
const timbers: Readonly<Record<Where, readonly [number, number, number, number]>> = {
  unheated: [14, 96, 50, 9],
  heated: [82, 96, 92, 9],
  roofed: [214, 98, 8, 62],
  weather: [240, 96, 66, 9],
  ground: [296, 105, 8, 73]
}
const rooms: readonly (readonly [Where, number, string])[] = [
  ['unheated', 43, 'unheated'],
  ['heated', 128, 'heated'],
  ['roofed', 197, 'porch']
]
const order: readonly Where[] = ['unheated', 'heated', 'roofed', 'weather', 'ground']

export function Exposure({ at }: { readonly at?: Where | undefined }) {
  return (
    <Pic
      says={
        at
          ? `House in section; the timber is ${words[at]}.`
          : 'House in section, with timbers indoors, under a porch roof, in the weather and in the ground.'
      }
      h={206}
    >
      <rect class="f-earth" x="0" y="160" width="320" height="20" />
      <rect class="f-wash" x="78" y="76" width="100" height="84" />
      {/* cut: walls and roofs */}
      <path class="cut" d="M78 160V74M178 160V74M68 80L128 34 188 80" />
      <path class="seen" d="M72 78L128 36 184 78" transform="translate(0 6)" />
      <path class="cut thin" d="M10 160V92M4 90L78 70M178 76L232 94" />
      {/* smoke from the stack says that the room is heated */}
      <path class="seen" d="M148 50V26h10V58" />
      <path class="dim" d="M153 22q-5-5 0-10t0-10" />
      <Hatch from={10} to={320} y={161} step={12} size={7} />
      {/* rain, where it falls */}
      <path
        class="dim"
        d="M246 40l-8 22M264 34l-8 22M282 44l-8 22M300 34l-8 22M314 50l-6 16M256 70l-6 14M292 70l-6 14"
      />
      <rect class="seen f-wood" x="244" y="105" width="8" height="55" />
      {order.map((place) => {
        const [x, y, w, h] = timbers[place]
        return <rect key={place} class={place === at ? 'f-chalk' : 'seen f-wood'} x={x} y={y} width={w} height={h} />
      })}
      <Ground y={160} />
      {at && <Mark at={at} />}
      {rooms.map(([place, x, name]) =>
        // The chosen one is named under the ground line instead.
        place === at ? null : (
          <T key={place} x={x} y={128} size={13}>
            {name}
          </T>
        )
      )}
    </Pic>
  )
}

function Mark({ at }: { readonly at: Where }) {
  const [x, y, w, h] = timbers[at]
  const cx = x + w / 2
  const cy = at === 'ground' ? 160 : y + h / 2
  const end = Math.min(Math.max(cx, 66), 250)
  return (
    <g>
      <ellipse
        class="chalk-line thin"
        cx={cx}
        cy={cy}
        rx={w > 20 ? w / 2 + 8 : 15}
        ry={w > 20 ? 15 : at === 'ground' ? 20 : h / 2 + 8}
      />
      <path class="chalk-line thin" d={`M${cx} ${cy + (w > 20 ? 15 : at === 'ground' ? 20 : h / 2 + 8)}V188`} />
      <T x={end} y={202} chalk size={14}>
        {words[at]}
      </T>
    </g>
  )
}
