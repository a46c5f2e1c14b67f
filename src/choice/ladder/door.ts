/** The door to the size ladder: a job by name and number, read or refused field by field. Never throws. */
import type { Reference } from '../../data/reference'
import { PSF } from '../../data/units'
import type { Range } from '../../frame/member-spec'
import { limit } from '../facts'
import { memberRanges } from './member-for'
import { DRYNESS, GRADES, KINDS, type LadderAsked, type LadderJob, type PlaceField, type PointField } from './types'
import { bearsOf, isSloped, livesOf, slotsOf, usesField } from './uses'

export type LadderNumber = 'span' | 'width' | 'slope' | 'height' | 'snow' | PointField | PlaceField
/** A field that is refused: not known by that name, or outside its range. The page says it in its own units. */
export interface LadderProblem {
  readonly field: keyof LadderAsked
  readonly why: 'unknown' | 'range'
}

/** Permitted ranges of a job with that member, in SI. @param along the span, within which its loads at points lie */
export function ladderRanges(
  kind: string,
  reference: Reference,
  along?: number
): Readonly<Record<LadderNumber, Range>> {
  const { span, width, slope, height, point } = memberRanges(reference)
  const at = { least: 0, most: along === undefined || !within(along, span) ? span.most : along }
  return {
    span,
    width,
    slope: isSloped(kind) ? slope : { least: 0, most: slope.most },
    height,
    snow: { least: 0, most: limit(reference, 'member-snow-most') * PSF },
    point1: point,
    point2: point,
    point3: point,
    point4: point,
    at1: at,
    at2: at,
    at3: at,
    at4: at
  }
}

/** A share: a range's end as it is printed, such as 2 in 12 for 0.1667, must itself be taken. */
const SLACK = 1e-3
const within = (value: number, { least, most }: Range): boolean =>
  value >= least * (1 - SLACK) && value <= most * (1 + SLACK)

export type LadderRead =
  | { readonly ok: true; readonly job: LadderJob }
  | { readonly ok: false; readonly problems: readonly LadderProblem[] }

/** Read what is asked for: everything that is wrong is named, and a job comes only when nothing is. */
export function readLadder(asked: LadderAsked, reference: Reference): LadderRead {
  const problems: LadderProblem[] = []
  const known = {
    kind: KINDS.find((k) => k === asked.kind),
    bears: bearsOf(asked.kind).find((b) => b === asked.bears),
    lives: livesOf(asked.bears).find((l) => l === asked.lives),
    dryness: DRYNESS.find((d) => d === asked.dryness),
    grade: Object.hasOwn(GRADES, asked.grade) ? GRADES[asked.grade] : undefined,
    surface: reference.series.get(asked.surface),
    // Each slot once.
    loads: !usesField('loads', asked) ? '' : /^(?!.*(.).*\1)[1-4]*$/.test(asked.loads) ? asked.loads : undefined,
    wood: reference.woods.get(asked.wood)
  }
  for (const field of Object.keys(known) as (keyof typeof known)[])
    if (known[field] === undefined) problems.push({ field, why: 'unknown' })
  const ranges = ladderRanges(asked.kind, reference, asked.span)
  const read = Object.fromEntries(Object.keys(ranges).map((field) => [field, 0])) as Record<LadderNumber, number>
  for (const field of Object.keys(ranges) as LadderNumber[]) {
    const { least, most } = ranges[field]
    const value = asked[field]
    if (within(value, ranges[field])) read[field] = Math.min(most, Math.max(least, value))
    else if (usesField(field, asked)) problems.push({ field, why: 'range' })
    else if (field === 'height') read.height = least
  }
  const { kind, bears, lives, dryness, grade, surface, wood } = known
  if (problems.length > 0 || !kind || !bears || !lives || !dryness || !grade || !surface || !wood)
    return { ok: false, problems }
  const unseasoned = dryness === 'green'
  const used = (field: LadderNumber) => (usesField(field, asked) ? read[field] : 0)
  const points = slotsOf(asked.loads)
    .filter((slot) => usesField(`point${slot}`, asked))
    .map((slot) => ({ at: read[`at${slot}`], load: read[`point${slot}`] }))
    .sort((p, q) => p.at - q.at)
  const job = { kind, bears, lives, unseasoned, grade, series: surface, wood, points, asked }
  return {
    ok: true,
    job: {
      ...job,
      span: read.span,
      width: read.width,
      slope: used('slope'),
      height: read.height,
      snow: used('snow')
    }
  }
}
