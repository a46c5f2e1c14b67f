/**
 * The factor of each wood against the published days for green 1 in boards to reach 20 % (FPL-GTR-117), each stacked in
 * every month of the year in a yard of its own region. `UPDATE_FIT=1` writes the fits to content/drying.json.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { content } from '../../src/data/content'
import { buildReference, type Wood } from '../../src/data/reference'
import { type Fit, fitFactor } from '../../src/wood/drying-fit'
import { equilibriumMoisture } from '../../src/wood/moisture'

const FILE = join(import.meta.dirname, '../../content/drying.json')
const stored = JSON.parse(readFileSync(FILE, 'utf8')) as { factors: Record<string, object> }
const update = process.env['UPDATE_FIT'] === '1'
const none = { factor: 1, slowest: 1, quickest: 1 }
const unfitted = () => {
  const ids = (content.species as readonly { id: string }[]).map((s) => [s.id, none])
  return buildReference({ ...content, drying: { ...stored, factors: Object.fromEntries(ids) } })
}
const reference = update ? unfitted() : buildReference(content)

function fit(wood: Wood): Fit {
  const town = reference.places.get(reference.drying.yards[wood.regions[0] ?? ''] ?? '')
  if (!town) throw new Error(`no yard for ${wood.id}`)
  const equilibrium = town.temperatureC.map((t, i) => equilibriumMoisture(t, town.humidity[i] ?? 0))
  const yard = { air: { temperatureC: town.temperatureC, equilibrium }, days: 1500, surface: reference.drying.pile }
  return fitFactor(wood, wood.greenWhole, yard, wood.airDays)
}

const woods = [...reference.woods.values()].sort((a, b) => (a.id < b.id ? -1 : 1))
const fits = new Map(woods.map((wood) => [wood.id, fit(wood)]))
const own = woods.filter((wood) => wood.airDays.origin.mark !== 'derived')

if (update) {
  const round = (n: number) => Number(n.toPrecision(3))
  const factors = Object.fromEntries(
    [...fits].map(([id, f]) => [
      id,
      { factor: round(f.factor), slowest: round(f.slowest), quickest: round(f.quickest) }
    ])
  )
  writeFileSync(FILE, `${JSON.stringify({ ...stored, factors }, null, 2)}\n`)
}

describe('green 1 in boards to 20 %: one factor a wood', () => {
  it.skipIf(update)('what the project stores is what the fit gives', () => {
    for (const wood of woods) {
      const found = fits.get(wood.id) as Fit
      // Stored to three figures.
      for (const key of ['factor', 'slowest', 'quickest'] as const) {
        expect(found[key] / wood.drying[key], `${wood.id} ${key}`).toBeCloseTo(1, 2)
      }
    }
  })

  it('at least 20 woods have a published range of their own', () => expect(own.length).toBeGreaterThanOrEqual(20))

  // One number is fitted, two are printed: that both ends come out is the check. The printed pairs are rounded and name no
  // place, and some pairs (Douglas-fir 20 to 200, larch 60 to 120) are wider or narrower than any one yard's seasons.
  it.each(own.map((w) => [w.id, w] as const))(
    '%s: shortest and longest within the printed pair’s misfit',
    (id, wood) => {
      const { days } = fits.get(id) as Fit
      expect(Math.sqrt(days.min * days.max)).toBeCloseTo(Math.sqrt(wood.airDays.min * wood.airDays.max), 0)
      expect(Math.max(days.min / wood.airDays.min, wood.airDays.min / days.min)).toBeLessThan(1.75)
    }
  )

  it('half of the woods come within a sixth of both printed ends', () => {
    const misfit = own
      .map((wood) => Math.abs(Math.log((fits.get(wood.id) as Fit).days.min / wood.airDays.min)))
      .sort((a, b) => a - b)
    expect(Math.exp(misfit[Math.floor(misfit.length / 2)] as number)).toBeLessThan(1 + 1 / 6)
  })
})
