/** What the answers so far settle: the live list beside the questions. */
import type { Sentence } from '../data/quantity'
import type { Reference } from '../data/reference'
import type { ShopSheetContent } from '../data/shop-schema'
import { bestOfEachWood } from './brief'
import { limit } from './facts'
import { judgeAll } from './judge'
import { sentence } from './say'
import type { Answers } from './types'

export interface SettledWood {
  readonly species: string
  readonly short: string
  readonly in: boolean
  readonly lead: boolean
  readonly says: Sentence
}

export interface Settled {
  readonly woods: readonly SettledWood[]
  readonly inCount: number
  readonly outCount: number
}

/** Judge once and say, wood by wood, what stands so far. Nothing is sized or priced beyond what the judging needs. */
export function settle(answers: Answers, sheet: ShopSheetContent, reference: Reference): Settled {
  const judging = judgeAll(answers, sheet, reference)
  const { context } = judging
  const best = bestOfEachWood(judging.judged)
  const top = best[0]?.total ?? 0
  const woods = best.map((j, i): SettledWood => {
    const lead = j.in && i === 0
    const cut = j.facts.option.heart === 'free' ? 'free of heart' : 'boxed heart'
    const told = j.fired.find((r) => r.effect === (j.in ? 'caution' : 'out') && !r.general)
    const close = j.in && (top - j.total) * 100 < limit(reference, 'margin-near')
    const says = lead
      ? sentence(`leads, ${cut}, ${j.facts.seasoning.short}`)
      : close
        ? sentence(`close behind, ${cut}`)
        : (told?.short(j.facts, context) ?? sentence(`in, ${cut}`))
    return { species: j.facts.wood.id, short: j.facts.wood.short, in: j.in, lead, says }
  })
  const inCount = woods.filter((w) => w.in).length
  return { woods, inCount, outCount: woods.length - inCount }
}
