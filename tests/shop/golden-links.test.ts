/** Links that were made once must open for ever, to the same. Add to golden-links.json; never change or remove a line. */
import { describe, expect, it } from 'vitest'
import * as tables from '../../src/shop/invite/tables'
import { decodeLink, encodeBrief, encodeInvite, encodeLink } from '../../src/shop/link'
import { reference } from '../reference'
import golden from './golden-links.json'

const known = { places: reference.places, woods: reference.woods }

/** Every released version and kind; a golden that is taken away fails here. */
const RELEASED = [
  '1 answers, few',
  '1 answers, full',
  '2 answers, full',
  '2 invite, sample',
  '2 invite, own sheet',
  '2 brief, own sheet',
  '2 brief, of an invite'
]

describe('golden links', () => {
  it('stand for every version and kind that was released', () => {
    const names = golden.map((g) => g.name)
    expect(names).toEqual(expect.arrayContaining(RELEASED))
    expect(new Set(names).size).toBe(names.length)
  })

  it.each(golden)('$name opens to what went in', ({ link, gives }) => {
    const read = decodeLink(link, known)
    expect(read).toEqual({ ok: true, ...gives, problems: [] })
  })

  it.each(golden)('$name: what it gives goes through today’s encoder unharmed', ({ link, gives }) => {
    const read = decodeLink(link, known)
    if (!read.ok) throw new Error(read.says)
    const { sheet, answers, locked, given } = read
    const again =
      sheet === undefined
        ? encodeLink(answers)
        : locked === undefined
          ? encodeBrief(answers, sheet, given)
          : encodeInvite({ sheet, answers, locked })
    expect(decodeLink(again, known)).toEqual({ ok: true, ...gives, problems: [] })
    // Not longer than it was: a dictionary that no longer fits shows here.
    expect(again.length).toBeLessThanOrEqual(link.length)
  })

  it('the frozen tables of version 2 are as they were', () => {
    let hash = 0x811c9dc5
    for (const c of JSON.stringify(tables)) hash = Math.imul(hash ^ c.charCodeAt(0), 0x01000193)
    expect((hash >>> 0).toString(36)).toBe('1qs340y')
  })
})
