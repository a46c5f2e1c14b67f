/** From the form's texts to a shop sheet, or to what stands in the way, field by field. Pure; never throws. */
import { CHARGES, SHEET, type ShopSheetContent, WORK } from '../../data/shop-schema'
import { readSheet } from './door'
import { carriedIn, type Draft, inventedIn, ON } from './draft'
import { NUMBERS, RATE_NUMBERS, SEASON_NAMES, SEASON_NUMBERS, SEASONS, WOOD_NUMBERS, WORK_NAMES } from './fields'
import { fieldOfPath } from './paths'
import { type FieldWord, Reader } from './reader'
import { unusual } from './unusual'

export interface DraftRead {
  /** null while anything stands in the way. */
  readonly sheet: ShopSheetContent | null
  readonly problems: readonly FieldWord[]
  /** Worth a second look, but taken. */
  readonly cautions: readonly FieldWord[]
}

/** Leaves out what is not said, so that a sheet holds no empty fields. */
const said = <T extends object>(fields: T): T =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T

function woodsOf(reader: Reader, nameOf: (id: string) => string) {
  const { draft } = reader
  return carriedIn(draft).map((id) => {
    const [at, name] = [`wood.${id}`, nameOf(id)]
    return said({
      species: id,
      perBoardFoot: reader.number(`${at}.price`, WOOD_NUMBERS.price, `${name}: price`),
      onRequest: draft[`${at}.request`] === ON || undefined,
      freeOfHeart: reader.oneOf(`${at}.free`, ['usual', 'request', 'no']),
      freeOfHeartAddPercent: reader.number(
        `${at}.freeAdd`,
        WOOD_NUMBERS.freeAdd,
        `${name}: free of heart centre adds`,
        false
      ),
      longestFt: reader.number(`${at}.longest`, WOOD_NUMBERS.longest, `${name}: longest`, false),
      largestIn: reader.largest(`${at}.largest`, `${name}: largest section`),
      grade: reader.oneOf(`${at}.grade`, ['Select Structural', 'No.1', 'No.2']),
      note: reader.words(`${at}.note`, `${name}: note`, SHEET.woodNote)?.replaceAll('\n', ' ')
    })
  })
}

function seasoningsOf(reader: Reader) {
  return SEASONS.filter((id) => reader.draft[`season.${id}`] === ON).map((id) => {
    const number = (of: keyof typeof SEASON_NUMBERS, needed = true) =>
      reader.number(
        `season.${id}.${of}`,
        SEASON_NUMBERS[of],
        `${SEASON_NAMES[id]}: ${SEASON_NUMBERS[of].label.toLowerCase()}`,
        needed
      )
    return said({
      id,
      addPerBoardFoot: number('cost'),
      leadWeeks: number('weeks'),
      yardWeeks: id === 'air' ? number('yard', false) : undefined
    })
  })
}

function ratesOf(reader: Reader) {
  const charges = WORK.flatMap((part) => {
    const by = reader.oneOf(`rate.${part}.by`, CHARGES)
    const kind = by && RATE_NUMBERS[by]
    if (!by || !kind) return []
    return [[part, { by, value: reader.number(`rate.${part}.value`, kind, `${WORK_NAMES[part]}: charge`) }] as const]
  })
  return Object.fromEntries(charges)
}

/**
 * The sheet of a draft, or what is missing from it and what cannot be taken. `unusual` is how many times the middle of
 * the other prices a price may be before it is pointed out.
 */
export function readDraft(draft: Draft, nameOf: (id: string) => string, times: number): DraftRead {
  const reader = new Reader(draft)
  const name = reader.words('name', 'Name of the shop', SHEET.name)
  if (name === undefined && !(draft['name'] ?? '').trim())
    reader.need(false, 'name', 'Name of the shop', 'Type the name that your clients know.')
  const contact = reader.words('contact', 'How to reach you', SHEET.contact)
  const note = reader.words('note', 'A word to your clients', SHEET.note)
  const cautions = reader.lines('cautions', 'Your cautions')
  const woods = woodsOf(reader, nameOf)
  reader.need(woods.length > 0, 'woods', 'Woods you carry', 'Tick at least one wood.')
  const once = (field: keyof typeof NUMBERS, needed = true) =>
    reader.number(field, NUMBERS[field], NUMBERS[field].label, needed)
  const surface = reader.oneOf('surface', ['full-sawn', 'planed']) ?? 'full-sawn'
  const unit = reader.oneOf('unit', ['in', 'mm']) ?? 'in'
  const additions = {
    freeOfHeartAddPercent: once('freeOfHeartAdd'),
    planedAddPerBoardFoot: once('planedAdd', false),
    longAddPercent: { aboveFt: once('longAbove'), add: once('longAdd') },
    largeAddPercent: { aboveIn: once('largeAbove'), add: once('largeAdd') }
  }
  const seasonings = seasoningsOf(reader)
  reader.need(seasonings.length > 0, 'seasons', 'Seasoning', 'Tick at least one way of seasoning.')
  const candidate = said({
    version: 1,
    name,
    contact,
    placeholder: inventedIn(draft).length > 0,
    note,
    cautions: cautions.length > 0 ? cautions : undefined,
    grade: reader.oneOf('grade', ['Select Structural', 'No.1', 'No.2']) ?? 'No.1',
    surface,
    woods,
    ...said(additions),
    seasonings,
    requestWeeks: once('requestWeeks'),
    joineryWeeks: once('joineryWeeks'),
    sections: { unit, sizes: reader.sizes(unit) },
    wastePercent: once('waste'),
    priceBandPercent: once('band'),
    rates: ratesOf(reader)
  })
  const words = unusual(woods, times, nameOf)
  if (reader.problems.length > 0) return { sheet: null, problems: reader.problems, cautions: words }
  const read = readSheet(candidate)
  if (read.ok) return { sheet: read.sheet, problems: [], cautions: words }
  // The fields say all that the door asks; should it ever ask more, its word stands at the field.
  const problems = read.problems.map(({ path, says }) => ({
    field: fieldOfPath(path, { woods, seasonings }),
    label: path,
    says,
    missing: false
  }))
  return { sheet: null, problems, cautions: words }
}
