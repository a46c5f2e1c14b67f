/** After the first visit the site needs no connection; and a new version comes without getting between two questions. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, it, onTestFinished } from 'vitest'
import { dist } from '../../.ci/place.mjs'
import { openPage, serveDist, underBase } from './harness'
import { answerByKeyboard, awake, questionShown } from './steps'

// What the browser itself remarks on when there is no server.
const unreachable =
  /ERR_CONNECTION_REFUSED|Failed to load resource|Failed to update a ServiceWorker|fetching the script/

const active = (page: Page) => page.evaluate(async () => (await navigator.serviceWorker.ready).active !== null)
const caches = (page: Page) => page.evaluate(() => globalThis.caches.keys())
/** How many files are kept. */
const kept = (page: Page) =>
  page.evaluate(async () => {
    const all = await Promise.all(
      (await globalThis.caches.keys()).map(async (name) => (await globalThis.caches.open(name)).keys())
    )
    return all.flat().length
  })
/** How many the worker is told to keep, of both lists. */
const listed = () =>
  ['FIRST', 'LATER'].reduce((sum, name) => {
    const line = new RegExp(`^const ${name} = (.*)$`, 'm').exec(readFileSync(join(dist, 'sw.js'), 'utf8'))
    return sum + (JSON.parse(line?.[1] ?? '[]') as unknown[]).length
  }, 0)

describe('without a connection', () => {
  it('after one visit, pages open, the questions lead to a brief, and the search finds', {
    timeout: 120_000
  }, async () => {
    const server = await serveDist()
    const page = await openPage('/', { origin: server.origin, serviceWorkers: 'allow', allow: [unreachable] })
    expect(await active(page)).toBe(true)
    // The pages to read follow by themselves.
    await expect.poll(() => kept(page), { timeout: 30_000 }).toBe(listed())
    await server.close()
    const open = async (path: string) => {
      await page.goto(server.origin + underBase(path))
      return page.locator('h1').first().textContent()
    }

    await page.reload()
    for (const path of ['/', '/framers/', '/sources/', '/places/', '/shop/', '/invite/', '/log-end/', '/size-ladder/'])
      expect(await open(path), path).not.toBe('Not on this device')

    // A bench comes to life: its script and its figures are there too.
    await open('/drying-clock/')
    await page.locator('#drying-clock[data-live]').waitFor()

    await open('/start/')
    await awake(page)
    for (let i = 0; page.url().includes('/start/') && i < 40; i++) {
      await answerByKeyboard(page, await questionShown(page))
      if ((await page.locator('h1#question').count()) > 0)
        await page.waitForFunction(() => document.activeElement?.id === 'question')
    }
    await page.locator('.brief h1').waitFor()
    await page.locator('#change .list').first().waitFor()

    await open('/search/')
    await page.locator('#search-words').fill('shrinkage')
    await page.locator('.found-page').first().click()
    await page.waitForURL((url) => !url.pathname.endsWith('/search/'))
    expect(await page.locator('h1').first().textContent()).not.toBe('Not on this device')

    expect(await open('/no-such-page/')).toBe('Not on this device')
    // An address without its slash, as it may be typed.
    await page.goto(`${server.origin}${underBase('/framers')}`)
    expect(page.url()).toMatch(/\/framers\/$/)
  })

  it('pages to read are kept as well, once one goes on from the first page', async () => {
    const server = await serveDist()
    const page = await openPage('/', { origin: server.origin, serviceWorkers: 'allow', allow: [unreachable] })
    await active(page)
    const example = underBase('/examples/ridge-hall/')
    const kept = () => page.evaluate(async (path) => (await globalThis.caches.match(path)) !== undefined, example)
    expect(await kept()).toBe(false)
    await page.goto(server.origin + underBase('/framers/'))
    await expect.poll(kept).toBe(true)
    await server.close()
    await page.goto(server.origin + example)
    await page.locator('.brief h1').waitFor()
  })
})

describe('a new version', () => {
  it('waits until no page of the old one is open, then leaves nothing of it behind', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'bentwise-'))
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
    cpSync(dist, folder, { recursive: true })
    const server = await serveDist({ folder })
    const page = await openPage('/', { origin: server.origin, serviceWorkers: 'allow' })
    await active(page)
    const [old] = await caches(page)
    await page.reload()
    await page.evaluate(() => globalThis.caches.open('somebody else’s'))

    const front = join(folder, 'index.html')
    writeFileSync(front, readFileSync(front, 'utf8').replace(/<h1/, '<h1 id="new"'))
    const worker = join(folder, 'sw.js')
    writeFileSync(worker, readFileSync(worker, 'utf8').replace(String(old), `${old}-new`))
    await page.reload()
    await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.waiting)
    await page.reload()
    expect(await page.locator('#new').count(), 'still of one piece').toBe(0)

    const context = page.context()
    await page.close()
    const next = await context.newPage()
    const isNew = async () => {
      await next.goto(server.origin + underBase('/'))
      const count = await next.locator('#new').count()
      if (count === 0) await next.goto('about:blank')
      return count
    }
    // Left alone between two looks: the browser changes over only while no page is open.
    await expect.poll(isNew, { timeout: 30_000, interval: 2000 }).toBe(1)
    await expect.poll(() => caches(next)).toEqual(['somebody else’s', `${old}-new`])
  })
})

describe('the list of what is kept', () => {
  const code = readFileSync(join(dist, 'sw.js'), 'utf8')
  const list = (name: string): string[] => JSON.parse(new RegExp(`^const ${name} = (.*)$`, 'm').exec(code)?.[1] ?? '[]')

  it('is of files that are there, and what the job needs comes first', () => {
    for (const path of [...list('FIRST'), ...list('LATER')])
      expect(() => readFileSync(join(dist, path.replace(/(^|\/)$/, '$1index.html'))), path).not.toThrow()
    for (const path of ['', 'start/', 'brief/', 'search/', 'offline/', 'data/reference.json', 'pagefind/pagefind.js'])
      expect(list('FIRST'), path).toContain(path)
  })
})
