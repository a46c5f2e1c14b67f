/** A `Quantity` as text, in US customary units or in metric. Display only: nothing is computed about wood here. */
import type { Quantity, QuantityKind } from '../../data/quantity'
import { feetAndInches, gapMm, inchesIn, inInches, MM_PER_INCH, metres, SMALLEST_GAP_MM } from './length'
import { NBSP, plain, range, significant, three } from './number'
import { weeksInWords, weeksRange, yearsInWords, yearsRange } from './time'

export type System = 'us' | 'si'

interface Way {
  /** The bare number as text. */
  readonly number: (value: number) => string
  /** Unit behind the number, with its space. */
  readonly after?: string
  readonly before?: string
}

const PSF = 47.880_258_98
const BOARD_FEET_PER_M3 = 423.776
const unit = (text: string): string => `${NBSP}${text}`

const percent: Way = {
  // A strain along the grain is some hundredths of a percent: not nothing.
  number: (v) =>
    Math.abs(v) < 0.001 ? plain(significant(v * 100, 1), 4) : plain(v * 100, Math.abs(v) < 0.0995 ? 1 : 0),
  after: unit('%')
}
/** Moisture of green wood varies by tens of percent from tree to tree. */
const wholePercent: Way = { number: (v) => plain(v >= 0.4 ? Math.round(v * 10) * 10 : v * 100), after: unit('%') }
const index: Way = { number: (v) => plain(v, 1) }
/** Two places where a hundredth counts; a slenderness of 15 is 15. */
const ratio: Way = { number: (v) => (Math.abs(v) < 10 ? v.toFixed(2) : three(v)) }
const count: Way = { number: (v) => plain(v) }
const angle: Way = { number: (v) => plain(v, Math.abs(v) < 10 ? 1 : 0), after: '°' }
/** Cents where they count; three figures above, since no estimate here knows more. */
const price = (v: number): string => (v !== 0 && Math.abs(v) < 100 ? v.toFixed(2) : plain(significant(v, 3)))
const roughly = (v: number): string => (Math.abs(v) < 10 ? price(v) : plain(significant(v, 2)))
const money: Way = { before: '$', number: price }
/** Millions of psi read better than six noughts. */
const psi = (v: number): string => (Math.abs(v) >= 1e6 ? `${plain(v / 1e6, 2)}${NBSP}million` : three(v))

type Simple = Exclude<QuantityKind, 'section' | 'gap' | 'span' | 'weeks' | 'years'>
const US: Record<Simple, Way> = {
  // A log must hold the piece: a diameter is never rounded down.
  diameter: { number: (v) => plain(Math.ceil(v / MM_PER_INCH - 0.02)), after: unit('in') },
  moisture: wholePercent,
  percent,
  areaLoad: { number: (v) => plain(v / PSF, v < 10 * PSF ? 1 : 0), after: unit('psf') },
  lineLoad: { number: (v) => three(v * 68.521_77), after: unit('lb/ft') },
  force: { number: (v) => three(v / 4.448_222), after: unit('lb') },
  moment: { number: (v) => three(v / 1355.818), after: unit('ft-lb') },
  stress: { number: (v) => psi(v * 145.037_7), after: unit('psi') },
  mass: { number: (v) => three(v / 0.453_592_37), after: unit('lb') },
  density: { number: (v) => plain(v / 16.018_46), after: unit('lb/ft³') },
  temperature: { number: (v) => plain(v * 1.8 + 32), after: unit('°F') },
  volume: { number: (v) => three(v * BOARD_FEET_PER_M3), after: unit('board feet') },
  money,
  pricePerVolume: { before: '$', number: (v) => price(v / BOARD_FEET_PER_M3), after: ' per board foot' },
  index,
  ratio,
  count,
  angle
}
const SI: Record<Simple, Way> = {
  ...US,
  diameter: { number: (v) => plain(Math.ceil(v / 10 - 0.02) * 10), after: unit('mm') },
  areaLoad: { number: (v) => plain(v / 1000, 2), after: unit('kN/m²') },
  lineLoad: { number: three, after: unit('kN/m') },
  force: { number: (v) => three(v / 1000), after: unit('kN') },
  moment: { number: (v) => three(v / 1e6), after: unit('kN m') },
  stress: { number: three, after: unit('MPa') },
  mass: { number: three, after: unit('kg') },
  density: { number: (v) => three(v), after: unit('kg/m³') },
  temperature: { number: (v) => plain(v), after: unit('°C') },
  volume: { number: three, after: unit('m³') },
  pricePerVolume: { before: '$', number: price, after: ' per m³' }
}

const single = (v: Quantity['value']): number => (typeof v === 'number' ? v : v[0])

/** Low and high where the number carries a spread, else the number twice. */
function ends(q: Quantity): readonly [number, number] {
  const value = single(q.value)
  return [q.low ?? value, q.high ?? value]
}

function gap(q: Quantity, system: System): string {
  const [low, high] = ends(q)
  const suffix = unit(system === 'us' ? 'in' : 'mm')
  if (high < SMALLEST_GAP_MM) return system === 'us' ? `under 1/32${suffix}` : `under 1${suffix}`
  const say = (mm: number): string => (system === 'us' ? inchesIn(mm / MM_PER_INCH) : gapMm(mm))
  if (low < SMALLEST_GAP_MM && low < high) return `up to ${say(high)}${suffix}`
  return range(say(low), say(high)) + suffix
}

function section(value: Quantity['value'], system: System): string {
  const [b, h] = typeof value === 'number' ? [value, value] : value
  return system === 'us' && inInches(b, h)
    ? `${inchesIn(b / MM_PER_INCH, 4)} × ${inchesIn(h / MM_PER_INCH, 4)}${unit('in')}`
    : `${plain(b)} × ${plain(h)}${unit('mm')}`
}

function format(q: Quantity, system: System): string {
  const [low, high] = ends(q)
  switch (q.kind) {
    case 'section':
      return section(q.value, system)
    case 'gap':
      return gap(q, system)
    case 'span': {
      const say = system === 'us' ? feetAndInches : metres
      const unitless = (mm: number): string => say(mm).replace(/\u00a0(ft|m)$/, '')
      // "12 to 14 ft", but "12 ft 6 in to 14 ft".
      return range(/in/.test(say(low)) ? say(low) : say(low) === say(high) ? say(low) : unitless(low), say(high))
    }
    case 'weeks':
      return low === high ? weeksInWords(high) : weeksRange(low, high)
    case 'years':
      return low === high ? yearsInWords(high) : yearsRange(low, high)
    case 'moisture':
      // Its spread is told where the figure is opened; in a sentence one number reads better.
      return wholePercent.number(single(q.value)) + (wholePercent.after ?? '')
    default: {
      const way = (system === 'us' ? US : SI)[q.kind]
      // The ends of a range of money are rough: two figures say all that is known of them.
      const number = q.kind === 'money' && low < high ? roughly : way.number
      const say = (v: number): string => (way.before ?? '') + number(v)
      return range(say(low), say(high)) + (way.after ?? '')
    }
  }
}

export const formatUs = (q: Quantity): string => format(q, 'us')
export const formatSi = (q: Quantity): string => format(q, 'si')
export const formatIn = format
