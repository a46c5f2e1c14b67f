/** What may be brought to the page that compares: a link, a code, a message with a link, a file; and what is refused. */
import { describe, expect, it } from 'vitest'
import { encodeBrief, encodeInvite, encodeLink } from '../../src/shop/link'
import { readBrought } from '../../src/ui/compare/read'
import { reference, sheet } from '../reference'

const answers = { project: 'porch', span: 3657.6 }
const code = encodeLink(answers)

describe('read', () => {
  it.each([
    ['a link', `https://example.org/brief/#b=${code}`],
    ['a link of the questionnaire', `https://example.org/start/#a=${code}`],
    ['a fragment', `#b=${code}`],
    ['a bare code', `  ${code}\n`],
    ['a message', `Hello,\nhere it is: https://example.org/brief/#b=${code}\nThanks`],
    ['a link in brackets', `<https://example.org/brief/#b=${code}>`],
    ['a downloaded brief', JSON.stringify({ version: 1, title: {}, answers })]
  ])('%s', (_, text) => {
    expect(readBrought(text)).toEqual({ answers, left: [] })
  })
  it.each([
    ['a link', `https://example.org/brief/#b=${encodeBrief(answers, sheet)}`],
    ['a downloaded brief', JSON.stringify({ version: 1, answers, sheet })]
  ])('%s with its shop’s sheet', (_, text) => {
    expect(readBrought(text)).toEqual({ answers, sheet, left: [] })
  })
  it('a wood that there are no numbers on is left out of its sheet, and said', () => {
    const [first] = sheet.woods
    const more = { ...sheet, woods: [...sheet.woods, { ...first, species: 'moon-oak', perBoardFoot: 1 }] }
    const read = readBrought(`#b=${encodeBrief(answers, more)}`, { woods: reference.woods })
    expect(read).toEqual({ answers, sheet, left: [expect.stringMatching(/no numbers on moon-oak/)] })
  })
  it('says which answers were left out', () => {
    const read = readBrought(JSON.stringify({ version: 1, answers: { ...answers, knots: 'purple' } }))
    expect(read).toMatchObject({ answers, left: [expect.stringMatching(/no such choice/)] })
  })
  it.each([
    ['nothing', '', /Paste a link/],
    ['prose', 'see you on Monday', /no link/],
    ['a link cut short', `https://example.org/brief/#b=${code.slice(0, -9)}`, /whole|changed or cut/],
    ['a link of another version', '#b=9.abc.def', /does not know/],
    ['half a file', '{"version":1,"answers":{', /not JSON/],
    ['a sheet that is none', JSON.stringify({ version: 1, answers, sheet: { name: 'x' } }), /sheet could not be read/],
    ['an invite', `#i=${encodeInvite({ sheet, answers, locked: [] })}`, /still to be answered/],
    ['a file of another version', '{"version":7,"answers":{}}', /does not know/],
    ['another file', '{"name":"x"}', /no answers/],
    ['a list', '[1,2]', /no answers/],
    ['far too long a link', `2.${'x'.repeat(100_000)}.a`, /far longer/],
    ['far too large a file', `{${'x'.repeat(5_000_001)}`, /far larger/]
  ])('refuses %s, in words', (_, text, says) => {
    const read = readBrought(text)
    expect('says' in read && read.says).toMatch(says)
  })
})
