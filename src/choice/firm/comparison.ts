/** One job judged once, to be looked at from several sides: any two options against each other, any two figures. */
import type { Reference } from '../../data/reference'
import type { ShopSheetContent } from '../../data/shop-schema'
import { type Judged, judgeAll } from '../judge'
import { HEART_SAYS } from '../report'
import type { Answers } from '../types'
import { type SideBySide, sideBySide } from './side-by-side'
import { type AxisId, type TradeOff, tradeOff } from './trade-off'

export interface Offered {
  readonly option: string
  readonly wood: string
  readonly how: string
  readonly in: boolean
}

export interface Comparison {
  /** Every option of the shop, wood by wood in the order of their names. */
  readonly options: readonly Offered[]
  /** The one whose frame costs least of those that can do the job; null where none can. */
  readonly cheapest: string | null
  /** null where one of the two is not an option of this shop. */
  readonly pair: (a: string, b: string) => SideBySide | null
  /** @param lead the option that the brief puts first */
  readonly tradeOff: (lead: string | null, axes: readonly [AxisId, AxisId]) => TradeOff | null
}

export function comparison(answers: Answers, sheet: ShopSheetContent, reference: Reference): Comparison {
  const judging = judgeAll(answers, sheet, reference)
  const { judged, context } = judging
  const byId = new Map(judged.map((j) => [j.facts.option.id, j]))
  const offered = judged.map(
    (j): Offered => ({
      option: j.facts.option.id,
      wood: j.facts.wood.name,
      how: `${HEART_SAYS[j.facts.option.heart]}, ${j.facts.seasoning.short}`,
      in: j.in
    })
  )
  const cheapest = judged
    .filter((j) => j.in)
    .reduce<Judged | null>((least, j) => (least && least.facts.jobCost <= j.facts.jobCost ? least : j), null)
  return {
    options: offered.sort((p, q) => (p.wood < q.wood ? -1 : p.wood > q.wood ? 1 : p.option < q.option ? -1 : 1)),
    cheapest: cheapest?.facts.option.id ?? null,
    pair: (a, b) => {
      const [one, two] = [byId.get(a), byId.get(b)]
      return one && two ? sideBySide(one, two, judging) : null
    },
    tradeOff: (lead, axes) => tradeOff(judged, lead, axes, context)
  }
}
