/** Words of the trade, marked in a page as it was built. */
import { describe, expect, it } from 'vitest'
import { QUESTIONS } from '../../src/choice/questions'
import { explained } from '../../src/notes/explained'
import { readGlossary } from '../../src/notes/glossary'
import { glossary as ours } from '../../src/notes/words'
import { markWords } from '../../src/ui/words/mark'

const glossary = readGlossary({
  check: { term: 'Check', variants: ['checks'], not: ['check the'], means: 'a' },
  peg: { term: 'Peg', variants: ['pegs'], means: 'b' },
  'boxed-heart': { term: 'Boxed heart', means: 'c' }
})
const drawn = {
  button: (id: string, said: string) => `<${id}>${said}</>`,
  link: (id: string, said: string) => `<to ${id}>${said}</>`,
  meanings: (ids: readonly string[]) => `(${ids.join()})`
}
const mark = (main: string) => {
  const page = (inside: string) =>
    `<!doctype html><html><body><p>a peg</p><main id="main">${inside}</main></body></html>`
  const [before, after] = page('|').split('|') as [string, string]
  const out = markWords(page(main), glossary, drawn)
  expect(out.startsWith(before) && out.endsWith(after)).toBe(true)
  return out.slice(before.length, -after.length)
}

describe('marking a page', () => {
  it('marks the first of each word in running text, and sets the meanings last', () => {
    expect(mark('<p>A peg and pegs.</p><ul><li>Boxed\n heart <b>checks</b></li></ul>')).toBe(
      '<p>A <peg>peg</> and pegs.</p><ul><li><boxed-heart>Boxed\n heart</> <b><check>checks</></b></li></ul>(boxed-heart,check,peg)'
    )
  })
  it('holds the punctuation behind a word to it', () => {
    expect(mark('<p>“A peg,” a peg’s end</p>')).toBe(
      '<p>“A <span class="held"><peg>peg</>,”</span> a peg’s end</p>(peg)'
    )
  })
  it('changes nothing else, to the letter', () => {
    const odd = "<P CLASS=a>x &amp; y<br>&#39;z&nbsp;<td data-x='1'>peg</p>"
    expect(mark(odd)).toBe(`${odd.replace('peg', '<peg>peg</>')}(peg)`)
    expect(mark('<p>nothing here</p>')).toBe('<p>nothing here</p>')
  })
  it.each([
    '<p><a href="/">peg</a></p>',
    '<p><button>peg</button></p>',
    '<li><label>peg</label></li>',
    '<li><h3>peg</h3></li>',
    '<p><svg><text>peg</text></svg></p>',
    '<ul><li><details><summary>peg</summary></details></li></ul>',
    '<p><span popover="auto">peg</span></p>',
    '<p aria-hidden="true">peg</p>',
    '<p><span data-plain>peg</span></p>',
    '<p class="crumb no-print">peg</p>',
    '<table><tr><th>peg</th></tr></table>',
    '<nav><p>peg</p></nav>',
    '<noscript><p>peg</p></noscript>',
    '<astro-island><p>peg</p></astro-island>',
    '<div>peg</div>'
  ])('leaves %s alone', (html) => expect(mark(html)).toBe(html))
  it('lists the words of a part that a script takes over behind it, as links', () => {
    expect(mark('<div data-words-below><h2>Check</h2><p>pegs</p><svg>boxed heart</svg></div><p>A peg.</p>')).toBe(
      '<div data-words-below><h2>Check</h2><p>pegs</p><svg>boxed heart</svg></div><p class="note no-print">Words here: <to check>check</></p><p>A <span class="held"><to peg>peg</>.</span></p>'
    )
  })
  it('leaves a word alone in a turn of phrase that means something else', () => {
    expect(mark('<p>Check the link, then the check.</p>')).toBe(
      '<p>Check the link, then the <span class="held"><check>check</>.</span></p>(check)'
    )
  })
})

describe('the questions', () => {
  const said = (text: string) =>
    explained(text, ours, new Set()).flatMap((piece) => (typeof piece === 'string' ? [] : [piece.id]))
  const labels = QUESTIONS.flatMap((q) => [
    q.title,
    ...('choices' in q ? q.choices.flatMap(({ label, help = '' }) => [label, help]) : [])
  ])
  it('say no word of the trade that the glossary lacks', () => {
    const trade =
      'truss, rafter, tie, king post, queen post, strut, ridge, purlin, girt, summer beam, post, span, stick, knot, check, joint, pitch, raising, eave, end grain, stand-off'
    const all = labels.join(' | ').toLowerCase()
    for (const word of trade.split(', ')) {
      expect(all, `no question says ${word}`).toContain(word)
      expect(said(word), word).toHaveLength(1)
    }
  })
  it('are not taken at their word where they mean something else', () => {
    for (const text of ['And about the long splits that drying opens?', 'How steep is the roof?'])
      expect(said(text)).toEqual([])
  })
})
