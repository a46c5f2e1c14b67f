/** A quantity in both unit systems; the style sheet shows the reader's. */
import type { Quantity } from '../../data/quantity'
import { formatSi, formatUs } from '../format/quantity'

export function Figure({ q }: { q: Quantity }) {
  const us = formatUs(q)
  const si = formatSi(q)
  if (us === si) return <>{us}</>
  return (
    <>
      <span class="us">{us}</span>
      <span class="si">{si}</span>
    </>
  )
}
