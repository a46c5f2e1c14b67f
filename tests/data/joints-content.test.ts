/** What `content/joints.json` says of pegs and cuts: rows read by hand, woods that resolve, spoilt content refused. */
import * as v from 'valibot'
import { describe, expect, it } from 'vitest'
import { content } from '../../src/data/content'
import { type JointsContent, jointsSchema } from '../../src/data/schema'
import { INCH } from '../../src/data/units'
import { distancesFor } from '../../src/frame/pegs'
import { reference } from '../reference'

const rules = reference.joints

describe('peg distances', () => {
  it.each([
    ['douglas-fir', 2.5, 2, 2.5, 'seen'],
    ['eastern-white-pine', 4, 4, 3, 'memory'],
    ['southern-pine', 2, 2, 3, 'memory'],
    ['longleaf-pine', 2, 2, 3, 'memory'],
    ['red-oak', 2, 3, 2.5, 'memory'],
    ['white-oak', 2, 3, 2.5, 'memory'],
    ['yellow-poplar', 2.5, 2.5, 3, 'memory']
  ])('%s: edge %d, end %d, spacing %d diameters, %s', (id, edge, end, spacing, mark) => {
    const row = distancesFor(rules, id, reference.woods.get(id)?.kind ?? 'softwood')
    expect([row.edge, row.end, row.spacing, row.origin.mark]).toEqual([edge, end, spacing, mark])
  })
  it('a wood that was not tested takes the largest of its kind and says so', () => {
    const hemlock = distancesFor(rules, 'western-hemlock', 'softwood')
    expect([hemlock.edge, hemlock.end, hemlock.spacing, hemlock.origin.mark]).toEqual([4, 4, 3, 'derived'])
    const ash = distancesFor(rules, 'white-ash', 'hardwood')
    expect([ash.edge, ash.end, ash.spacing, ash.origin.mark]).toEqual([2.5, 3, 3, 'derived'])
  })
  it('no wood gets less than another tested one of its kind unless it was tested itself', () => {
    for (const wood of reference.woods.values()) {
      const mine = distancesFor(rules, wood.id, wood.kind)
      if (mine.origin.mark !== 'derived') continue
      for (const row of rules.distances.filter((r) => r.kind === wood.kind))
        for (const of of ['edge', 'end', 'spacing'] as const) expect(mine[of], wood.id).toBeGreaterThanOrEqual(row[of])
    }
  })
})

describe('content of joints', () => {
  it('woods of rows and of pegs are in the library, of the kind that the row says', () => {
    for (const row of rules.distances)
      for (const id of row.woods) expect(reference.woods.get(id)?.kind, id).toBe(row.kind)
    for (const peg of rules.pegWoods) {
      expect(reference.woods.has(peg.wood), peg.wood).toBe(true)
      expect(peg.gravity, peg.wood).toBeGreaterThanOrEqual(rules.peg.gravityLeast)
    }
  })
  it('pegs of woods with a table row take its specific gravity', () => {
    for (const peg of rules.pegWoods) {
      const wood = reference.woods.get(peg.wood)
      const row = reference.design.find((r) => r.group === wood?.designGroup)
      expect(peg.gravity, peg.wood).toBe(row ? row.gravity : wood?.gravityGreen)
    }
  })
  it('converts once: the usual peg first, lengths in mm, offsets as a share of the peg', () => {
    expect(rules.peg.diameters).toEqual([INCH, 0.75 * INCH, 1.25 * INCH])
    expect(rules.drawBore.share).toEqual({ softwood: 0.125, hardwood: 0.09375 })
    expect(rules.step.gentle).toBeCloseTo((50 * Math.PI) / 180, 12)
    expect(rules.housing.most).toBeCloseTo(38.1, 9)
  })
  it('nothing recalled is called read: peg strengths are memory', () => {
    expect(rules.strength.origin.mark).toBe('memory')
    expect(rules.peg.origin.mark).toBe('memory')
    expect(rules.distances.filter((r) => r.origin.mark === 'seen').flatMap((r) => r.woods)).toEqual([
      'douglas-fir',
      'douglas-fir-interior'
    ])
  })
  it('spoilt content is refused', () => {
    const good = content.joints as JointsContent
    const refused = (change: object) => expect(v.safeParse(jointsSchema, { ...good, ...change }).success).toBe(false)
    expect(v.safeParse(jointsSchema, good).success).toBe(true)
    refused({ extra: 1 })
    refused({ peg: { ...good.peg, usualIn: 0.9 } })
    refused({ distances: good.distances.filter((r) => r.kind === 'softwood') })
    refused({ distances: [...good.distances, { ...good.distances[0], id: 'again' }] })
    refused({ step: { ...good.step, gentleDegrees: 70 } })
    refused({ step: { ...good.step, steepShare: 0.5 } })
    refused({ service: { ...good.service, wet: 1.2 } })
    refused({ tenon: { ...good.tenon, leastPegs: 0 } })
    refused({ strength: { ...good.strength, source: undefined } })
  })
})
