/**
 * The way to the engine. Its code and the published numbers are larger than the questionnaire itself, so they come
 * after it, once, from this site. What comes is the same pure engine that the build and the tests run.
 */

import type { ShopSheetContent } from '../data/shop-schema'
import type { Engine } from './engine-types'
import { href } from './site/href'

export type { Engine, Glance } from './engine-types'

type Workshop = (sheet?: ShopSheetContent) => Engine
let loading: Promise<Workshop> | undefined

/** The engine for a shop's sheet; for the sample sheet where none is given. */
export async function loadEngine(sheet?: ShopSheetContent): Promise<Engine> {
  loading ??= start().catch((error: unknown) => {
    // A lost connection must not be remembered: the next call tries again.
    loading = undefined
    throw error
  })
  return (await loading)(sheet)
}

async function start(): Promise<Workshop> {
  const [core, response] = await Promise.all([import('./engine-core'), fetch(href('/data/reference.json'))])
  if (!response.ok) throw new Error(`reference data: ${response.status}`)
  return core.openWorkshop(await response.json())
}
