/** What the engine answers to a page: the functions of a workshop with its data in place. */
import type { Brief } from '../choice/brief-types'
import type { ClockProblem } from '../choice/clock/door'
import type { ClockAsked, ClockReport } from '../choice/clock/types'
import type { Comparison } from '../choice/firm/comparison'
import type { Remaining } from '../choice/firm/remaining'
import type { WhatIf } from '../choice/firm/what-if'
import type { LadderProblem } from '../choice/ladder/door'
import type { LadderAsked, LadderReport } from '../choice/ladder/types'
import type { Settled } from '../choice/settle'
import type { Steps } from '../choice/steps'
import type { Answers, LogEnd } from '../choice/types'
import type { Quantity } from '../data/quantity'
import type { ShopSheetContent } from '../data/shop-schema'
import type { SwatchRow } from './pictures/faces'
import type { Library } from './say/library'

/** What the questions' pictures show of the leading option: a part of the brief that takes a fraction of its time. */
export interface Glance extends Pick<Brief['climate'], 'months' | 'place'> {
  readonly logEnds?: readonly LogEnd[]
  readonly gap?: Quantity
  readonly share?: Quantity
  /** The woods in front under each finish. */
  readonly swatches?: readonly SwatchRow[]
}

export interface Engine {
  /** The shop sheet that its options and prices come from. */
  readonly sheet: ShopSheetContent
  /** Every wood that there is data on, whether the sheet carries it or not. */
  readonly woods: readonly { readonly id: string; readonly name: string; readonly short: string }[]
  readonly settle: (answers: Answers) => Settled
  readonly glance: (answers: Answers) => Glance
  /** The brief, worked off a step at a time. */
  readonly makeBrief: (answers: Answers) => Steps<Brief>
  /** What would change the choice, worked off a step at a time. */
  readonly whatIf: (answers: Answers) => Steps<WhatIf>
  /** Which questions left could still change anything, worked off likewise. */
  readonly remaining: (answers: Answers) => Steps<Remaining>
  /** The job judged once, to hold any two options or figures against each other. */
  readonly compare: (answers: Answers) => Comparison
  /** The drying clock of one timber, or the fields that stand in its way. */
  readonly clock: (asked: ClockAsked) => ClockReport | { readonly problems: readonly ClockProblem[] }
  /** The size ladder of one job, or the fields that stand in its way. */
  readonly ladder: (asked: LadderAsked) => LadderReport | { readonly problems: readonly LadderProblem[] }
  readonly places: readonly { readonly id: string; readonly name: string }[]
  readonly library: Library
}
