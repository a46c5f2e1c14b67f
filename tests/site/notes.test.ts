/** Field notes and glossary in a browser: no script needed, words and figures open by keyboard, sound on any screen and on paper. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { axe, openPage } from './harness'

const dist = join(import.meta.dirname, '../../dist')
const ids = readdirSync(join(import.meta.dirname, '../../content/notes')).map((name) => name.replace('.md', ''))
const FULL = '/notes/outdoors-without-rot/'
const WORDY = '/notes/green-or-dry/'
const over = (page: Awaited<ReturnType<typeof openPage>>) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

describe.each(['/notes/', '/glossary/', FULL, WORDY])('%s', (path) => {
  for (const width of [320, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`is sound at ${width} px, ${colorScheme}`, async () => {
        const page = await openPage(path, { width, colorScheme })
        expect(await page.locator('h1').count()).toBe(1)
        expect(await over(page)).toBeLessThanOrEqual(0)
        expect(await axe(page)).toEqual([])
      })
    }
  }
  it('opens in forced colours, and ships no script file', async () => {
    const page = await openPage(path, { forcedColors: 'active' })
    expect(await axe(page)).toEqual([])
    expect(await page.locator('script[src], astro-island, link[rel=modulepreload]').count()).toBe(0)
    expect(await page.locator('main [style]').count()).toBe(0)
  })
})

describe('every note', () => {
  it('fits the narrowest phone, has its sources beside it, and leads to pages that are there', async () => {
    const page = await openPage('/notes/', { width: 320 })
    const base = page.url()
    for (const id of ids) {
      await page.goto(new URL(`${id}/`, base).href)
      expect(await over(page), id).toBeLessThanOrEqual(0)
      expect(await page.locator('.margin').textContent(), id).toMatch(/Rests on/)
      expect(await page.locator('.note-text :is(.figure, table)').count(), id).toBeGreaterThan(0)
      const links = await page
        .locator('main a')
        .evaluateAll((all) => all.map((a) => new URL((a as HTMLAnchorElement).href).pathname))
      for (const to of new Set(links)) expect(readFileSync(join(dist, to, 'index.html')).length, to).toBeGreaterThan(0)
    }
  })
  it('stands in the index, and weighs little', async () => {
    const page = await openPage('/notes/')
    const listed = await page
      .locator('.note-list a')
      .evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href.replace(/^.*\/notes\/|\/$/g, '')))
    expect([...listed].sort()).toEqual([...ids].sort())
    for (const id of ids) {
      const packed = gzipSync(readFileSync(join(dist, 'notes', id, 'index.html')), { level: 9 }).length
      // Beside it come 39 KB of fonts and style sheets; the first view may have 60.
      expect(packed, id).toBeLessThanOrEqual(20 * 1024)
    }
  })
})

describe('a word of the trade', () => {
  it('opens its meaning by keyboard without script, and leads to the glossary', async () => {
    const page = await openPage(WORDY, { javaScriptEnabled: false, width: 320 })
    const word = page.locator('.term', { hasText: /^draw-bored$/ })
    await word.focus()
    await page.keyboard.press('Enter')
    const note = page.locator('.source:popover-open')
    expect(await note.textContent()).toMatch(/Draw-boring.*peg pulls the joint tight/)
    await page.keyboard.press('Escape')
    expect(await note.count()).toBe(0)
    await word.click()
    await note.locator('a').click()
    await page.waitForURL(/glossary\/#draw-boring$/)
    expect(await page.locator('#draw-boring').isVisible()).toBe(true)
  })
  it('is explained once in a note, and has room for a finger', async () => {
    const page = await openPage(WORDY, { width: 320 })
    const targets = await page.locator('.term').evaluateAll((all) => all.map((b) => b.getAttribute('popovertarget')))
    expect(targets.length).toBeGreaterThan(5)
    expect(new Set(targets).size).toBe(targets.length)
    for (const id of targets) expect(await page.locator(`#${id}`).count()).toBe(1)
  })
  it('is a plain word on paper, where sources and other notes are left out', async () => {
    const page = await openPage(WORDY)
    await page.emulateMedia({ media: 'print' })
    const line = await page
      .locator('.term')
      .first()
      .evaluate((b) => getComputedStyle(b).textDecorationLine)
    expect(line).toBe('none')
    expect(await page.locator('.cited').first().isVisible()).toBe(false)
    expect(await page.locator('.note-turn').isVisible()).toBe(false)
    expect(await page.locator('.note-text table').first().isVisible()).toBe(true)
  })
})

describe('a figure in a note', () => {
  it('opens to its formula and source without script', async () => {
    const page = await openPage(WORDY, { javaScriptEnabled: false })
    const figure = page.locator('.note-text p .q').first()
    await figure.focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('.source:popover-open').textContent()).toMatch(/Gap at a housed shoulder.*How we know/s)
  })
  it('follows the unit switch, the sizes that the note chose too', async () => {
    const page = await openPage(WORDY, { javaScriptEnabled: false })
    const given = page.locator('.given').first()
    expect(await given.locator('.us').isVisible()).toBe(true)
    await page.locator('label:has(#units-si)').click()
    expect(await given.locator('.si').textContent()).toMatch(/254 × 254\smm/)
    expect(await given.locator('.us').isVisible()).toBe(false)
  })
  it('says whether a statement was read, recalled or is only what the trade says', async () => {
    const page = await openPage(WORDY)
    const said = await page.locator('.cite').allTextContents()
    expect(said).toContain('trade opinion')
    expect(said).toContain('recalled')
  })
})
