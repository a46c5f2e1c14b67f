/** What the form of a shop sheet goes by: the woods and where they grow, the sample, and examples to try a sheet on. */
import * as v from 'valibot'
import type { Answers } from '../../choice/types'
import { sampleShop, scenarios } from '../../data/content'
import type { Reference } from '../../data/reference'
import { scenarioSchema } from '../../data/schema'
import { type ShopSheetContent, shopSheetSchema } from '../../data/shop-schema'
import { FOOT, INCH } from '../../data/units'
import { UNUSUAL_LIMIT } from '../../shop/sheet/unusual'

/** In the reader's units. */
export interface Both {
  readonly us: string
  readonly si: string
}

export interface FormWood {
  readonly id: string
  readonly name: string
  readonly short: string
  readonly regions: readonly string[]
  /** The sample shop keeps it. */
  readonly usual: boolean
  /** What the trade can usually get, in words. */
  readonly trade: { readonly longest: Both; readonly largest: Both; readonly free: string }
}
export interface FormGiven {
  readonly woods: readonly FormWood[]
  readonly regions: readonly { readonly id: string; readonly name: string; readonly side: string }[]
  readonly sample: ShopSheetContent
  readonly examples: readonly {
    readonly id: string
    readonly title: string
    readonly about: string
    readonly answers: Answers
  }[]
  /** How many times the middle of the other prices is pointed out. */
  readonly unusual: number
}

const FREE = { usual: 'usual', rare: 'on request', hardly: 'hardly' } as const

/** @throws Error where content is not as it should be, which at build is a mistake of ours */
export function givenOf(reference: Reference): FormGiven {
  const sample = v.parse(shopSheetSchema, sampleShop)
  const kept = new Set(sample.woods.filter((wood) => !wood.onRequest).map((wood) => wood.species))
  const woods = [...reference.woods.values()].map(({ id, name, short, regions, supply }) => ({
    id,
    name,
    short,
    regions,
    usual: kept.has(id),
    trade: {
      longest: { us: `${Math.round(supply.longest / FOOT)} ft`, si: `${(supply.longest / 1000).toFixed(1)} m` },
      largest: {
        us: supply.largest.map((side) => Math.round(side / INCH)).join('x'),
        si: `${supply.largest.map((side) => Math.round(side)).join('x')} mm`
      },
      free: FREE[supply.freeOfHeart]
    }
  }))
  const grown = new Set(woods.flatMap((wood) => wood.regions))
  const unusual = reference.limits.get(UNUSUAL_LIMIT)
  if (!unusual) throw new Error(`no ${UNUSUAL_LIMIT}`)
  return {
    woods: woods.sort((a, b) => a.name.localeCompare(b.name)),
    regions: reference.regions.filter(({ id }) => grown.has(id)).map(({ id, name, side = '' }) => ({ id, name, side })),
    sample,
    examples: scenarios.map((scenario) => {
      const { id, title, paragraph, answers } = v.parse(scenarioSchema, scenario)
      return { id, title, about: paragraph, answers: answers as Answers }
    }),
    unusual: unusual.value
  }
}
