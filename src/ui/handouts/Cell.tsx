/** Figures in tables whose head names the unit: the number alone, in both systems. */
import type { Quantity } from '../../data/quantity'
import type { Move } from '../../handouts/movement'
import { recalled } from '../../handouts/species-chart'
import { inchesIn, MM_PER_INCH } from '../format/length'
import { plain } from '../format/number'
import { formatSi, formatUs } from '../format/quantity'

const one = (q: Quantity): number => (typeof q.value === 'number' ? q.value : q.value[0])
const bare = (text: string): string => text.replace(/\u00a0[^\u00a0]+$/, '')

function Both({ us, si }: { readonly us: string; readonly si: string }) {
  if (us === si) return <>{us}</>
  return (
    <>
      <span class="us">{us}</span>
      <span class="si">{si}</span>
    </>
  )
}

/** A small r where the figure is recalled: on paper nothing can be opened. */
export const Recalled = () => (
  <sup class="recalled">
    r<span class="visually-hidden">ecalled</span>
  </sup>
)

/** Kinds that a column sets with one decimal throughout, as a percent or as they are. */
const TENTHS: Readonly<Record<string, number>> = { percent: 100, index: 1 }

const text = (q: Quantity, format: (q: Quantity) => string): string => {
  const times = TENTHS[q.kind]
  return times === undefined ? bare(format(q)) : (one(q) * times).toFixed(1)
}

export function Cell({ q }: { readonly q: Quantity | null }) {
  if (q === null) return <>–</>
  return (
    <>
      <Both us={text(q, formatUs)} si={text(q, formatSi)} />
      {recalled(q.origin) && <Recalled />}
    </>
  )
}

/** Thirty-seconds of an inch on a foot; whole millimetres on a metre. */
export const MoveCell = ({ move }: { readonly move: Move }) => (
  <Both us={inchesIn(one(move.foot) / MM_PER_INCH, 32)} si={plain(one(move.metre))} />
)
