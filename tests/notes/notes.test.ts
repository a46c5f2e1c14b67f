/** The notes as published: long enough, drawn, sourced, linked; and their words in order. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { glossary, noteLibrary, notes } from '../../src/notes/all'
import { bareNumbers } from '../../src/notes/check'
import { GROUPS } from '../../src/notes/note'
import { PICTURE_NAMES, pictureOf } from '../../src/ui/notes/pictures'

const folder = join(import.meta.dirname, '../../content/notes')
const raw = (id: string) => readFileSync(join(folder, `${id}.md`), 'utf8').replace(/^---\n[\s\S]*?\n---\n/, '')
/** A note as it is read, figures left out. */
const prose = (id: string) =>
  raw(id)
    .replace(/^::.*$/gm, '')
    .replace(/\s?\[@[^\]]*\]/g, '')
    .replace(/\{\{word (\S+?)\}\}/g, '$1')
    .replace(/\{\{[^}]*\}\}/g, 'N')
    .replace(/\[([^\]]+)\]\([^)]+\)/g, '$1')
    .replace(/\*\*/g, '')
const paragraphs = (id: string) => prose(id).split(/\n{2,}/)

describe('the notes', () => {
  it('are many, of every group, in one order without ties', () => {
    expect(notes.length).toBeGreaterThanOrEqual(26)
    for (const group of Object.keys(GROUPS))
      expect(
        notes.some((n) => n.group === group),
        group
      ).toBe(true)
    expect(new Set(notes.map((n) => `${n.group} ${n.order}`)).size).toBe(notes.length)
    expect(new Set(notes.map((n) => n.title)).size).toBe(notes.length)
  })

  describe.each(notes.map((n) => [n.id, n] as const))('%s', (id, note) => {
    it('has 400 to 1200 words, and a computed picture, table or several figures', () => {
      expect(note.words).toBeGreaterThanOrEqual(400)
      expect(note.words).toBeLessThanOrEqual(1200)
      expect(note.blocks.some((b) => b.kind === 'picture' || b.kind === 'table')).toBe(true)
    })
    it('draws its pictures, each with a caption', () => {
      for (const block of note.blocks) {
        if (block.kind === 'picture') {
          expect(PICTURE_NAMES).toContain(block.call.name)
          expect(pictureOf(block.call, noteLibrary)).toBeTruthy()
        }
        if (block.kind === 'picture' || block.kind === 'table') expect(block.caption.length).toBeGreaterThan(0)
      }
    })
    it('names in front every source that its statements rest on, and leads on', () => {
      const cited = new Set([...raw(id).matchAll(/\[@([a-z0-9.-]+)/g)].map((m) => m[1] ?? ''))
      for (const key of cited) expect(note.sources, `${id} cites ${key}`).toContain(key)
      expect(note.related.length).toBeGreaterThanOrEqual(2)
      expect(note.related).not.toContain(id)
    })
    it('is set in order: no straight quotes, doubled words or spaces, no endless sentence', () => {
      for (const text of paragraphs(id)) {
        expect(/["'“][^”]*["']|(?<!=)"|'/.exec(text)?.[0], text).toBeUndefined()
        expect(/\b([a-z]+) \1\b/i.exec(text)?.[0], text).toBeUndefined()
        expect(/\S {2,}\S/.exec(text.replace(/\n\s*/g, ' '))?.[0], text).toBeUndefined()
        expect(/ [,.;:!?]|\.\.|—/.exec(text)?.[0], text).toBeUndefined()
        for (const sentence of text.split(/(?<=[.?!])\s+|\n(?=- |\d+\. )/)) {
          expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(60)
        }
      }
    })
    it('spells as the rest of the site does', () => {
      const american = /\b(color|gray|mold|fiber|center|plow|neighbor|favor|honor)\w*/i
      expect(american.exec(prose(id))?.[0]).toBeUndefined()
    })
  })
})

describe('the glossary', () => {
  const forms = (id: string) => [glossary[id]?.term ?? '', ...(glossary[id]?.variants ?? [])]
  it('says what words mean in a sentence or two, without numbers', () => {
    for (const [id, { means }] of Object.entries(glossary)) {
      expect(bareNumbers(means), id).toEqual([])
      expect(/["']/.test(means), id).toBe(false)
      expect(means.split(/(?<=[.])\s/).length, id).toBeLessThanOrEqual(3)
      expect(means, id).toMatch(/\.$/)
    }
  })
  it('has every word of the trade that the notes use', () => {
    const trade =
      'boxed heart, free of heart, pith, check, shake, split, wane, slope of grain, sapwood, heartwood, housing, shoulder, tenon, mortise, peg, draw-bored, relish, purlin, rafter, tie, king-post, girt, plate, brace, strut, bent, scarf, truss, board foot, moisture content, equilibrium, fibre saturation, shrinkage, twist, cupping, crown, flat-sawn, quarter-sawn, end grain, use class, durability class, dead load, live load, design value, grade, pitch, tannin, kiln, sticker, arris, hewn, case-hardening, juvenile wood, compression wood'
    const known = new Set(
      Object.keys(glossary)
        .flatMap(forms)
        .map((w) => w.toLowerCase())
    )
    const all = notes
      .map((n) => prose(n.id))
      .join(' ')
      .replace(/\s+/g, ' ')
      .toLowerCase()
    for (const word of trade.split(', ')) {
      expect(all.includes(word), `no note says ${word}`).toBe(true)
      expect(known.has(word), `${word} has no entry`).toBe(true)
    }
  })
})
