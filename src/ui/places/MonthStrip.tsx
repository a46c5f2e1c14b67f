/** When rot works in a place: twelve bars in the space of a word, all places on one scale. */

const NAMES = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const
const HIGH = 30

/** A month counts where what it adds would be printed as 1 or more. */
const works = (added: number | undefined): boolean => (added ?? 0) >= 0.5

/** "May to Oct, most in Jul"; runs past December go on in January. */
export function monthsSay(months: readonly number[]): string {
  if (!months.some(works)) return 'no month'
  const most = `most in ${NAMES[months.indexOf(Math.max(...months))]}`
  const starts = months.flatMap((m, i) => (works(m) && !works(months[(i + 11) % 12]) ? [i] : []))
  if (starts.length === 0) return `all year, ${most}`
  const runs = starts.map((start) => {
    let end = start
    while (works(months[(end + 1) % 12])) end++
    return start === end ? NAMES[start] : `${NAMES[start]} to ${NAMES[end % 12]}`
  })
  return `${runs.join(' and ')}, ${most}`
}

interface Props {
  readonly months: readonly number[]
  /** What the fastest month of any place adds: the full height. */
  readonly most: number
}

export function MonthStrip({ months, most }: Props) {
  // A month that counts is never so low that it vanishes.
  const top = (m: number) => HIGH - (works(m) ? Math.max(1, Math.round((m / most) * HIGH)) : 0)
  return (
    <svg class="months" role="img" aria-label={monthsSay(months)} viewBox={`0 0 60 ${HIGH}`}>
      <path d={`M0 ${HIGH}${months.map((m) => `V${top(m)}h4V${HIGH}h1`).join('')}`} />
    </svg>
  )
}
