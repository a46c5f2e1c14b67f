/** A housed shoulder as cut and as settled. Every length comes computed; this only draws. mm. */
import type { Shoulder } from '../../choice/types'
import { Inch, Pic, T } from './parts'

/** Of the 320 units across, what each of the two drawings has; and the height that they keep to. */
const WIDE = 148
const TALL = 170
const TOP = 6

const n = (x: number): string => x.toFixed(1)

export function JointPicture({ shoulder }: { readonly shoulder: Shoulder }) {
  const { postSide, beamDepth, exaggeration } = shoulder
  const scale = Math.min((WIDE * 0.62) / postSide, TALL / (beamDepth * 1.5))
  const moved = (mm: number) => mm * exaggeration * scale
  const post = postSide * scale
  const deep = beamDepth * scale
  const over = deep / 4
  const seat = TOP + over + deep
  const foot = seat + over
  const housing = moved(shoulder.housing)

  const one = (x: number, settled: 0 | 1) => {
    const back = settled * moved(shoulder.postShrinks)
    const out = settled * moved(shoulder.beamShrinks)
    const top = TOP + over + settled * moved(shoulder.drop)
    // The back of the housing lies nearer to the middle of the post and draws back by that much less.
    const inner = post - housing - back * (1 - (2 * housing) / post)
    const end = post - housing + out
    return (
      <g transform={`translate(${x} 0)`}>
        {settled === 1 && (
          <path
            class="hid"
            d={`M0 ${TOP}H${n(post)}V${n(foot)}H0ZM${WIDE} ${n(TOP + over)}H${n(post - housing)}V${n(seat)}`}
          />
        )}
        <path
          class="seen f-pale"
          d={`M${n(back)} ${TOP}H${n(post - back)}V${n(TOP + over)}H${n(inner)}V${n(seat)}H${n(post - back)}V${n(foot)}H${n(back)}Z`}
        />
        <path class="cut f-wood" d={`M${WIDE} ${n(top)}H${n(end)}V${n(seat)}H${WIDE}`} />
      </g>
    )
  }
  const low = foot + 20
  const gap = shoulder.postShrinks + shoulder.beamShrinks
  return (
    <Pic says="A beam's end in its housing: against the back as cut, drawn out and lower when dry." h={low + 23}>
      {one(2, 0)}
      {one(320 - WIDE - 2, 1)}
      <T x={2 + WIDE / 2} y={low}>
        as cut
      </T>
      <T x={318 - WIDE / 2} y={low} ink>
        {gap < 0.4 ? (
          'settled: stays tight'
        ) : (
          <>
            settled: opens <Inch mm={gap} />
          </>
        )}
      </T>
      {shoulder.drop >= 0.4 && (
        <T x={318 - WIDE / 2} y={low + 17}>
          top lower by <Inch mm={shoulder.drop} />
        </T>
      )}
    </Pic>
  )
}
