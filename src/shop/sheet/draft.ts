/**
 * A shop sheet while it is written: the text of every field as typed, by name. Incomplete and wrong texts are kept as
 * they are; `readDraft` makes a sheet of it. Names: `name`, `wood.<id>` (carried), `wood.<id>.price`, `season.<id>.cost`,
 * `rate.<work>.by`; `invented.<name>` marks a price that came from the sample and is nobody's yet.
 */
import { type ShopSheetContent, WORK } from '../../data/shop-schema'
import { SERIES, type SeriesId, sizesText } from '../sizes'

export type Draft = Readonly<Record<string, string>>
export const ON = 'on'

/** The woods that a draft carries, in the order they were ticked. */
export const carriedIn = (draft: Draft): string[] =>
  Object.keys(draft).flatMap((key) => (/^wood\.[^.]+$/.test(key) && draft[key] === ON ? [key.slice(5)] : []))

/** Fields of money: what the sample's invented figures stand in until the shop's own replace them. */
const isMoney = (field: string): boolean =>
  /^(?:wood\..+\.price|season\..+\.cost|rate\..+\.value|planedAdd)$/.test(field)

const seriesFields = (id: SeriesId): Draft => {
  const { unit, surface, sizes } = SERIES[id]
  return { unit, surface, sizes: sizesText(sizes) }
}

/** What a sheet begins with: usual terms, and no price but that green timber is the price itself. */
export const BLANK: Draft = {
  grade: 'No.1',
  ...seriesFields('full-sawn'),
  freeOfHeartAdd: '30',
  longAbove: '24',
  longAdd: '20',
  largeAbove: '12',
  largeAdd: '15',
  'season.green': ON,
  'season.green.cost': '0',
  'season.green.weeks': '3',
  'season.air.weeks': '2',
  'season.air.yard': '78',
  'season.kiln.weeks': '3',
  'season.rfv.weeks': '5',
  requestWeeks: '8',
  joineryWeeks: '4',
  waste: '10',
  band: '15',
  'rate.joinery.by': 'board-foot',
  'rate.raising.by': 'board-foot'
}

/** The draft with one field changed; an empty text is no text. A price that is typed is no longer the sample's. */
export function withField(draft: Draft, field: string, text: string): Draft {
  const next: Record<string, string> = { ...draft, [field]: text }
  if (text === '') delete next[field]
  if (isMoney(field)) delete next[`invented.${field}`]
  return next
}

/** Begin the sections anew from a series. */
export const withSeries = (draft: Draft, id: SeriesId): Draft => ({ ...draft, ...seriesFields(id) })

/** The framer says that all prices are the shop's own. */
export const withOwnPrices = (draft: Draft): Draft =>
  Object.fromEntries(Object.entries(draft).filter(([key]) => !key.startsWith('invented.')))

/** Fields whose price is still the sample's, of those that the sheet uses. */
export function inventedIn(draft: Draft): string[] {
  return Object.keys(draft).flatMap((key) => {
    if (!key.startsWith('invented.')) return []
    const field = key.slice(9)
    const [kind = '', id = ''] = field.split('.')
    const used =
      kind === 'rate'
        ? Boolean(draft[`rate.${id}.by`])
        : field === 'planedAdd'
          ? draft['surface'] === 'planed'
          : draft[`${kind}.${id}`] === ON
    return used ? [field] : []
  })
}

/** As one would type it: no exponent, nothing finer than a millionth. */
const text = (value: number | undefined): string => (value === undefined ? '' : String(Number(value.toFixed(6))))

/** A sheet as the form shows it. Woods that are not `known` are left out. The prices of an invented sheet are marked so. */
export function draftOf(sheet: ShopSheetContent, known: ReadonlySet<string>): Draft {
  const all: Record<string, string> = {
    name: sheet.name,
    contact: sheet.contact ?? '',
    note: sheet.note ?? '',
    cautions: (sheet.cautions ?? []).map((one) => one.replaceAll('\n', ' ')).join('\n'),
    grade: sheet.grade,
    surface: sheet.surface,
    unit: sheet.sections.unit,
    sizes: sizesText(sheet.sections.sizes.map(([a = 0, b = 0]) => [a, b] as const)),
    requestWeeks: text(sheet.requestWeeks),
    joineryWeeks: text(sheet.joineryWeeks),
    freeOfHeartAdd: text(sheet.freeOfHeartAddPercent),
    planedAdd: text(sheet.planedAddPerBoardFoot),
    longAbove: text(sheet.longAddPercent.aboveFt),
    longAdd: text(sheet.longAddPercent.add),
    largeAbove: text(sheet.largeAddPercent.aboveIn),
    largeAdd: text(sheet.largeAddPercent.add),
    waste: text(sheet.wastePercent),
    band: text(sheet.priceBandPercent)
  }
  for (const wood of sheet.woods.filter((one) => known.has(one.species))) {
    const at = `wood.${wood.species}`
    all[at] = ON
    all[`${at}.price`] = text(wood.perBoardFoot)
    all[`${at}.request`] = wood.onRequest ? ON : ''
    all[`${at}.free`] = wood.freeOfHeart ?? ''
    all[`${at}.freeAdd`] = text(wood.freeOfHeartAddPercent)
    all[`${at}.longest`] = text(wood.longestFt)
    all[`${at}.largest`] = wood.largestIn ? wood.largestIn.join('x') : ''
    all[`${at}.grade`] = wood.grade ?? ''
    all[`${at}.note`] = wood.note ?? ''
  }
  for (const season of sheet.seasonings) {
    const at = `season.${season.id}`
    all[at] = ON
    all[`${at}.cost`] = text(season.addPerBoardFoot)
    all[`${at}.weeks`] = text(season.leadWeeks)
    all[`${at}.yard`] = text(season.yardWeeks)
  }
  for (const part of WORK) {
    const charge = sheet.rates[part]
    all[`rate.${part}.by`] = charge?.by ?? ''
    all[`rate.${part}.value`] = text(charge?.value)
  }
  const draft = Object.fromEntries(Object.entries(all).filter(([, value]) => value !== ''))
  if (!sheet.placeholder) return draft
  const marks = Object.keys(draft).filter((field) => isMoney(field) && field !== 'season.green.cost')
  return { ...draft, ...Object.fromEntries(marks.map((field) => [`invented.${field}`, ON])) }
}
