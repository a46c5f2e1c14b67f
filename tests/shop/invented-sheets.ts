/** Any sheet that the schema takes, and a few that stand for shops. */
import fc from 'fast-check'
import { SHEET, type ShopSheetContent } from '../../src/data/shop-schema'
import { CHARGES_2, FREE_2, GRADES_2, SEASONINGS_2 } from '../../src/shop/invite/tables'
import { reference, sheet } from '../reference'

const number = (least: number, most: number) =>
  fc.oneof(
    fc.integer({ min: Math.ceil(least), max: Math.floor(most) }),
    fc.double({ min: least, max: most, noNaN: true }).map((n) => n + 0)
  )
/** Text as the schema keeps it: trimmed, no control characters. */
const text = (longest: number) =>
  fc
    .string({ unit: 'grapheme', maxLength: longest })
    .map((s) => s.replace(/[\p{Cc}\p{Bidi_Control}\u2028\u2029]/gu, ' ').trim())
    .filter((s) => s.length <= longest)
const named = (longest: number) => text(longest).filter((s) => s.length > 0)
const pair = (of: readonly [number, number]) => fc.tuple(number(...of), number(...of)).map((p) => [...p])
const charge = fc.record({ by: fc.constantFrom(...CHARGES_2), value: number(0, SHEET.percent) })
const species = fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom(...reference.woods.keys()) },
  {
    weight: 1,
    arbitrary: fc.stringMatching(/^[a-z][a-z0-9.-]{0,39}$/)
  }
)

const wood = fc.record(
  {
    species,
    perBoardFoot: number(0, SHEET.price),
    onRequest: fc.boolean(),
    freeOfHeart: fc.constantFrom(...FREE_2),
    freeOfHeartAddPercent: number(0, SHEET.percent),
    longestFt: number(...SHEET.lengthFt),
    largestIn: pair(SHEET.sideIn),
    grade: fc.constantFrom(...GRADES_2),
    note: text(SHEET.woodNote)
  },
  { requiredKeys: ['species', 'perBoardFoot'] }
)
const seasoning = fc.record(
  {
    id: fc.constantFrom(...SEASONINGS_2),
    addPerBoardFoot: number(0, SHEET.price),
    leadWeeks: number(0, SHEET.weeks),
    yardWeeks: number(0, SHEET.weeks)
  },
  { requiredKeys: ['id', 'addPerBoardFoot', 'leadWeeks'] }
)
const sizes = (unit: 'in' | 'mm') =>
  fc.record({
    unit: fc.constant(unit),
    sizes: fc.array(pair(unit === 'in' ? SHEET.sideIn : SHEET.sideMm), { minLength: 1, maxLength: SHEET.sections })
  })

export const anySheet = fc.record(
  {
    version: fc.constant(1 as const),
    name: named(SHEET.name),
    contact: text(SHEET.contact),
    placeholder: fc.boolean(),
    note: text(SHEET.note),
    cautions: fc.array(named(SHEET.caution), { maxLength: SHEET.cautions }),
    grade: fc.constantFrom(...GRADES_2),
    surface: fc.constantFrom('full-sawn', 'planed'),
    woods: fc.uniqueArray(wood, { selector: (w) => w.species, minLength: 1, maxLength: SHEET.woods }),
    requestWeeks: number(0, SHEET.weeks),
    freeOfHeartAddPercent: number(0, SHEET.percent),
    planedAddPerBoardFoot: number(0, SHEET.price),
    longAddPercent: fc.record({ aboveFt: number(...SHEET.lengthFt), add: number(0, SHEET.percent) }),
    largeAddPercent: fc.record({ aboveIn: number(...SHEET.sideIn), add: number(0, SHEET.percent) }),
    seasonings: fc.uniqueArray(seasoning, { selector: (s) => s.id, minLength: 1 }),
    joineryWeeks: number(0, SHEET.weeks),
    sections: fc.oneof(fc.constant(sheet.sections), sizes('in'), sizes('mm')),
    wastePercent: number(0, SHEET.percent),
    priceBandPercent: number(0, 90),
    rates: fc.record(
      { joinery: charge, raising: charge, finish: charge, engineering: charge, freight: charge },
      { requiredKeys: [] }
    )
  },
  {
    requiredKeys: [
      'version',
      'name',
      'placeholder',
      'grade',
      'surface',
      'woods',
      'requestWeeks',
      'freeOfHeartAddPercent',
      'longAddPercent',
      'largeAddPercent',
      'seasonings',
      'joineryWeeks',
      'sections',
      'wastePercent',
      'priceBandPercent',
      'rates'
    ]
  }
) as unknown as fc.Arbitrary<ShopSheetContent>

const NOTES = [
  'from our own woods, in winter only',
  'old growth salvage, ask us first',
  'to 32 ft; longer on order, six weeks',
  'knotty; best for barns and sheds',
  'clear pieces are few, and dear'
]
/** Thirty woods, each with a price and a note; a third on request. */
export const thirty: ShopSheetContent = {
  ...sheet,
  name: 'Thirty Woods (invented)',
  woods: [...reference.woods.keys()].slice(0, 30).map((species, i) => ({
    species,
    perBoardFoot: 2.35 + ((i * 37) % 60) / 10,
    ...(i % 3 === 0 && { onRequest: true }),
    note: `${NOTES[i % NOTES.length]} (${i})`
  }))
}
/** As thirty, without a note at any wood. */
export const thirtyBare: ShopSheetContent = {
  ...thirty,
  woods: thirty.woods.map(({ note: _note, ...rest }) => rest)
}
export const answersFull = {
  project: 'great-room',
  role: 'structure',
  exposure: 'heated',
  place: 'burlington-vt',
  carries: 'truss',
  span: 7315.2,
  spacing: 3657.6,
  count: 4,
  slope: 0.75,
  snow: 2394,
  postHeight: 'none',
  stick: 'unsure',
  size: [203.2, 254],
  depthLimit: 'none',
  finish: 'clear',
  knots: 'some',
  checks: 'fine',
  joints: 'small',
  resin: 'rather-not',
  stands: 'w52',
  waits: 'weeks',
  heating: 'first-winter',
  budget: 'fair',
  local: 'rather',
  order: ['durability', 'cost', 'movement', 'look', 'stoutness', 'time', 'local']
} as const
