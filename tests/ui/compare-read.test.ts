/** What may be brought to the page that compares: a link, a code, a message with a link, a file; and what is refused. */
import { describe, expect, it } from 'vitest'
import { encodeLink } from '../../src/shop/link'
import { readBrought } from '../../src/ui/compare/read'

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
    ['a downloaded brief', JSON.stringify({ version: 1, title: {}, answers })],
    ['bare answers', JSON.stringify(answers)]
  ])('%s', async (_, text) => {
    expect(await readBrought(text)).toEqual({ answers, left: [] })
  })
  it('says which answers were left out', async () => {
    const read = await readBrought(JSON.stringify({ version: 1, answers: { ...answers, knots: 'purple' } }))
    expect(read).toMatchObject({ answers, left: [expect.stringMatching(/no such choice/)] })
  })
  it.each([
    ['nothing', '', /Paste a link/],
    ['prose', 'see you on Monday', /no link/],
    ['a link cut short', `https://example.org/brief/#b=${code.slice(0, -9)}`, /whole|changed or cut/],
    ['a link of another version', '#b=9.abc.def', /does not know/],
    ['half a file', '{"version":1,"answers":{', /not whole/],
    ['a file of another version', '{"version":7,"answers":{}}', /does not know/],
    ['another file', '{"name":"x"}', /no answers/],
    ['a list', '[1,2]', /no link/],
    ['far too much', 'x'.repeat(12_000_001), /far longer/]
  ])('refuses %s, in words', async (_, text, says) => {
    const read = await readBrought(text)
    expect('says' in read && read.says).toMatch(says)
  })
})
