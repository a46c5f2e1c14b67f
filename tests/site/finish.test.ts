/** Look and upkeep on a brief: swatches with words, on screen, forced colours and paper; another finish to look at. */
import { describe, expect, it } from 'vitest'
import { encodeLink } from '../../src/shop/link'
import { axe, openPage, type PageOptions } from './harness'

const HALL = '/examples/ridge-hall/'
const PAVILION = '/examples/lakeside-pavilion/'
const OAK = `/brief/#a=${encodeLink({ role: 'looks', exposure: 'weather', place: 'madison-wi', finish: 'pale', upkeep: 'seldom' })}`

const open = async (path: string, options: PageOptions = {}) => {
  const page = await openPage(path, options)
  await page.locator('#finish .looks').waitFor()
  return page
}

describe('how it will look', () => {
  it('stands without script: own, finished and later for each wood, each in words too', async () => {
    const page = await open(HALL, { javaScriptEnabled: false })
    const rows = page.locator('#finish .looks tbody tr')
    expect(await rows.count()).toBe(4)
    for (const row of await rows.all()) {
      expect(await row.locator('svg rect').count()).toBe(3)
      for (const cell of await row.locator('td').all())
        expect(await cell.textContent()).toMatch(/pale|medium|dark|white/)
    }
    expect(await page.locator('#finish select').count()).toBe(0)
    expect(await page.locator('#finish figcaption').textContent()).toMatch(
      /screen mislead.*sample finished on the wood/
    )
    expect(await page.locator('#finish [style]').count()).toBe(0)
    await page.locator('#finish td .q').last().click()
    expect(await page.locator('.source:popover-open').textContent()).toMatch(/first coat/)
  })
  it('left to grey there is nothing to renew, and no column for a finish', async () => {
    const page = await open(PAVILION, { javaScriptEnabled: false })
    expect(await page.locator('#finish table').count()).toBe(1)
    expect(await page.locator('#finish thead th').allTextContents()).toEqual([
      'Wood',
      'Own colour',
      'After 10 years outside',
      'What bleeds'
    ])
  })
  it('another finish can be looked at, and the answer stands', async () => {
    const page = await open(OAK)
    const fills = () => page.locator('#finish .looks rect').evaluateAll((all) => all.map((r) => r.getAttribute('fill')))
    const before = await fills()
    await page.getByLabel('See it with').selectOption('dark')
    expect(await fills()).not.toEqual(before)
    expect(await page.locator('#finish figcaption').textContent()).toMatch(/Dark stain, to look at; your answer stands/)
    expect(page.url()).toContain('#a=')
    await page.getByLabel('See it with').selectOption('pale')
    expect(await fills()).toEqual(before)
  })
  for (const width of [320, 360, 1280])
    for (const colorScheme of ['light', 'dark'] as const)
      it(`is sound at ${width} px, ${colorScheme}`, async () => {
        const page = await open(OAK, { width, colorScheme })
        expect(await axe(page)).toEqual([])
        const over = () =>
          page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
        expect(await over()).toBeLessThanOrEqual(0)
        for (const id of ['grey', 'painted']) {
          await page.getByLabel('See it with').selectOption(id)
          expect(await over()).toBeLessThanOrEqual(0)
        }
      })
  it('swatches keep their colours in forced colours and on paper', async () => {
    const page = await open(HALL, { forcedColors: 'active' })
    const shown = () =>
      page
        .locator('#finish .look-patch rect')
        .evaluateAll((all) => new Set(all.map((rect) => getComputedStyle(rect).fill)).size)
    expect(await shown()).toBeGreaterThan(5)
    await page.emulateMedia({ media: 'print', forcedColors: 'none' })
    expect(await shown()).toBeGreaterThan(5)
    const adjust = await page
      .locator('#finish .look-patch')
      .first()
      .evaluate((e) => getComputedStyle(e).getPropertyValue('print-color-adjust'))
    expect(adjust).toBe('exact')
  })
})
