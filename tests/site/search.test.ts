/** The search: what is in its index, how it is used by keyboard, and what it says when it finds or can do nothing. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { dist } from '../../.ci/place.mjs'
import { axe, openPage, underBase } from './harness'
import { LOST, noSidewaysScroll } from './steps'

const hits = (page: Page) => page.locator('.found-page')

async function look(page: Page, words: string): Promise<void> {
  await page.locator('#search-words').fill('')
  await page.waitForFunction(() => document.getElementById('search-status')?.textContent === '')
  await page.locator('#search-words').fill(words)
  await page.locator('#search-status', { hasText: /page/ }).waitFor()
}

describe('the index', () => {
  const folder = join(dist, 'pagefind/fragment')
  const pages = readdirSync(folder).map((file) => {
    const text = gunzipSync(readFileSync(join(folder, file))).toString('utf8')
    return JSON.parse(text.slice(text.indexOf('{'))) as { url: string; content: string; filters: { kind: string[] } }
  })

  it('holds every page that may be found, each with its kind, and no other', () => {
    const may = readdirSync(dist, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.html'))
      .filter((file) => !/content="noindex"|data-pagefind-ignore="all"/.test(readFileSync(join(dist, file), 'utf8')))
      .map((file) => `/${file.replaceAll('\\', '/').replace(/index\.html$/, '')}`)
    expect(pages.map((page) => page.url).sort()).toEqual(may.sort())
    for (const page of pages) expect(page.filters.kind, page.url).toHaveLength(1)
  })

  it('holds prose, not the notes behind figures nor both systems of units', () => {
    const front = pages.find((page) => page.url === '/')
    expect(front?.content).toMatch(/shrinks/)
    for (const page of pages) expect(page.content, page.url).not.toMatch(/How we know/)
  })
})

describe('the search page', () => {
  it('loads nothing of the index before a word is typed', async () => {
    const page = await openPage('/search/')
    const asked: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    await page.reload()
    await page.waitForFunction(() => document.activeElement?.id === 'search-words')
    expect(asked.filter((url) => url.includes('pagefind'))).toEqual([])
    await look(page, 'shrinkage')
    expect(asked.filter((url) => url.includes('pagefind')).length).toBeGreaterThan(3)
  })

  it('is used by keyboard alone: typed, gone through by arrows, opened, and come back to', async () => {
    const page = await openPage('/framers/')
    await page.keyboard.press('/')
    await page.waitForURL(/\/search\/$/)
    await page.waitForFunction(() => document.activeElement?.id === 'search-words')
    await page.keyboard.type('shrinkage')
    await hits(page).first().waitFor()
    expect(await page.locator('#search-status').textContent()).toMatch(/^\d+ pages/)
    expect(await page.locator('.found mark').first().textContent()).toMatch(/shrink/i)
    expect(await page.locator('.found-kind').count()).toBeGreaterThan(1)
    await page.keyboard.press('ArrowDown')
    const first = await hits(page).first().getAttribute('href')
    expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toBe(first)
    await page.keyboard.press('ArrowUp')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('search-words')
    await page.keyboard.press('Enter')
    await page.waitForFunction((href) => document.activeElement?.getAttribute('href') === href, first)
    await page.keyboard.press('Enter')
    await page.waitForURL((url) => url.pathname === first?.split('#')[0])
    await page.goBack()
    await hits(page).first().waitFor()
    expect(await page.locator('#search-words').inputValue()).toBe('shrinkage')
  })

  it('says plainly that nothing was found, and takes anything that is typed', async () => {
    const page = await openPage('/search/')
    for (const words of ['<img src=x onerror=alert(1)>', '"%E0%A4', '🪵', 'x'.repeat(300)]) await look(page, words)
    await look(page, 'zzyzx')
    expect(await page.locator('#search-status').textContent()).toMatch(/^Nothing here says “zzyzx”/)
    expect(await page.locator('#search-list img').count()).toBe(0)
  })

  it('says that the index did not load, keeps the words, and tries again', async () => {
    const page = await openPage('/search/', { allow: [LOST] })
    let gone = true
    await page.context().route('**/pagefind/**', (route) => (gone ? route.abort() : route.continue()))
    await look(page, 'shrinkage')
    expect(await page.locator('#search-status').textContent()).toMatch(/did not load/)
    gone = false
    await page.getByRole('button', { name: 'Try again' }).click()
    await hits(page).first().waitFor()
    expect(await page.locator('#search-words').inputValue()).toBe('shrinkage')
  })

  it('says so too where only a part of the index is gone', async () => {
    const page = await openPage('/search/', { allow: [LOST, /Pagefind/, /fetch/] })
    await page.context().route('**/*.pf_{index,meta}', (route) => route.abort())
    await look(page, 'shrinkage')
    expect(await page.locator('#search-status').textContent()).toMatch(/did not load/)
  })

  it('without script lists every page', async () => {
    const page = await openPage('/search/', { javaScriptEnabled: false })
    expect(await page.locator('#search-form').isVisible()).toBe(false)
    await page.locator('.every-page a', { hasText: 'Size ladder' }).click()
    expect(page.url()).toContain(underBase('/size-ladder/'))
  })

  for (const width of [320, 360, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`is sound with pages found at ${width} px, ${colorScheme}`, async () => {
        const page = await openPage('/search/', { width, colorScheme })
        await look(page, 'shrinkage')
        expect(await axe(page)).toEqual([])
        await noSidewaysScroll(page)
      })
    }
  }
})

describe('the / key', () => {
  it('types where something is typed, and can be switched off', async () => {
    const page = await openPage('/search/')
    await page.locator('#search-words').press('/')
    expect(await page.locator('#search-words').inputValue()).toBe('/')
    await page.locator('label:has(#slash-off)').click()
    await page.goto(page.url().replace(/search\/.*/, 'framers/'))
    await page.keyboard.press('/')
    await page.keyboard.press('Tab')
    expect(page.url()).toContain('/framers/')
    await page.locator('.site-search').click()
    await page.waitForURL(/search/)
    expect(await page.locator('#slash-off').isChecked()).toBe(true)
    await page.locator('label:has(#slash-auto)').click()
    await page.goto(page.url().replace(/search\/.*/, 'framers/'))
    await page.keyboard.press('/')
    await page.waitForURL(/search/)
  })
})
