/** Small drawings of details that keep water off, by the id of the point they stand beside. Drawn, not computed: no number in them. */
import type { ComponentChildren } from 'preact'
import { Ground, Pic } from '../pictures/parts'

const W = 150
const H = 104

const rain = (xs: readonly number[], y = 4) => (
  <path class="dim" d={xs.map((x) => `M${x} ${y}l-6 18M${x - 9} ${y + 24}l-6 18`).join('')} />
)

const DRAWN: Readonly<Record<string, readonly [string, ComponentChildren]>> = {
  eave: [
    'A roof that stands out well beyond the post under it; slanting rain falls short of the foot.',
    <>
      {rain([34, 22])}
      <path class="cut" d="M18 42L110 8L148 22" />
      <rect class="seen f-wood" x="84" y="24" width="14" height="72" />
      <path class="hid" d="M20 44L70 96" />
      <Ground y={96} to={W} />
    </>
  ],
  foot: [
    'A post on a stand-off: its end grain hangs clear of the paving, with air under it.',
    <>
      <rect class="seen f-wood" x="58" y="4" width="34" height="58" />
      <path class="cut" d="M58 64H92M75 64V86M62 86H88" />
      <rect class="seen f-earth" x="40" y="87" width="70" height="14" />
      <path class="seen" d="M102 76h28M124 70l8 6l-8 6M48 76H20M26 70l-8 6l8 6" />
    </>
  ],
  cap: [
    'A cap of sheet metal over a beam, bent down into drip edges and held off the wood.',
    <>
      {rain([52, 84, 116])}
      <rect class="seen f-wood" x="48" y="60" width="54" height="40" />
      <path class="cut" d="M36 66L42 52H108L114 66" />
      <path class="seen" d="M56 53V60M94 53V60" />
    </>
  ],
  end: [
    'A beam end cut to a slope and covered by a board, so that its end grain stays dry.',
    <>
      {rain([26, 44])}
      <path class="seen f-wood" d="M150 40H64L52 82H150Z" />
      <path class="seen" d="M66 52H150M63 62H150M59 72H150" />
      <path class="cut" d="M60 34L42 90" />
      <path class="cut thin" d="M54 34H76" />
    </>
  ],
  drain: [
    'A mortise that faces up, with a hole bored through its floor; water runs out of it.',
    <>
      <path class="seen f-wood" d="M8 34H54V70H96V34H142V94H8Z" />
      <rect class="seen f-paper" x="72" y="70" width="6" height="24" />
      <path class="seen f-pale" d="M56 4H94V66H56Z" />
      <path class="cut thin" d="M75 96v6M75 102l-4-5M75 102l4-5" />
    </>
  ],
  check: [
    'Two beams in the rain: one with its check on top, crossed out, one with it underneath.',
    <>
      {rain([40, 112], 2)}
      <path class="seen f-wood" d="M14 44H33L38 66L43 44H62V92H14Z" />
      <path class="cut" d="M8 38L68 98" />
      <path class="seen f-wood" d="M88 44H136V92H117L112 70L107 92H88Z" />
    </>
  ]
}

export function Detail({ id }: { readonly id: string }) {
  const found = Object.hasOwn(DRAWN, id) ? DRAWN[id] : undefined
  if (found === undefined) return null
  return (
    <Pic says={found[0]} w={W} h={H}>
      {found[1]}
    </Pic>
  )
}
