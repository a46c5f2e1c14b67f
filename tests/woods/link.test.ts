/** The door of a comparison: what a link names is read, what it cannot name is told, and nothing throws. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { linkOf, MOST, readLink } from '../../src/woods-pages/link'
import { reference } from '../reference'

const ids = [...reference.woods.keys()]
const known = new Set(ids)

describe('the link of a comparison', () => {
  it('reads back what it wrote', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.constantFrom(...ids), { minLength: 2, maxLength: MOST }), (woods) => {
        expect(readLink(linkOf(woods), known)).toEqual({ woods, unknown: [], tooMany: false })
      })
    )
  })
  it('names what it does not know, and keeps the rest', () => {
    expect(readLink('w=white-oak,ebony,Redwood', known)).toEqual({
      woods: ['white-oak', 'redwood'],
      unknown: ['ebony'],
      tooMany: false
    })
  })
  it('takes each wood once, and no more than fit', () => {
    expect(readLink(`w=${ids[0]},${ids[0]}`, known)?.woods).toEqual([ids[0]])
    const all = readLink(linkOf(ids), known)
    expect(all?.woods).toEqual(ids.slice(0, MOST))
    expect(all?.tooMany).toBe(true)
  })
  it('asks for nothing where there is no w', () => {
    expect(readLink('', known)).toBeNull()
    expect(readLink('main', known)).toBeNull()
  })
  it('takes any text without throwing, and says back only short pieces of it', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 3000 }), (text) => {
        const read = readLink(`w=${text}`, known)
        expect(read?.woods.length ?? 0).toBeLessThanOrEqual(MOST)
        for (const id of read?.unknown ?? []) expect(id.length).toBeLessThanOrEqual(40)
      })
    )
  })
})
