/** The shop's half of the brief: what answers a framer's first twenty questions without a call. */

import type { Brief } from '../brief-types'
import type { ClockReport } from '../clock/types'
import { cutList } from '../cut-list'
import type { ShopDetailReport, WoodDetail } from '../detail-types'
import type { Judged, Judging } from '../judge'
import type { JobLine, OptionReport } from '../types'
import { jointLines } from './joints'
import { askedLines } from './shop-asked'
import { askedOfTimber } from './shop-asked-timber'
import { clientDetail } from './shop-client'
import { setOutLines } from './shop-joints'
import { moveLines, movesSay } from './shop-moves'
import { dryingPlan } from './shop-plan'

/** Woods that a shop can open; the others are one edit of an answer away. */
export const MOST_DETAILED = 5

/** Figures keep their formula and source but not what went into them: a brief is to travel, and its other parts carry that. */
const leanAll = <T>(value: T): T =>
  JSON.parse(JSON.stringify(value, (key, held: unknown) => (key === 'inputs' ? undefined : held))) as T

function woodDetail(judged: Judged, { context: c }: Judging, first: boolean): WoodDetail {
  const o = judged.facts
  const whole = {
    option: o.option.id,
    cutList: cutList(o, c),
    moves: moveLines(o, c),
    movesSay: movesSay(o, c),
    joints: first ? [] : jointLines(judged, c),
    setOut: setOutLines(o, c)
  }
  return first ? whole : leanAll(whole)
}

/**
 * @param best the best option of each wood, in the order of merit; the first is what the brief is about
 * @param report that first one as the brief reports it
 * @param clock the drying clock of the first
 */
export function shopDetail(
  judging: Judging,
  best: readonly Judged[],
  report: OptionReport,
  clock: ClockReport,
  job: readonly JobLine[],
  sure: Brief['sure']
): ShopDetailReport {
  const [first] = best
  const woods = best.slice(0, MOST_DETAILED).map((j) => woodDetail(j, judging, j === first))
  const ofTimber = first && woods[0] ? askedOfTimber(first, report, woods[0].cutList, judging.context) : []
  return {
    woods,
    plan: first ? dryingPlan(first, clock, judging.context) : { lines: [], says: [] },
    client: clientDetail(judging, job, sure),
    asked: askedLines(job, sure, ofTimber)
  }
}
