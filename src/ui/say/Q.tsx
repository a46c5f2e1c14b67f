/** A figure that opens to its source and formula. */
import type { Quantity } from '../../data/quantity'
import { Figure } from './Figure'
import { Opens } from './Opens'

const MONEY = new Set(['money', 'pricePerVolume'])

/** Invented, or worked out from something invented. */
const invented = ({ origin }: Quantity): boolean =>
  origin.mark === 'placeholder' || Object.values(origin.inputs ?? {}).some(invented)

export const isPlaceholder = (q: Quantity): boolean => MONEY.has(q.kind) && invented(q)

interface Props {
  readonly q: Quantity
  /** Where the column or the caption already says that the money is a placeholder. */
  readonly plain?: boolean
}

export function Q({ q, plain = false }: Props) {
  return (
    <span class="quantity">
      <Opens origin={q.origin} kind="q">
        <Figure q={q} />
      </Opens>
      {!plain && isPlaceholder(q) && (
        <>
          {' '}
          <span class="mark mark--placeholder">placeholder</span>
        </>
      )}
    </span>
  )
}
