/**
 * The site as somebody else publishes it: under a folder, with an address of its own and a shop's own sheet for the sample.
 * `npm test` builds it so once more; a build without these settings has nothing to look at here.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { basePath, dist } from '../../.ci/place.mjs'
import { readSheetFile, sheetFile } from '../../src/shop/sheet/file'
import { reference } from '../reference'
import { openPage, serveDist, underBase } from './harness'
import { answerByKeyboard, awake, questionShown } from './steps'

const own = process.env['BENTWISE_SHOP']
const text = readFileSync(new URL('./own-shop.json', import.meta.url), 'utf8')
const read = readSheetFile(text, new Set(reference.woods.keys()))

describe('the sheet that stands for a shop’s own', () => {
  it('is a file as the form of the shop sheet saves it', () => {
    if (!read.ok) throw new Error(`${read.says} ${read.list}`)
    expect(JSON.parse(sheetFile(read.sheet))).toEqual(JSON.parse(text))
  })
})

describe.runIf(own)('a site published elsewhere', () => {
  const shop = JSON.parse(text) as { name: string; woods: unknown[] }

  it('lies in a folder, and nothing of it leads out', () => {
    expect(basePath()).not.toBe('/')
    expect(underBase('/start/')).toBe(`${basePath()}start/`)
  })

  it('has the shop’s sheet in place of the sample', () => {
    expect(JSON.parse(readFileSync(join(dist, 'data/reference.json'), 'utf8')).shop).toEqual(shop)
  })

  it('leads by keyboard from the first page to a brief of that shop’s woods', { timeout: 120_000 }, async () => {
    const page = await openPage('/', { width: 360 })
    await page.locator('.site-nav a', { hasText: 'Start' }).click()
    await page.waitForURL(`**${underBase('/start/')}`)
    await awake(page)
    for (let i = 0; page.url().includes('/start/') && i < 40; i++) {
      await answerByKeyboard(page, await questionShown(page))
      if ((await page.locator('h1#question').count()) > 0)
        await page.waitForFunction(() => document.activeElement?.id === 'question')
    }
    await page.locator('.brief h1').waitFor()
    expect(new URL(page.url()).pathname).toBe(underBase('/brief/'))
    expect(await page.locator('.title-block').first().textContent()).toContain(shop.name)
    const named = (await page.locator('.woods-table tbody tr').count()) + (await page.locator('.outs > li').count())
    expect(named).toBe(shop.woods.length)
    expect(await page.locator('main').textContent()).not.toMatch(/[Pp]laceholder prices|Invented prices/)
    // A question of it, and back.
    await page.locator('#change .list a').first().click()
    await page.waitForURL(`**${underBase('/start/')}**`)
  })

  it('searches, and goes on without a connection', async () => {
    const server = await serveDist()
    const page = await openPage('/', {
      origin: server.origin,
      serviceWorkers: 'allow',
      allow: [/ERR_CONNECTION_REFUSED|Failed to load resource|ServiceWorker|fetching the script/]
    })
    await page.evaluate(async () => (await navigator.serviceWorker.ready).active !== null)
    await server.close()
    await page.keyboard.press('/')
    await page.waitForURL(`**${underBase('/search/')}`)
    await page.locator('#search-words').fill('shrinkage')
    const href = await page.locator('.found-page').first().getAttribute('href')
    expect(href?.startsWith(basePath())).toBe(true)
    await page.locator('.found-page').first().click()
    await page.waitForURL(`**${href}`)
    expect(await page.locator('h1').count()).toBe(1)
  })

  it('opens its benches and its shop sheet', async () => {
    for (const [path, live] of [
      ['/size-ladder/', '#size-ladder[data-live]'],
      ['/drying-clock/', '#drying-clock[data-live]'],
      ['/shop/', '#shop-sheet[data-live]']
    ] as const) {
      const page = await openPage(path)
      await page.locator(live).waitFor()
    }
  })
})
