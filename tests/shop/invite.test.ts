/** Invites and brief files at the door: from a saved state, a file, anywhere. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeBrief } from '../../src/choice/brief'
import { readInvite } from '../../src/shop/invite/door'
import { briefFile, readBriefFile } from '../../src/shop/invite/file'
import { reference, sheet } from '../reference'

const known = { places: reference.places, woods: reference.woods }

describe('a kept invite', () => {
  it('comes back as it was', () => {
    const invite = { sheet, answers: { span: 6096, place: 'seattle-wa' }, locked: ['span'] }
    expect(readInvite(JSON.parse(JSON.stringify(invite)), known)).toEqual({ ok: true, invite, problems: [] })
  })
  it('from anything: never a throw', () => {
    fc.assert(
      fc.property(fc.anything(), fc.anything(), fc.anything(), (a, b, c) => {
        for (const input of [a, { sheet, answers: b, locked: c }, { sheet: a, answers: b }]) {
          const read = readInvite(input, known)
          if (!read.ok) expect(read.says.length).toBeGreaterThan(10)
        }
      }),
      { numRuns: 3000 }
    )
  })
  it('says which part of the sheet is at fault', () => {
    const read = readInvite({ sheet: { ...sheet, wastePercent: -3 } }, known)
    expect(!read.ok && read.says).toContain('wastePercent')
  })
})

describe('a brief file', () => {
  const own = { ...sheet, name: 'Own (invented)', woods: sheet.woods.slice(0, 5) }
  const answers = { project: 'pavilion', exposure: 'weather', place: 'seattle-wa', span: 4876.8 }
  const brief = makeBrief(answers, own, reference)

  it('gives the same brief when it is opened again', () => {
    const read = readBriefFile(briefFile(brief, own), known)
    expect(read).toEqual({ ok: true, answers: brief.answers, sheet: own, problems: [] })
    if (read.ok && read.sheet) expect(makeBrief(read.answers, read.sheet, reference)).toEqual(brief)
  })
  it('of before sheets travelled in it opens by its answers', () => {
    expect(readBriefFile(JSON.stringify(brief), known)).toEqual({ ok: true, answers: brief.answers, problems: [] })
  })
  it.each([
    ['no JSON', 'BM\u0000\u0001'],
    ['no object', '[1, 2]'],
    ['nothing', ''],
    ['a number', '7'],
    ['no answers', '{"answers":null}'],
    ['a bad sheet', JSON.stringify({ answers: {}, sheet: { name: 'x' } })],
    ['too large', ' '.repeat(5_000_001)]
  ])('%s is refused in words', (_, text) => {
    const read = readBriefFile(text, known)
    expect(read.ok).toBe(false)
    expect(!read.ok && read.says.length).toBeGreaterThan(20)
  })
  it('answers that do not hold are said and left out', () => {
    const read = readBriefFile(JSON.stringify({ answers: { span: -1, finish: 'grey' } }), known)
    expect(read).toMatchObject({ ok: true, answers: { finish: 'grey' } })
    expect(read.ok && read.problems.length).toBe(1)
  })
})
