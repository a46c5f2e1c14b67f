/** The door to the drying clock: what is asked for by name and number, read or refused field by field. */
import type { Reference } from '../../data/reference'
import { INCH } from '../../data/units'
import type { Exposure } from '../../wood/service'
import { type ClockAsked, type ClockJob, HEATINGS, type Heating, SEASONINGS } from './types'

/** A field that is refused: not known by that name, or outside `CLOCK_RANGES`. The page says it in its own units. */
export interface ClockProblem {
  readonly field: keyof ClockAsked
  readonly why: 'unknown' | 'range'
}

/** Permitted ranges: sizes in mm, times in weeks. */
export const CLOCK_RANGES = {
  breadth: [2 * INCH, 24 * INCH],
  depth: [2 * INCH, 30 * INCH],
  yardWeeks: [0, 520],
  kilnWeeks: [1, 104],
  shopWeeks: [0, 260]
} as const satisfies Partial<Record<keyof ClockAsked, readonly [number, number]>>

const EXPOSURES: readonly Exposure[] = ['heated', 'unheated', 'roofed', 'weather']

const MONTH = 365.25 / 12

/** Read what is asked for. Never throws: everything that is wrong is named, and a job comes only when nothing is. */
export function readClock(
  asked: ClockAsked,
  reference: Reference
): { readonly ok: true; readonly job: ClockJob } | { readonly ok: false; readonly problems: readonly ClockProblem[] } {
  const problems: ClockProblem[] = []
  const wood = reference.woods.get(asked.wood)
  const place = reference.places.get(asked.place)
  const exposure = EXPOSURES.find((e) => e === asked.exposure)
  const seasoning = SEASONINGS.find((s) => s === asked.seasoning)
  const heating = HEATINGS.find((h): h is Heating => h === asked.heating)
  const known = { wood, place, exposure, seasoning, heating }
  for (const field of ['wood', 'place', 'exposure', 'seasoning', 'heating'] as const) {
    if (known[field] === undefined) problems.push({ field, why: 'unknown' })
  }
  for (const [field, [low, high]] of Object.entries(CLOCK_RANGES) as [keyof typeof CLOCK_RANGES, [number, number]][]) {
    // What the way of drying does not use is not judged.
    if (field === 'yardWeeks' && seasoning !== 'air') continue
    if (field === 'kilnWeeks' && seasoning !== 'kiln') continue
    // A thousandth of a millimetre, for sizes that came through inches.
    if (!(asked[field] >= low - 1e-3 && asked[field] <= high + 1e-3)) problems.push({ field, why: 'range' })
  }
  const { felledMonth } = asked
  if (!(Number.isInteger(felledMonth) && felledMonth >= 1 && felledMonth <= 12)) {
    problems.push({ field: 'felledMonth', why: 'unknown' })
  }
  if (problems.length > 0 || !wood || !place || !exposure || !seasoning || !heating) return { ok: false, problems }
  const percentDried = reference.seasonings.get(seasoning)?.deliveredPercent ?? 0
  const sides = [asked.breadth, asked.depth].sort((a, b) => a - b)
  return {
    ok: true,
    job: {
      wood,
      section: [sides[0] as number, sides[1] as number],
      place,
      exposure,
      seasoning,
      felledDay: (felledMonth - 0.5) * MONTH,
      yardWeeks: asked.yardWeeks,
      kilnWeeks: asked.kilnWeeks,
      dried: percentDried / 100,
      shopWeeks: asked.shopWeeks,
      heating
    }
  }
}
