/**
 * Spelling of all prose that is published: field notes, woods, glossary, handouts, example projects, words of formulas. Checked
 * against an English dictionary; the trade's own words and proper names stand in words.txt, one a line.
 */
import { readdirSync, readFileSync } from 'node:fs'
import nspell from 'nspell'
import { expect, it } from 'vitest'

const at = (path: string) => new URL(`../../${path}`, import.meta.url)
const read = (path: string) => readFileSync(at(path), 'utf8')
const dictionary = 'node_modules/dictionary-en-gb/index'
const spell = nspell(read(`${dictionary}.aff`), read(`${dictionary}.dic`))
const own = read('tests/prose/words.txt').split('\n').filter(Boolean)

/** Front matter is kept where it is prose; figures, citations, pictures and addresses are not words. */
const prose = (text: string) =>
  text
    .replace(/^---[\s\S]*?---/, (head) =>
      head
        .split('\n')
        .filter((line) => /^(title|summary|for):/.test(line))
        .join('\n')
    )
    .replace(/\{\{[^}]*\}\}|\[@[^\]]*\]|^::.*$|\]\([^)]*\)/gm, ' ')
    // Ids stand one a line or after `with=`.
    .replace(/^## confused .*$/gm, ' ')

/** Keys of JSON whose values are ids or symbols. */
const SILENT = new Set(['source', 'where', 'mark', 'id', 'unit', 'kind', 'to', 'places', 'answers', 'see'])
function saidIn(value: unknown, key = ''): string[] {
  if (typeof value === 'string') return SILENT.has(key) ? [] : [value]
  if (Array.isArray(value)) return value.flatMap((each) => saidIn(each, key))
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([k, each]) => (SILENT.has(k) ? [] : saidIn(each, k)))
}

const markdown = ['notes', 'wood-pages'].flatMap((folder) =>
  readdirSync(at(`content/${folder}`)).map((file) => `content/${folder}/${file}`)
)
const json = [
  'content/glossary.json',
  ...['handouts', 'scenarios'].flatMap((folder) =>
    readdirSync(at(`content/${folder}`)).map((f) => `content/${folder}/${f}`)
  )
]
const texts: readonly (readonly [string, string])[] = [
  ...markdown.map((file) => [file, prose(read(file))] as const),
  ...json.map((file) => [file, saidIn(JSON.parse(read(file))).join('\n')] as const),
  [
    'content/formulas.json',
    // Their texts are letters and signs.
    Object.values(JSON.parse(read('content/formulas.json')) as Record<string, { name: string; valid?: string }>)
      .map(({ name, valid = '' }) => `${name}\n${valid}`)
      .join('\n')
  ],
  ['README.md', read('README.md').replace(/`[^`]*`|^ {4}.*$|\]\([^)]*\)/gm, ' ')]
]

const wordsOf = (text: string) =>
  [...text.matchAll(/\p{L}[\p{L}’']*/gu)]
    .map(([word]) => word.replaceAll('’', "'").replace(/'s?$/, ''))
    .filter((word) => word.length > 2)
const known = new Set(own.map((word) => word.toLowerCase()))
const strange = (word: string) => !spell.correct(word) && !spell.correct(word.toLowerCase())

it('no word is misspelt', () => {
  const wrong = texts.flatMap(([file, text]) =>
    wordsOf(text)
      .filter((word) => strange(word) && !known.has(word.toLowerCase()))
      .map((word) => `${word} (${file})`)
  )
  expect([...new Set(wrong)]).toEqual([])
})

it('every word of our own is used, once in the list, and not in the dictionary', () => {
  const used = new Set(texts.flatMap(([, text]) => wordsOf(text)).map((word) => word.toLowerCase()))
  expect(own.filter((word) => !used.has(word.toLowerCase()))).toEqual([])
  expect(new Set(own).size).toBe(own.length)
  expect(own.filter((word) => !strange(word))).toEqual([])
})
