/** What the example projects cost by the sample sheet: shares only mean something here, since its prices are invented. */
import { readAnswers } from '../choice/answers'
import { makeBrief } from '../choice/brief'
import type { Brief } from '../choice/brief-types'
import { scenarios } from '../data/content'
import type { Quantity } from '../data/quantity'
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import type { Args } from './args'
import { once } from './once'

/** The brief of an example project. @throws Error where there is none of that id */
export function exampleBrief(id: string, sheet: ShopSheetContent, reference: Reference): Brief {
  const found = scenarios.find((s) => (s as { id?: unknown }).id === id) as { answers: unknown } | undefined
  if (!found) throw new Error(`no example "${id}"`)
  return once(reference, 'brief', id, () => makeBrief(readAnswers(found.answers).answers, sheet, reference))
}

/** `{{cost share project=ridge-hall}}`: timber in the whole; `timber` and `job` with a wood: what it adds to each. */
export function costFigure(args: Args, sheet: ShopSheetContent): Quantity {
  const what = args.word('of', ['share', 'timber', 'job'])
  const { lead, cost } = exampleBrief(args.text('project'), sheet, args.reference)
  if (what === 'share') {
    const share = lead?.figures.timberShare
    if (!share) throw new Error('the example has no lead')
    return share
  }
  const short = args.wood().short
  const adds = cost.woods.find((w) => w.short === short)?.adds
  if (!adds) throw new Error(`${short} adds nothing to that example`)
  return adds[what]
}
