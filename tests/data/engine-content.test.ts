/** The smaller content files: every source resolves, every limit and formula that the engine asks for is there and is asked for. */
import { readdirSync, readFileSync } from 'node:fs'
import * as v from 'valibot'
import { describe, expect, it } from 'vitest'
import { content, sampleShop } from '../../src/data/content'
import { buildReference } from '../../src/data/reference'
import { shopSheetSchema } from '../../src/data/shop-schema'
import { reference, sheet } from '../reference'

const code = ['wood', 'frame', 'choice', 'shop', 'data', 'woods-pages']
  .flatMap((room) =>
    readdirSync(`src/${room}`, { recursive: true, encoding: 'utf8' })
      .filter((f) => f.endsWith('.ts'))
      .map((f) => readFileSync(`src/${room}/${f}`, 'utf8'))
  )
  .join('\n')

/** Source keys anywhere in a piece of content. */
function keysIn(value: unknown): string[] {
  if (value === null || typeof value !== 'object') return []
  const own = 'source' in value && typeof value.source === 'string' ? [value.source] : []
  return [...own, ...Object.values(value).flatMap(keysIn)]
}

describe('content of the engine', () => {
  it('every source key resolves', () => {
    const known = new Set(Object.keys(reference.sources))
    for (const key of keysIn(content)) expect(known.has(key), key).toBe(true)
  })
  it('every limit is used, and every limit used is there', () => {
    for (const id of reference.limits.keys()) {
      const used = code.includes(`'${id}'`) || id.startsWith('durability-loss-')
      expect(used, `limit ${id} is used nowhere`).toBe(true)
    }
    for (const m of code.matchAll(/limit\((?:c\.)?reference, '([a-z0-9-]+)'\)/g))
      expect(reference.limits.has(m[1] ?? ''), m[1]).toBe(true)
    for (const useClass of ['2', '3.1', '3.2', '4']) {
      for (const hazard of ['low', 'moderate', 'high'])
        expect(reference.limits.has(`durability-loss-${useClass}-${hazard}`)).toBe(true)
    }
  })
  it('every formula used is there', () => {
    for (const m of code.matchAll(/computed\((?:c\.)?reference, '([a-z0-9-]+)'/g))
      expect(Object.keys(reference.formulas), m[1]).toContain(m[1])
  })
  it('plausible places are real places', () => {
    for (const { value } of reference.unsure['place']?.values ?? [])
      expect(reference.places.has(String(value)), String(value)).toBe(true)
  })
  it('the sample shop sheet holds, carries only woods that we know, and says that it is invented', () => {
    expect(sheet.placeholder).toBe(true)
    expect(sheet.name).toMatch(/invented/)
    for (const w of sheet.woods) expect(reference.woods.has(w.species), w.species).toBe(true)
    expect(new Set(sheet.woods.map((w) => w.species)).size).toBe(sheet.woods.length)
  })
  it('schemas refuse what they should', () => {
    const refused = (change: object) =>
      expect(v.safeParse(shopSheetSchema, { ...(sampleShop as object), ...change }).success).toBe(false)
    refused({ extra: 1 })
    refused({ woods: [] })
    refused({ joineryWeeks: -1 })
    refused({ sections: [[0, 8]] })
    refused({ name: '' })
    expect(() =>
      buildReference({
        ...content,
        limits: { broken: { about: 'x', value: Number.NaN, unit: 'x', source: 'nds', mark: 'seen' } }
      })
    ).toThrow()
    expect(() => buildReference({ ...content, loads: {} })).toThrow()
  })
})
