/** What a comparison needs of one wood, lean enough to be fetched: no words, its figures without what went into them. */
import { bare, lean } from '../choice/say'
import type { LogEnd } from '../choice/types'
import type { Sentence } from '../data/quantity'
import { libraryOf, rounded } from '../ui/bench/at-build'
import type { Library } from '../ui/say/library'
import { type Measure, woodOf } from './measure'
import { logEndsOf } from './movement'
import { type Group, groupsOf } from './rows'
import { SIDE } from './sizes'
import { type Look, looksOf, type Rung, rungOf } from './view'

export interface CompareWood {
  readonly id: string
  readonly name: string
  readonly short: string
  readonly summary: string
  readonly looks: readonly Look[]
  readonly logEnds: readonly LogEnd[]
  readonly rung: Rung | null
  readonly groups: readonly Group[]
  readonly cautions: readonly Sentence[]
  readonly library: Library
}

/** The woods that the page begins with. */
export const FIRST = ['douglas-fir', 'eastern-white-pine', 'white-oak'] as const

/** @throws Error where there is no such wood. */
export function compareWood(id: string, measure: Measure): CompareWood {
  const wood = woodOf(id, measure)
  const shown = rounded({
    looks: looksOf(wood, measure),
    logEnds: logEndsOf(wood, [SIDE, SIDE], measure).map((end) => ({ ...end, says: lean(end.says) })),
    rung: rungOf(wood, measure),
    groups: groupsOf(wood, measure).map((group) => ({
      ...group,
      rows: group.rows.map((row) => (typeof row.value === 'string' ? row : { ...row, value: bare(row.value) }))
    })),
    cautions: wood.cautions.map((c): Sentence => ({ text: c.says, sources: c.origin.sources, mark: c.origin.mark }))
  })
  return {
    id,
    name: wood.name,
    short: wood.short,
    summary: wood.summary,
    ...shown,
    library: libraryOf(shown, measure.reference)
  }
}
