/** Words of the trade on every page: each explained once, never where a button must not stand, and each entry put to use. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { dist } from '../../.ci/place.mjs'
import { QUESTIONS } from '../../src/choice/questions'
import { explained } from '../../src/notes/explained'
import { readGlossary } from '../../src/notes/glossary'
import { axe, openPage } from './harness'

const glossary = readGlossary(JSON.parse(readFileSync('content/glossary.json', 'utf8')))
const pages = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('index.html'))
  .map(
    (file) => [file.replaceAll('\\', '/').replace('index.html', ''), readFileSync(join(dist, file), 'utf8')] as const
  )
const EXAMPLE = readFileSync('content/scenarios/ridge-hall.json', 'utf8')

const inPage = (html: string) =>
  [...html.matchAll(/class="term" (?:popovertarget="term-|href="[^"]*#)([a-z-]+)"/g)].map((m) => m[1] ?? '')

describe('every page as built', () => {
  it('explains a word once, and has all that its words open', () => {
    for (const [path, html] of pages) {
      const words = inPage(html)
      expect(words.length, path).toBe(new Set(words).size)
      for (const id of words) expect(Object.keys(glossary), path).toContain(id)
      for (const [, id] of html.matchAll(/popovertarget="(term-[a-z-]+)"/g)) expect(html, path).toContain(`id="${id}"`)
    }
  })
  it('marks words on every page that has running text of the trade', () => {
    const bare = pages.filter(([, html]) => inPage(html).length === 0).map(([path]) => `/${path}`)
    expect(bare.sort()).toEqual(['/brief/', '/compare/', '/glossary/', '/invite/', '/offline/', '/search/', '/start/'])
  })
  it('puts every entry of the glossary to use', () => {
    const asked = QUESTIONS.map((q) => JSON.stringify(q)).join(' ')
    // What one's own brief may name and no example does.
    const named = ['member-names.ts', 'joinery/says.ts'].map((file) => readFileSync(join('src/choice', file), 'utf8'))
    const used = new Set([...pages.flatMap(([, html]) => inPage(html)), ...idsIn([asked, ...named].join(' '))])
    expect(Object.keys(glossary).filter((id) => !used.has(id))).toEqual([])
  })
  it('keeps meanings out of the search', () => {
    for (const [path, html] of pages)
      for (const block of html.match(/<div class="meanings"[^>]*>/g) ?? [])
        expect(block, path).toContain('data-pagefind-ignore')
  })
})

function idsIn(text: string): readonly string[] {
  return explained(text, glossary, new Set()).flatMap((piece) => (typeof piece === 'string' ? [] : [piece.id]))
}

describe('in the browser', () => {
  it('no word stands inside a link, label, heading or drawing', async () => {
    const page = await openPage('/')
    for (const [path] of pages) {
      await page.goto(new URL(path, page.url().replace(/(?<=:\/\/[^/]+\/).*/, '')).href)
      const wrong = await page
        .locator(':is(a, button, label, legend, summary, h1, h2, h3, h4, dt, svg, nav, .source) .term')
        .count()
      expect(wrong, path).toBe(0)
    }
  })
  for (const bench of ['/size-ladder/', '/log-end/', '/drying-clock/', '/woods/compare/', '/shop/'])
    it(`${bench} wakes, and its words then open in place`, async () => {
      const page = await openPage(bench)
      await page.locator('[data-live]').waitFor()
      const word = page.locator('button.term').first()
      await word.waitFor()
      expect(await page.locator('a.term').count()).toBe(0)
      await word.focus()
      await page.keyboard.press('Enter')
      expect(await page.locator('.meanings .source:popover-open').textContent()).toMatch(/In the glossary$/)
    })
  it('without script a bench’s words lead to the glossary', async () => {
    const page = await openPage('/size-ladder/', { javaScriptEnabled: false })
    await page.locator('a.term:visible').first().click()
    await page.waitForURL(/\/glossary\/#[a-z-]+$/)
  })
  it('one’s own brief explains a word once a section, and opens it by keyboard', async () => {
    const page = await openPage('/start/')
    const { answers } = JSON.parse(EXAMPLE) as { answers: unknown }
    await page.evaluate((kept) => localStorage.setItem('bentwise.answers.1', kept), JSON.stringify(answers))
    await page.goto(new URL('../brief/', page.url()).href)
    await page.locator('.brief .term').first().waitFor()
    const repeated = await page.locator('.brief .sheet').evaluateAll((sections) =>
      sections.flatMap((section) => {
        const names = [...section.querySelectorAll('.term')].map((b) => b.textContent?.toLowerCase())
        return names.filter((name, i) => names.indexOf(name) !== i)
      })
    )
    expect(repeated).toEqual([])
    expect(await page.locator(':is(a, label, summary, h1, h2, h3, dt) .term').count()).toBe(0)
    const word = page.locator('.brief .term').first()
    await word.focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('.source:popover-open').textContent()).toMatch(/In the glossary$/)
    expect(await axe(page)).toEqual([])
  })
  it('a question lists its words below, each opening its meaning', async () => {
    const page = await openPage('/start/#q=truss')
    const list = page.locator('.step .note', { hasText: 'Words here' })
    await list.waitFor()
    const word = list.locator('.term', { hasText: 'queen post' })
    await word.focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('.source:popover-open').textContent()).toMatch(/Queen post.*two uprights/)
    expect(await page.locator('label .term').count()).toBe(0)
    expect(await axe(page)).toEqual([])
  })
})
