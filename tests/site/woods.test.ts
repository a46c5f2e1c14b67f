/** The pages of the woods: sound everywhere, without script; and the comparison, by its link, by its fields, and where it fails. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { axe, openPage, type PageOptions, underBase } from './harness'
import { sheetsOf } from './steps'

const species = readdirSync(join(import.meta.dirname, '../../content/species')).map((f) => f.replace('.json', ''))
const notOver = async (page: Page) =>
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  ).toBeLessThanOrEqual(0)

describe('a wood’s page', () => {
  for (const width of [320, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it.each(['/woods/', '/woods/white-oak/', '/woods/giant-sequoia/'])(
        `%s is sound at ${width} px, ${colorScheme}`,
        async (path) => {
          const page = await openPage(path, { width, colorScheme })
          expect(await page.locator('h1').count()).toBe(1)
          await notOver(page)
          expect(await axe(page)).toEqual([])
        }
      )
    }
  }
  it('opens in forced colours', async () => {
    expect(await axe(await openPage('/woods/western-redcedar/', { forcedColors: 'active' }))).toEqual([])
  })
  it('is there for every wood, and the index links to it', async () => {
    const page = await openPage('/woods/', { javaScriptEnabled: false })
    const linked = await page.locator('.wood-chart th a').evaluateAll((all) => all.map((a) => a.getAttribute('href')))
    expect(linked.sort()).toEqual(species.map((id) => underBase(`/woods/${id}/`)).sort())
  })
  it('opens a figure to its source without script, and ships none', async () => {
    const page = await openPage('/woods/douglas-fir/', { javaScriptEnabled: false })
    expect(await page.locator('script[src], astro-island').count()).toBe(0)
    expect(await page.locator('main [style]').count()).toBe(0)
    await page.locator('#numbers .q').filter({ hasText: '4.8' }).click()
    const note = page.locator('.source:popover-open')
    expect(await note.textContent()).toMatch(/Table 4-3.*read in the source/)
    const ids = await page.locator('[id]').evaluateAll((all) => all.map((el) => el.id))
    expect(new Set(ids).size).toBe(ids.length)
    const targets = await page
      .locator('[popovertarget]')
      .evaluateAll((all) => all.map((el) => el.getAttribute('popovertarget')))
    for (const target of targets) expect(ids).toContain(target)
  })
  it('switches its units in words and tables', async () => {
    const page = await openPage('/woods/white-oak/', { javaScriptEnabled: false })
    const seen = (text: string) => page.locator('.wood-words .q').getByText(text).first().isVisible()
    expect([await seen('psi'), await seen('MPa')]).toEqual([true, false])
    await page.locator('label:has(#units-si)').click()
    expect([await seen('psi'), await seen('MPa')]).toEqual([false, true])
  })
  it('prints on two sheets, the longest of them too', async () => {
    const page = await openPage('/woods/douglas-fir/')
    for (const format of ['Letter', 'A4']) {
      expect(sheetsOf(await page.pdf({ format })), format).toBe(2)
    }
  })
  it('marks opinion as opinion', async () => {
    const page = await openPage('/woods/red-oak/', { javaScriptEnabled: false })
    expect(await page.locator('.wood-part--opinion').textContent()).toMatch(/^Trade opinion.*An opinion/)
  })
})

describe('the first view', () => {
  const dist = join(import.meta.dirname, '../../dist')
  const packed = (path: string) =>
    path.endsWith('.woff2') ? readFileSync(path).length : gzipSync(readFileSync(path), { level: 9 }).length
  it.each(['woods', 'woods/compare', ...species.map((id) => `woods/${id}`)])('/%s is within 60 KB', (path) => {
    const html = readFileSync(join(dist, path, 'index.html'), 'utf8')
    const linked = [...html.matchAll(/(?:href|src)="[^"]*\/_astro\/([^"/]+\.(?:css|js))"/g)].map((m) => m[1] ?? '')
    // A script brings what it imports without being asked.
    const files = new Set(linked)
    for (const file of files)
      if (file.endsWith('.js'))
        for (const m of readFileSync(join(dist, '_astro', file), 'utf8').matchAll(
          /(?:from|import)\s*"\.\/([^"]+\.js)"/g
        ))
          files.add(m[1] ?? '')
    const fonts = [...files]
      .filter((file) => file.endsWith('.css'))
      .flatMap((file) => [...readFileSync(join(dist, '_astro', file), 'utf8').matchAll(/([\w.-]+\.woff2)/g)])
      .map((m) => m[1] ?? '')
    expect(files.size).toBeGreaterThan(1)
    expect(new Set(fonts).size).toBeGreaterThan(1)
    const rest = [...new Set([...files, ...fonts])].reduce((n, file) => n + packed(join(dist, '_astro', file)), 0)
    const total = packed(join(dist, path, 'index.html')) + rest
    if (process.env['REPORT_BYTES']) process.stdout.write(`/${path}: ${(total / 1024).toFixed(1)} KB\n`)
    expect(total).toBeLessThanOrEqual(60 * 1024)
  })
})

async function compare(fragment = '', options: PageOptions = {}): Promise<Page> {
  const page = await openPage(`/woods/compare/${fragment}`, options)
  if (options.javaScriptEnabled !== false) await page.locator('#woods-compare[data-live]').waitFor()
  return page
}
const heads = (page: Page) => page.locator('.wood-compare thead th').allTextContents()

describe('the comparison', () => {
  for (const width of [320, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`is sound at ${width} px, ${colorScheme}`, async () => {
        const page = await compare('#w=white-oak,redwood,hickory,giant-sequoia', { width, colorScheme })
        await page.locator('.wood-columns > li').nth(3).waitFor()
        await notOver(page)
        expect(await axe(page)).toEqual([])
      })
    }
  }
  it('stands without script: three woods, and all of them in a chart', async () => {
    const page = await compare('', { javaScriptEnabled: false })
    expect(await heads(page)).toEqual(['Douglas-fir', 'E. white pine', 'White oak'])
    expect(await page.locator('.wood-all tbody tr').count()).toBe(species.length)
    expect(await page.locator('.wood-picks').isVisible()).toBe(false)
  })
  it('opens what its link names', async () => {
    const page = await compare('#w=redwood,hickory')
    await expect.poll(() => heads(page)).toEqual(['Redwood', 'Hickory'])
    expect(await page.locator('.wood-says').textContent()).toBe('')
  })
  it('says which of a link’s woods it does not know, and shows the others', async () => {
    const page = await compare('#w=redwood,ebony,hickory')
    await expect.poll(() => heads(page)).toEqual(['Redwood', 'Hickory'])
    expect(await page.locator('.wood-says').textContent()).toMatch(/“ebony”, which is no wood here/)
  })
  it('fills up where a link leaves one wood', async () => {
    const page = await compare('#w=redwood')
    await expect.poll(() => heads(page)).toEqual(['Redwood', 'Douglas-fir'])
  })
  it('keeps a choice in the address, and the back button undoes it', async () => {
    const page = await compare()
    await page.locator('#wood-0').selectOption('red-oak')
    await expect.poll(() => heads(page)).toEqual(['Red oak', 'E. white pine', 'White oak'])
    expect(new URL(page.url()).hash).toBe('#w=red-oak,eastern-white-pine,white-oak')
    await page.locator('#wood-3').selectOption('tamarack')
    await expect.poll(() => heads(page)).toHaveLength(4)
    await page.locator('#wood-1').selectOption('')
    await expect.poll(() => heads(page)).toEqual(['Red oak', 'White oak', 'Tamarack'])
    await page.goBack()
    await expect.poll(() => heads(page)).toHaveLength(4)
  })
  it('opens a figure to its source', async () => {
    const page = await compare()
    await page.locator('.wood-compare .q').first().click()
    expect(await page.locator('.source:popover-open').textContent()).toMatch(/How we know/)
  })
  it('says so where a wood does not come, and tries again', async () => {
    const page = await compare('', { allow: [/ERR_FAILED/] })
    await page.route('**/data/woods/redwood.json', (route) => route.abort())
    await page.locator('#wood-2').selectOption('redwood')
    await page.getByText('Redwood did not come').waitFor()
    await page.unroute('**/data/woods/redwood.json')
    await page.getByRole('button', { name: 'Try again' }).click()
    await expect.poll(() => heads(page)).toEqual(['Douglas-fir', 'E. white pine', 'Redwood'])
  })
})
