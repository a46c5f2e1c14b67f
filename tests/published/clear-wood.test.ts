/**
 * Every tabulated row of a wood whose clear green strength is published, against what the ASTM D2555/D245 route makes of that
 * strength. Two independent ways to one number: rows that part by more than a quarter are listed here, with why.
 */
import { describe, expect, it } from 'vitest'
import { INCH } from '../../src/data/units'
import { type DesignValues, derivedValues, type Section, tabulated } from '../../src/frame/values'
import { reference } from '../reference'

const plain = {
  ratio: { 'Select Structural': 0.65, 'No.1': 0.55, 'No.2': 0.4 },
  caution: 1,
  origin: { mark: 'derived', sources: [] }
} as const
const GRADES = ['Select Structural', 'No.1', 'No.2'] as const
const CLASSES: readonly (readonly [string, Section])[] = [
  ['BS', [6 * INCH, 12 * INCH]],
  ['PT', [8 * INCH, 8 * INCH]]
]
type Property = 'bending' | 'elasticity' | 'compression' | 'tension' | 'shear' | 'compressionPerp'

const rows = [...reference.woods.values()].flatMap((wood) =>
  GRADES.flatMap((grade) =>
    CLASSES.flatMap(([size, section]) => {
      const table = wood.designGroup ? tabulated(reference.design, wood.designGroup, grade, section) : null
      const derived = derivedValues(wood.strengthGreen, grade, plain)
      if (!table || !derived) return []
      const over = (p: Property) => derived[p] / (table as DesignValues)[p]
      return [{ id: wood.id, kind: wood.kind, grade, size, over }]
    })
  )
)
const parts = (p: Property, low: number, high: number) =>
  rows.filter(({ over }) => !(over(p) >= low && over(p) <= high)).map(({ id, grade, size }) => `${id} ${grade} ${size}`)

/** Groups that a mill sorts together are held to their weakest member, which is not the wood whose strength is published. */
const GROUPED = ['hickory', 'sugar-maple', 'red-oak', 'white-oak', 'american-beech']

describe(`${rows.length} rows of tabulated timbers against clear wood (astm-d2555, astm-d245)`, () => {
  it('there are rows of both kinds and all grades to compare', () => {
    expect(rows.length).toBeGreaterThan(150)
    expect(new Set(rows.map((r) => r.kind)).size).toBe(2)
  })

  it('bending: within a quarter, but for grouped hardwoods and No.2 posts', () => {
    const misfits = parts('bending', 0.75, 1.25).filter((row) => !GROUPED.some((id) => row.startsWith(id)))
    // No.2 posts and timbers are sorted for compression: their bending stands below what their strength ratio would give.
    expect(misfits).toEqual([
      'alaska-yellow-cedar No.2 PT',
      'eastern-white-pine No.2 PT',
      'incense-cedar No.2 PT',
      'lodgepole-pine No.2 PT',
      'port-orford-cedar No.2 PT',
      'red-spruce No.2 PT',
      'tamarack No.2 PT',
      'western-hemlock No.2 PT',
      'white-spruce No.2 PT'
    ])
  })
  it('bending of grouped hardwoods: the table is never above the route by more than 5 %', () => {
    for (const { id, grade, size, over } of rows.filter((r) => GROUPED.includes(r.id)))
      expect(over('bending'), `${id} ${grade} ${size}`).toBeGreaterThan(0.95)
  })
  it('stiffness: within a quarter, but for the maple group', () => {
    expect(new Set(parts('elasticity', 0.75, 1.25).map((row) => row.split(' ')[0]))).toEqual(new Set(['sugar-maple']))
  })
  it('shear: within a sixth, but for hardwoods that are held to their group', () => {
    const misfits = new Set(parts('shear', 5 / 6, 7 / 6).map((row) => row.split(' ')[0]))
    expect(misfits).toEqual(new Set(['american-beech', 'hickory', 'red-oak', 'sugar-maple']))
  })
  it('compression along the grain: the best two grades within a quarter, but for grouped woods and longleaf', () => {
    const misfits = new Set(
      parts('compression', 0.75, 1.25)
        .filter((row) => !row.includes('No.2'))
        .map((row) => row.split(' ')[0])
    )
    // Longleaf is sold as southern pine, whose row is that of the whole group. Red oak No.1 beams lie just outside.
    expect(misfits).toEqual(new Set(['hickory', 'longleaf-pine', 'red-oak', 'sugar-maple']))
  })
  it('tension: the best grade from two thirds up; the table allows more than 55 % of bending, which the route takes', () => {
    for (const { id, size, over } of rows.filter((r) => r.grade === 'Select Structural'))
      expect(over('tension'), `${id} ${size}`).toBeGreaterThan(2 / 3)
  })
  it('crushing across the grain: the route is always the lower, since the table goes by 0.04 in of dent and not by the limit of proportion', () => {
    for (const { id, over } of rows) expect(over('compressionPerp'), id).toBeLessThan(1)
  })
})
