/** The language of notes: what it says, and that what it does not know is refused rather than printed. */
import { describe, expect, it } from 'vitest'
import { bareNumbers } from '../../src/notes/check'
import { explained } from '../../src/notes/explained'
import { readGlossary } from '../../src/notes/glossary'
import { callOf, inlinesOf, parseNote } from '../../src/notes/parse'

const note = (body: string) => parseNote(`---\ntitle: A\nsummary: b: c\n---\n\n${body}`)

describe('the language of notes', () => {
  it('reads front matter, headings, paragraphs, warnings and lists', () => {
    const { front, blocks } = note('## One\n\nTwo\nlines.\n\n> Mind\n> this.\n\n- a\n  more\n- b\n\n1. x\n2. y')
    expect(front).toEqual({ title: 'A', summary: 'b: c' })
    expect(blocks).toEqual([
      { kind: 'heading', text: 'One' },
      { kind: 'paragraph', of: [{ kind: 'text', text: 'Two lines.' }] },
      { kind: 'warning', of: [{ kind: 'text', text: 'Mind this.' }] },
      {
        kind: 'list',
        ordered: false,
        items: [[{ kind: 'text', text: 'a more' }], [{ kind: 'text', text: 'b' }]]
      },
      { kind: 'list', ordered: true, items: [[{ kind: 'text', text: 'x' }], [{ kind: 'text', text: 'y' }]] }
    ])
  })
  it('reads a picture and its caption', () => {
    expect(note('::clock wood=white-oak\nSaid\nof it.').blocks).toEqual([
      {
        kind: 'picture',
        call: { name: 'clock', args: { wood: 'white-oak' } },
        caption: [{ kind: 'text', text: 'Said of it.' }]
      }
    ])
  })
  it('reads calls, sources, links and strong words in a line', () => {
    expect(inlinesOf('A {{in 8}} [@nds 3.4 | seen] [b](/start/) **c**.')).toEqual([
      { kind: 'text', text: 'A ' },
      { kind: 'call', call: { name: 'in', args: { of: '8' } } },
      { kind: 'text', text: ' ' },
      { kind: 'cite', key: 'nds', where: '3.4', mark: 'seen' },
      { kind: 'text', text: ' ' },
      { kind: 'link', text: 'b', to: '/start/' },
      { kind: 'text', text: ' ' },
      { kind: 'strong', text: 'c' },
      { kind: 'text', text: '.' }
    ])
  })
  it('reads arguments, quoted and bare', () => {
    expect(callOf('fact 3 unit=in where="p. 13-3"')).toEqual({
      name: 'fact',
      args: { of: '3', unit: 'in', where: 'p. 13-3' }
    })
    expect(() => callOf('fact a=1 a=2')).toThrow(/twice/)
    expect(() => callOf('=x')).toThrow()
  })
  it.each(['a {{b', 'a *b*', 'a [b]', '# Big', '`code`', '| a | b |', 'a {b}'])('refuses %s', (text) => {
    expect(() => note(text)).toThrow(/not in the language/)
  })
  it('refuses a file without front matter', () => {
    expect(() => parseNote('Hello')).toThrow(/front matter/)
  })
})

describe('numbers by hand', () => {
  it.each([
    'it opens 8 mm',
    'half of 30',
    '½ in',
    'three inches',
    'two or three years',
    'eight-inch',
    'ten to twelve feet'
  ])('finds one in "%s"', (text) => expect(bareNumbers(text)).not.toEqual([]))
  it.each(['No. 1 and No. 2', 'read in 1994', 'two posts', 'a year or two', 'one in twelve', 'a week at a time'])(
    'lets "%s" pass',
    (text) => expect(bareNumbers(text)).toEqual([])
  )
})

describe('words of the glossary', () => {
  const glossary = readGlossary({
    heart: { term: 'Heart', means: 'a' },
    'boxed-heart': { term: 'Boxed heart', variants: ['boxed'], means: 'b', see: ['heart'] }
  })
  const said = (text: string, told = new Set<string>()) =>
    explained(text, glossary, told).map((p) => (typeof p === 'string' ? p : [p.id, p.said]))
  it('takes the longest form, keeps the case of the text, and explains each once', () => {
    expect(said('A Boxed Heart, a heart, a boxed one.')).toEqual([
      'A ',
      ['boxed-heart', 'Boxed Heart'],
      ', a ',
      ['heart', 'heart'],
      ', a boxed one.'
    ])
  })
  it('takes whole words only', () => {
    expect(said('heartwood, by-heart, hearts')).toEqual(['heartwood, by-heart, hearts'])
  })
  it('remembers what was told further up', () => {
    expect(said('heart', new Set(['heart']))).toEqual(['heart'])
  })
  it('refuses a reference to nothing and a word with two entries', () => {
    expect(() => readGlossary({ a: { term: 'A', means: 'x', see: ['b'] } })).toThrow(/refers/)
    expect(() => readGlossary({ a: { term: 'A', means: 'x' }, b: { term: 'a', means: 'y' } })).toThrow(/stands at/)
  })
})
