/** The size ladder as a store. */
import type { LadderNumber } from '../../choice/ladder/door'
import type { LadderAsked, LadderReport } from '../../choice/ladder/types'
import { bearsOf, isSloped, livesOf, slotOf, usesField } from '../../choice/ladder/uses'
import { type BenchStore, type BenchView, makeBench, type Outside } from '../bench/store'
import { linkOf, readLink } from './link'
import { settleLoads } from './points'
import type { Range } from './read'

export type Field = keyof LadderAsked
export type View = BenchView<LadderAsked, LadderReport>
export type LadderStore = BenchStore<LadderAsked, LadderReport>
/** Of a level timber and of a sloped one. */
export interface Ranges {
  readonly level: Readonly<Record<LadderNumber, Range>>
  readonly sloped: Readonly<Record<LadderNumber, Range>>
}
export function rangeOf(field: LadderNumber, { kind, span }: LadderAsked, ranges: Ranges): Range {
  const own = ranges[isSloped(kind) ? 'sloped' : 'level']
  // A load lies on its span, as far as that is one that can be.
  const on = span >= own.span.least && span <= own.span.most
  return slotOf(field) && field.startsWith('at') && on ? { least: 0, most: span } : own[field]
}

const kept = (can: readonly string[], is: string): string => (can.includes(is) ? is : (can[0] ?? is))

/** Another member may bear other things, and live elsewhere: what it has where it can, else the first that it can. */
const settle = (asked: LadderAsked): LadderAsked => {
  const bears = kept(bearsOf(asked.kind), asked.bears)
  return settleLoads({ ...asked, bears, lives: kept(livesOf(bears), asked.lives) })
}

export const makeLadder = (first: LadderReport, given: Pick<View, 'library'>, outside: Outside): LadderStore =>
  makeBench<LadderAsked, LadderReport>(first, { ...given, places: [] }, outside, {
    report: (engine, asked) => engine.ladder(asked),
    uses: usesField,
    linkOf,
    readLink,
    settle
  })
