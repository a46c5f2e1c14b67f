/** The door to the size ladder: a job by name and number, read or refused field by field. Never throws. */
import type { Reference } from '../data/reference'
import { PSF } from '../data/units'
import type { Range } from '../frame/member-spec'
import { limit } from './facts'
import { DRYNESS, GRADES, KINDS, type LadderAsked, type LadderJob, SURFACES } from './ladder-types'
import { bearsOf, isSloped, livesOf, usesField } from './ladder-uses'
import { memberRanges } from './member-for'

export type LadderNumber = 'span' | 'width' | 'slope' | 'height' | 'snow' | 'point'
/** A field that is refused: not known by that name, or outside its range. The page says it in its own units. */
export interface LadderProblem {
  readonly field: keyof LadderAsked
  readonly why: 'unknown' | 'range'
}

/** Permitted ranges of a job with that member, in SI. */
export function ladderRanges(kind: string, reference: Reference): Readonly<Record<LadderNumber, Range>> {
  const { span, width, slope, height, point } = memberRanges(reference)
  return {
    span,
    width,
    slope: isSloped(kind) ? slope : { least: 0, most: slope.most },
    height,
    snow: { least: 0, most: limit(reference, 'member-snow-most') * PSF },
    point
  }
}

/** A share: a range's end as it is printed, such as 2 in 12 for 0.1667, must itself be taken. */
const SLACK = 1e-3

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
    surface: SURFACES.find((s) => s === asked.surface),
    wood: reference.woods.get(asked.wood)
  }
  for (const field of Object.keys(known) as (keyof typeof known)[])
    if (known[field] === undefined) problems.push({ field, why: 'unknown' })
  const ranges = ladderRanges(asked.kind, reference)
  const read: Record<LadderNumber, number> = { span: 0, width: 0, slope: 0, height: 0, snow: 0, point: 0 }
  for (const field of Object.keys(ranges) as LadderNumber[]) {
    const { least, most } = ranges[field]
    const value = asked[field]
    const within = value >= least * (1 - SLACK) && value <= most * (1 + SLACK)
    if (within) read[field] = Math.min(most, Math.max(least, value))
    else if (usesField(field, asked)) problems.push({ field, why: 'range' })
    else if (field === 'height') read.height = least
  }
  const { kind, bears, lives, dryness, grade, surface, wood } = known
  if (problems.length > 0 || !kind || !bears || !lives || !dryness || !grade || !surface || !wood)
    return { ok: false, problems }
  const unseasoned = dryness === 'green'
  const used = (field: LadderNumber) => (usesField(field, asked) ? read[field] : 0)
  const job = { kind, bears, lives, unseasoned, grade, surface, wood, asked }
  return {
    ok: true,
    job: {
      ...job,
      span: read.span,
      width: read.width,
      slope: used('slope'),
      height: read.height,
      snow: used('snow'),
      point: used('point')
    }
  }
}
