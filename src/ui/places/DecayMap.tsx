/**
 * The places where they lie, marked by how fast rot works there. Three shapes tell them apart without colour. Alaska and
 * Hawaii stand in the table; on one map they would shrink the rest to nothing.
 */
import type { Hazard } from '../../wood/decay'
import { Pic, T } from '../pictures/parts'
import type { PlaceRow } from './rows'

const RAD = Math.PI / 180
/** Albers equal-area conic for the contiguous states: standard parallels 29.5 and 45.5, centre 37.5 N 96 W. */
const N = (Math.sin(29.5 * RAD) + Math.sin(45.5 * RAD)) / 2
const C = Math.cos(29.5 * RAD) ** 2 + 2 * N * Math.sin(29.5 * RAD)
const RHO0 = Math.sqrt(C - 2 * N * Math.sin(37.5 * RAD)) / N
const SCALE = 540
const MIDDLE = { x: 205, y: 142 }

function spot(lat: number, lon: number): { readonly x: number; readonly y: number } {
  const rho = Math.sqrt(C - 2 * N * Math.sin(lat * RAD)) / N
  const turn = N * (lon + 96) * RAD
  return { x: MIDDLE.x + SCALE * rho * Math.sin(turn), y: MIDDLE.y - SCALE * (RHO0 - rho * Math.cos(turn)) }
}

function Sign({ hazard, x, y }: { readonly hazard: Hazard; readonly x: number; readonly y: number }) {
  if (hazard === 'low') return <circle class="seen f-paper" cx={x} cy={y} r="2.4" />
  if (hazard === 'moderate') return <circle class="f-chalk" cx={x} cy={y} r="2.6" />
  return <rect class="f-ink" x={x - 2.5} y={y - 2.5} width="5" height="5" />
}

const LEGEND: readonly (readonly [Hazard, string])[] = [
  ['low', 'slow'],
  ['moderate', 'moderate'],
  ['high', 'fast']
]

export function DecayMap({ rows }: { readonly rows: readonly PlaceRow[] }) {
  const contiguous = rows.filter((row) => row.state !== 'AK' && row.state !== 'HI')
  return (
    <Pic
      says="Map of the contiguous United States: rot works fast in the south-east, slowly in the dry west, moderately between."
      w={420}
      h={300}
    >
      {contiguous.map((row) => (
        <Sign key={row.id} hazard={row.hazard} {...spot(row.lat, row.lon)} />
      ))}
      {LEGEND.map(([hazard, word], i) => (
        <g key={hazard}>
          <Sign hazard={hazard} x={14 + i * 100} y={290} />
          <T x={24 + i * 100} y={294} at="start" size={15}>
            {word}
          </T>
        </g>
      ))}
    </Pic>
  )
}
