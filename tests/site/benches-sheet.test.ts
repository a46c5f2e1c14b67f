/** Size ladder and drying clock take the sheet in use on this device, and say so. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { ShopSheetContent } from '../../src/data/shop-schema'
import { axe, openPage } from './harness'
import { noSidewaysScroll } from './steps'

const sample = JSON.parse(readFileSync(new URL('../../content/shop.json', import.meta.url), 'utf8')) as ShopSheetContent
const own: ShopSheetContent = {
  ...sample,
  name: 'Two Sizes {b} (invented)',
  placeholder: false,
  woods: [
    { species: 'white-oak', perBoardFoot: 5 },
    { species: 'eastern-hemlock', perBoardFoot: 3 }
  ],
  sections: {
    unit: 'in',
    sizes: [
      [9, 9],
      [9, 13]
    ]
  }
}

async function openWith(path: string, width: number) {
  const page = await openPage('/framers/', { width })
  await page.evaluate((text) => localStorage.setItem('bentwise.sheet.1', text), JSON.stringify(own))
  await page.goto(page.url().replace('/framers/', path))
  await page.locator('.bench-shop', { hasText: own.name }).waitFor()
  return page
}

describe('with a sheet of one’s own', () => {
  it.each([320, 1280])('the ladder tries its sizes, its woods first: %i px', async (width) => {
    const page = await openWith('/size-ladder/', width)
    await page.locator('.ladder-told', { hasText: `Tried: full-sawn, the sizes of ${own.name}.` }).waitFor()
    const groups = page.locator('#ladder-wood optgroup')
    expect(await groups.first().getAttribute('label')).toBe(own.name)
    expect(await groups.first().locator('option').allTextContents()).toEqual(['Eastern hemlock', 'White oak'])
    expect(await page.locator('#ladder-wood').inputValue()).toBe('douglas-fir')
    const passing = page.locator('.ladder-table tbody tr', { hasText: /[×x]/ })
    for (const row of await passing.locator('td').first().allTextContents()) expect(row).toMatch(/9 × (9|13)|–/)
    expect(new URL(page.url()).hash).toBe('')
    await noSidewaysScroll(page)
    expect(await axe(page)).toEqual([])
  })

  it('the clock has its woods first', async () => {
    const page = await openWith('/drying-clock/', 360)
    expect(await page.locator('#clock-wood optgroup').first().getAttribute('label')).toBe(own.name)
    await page.locator('#clock-wood').selectOption('white-oak')
    await page.locator('.clock-figure figcaption', { hasText: /white oak/i }).waitFor()
    expect(await axe(page)).toEqual([])
  })

  it('the sample changes nothing, and nothing is said', async () => {
    const page = await openPage('/size-ladder/')
    await page.locator('#size-ladder[data-live]').waitFor()
    await page.locator('#ladder-span').fill('20')
    await page.waitForFunction(() => location.hash !== '')
    expect(await page.locator('.bench-shop, #ladder-wood optgroup').count()).toBe(0)
    expect(await page.locator('.ladder-told').textContent()).toContain('the sizes of the sample shop')
  })
})
