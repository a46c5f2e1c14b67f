/** The numbers of the form: what each is called, how far it may go, and in what unit it is said. */
import { SHEET, type Work } from '../../data/shop-schema'

export const SEASONS = ['green', 'air', 'kiln', 'rfv'] as const
export type Season = (typeof SEASONS)[number]

export interface NumberField {
  readonly label: string
  readonly least: number
  readonly most: number
  /** Stands behind the field and in the range. */
  readonly unit: string
  /** Something that could be typed. */
  readonly such: string
}

const percent = (label: string, unit = '%', most: number = SHEET.percent, such = '15'): NumberField => ({
  label,
  least: 0,
  most,
  unit,
  such
})
const weeks = (label: string): NumberField => ({ label, least: 0, most: SHEET.weeks, unit: 'weeks', such: '4' })
const price = (label: string): NumberField => ({
  label,
  least: 0,
  most: SHEET.price,
  unit: 'per board foot',
  such: '4.20'
})
const feet = (label: string): NumberField => ({
  label,
  least: SHEET.lengthFt[0],
  most: SHEET.lengthFt[1],
  unit: 'ft',
  such: '24'
})

/** Fields that stand once in the form. */
export const NUMBERS = {
  requestWeeks: weeks('Woods on request take this much longer'),
  joineryWeeks: weeks('Joinery, timber in hand to raising'),
  freeOfHeartAdd: percent('Free of heart centre adds'),
  longAbove: feet('Long means longer than'),
  longAdd: percent('Long adds'),
  largeAbove: {
    label: 'Large means deeper than',
    least: SHEET.sideIn[0],
    most: SHEET.sideIn[1],
    unit: 'in',
    such: '12'
  },
  largeAdd: percent('Large adds'),
  planedAdd: price('Planing adds'),
  waste: percent('Waste, on top of the finished timber'),
  band: percent('A quote may differ from these prices by', '% up or down', 90)
} as const satisfies Record<string, NumberField>
export type NumberName = keyof typeof NUMBERS

/** Fields of a wood, and of a way of seasoning. */
export const WOOD_NUMBERS = {
  price: price('Price'),
  freeAdd: percent('Free of heart centre adds'),
  longest: feet('Longest')
} as const
export const SEASON_NUMBERS = {
  cost: price('Adds to the price'),
  weeks: weeks('Lead time'),
  yard: weeks('Longest you keep timbers in the yard')
} as const

export const RATE_NUMBERS: Readonly<Record<string, NumberField>> = {
  'board-foot': price('Charge'),
  'timber-percent': percent('Charge', '% of the timber', SHEET.percent, '10'),
  'frame-percent': percent('Charge', '% of the frame', SHEET.percent, '6'),
  sum: { label: 'Charge', least: 0, most: SHEET.sum, unit: 'for the job', such: '2500' }
}

const grouped = (n: number): string => String(n).replace(/\B(?=(\d{3})+$)/g, ',')

/** "from 0 to 1,000 per board foot" */
export const rangeWords = ({ least, most, unit }: NumberField): string =>
  `from ${grouped(least)} to ${grouped(most)}${unit.startsWith('%') ? '\u00a0' : ' '}${unit}`

/** Parts of the work and ways of seasoning, as the form and its lists call them. */
export const WORK_NAMES: Readonly<Record<Work, string>> = {
  joinery: 'Joinery',
  raising: 'Raising',
  finish: 'Finish',
  engineering: 'Engineering',
  freight: 'Freight'
}
export const SEASON_NAMES: Readonly<Record<Season, string>> = {
  green: 'Green',
  air: 'Air-dried',
  kiln: 'Kiln-dried to the core',
  rfv: 'Radio-frequency vacuum dried'
}
