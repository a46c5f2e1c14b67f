/** The way through the house runs one way: content -> data -> wood, frame -> choice -> ui. Arrows that run back up fail here. */
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join, relative, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { reference } from './reference'

const src = resolve(import.meta.dirname, '../src')

function filesIn(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name)
    return statSync(path).isDirectory() ? filesIn(path) : /\.(ts|tsx|astro)$/.test(name) ? [path] : []
  })
}

const files = filesIn(src).map((path) => ({ path: relative(src, path), text: readFileSync(path, 'utf8') }))
const roomOf = (path: string): string => path.split('/')[0] ?? ''

/** Relative imports of a file, as paths from src/. */
function importsOf(file: { path: string; text: string }): string[] {
  const found = [...file.text.matchAll(/(?:from|import)\s*\(?\s*['"](\.[^'"]+)['"]/g)].map((m) => m[1] ?? '')
  return found.map((target) => relative(src, resolve(src, file.path, '..', target)))
}

/** Which rooms a room may import from, besides itself. */
const MAY: Readonly<Record<string, readonly string[]>> = {
  data: [],
  wood: ['data'],
  frame: ['data', 'wood'],
  cost: ['data'],
  choice: ['data', 'wood', 'frame', 'cost'],
  shop: ['data', 'choice'],
  handouts: ['data', 'wood', 'choice'],
  notes: ['data', 'wood', 'frame', 'choice', 'shop'],
  stores: ['data', 'choice', 'shop'],
  ui: ['data', 'wood', 'frame', 'choice', 'shop', 'handouts', 'notes', 'stores', 'styles'],
  'woods-pages': ['data', 'wood', 'frame', 'choice', 'shop', 'notes', 'ui'],
  layouts: ['ui', 'styles', 'data', 'handouts'],
  pages: [
    'data',
    'wood',
    'frame',
    'choice',
    'shop',
    'handouts',
    'notes',
    'stores',
    'ui',
    'woods-pages',
    'layouts',
    'styles'
  ]
}
const ENGINE = ['wood', 'frame', 'cost', 'choice']

describe('import direction', () => {
  it.each(Object.keys(MAY))('%s imports only from below', (room) => {
    for (const file of files.filter((f) => roomOf(f.path) === room)) {
      for (const target of importsOf(file)) {
        const to = roomOf(target)
        if (to === room || to.startsWith('..')) continue
        expect(MAY[room], `${file.path} imports ${target}`).toContain(to)
      }
    }
  })
  it('the shop knows of the choice only the door for answers', () => {
    for (const file of files.filter((f) => roomOf(f.path) === 'shop')) {
      for (const target of importsOf(file).filter((t) => roomOf(t) === 'choice')) {
        expect(['choice/answers', 'choice/types', 'choice/brief-types'], file.path).toContain(target)
      }
    }
  })
  it('the engine knows no screen, store, clock, chance or network', () => {
    const banned =
      /\b(preact|nanostores|astro:|window\.|document\.|localStorage|fetch\(|Date\.now|new Date|Math\.random|performance\.now|node:)/
    for (const file of files.filter((f) => ENGINE.includes(roomOf(f.path)))) {
      const code = file.text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')
      expect(banned.exec(code)?.[0], file.path).toBeUndefined()
    }
  })
  it('nothing in src, content or tests reads from outside the repository', () => {
    for (const file of files) expect(/shared\/(reference|look)/.test(file.text), file.path).toBe(false)
  })
})

describe('sources named in the code', () => {
  const named = files.flatMap((f) =>
    [...f.text.matchAll(/Source(?: of [^:]+)?: ([a-z0-9][^.\n]*)/g)].map((m) => ({ file: f.path, text: m[1] ?? '' }))
  )
  it('every docstring’s source key resolves in the bibliography', () => {
    expect(named.length).toBeGreaterThan(30)
    for (const { file, text } of named) {
      const key = /^[a-z0-9][a-z0-9-]*/.exec(text)?.[0] ?? ''
      expect(Object.keys(reference.sources), `${file}: ${text}`).toContain(key)
    }
  })
  it('every exported function of wood and frame has a docstring', () => {
    for (const file of files.filter((f) => ['wood', 'frame'].includes(roomOf(f.path)))) {
      for (const m of file.text.matchAll(/(\/\*\*[\s\S]*?\*\/)?\nexport function (\w+)/g)) {
        expect(m[1], `${file.path}: ${m[2]} has no docstring`).toBeTruthy()
      }
    }
  })
})
