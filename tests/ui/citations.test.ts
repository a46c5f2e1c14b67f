import { existsSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type CitedBy, checks, citations, keysIn, keysOfNote } from '../../src/ui/sources/citations'
import { reference } from '../reference'

const known = new Set(Object.keys(reference.sources))
const all = citations(known)
/** Cited by the field notes alone. */
const OF_NOTES = ['schmidt-mackay-1997', 'miller-schmidt-2004', 'usgs-splib7', 'avramidis-liu-1994']
const haveNotes = all.some(({ by }) => by === 'note')

describe('the bibliography', () => {
  it('is cited whole: no source stands there that nothing rests on', () => {
    const cited = new Set(all.map(({ key }) => key))
    expect([...known].filter((key) => !cited.has(key))).toEqual(haveNotes ? [] : OF_NOTES)
  })

  it('has every key that content and notes cite', () => {
    expect(all.filter(({ key }) => !known.has(key))).toEqual([])
  })

  it.each<CitedBy>(['wood', 'formula', 'limit', 'table', 'page', 'check', 'code'])('hears of it from each %s', (by) => {
    expect(all.filter((one) => one.by === by).length).toBeGreaterThan(3)
  })

  it('of a check names a test that is there', () => {
    for (const { test } of checks)
      expect(existsSync(new URL(`../published/${test}.test.ts`, import.meta.url)), test).toBe(true)
  })

  it('names each citing wood, formula or page once a source', () => {
    const names = all.map((one) => `${one.key} ${one.by} ${one.name}`)
    expect(new Set(names).size).toBe(names.length)
    expect(all.filter((one) => one.by === 'wood' && one.key === 'wood-handbook-2010').length).toBeGreaterThan(20)
  })
})

describe('keys', () => {
  it('are found at any depth, singly and in lists', () => {
    expect(keysIn({ a: { source: 'x', b: [{ sources: ['y', 'z'] }] }, sources: [{ source: 'w' }] })).toEqual([
      'x',
      'y',
      'z',
      'w'
    ])
  })
  it('of a note stand in its head and in its text', () => {
    const note =
      '---\ntitle: A\nsources: nds, wood-handbook-2010\n---\nText [@astm-d245 sec. 4 | seen], {{fact 1 src=ibc}}.'
    expect(keysOfNote(note)).toEqual(['nds', 'wood-handbook-2010', 'astm-d245', 'ibc'])
  })
})
