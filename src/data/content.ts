/** All of `content/` as plain data, gathered by the bundler: for the build and for tests. The browser fetches it instead. */
import type { Content } from './reference'

// Vite reads the options of import.meta.glob at build time, so they stand written out at each call.
const one = (files: Record<string, unknown>): unknown => Object.values(files)[0]

export const content: Content = {
  species: Object.values(import.meta.glob('../../content/species/*.json', { eager: true, import: 'default' })),
  designValues: one(import.meta.glob('../../content/design-values.json', { eager: true, import: 'default' })),
  places: one(import.meta.glob('../../content/places.json', { eager: true, import: 'default' })),
  regions: one(import.meta.glob('../../content/regions.json', { eager: true, import: 'default' })),
  sources: one(import.meta.glob('../../content/sources.json', { eager: true, import: 'default' })),
  formulas: one(import.meta.glob('../../content/formulas.json', { eager: true, import: 'default' })),
  limits: one(import.meta.glob('../../content/limits.json', { eager: true, import: 'default' })),
  scatter: one(import.meta.glob('../../content/scatter.json', { eager: true, import: 'default' })),
  decay: one(import.meta.glob('../../content/decay.json', { eager: true, import: 'default' })),
  seasonings: one(import.meta.glob('../../content/seasonings.json', { eager: true, import: 'default' })),
  drying: one(import.meta.glob('../../content/drying.json', { eager: true, import: 'default' })),
  loads: one(import.meta.glob('../../content/loads.json', { eager: true, import: 'default' })),
  joints: one(import.meta.glob('../../content/joints.json', { eager: true, import: 'default' })),
  finishes: one(import.meta.glob('../../content/finishes.json', { eager: true, import: 'default' })),
  unsure: one(import.meta.glob('../../content/unsure.json', { eager: true, import: 'default' })),
  series: one(import.meta.glob('../../content/series.json', { eager: true, import: 'default' })),
  indoor: one(import.meta.glob('../../content/indoor.json', { eager: true, import: 'default' }))
}

/** The sample shop sheet: invented, its prices placeholders. */
export const sampleShop: unknown = one(import.meta.glob('../../content/shop.json', { eager: true, import: 'default' }))

/** The same sheet, for pages that teach: it stays where a copy of the site has a shop's own in place of the sample. */
export const teachingShop: unknown = JSON.parse(
  String(one(import.meta.glob('../../content/shop.json', { eager: true, query: '?raw', import: 'default' })))
)

/** Example projects, invented. */
export const scenarios: readonly unknown[] = Object.values(
  import.meta.glob('../../content/scenarios/*.json', { eager: true, import: 'default' })
)
