/** What was typed in feet, inches or per board foot, said in metric beside it for a reader who has chosen that. */
import { readAmount, readFeet } from '../../shop/amount'
import { MM_PER_FOOT, MM_PER_INCH } from '../format/length'
import { plain } from '../format/number'
import { formatSi } from '../format/quantity'

const PLAIN = { mark: 'derived', sources: [] } as const
const BOARD_FEET_PER_M3 = 423.776

/** null where there is nothing to say: no number, or a unit that is the same everywhere. */
export function inMetric(text: string, unit: string): string | null {
  const value = unit === 'ft' ? readFeet(text) : readAmount(text)
  if (value === null || value < 0) return null
  if (unit === 'ft') return formatSi({ kind: 'span', value: value * MM_PER_FOOT, origin: PLAIN })
  if (unit === 'in') return `${plain(value * MM_PER_INCH)}\u00a0mm`
  if (unit !== 'per board foot') return null
  return formatSi({ kind: 'pricePerVolume', value: value * BOARD_FEET_PER_M3, origin: PLAIN })
}
