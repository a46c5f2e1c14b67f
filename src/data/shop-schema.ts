/**
 * The shape of a shop sheet: what a shop can supply and charges, as its framer states it. Money is in the shop's own
 * currency, per board foot. A sheet travels in links, so every list and every text has a greatest length.
 */
import * as v from 'valibot'

/** Limits of a sheet, for its form, its door and its published schema alike. */
export const SHEET = {
  name: 80,
  contact: 160,
  note: 600,
  woodNote: 120,
  caution: 160,
  cautions: 8,
  woods: 60,
  sections: 120,
  /** Per board foot. */
  price: 1000,
  /** A whole job. */
  sum: 1_000_000,
  percent: 300,
  lengthFt: [4, 120],
  sideIn: [2, 36],
  sideMm: [50, 915],
  weeks: 520
} as const

/** Plain text of one line or several: no control characters but the line's end, none that turn the reading direction. */
const plainText = (longest: number) =>
  v.pipe(
    v.string('text'),
    v.trim(),
    v.maxLength(longest, `at most ${longest} characters`),
    v.regex(/^(?:\n|[^\p{Cc}\p{Bidi_Control}\u2028\u2029])*$/u, 'no control characters')
  )
const between = (least: number, most: number) =>
  v.pipe(
    v.number('a number'),
    v.finite('a number'),
    v.minValue(least, `at least ${least}`),
    v.maxValue(most, `at most ${most}`)
  )
const price = between(0, SHEET.price)
const percent = between(0, SHEET.percent)
const length = between(...SHEET.lengthFt)
const weeks = between(0, SHEET.weeks)
const inches = between(...SHEET.sideIn)
const pair = (least: number, most: number) => v.pipe(v.array(between(least, most)), v.length(2, 'two sides'))
const grade = v.picklist(['Select Structural', 'No.1', 'No.2'], 'a grade of the list')
const species = v.pipe(v.string(), v.regex(/^[a-z0-9][a-z0-9.-]{0,39}$/, 'the id of a wood'))

/** How a part of the work is charged. */
export const CHARGES = ['board-foot', 'timber-percent', 'frame-percent', 'sum'] as const
const charge = v.variant('by', [
  /** For each board foot of timber. */
  v.strictObject({ by: v.literal('board-foot'), value: price }),
  /** A share of what the timber costs. */
  v.strictObject({ by: v.literal('timber-percent'), value: percent }),
  /** A share of the timber and all work that is not itself charged so. */
  v.strictObject({ by: v.literal('frame-percent'), value: percent }),
  /** A fixed sum for the job. */
  v.strictObject({ by: v.literal('sum'), value: between(0, SHEET.sum) })
])
export type Charge = v.InferOutput<typeof charge>

/** Parts of the work beside the timber, in the order they are said. */
export const WORK = ['joinery', 'raising', 'finish', 'engineering', 'freight'] as const
export type Work = (typeof WORK)[number]

const wood = v.strictObject({
  species,
  perBoardFoot: price,
  /** Not kept: it takes `requestWeeks` more. */
  onRequest: v.optional(v.boolean()),
  /** Whether this shop gets it free of heart centre; what the trade can usually get where nothing is said. */
  freeOfHeart: v.optional(v.picklist(['usual', 'request', 'no'])),
  /** In place of the sheet's own addition. */
  freeOfHeartAddPercent: v.optional(percent),
  longestFt: v.optional(length),
  largestIn: v.optional(pair(...SHEET.sideIn)),
  grade: v.optional(grade),
  note: v.optional(plainText(SHEET.woodNote))
})
export type ShopWood = v.InferOutput<typeof wood>

const seasoning = v.strictObject({
  id: v.picklist(['green', 'air', 'kiln', 'rfv']),
  addPerBoardFoot: price,
  leadWeeks: weeks,
  /** Longest the shop keeps timbers in the yard (air-dried only). */
  yardWeeks: v.optional(weeks)
})

const distinct = <T>(key: (item: T) => string, says: string) =>
  v.check((items: T[]) => new Set(items.map(key)).size === items.length, says)

export const shopSheetSchema = v.strictObject({
  version: v.literal(1),
  name: v.pipe(plainText(SHEET.name), v.nonEmpty('a name')),
  contact: v.optional(plainText(SHEET.contact)),
  /** True while the prices are invented; every page then says so. */
  placeholder: v.boolean(),
  note: v.optional(plainText(SHEET.note)),
  /** The shop's own cautions, printed with every brief. */
  cautions: v.optional(v.pipe(v.array(v.pipe(plainText(SHEET.caution), v.nonEmpty())), v.maxLength(SHEET.cautions))),
  grade,
  surface: v.picklist(['full-sawn', 'planed']),
  woods: v.pipe(
    v.array(wood),
    v.nonEmpty('at least one wood'),
    v.maxLength(SHEET.woods),
    distinct((w) => w.species, 'each wood once')
  ),
  /** Weeks that a wood on request takes beyond the rest. */
  requestWeeks: weeks,
  freeOfHeartAddPercent: percent,
  /** For planed timbers, per board foot; charged where the sheet's surface is planed. */
  planedAddPerBoardFoot: v.optional(price),
  longAddPercent: v.strictObject({ aboveFt: length, add: percent }),
  largeAddPercent: v.strictObject({ aboveIn: inches, add: percent }),
  seasonings: v.pipe(
    v.array(seasoning),
    v.nonEmpty('at least one way of seasoning'),
    distinct((s) => s.id, 'each way of seasoning once')
  ),
  /** Weeks of joinery between timber in hand and raising. */
  joineryWeeks: weeks,
  /**
   * The sizes sawn. In inches they are named as sawn, and planed timbers come half an inch under; in mm they are named
   * as they come.
   */
  sections: v.variant('unit', [
    v.strictObject({
      unit: v.literal('in'),
      sizes: v.pipe(v.array(pair(...SHEET.sideIn)), v.nonEmpty('at least one size'), v.maxLength(SHEET.sections))
    }),
    v.strictObject({
      unit: v.literal('mm'),
      sizes: v.pipe(v.array(pair(...SHEET.sideMm)), v.nonEmpty('at least one size'), v.maxLength(SHEET.sections))
    })
  ]),
  wastePercent: percent,
  /** How far a quote may come out from these prices, up or down. */
  priceBandPercent: between(0, 90),
  /** Each part of the work beside the timber; a part that is left out is not offered. */
  rates: v.strictObject({
    joinery: v.optional(charge),
    raising: v.optional(charge),
    finish: v.optional(charge),
    engineering: v.optional(charge),
    freight: v.optional(charge)
  })
})
export type ShopSheetContent = v.InferOutput<typeof shopSheetSchema>
