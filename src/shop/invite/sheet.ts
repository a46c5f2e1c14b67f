/**
 * A shop sheet as a link of version 2 carries it: places instead of keys, numbers instead of words, the ends that hold
 * nothing left off. FROZEN with its version. What comes out is raw: `readSheet` is its door.
 */
import type { Charge, ShopSheetContent, ShopWood } from '../../data/shop-schema'
import { CHARGES_2, FREE_2, GRADES_2, SEASONINGS_2, SIZES_2, WOODS_2, WORK_2 } from './tables'

type Raw = readonly unknown[]

const list = (value: unknown): Raw => (Array.isArray(value) ? value : [])
/** Zeros at the end say nothing. */
function trimmed(row: unknown[]): unknown[] {
  while (row.length > 0 && row.at(-1) === 0) row.pop()
  return row
}
/** 0 where there is none, since a real value may be 0 too: [value]. */
const maybe = (value: unknown): unknown => (value === undefined ? 0 : typeof value === 'number' ? [value] : value)
const found = (value: unknown): unknown =>
  value === 0 || value === undefined ? undefined : Array.isArray(value) ? value[0] : value
const place = (of: readonly string[], value: string | undefined): number =>
  value === undefined ? 0 : of.indexOf(value) + 1
const at = (of: readonly string[], value: unknown): unknown => (typeof value === 'number' ? of[value - 1] : undefined)
/** Leaves out what is not there: the schema knows no key without a value. */
const kept = (entries: Record<string, unknown>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined))

function packWood(wood: ShopWood): unknown[] {
  const known = WOODS_2.indexOf(wood.species as (typeof WOODS_2)[number])
  return trimmed([
    known < 0 ? wood.species : known,
    wood.perBoardFoot,
    wood.onRequest === undefined ? 0 : wood.onRequest ? 1 : 2,
    place(FREE_2, wood.freeOfHeart),
    maybe(wood.freeOfHeartAddPercent),
    maybe(wood.longestFt),
    wood.largestIn ?? 0,
    place(GRADES_2, wood.grade),
    wood.note ?? 0
  ])
}

function unpackWood(raw: unknown): Record<string, unknown> {
  const [species, perBoardFoot, onRequest, free, add, longest, largest, grade, note] = list(raw)
  return kept({
    species: typeof species === 'number' ? (WOODS_2[species] ?? `wood-${String(species).slice(0, 20)}`) : species,
    perBoardFoot: perBoardFoot ?? 0,
    onRequest: onRequest === 1 ? true : onRequest === 2 ? false : undefined,
    freeOfHeart: at(FREE_2, free),
    freeOfHeartAddPercent: found(add),
    longestFt: found(longest),
    largestIn: largest === 0 ? undefined : largest,
    grade: at(GRADES_2, grade),
    note: note === 0 ? undefined : note
  })
}

/** Sizes with the same first side stand together: [6, 6, 8, 10] is 6 × 6, 6 × 8, 6 × 10. */
function packSizes({ unit, sizes }: ShopSheetContent['sections']): unknown {
  if (unit === 'in' && JSON.stringify(sizes) === JSON.stringify(SIZES_2)) return 0
  const runs: number[][] = []
  for (const [b = 0, d = 0] of sizes) {
    const last = runs.at(-1)
    if (last?.[0] === b) last.push(d)
    else runs.push([b, d])
  }
  return [unit === 'mm' ? 1 : 0, ...runs]
}

function unpackSizes(raw: unknown): unknown {
  if (raw === 0) return { unit: 'in', sizes: SIZES_2.map((size) => [...size]) }
  const [unit, ...runs] = list(raw)
  return {
    unit: unit === 1 ? 'mm' : 'in',
    sizes: runs.flatMap((run) =>
      list(run)
        .slice(1)
        .map((d) => [list(run)[0], d])
    )
  }
}

const packCharge = (charge: Charge | undefined): unknown =>
  charge === undefined ? 0 : [CHARGES_2.indexOf(charge.by), charge.value]

export function packSheet(s: ShopSheetContent): unknown[] {
  return [
    s.name,
    (s.placeholder ? 1 : 0) + (s.surface === 'planed' ? 2 : 0) + 4 * GRADES_2.indexOf(s.grade),
    s.woods.map(packWood),
    packSizes(s.sections),
    s.seasonings.map((x) => trimmed([SEASONINGS_2.indexOf(x.id), x.addPerBoardFoot, x.leadWeeks, maybe(x.yardWeeks)])),
    [
      s.requestWeeks,
      s.freeOfHeartAddPercent,
      s.longAddPercent.aboveFt,
      s.longAddPercent.add,
      s.largeAddPercent.aboveIn,
      s.largeAddPercent.add,
      s.joineryWeeks,
      s.wastePercent,
      s.priceBandPercent,
      maybe(s.planedAddPerBoardFoot)
    ],
    trimmed(WORK_2.map((part) => packCharge(s.rates[part]))),
    ...trimmed([s.contact ?? 0, s.note ?? 0, s.cautions ?? 0])
  ]
}

/** The sheet's own shape again, unchecked. Never throws. */
export function unpackSheet(raw: unknown): unknown {
  const [name, flags, woods, sizes, seasonings, numbers, rates, contact, note, cautions] = list(raw)
  const bits = typeof flags === 'number' ? flags : -1
  const [request, free, longFt, long, largeIn, large, joinery, waste, band, planed] = list(numbers)
  const text = (value: unknown) => (value === 0 ? undefined : value)
  return kept({
    version: 1,
    name,
    contact: text(contact),
    placeholder: (bits & 1) === 1,
    note: text(note),
    cautions: text(cautions),
    grade: GRADES_2[bits >> 2],
    surface: (bits & 2) === 2 ? 'planed' : 'full-sawn',
    woods: list(woods).map(unpackWood),
    requestWeeks: request,
    freeOfHeartAddPercent: free,
    planedAddPerBoardFoot: found(planed),
    longAddPercent: { aboveFt: longFt, add: long },
    largeAddPercent: { aboveIn: largeIn, add: large },
    seasonings: list(seasonings).map((row) => {
      const [id, add = 0, weeks = 0, yard] = list(row)
      return kept({
        id: typeof id === 'number' ? SEASONINGS_2[id] : undefined,
        addPerBoardFoot: add,
        leadWeeks: weeks,
        yardWeeks: found(yard)
      })
    }),
    joineryWeeks: joinery,
    sections: unpackSizes(sizes),
    wastePercent: waste,
    priceBandPercent: band,
    rates: kept(
      Object.fromEntries(
        WORK_2.map((part, i) => {
          const charge = list(rates)[i]
          if (!Array.isArray(charge)) return [part, undefined]
          return [part, { by: typeof charge[0] === 'number' ? CHARGES_2[charge[0]] : undefined, value: charge[1] }]
        })
      )
    )
  })
}
