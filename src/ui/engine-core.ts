/** The engine with its data in place. Loaded on demand by `engine.ts`; used directly where pages are built. */
import * as v from 'valibot'
import { makeBrief } from '../choice/brief'
import { climateSection } from '../choice/brief/climate'
import { logEnds } from '../choice/brief/movement'
import { readClock } from '../choice/clock-door'
import { clockReport } from '../choice/clock-report'
import { judgeAll } from '../choice/judge'
import { ladderReport } from '../choice/ladder-report'
import { reportOf } from '../choice/report'
import { settle } from '../choice/settle'
import { whatIf } from '../choice/what-if'
import { buildReference, type Content } from '../data/reference'
import { shopSheetSchema } from '../data/shop-schema'
import type { Engine, Glance } from './engine'

export interface Supplies {
  readonly content: Content
  readonly shop: unknown
}

export function startEngine({ content, shop }: Supplies): Engine {
  const reference = buildReference(content)
  const sheet = v.parse(shopSheetSchema, shop)
  return {
    settle: (answers) => settle(answers, sheet, reference),
    glance: (answers): Glance => {
      const { context, judged } = judgeAll(answers, sheet, reference)
      const { months, place } = climateSection(context)
      const [best] = judged
      if (best === undefined) return { months, place }
      const { shoulderGap, timberShare } = reportOf(best, context, null).figures
      return { months, place, logEnds: logEnds(best, context), gap: shoulderGap, share: timberShare }
    },
    makeBrief: (answers) => makeBrief(answers, sheet, reference),
    whatIf: (answers) => whatIf(answers, sheet, reference),
    clock: (asked) => {
      const read = readClock(asked, reference)
      return read.ok ? clockReport(read.job, reference) : { problems: read.problems }
    },
    ladder: (asked) => ladderReport(asked, reference, sheet),
    places: [...reference.places.values()].map(({ id, name }) => ({ id, name })),
    library: { sources: reference.sources, formulas: reference.formulas }
  }
}
