/** Plain numbers as a printer would set them: thousands, no false digits, a real minus. */

/** No-break space: a figure and its unit never part at a line end. */
export const NBSP = '\u00a0'

/** Rounds to `figures` significant figures. */
export function significant(value: number, figures: number): number {
  return Number.isFinite(value) ? Number(value.toPrecision(figures)) : value
}

/** Thousands set off by commas, at most `decimals` places, trailing noughts dropped. */
export function plain(value: number, decimals = 0): string {
  const fixed = Math.abs(value).toFixed(decimals)
  const [whole = '0', part = ''] = fixed.split('.')
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',')
  const trimmed = part.replace(/0+$/, '')
  const body = trimmed === '' ? grouped : `${grouped}.${trimmed}`
  return value < 0 && Number(fixed) !== 0 ? `−${body}` : body
}

/** Three significant figures, as plain text. */
export function three(value: number): string {
  return plain(Math.round(significant(value, 3) * 1000) / 1000, 3)
}

/** "3 to 5": one number where both ends read the same. */
export function range(low: string, high: string): string {
  return low === high ? low : `${low} to ${high}`
}
