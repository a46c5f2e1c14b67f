/** The engine with its data in place. Loaded on demand by `engine.ts`; used directly where pages are built. */
import * as v from 'valibot'
import { bestOfEachWood, briefInSteps } from '../choice/brief'
import { climateSection } from '../choice/brief/climate'
import { logEnds } from '../choice/brief/movement'
import { readClock } from '../choice/clock/door'
import { clockReport } from '../choice/clock/report'
import { finishColours } from '../choice/finish/looks'
import { comparison } from '../choice/firm/comparison'
import { remaining } from '../choice/firm/remaining'
import { remembered } from '../choice/firm/remembered'
import { whatIf } from '../choice/firm/what-if'
import { judgeAll } from '../choice/judge'
import { ladderReport } from '../choice/ladder/report'
import { reportOf } from '../choice/report'
import { settle } from '../choice/settle'
import { buildReference, type Content, type Reference } from '../data/reference'
import { type ShopSheetContent, shopSheetSchema } from '../data/shop-schema'
import type { Engine, Glance } from './engine-types'

export interface Supplies {
  readonly content: Content
  readonly shop: unknown
}

/** Reads the content once; gives an engine for each shop sheet, the sample's where none is named. */
export function openWorkshop({ content, shop }: Supplies): (sheet?: ShopSheetContent) => Engine {
  const reference = buildReference(content)
  const sample = v.parse(shopSheetSchema, shop)
  const engines = new WeakMap<ShopSheetContent, Engine>()
  return (sheet = sample) => {
    const engine = engines.get(sheet) ?? engineOf(sheet, reference)
    engines.set(sheet, engine)
    return engine
  }
}

function engineOf(sheet: ShopSheetContent, reference: Reference): Engine {
  return {
    sheet,
    woods: [...reference.woods.values()].map(({ id, name, short }) => ({ id, name, short })),
    settle: (answers) => settle(answers, sheet, reference),
    glance: (answers): Glance => {
      const { context, judged } = judgeAll(answers, sheet, reference)
      const { months, place } = climateSection(context)
      const [best] = judged
      if (best === undefined) return { months, place }
      const { shoulderGap, timberShare } = reportOf(best, context, null).figures
      const swatches = bestOfEachWood(judged)
        .slice(0, 3)
        .map(({ facts: { wood } }) => ({ label: wood.short, colours: finishColours(wood, reference) }))
      return { months, place, logEnds: logEnds(best, context), gap: shoulderGap, share: timberShare, swatches }
    },
    makeBrief: (answers) => briefInSteps(answers, sheet, reference),
    whatIf: remembered((answers) => whatIf(answers, sheet, reference)),
    remaining: remembered((answers) => remaining(answers, sheet, reference)),
    compare: (answers) => comparison(answers, sheet, reference),
    clock: (asked) => {
      const read = readClock(asked, reference)
      return read.ok ? clockReport(read.job, reference) : { problems: read.problems }
    },
    ladder: (asked) => ladderReport(asked, reference, sheet),
    places: [...reference.places.values()].map(({ id, name }) => ({ id, name })),
    library: { sources: reference.sources, formulas: reference.formulas }
  }
}
