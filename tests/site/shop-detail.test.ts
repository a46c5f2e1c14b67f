/** The shop's half of a brief: switched on, kept on, printed. */
import { describe, expect, it } from 'vitest'
import { encodeLink } from '../../src/shop/link'
import { axe, openPage } from './harness'
import { noSidewaysScroll, sheetsOf } from './steps'

const LINK = `/brief/#b=${encodeLink({ project: 'pavilion', exposure: 'weather', place: 'seattle-wa', span: 4876.8, finish: 'grey', upkeep: 'none', order: ['durability', 'cost'] })}`
const SWITCH = '.shop-switch > summary'

describe('shop detail', () => {
  it('is off until it is switched on by keyboard; the device remembers', async () => {
    const page = await openPage(LINK)
    await page.locator('.brief h1').waitFor()
    expect(await page.locator('.shop-inside').count()).toBe(0)
    await page.locator(SWITCH).focus()
    await page.keyboard.press('Enter')
    await page.locator('.shop-inside').waitFor()
    expect(await page.locator('.shop-table').first().locator('tbody tr').count()).toBe(4)
    expect(await page.locator('.asked > li').count()).toBe(20)
    await page.reload()
    await page.locator('.shop-inside').waitFor()
    await page.locator(SWITCH).click()
    await page.locator('.shop-inside').waitFor({ state: 'detached' })
  })

  it('its figures open, and switch units', async () => {
    const page = await openPage(LINK)
    await page.locator(SWITCH).click()
    const figure = page.locator('.shop-table .q').first()
    await figure.focus()
    await page.keyboard.press('Enter')
    await page.locator('.source:popover-open').waitFor()
    await page.keyboard.press('Escape')
    const shown = (system: 'us' | 'si') => page.locator(`.shop-table .${system}`).first().isVisible()
    expect([await shown('us'), await shown('si')]).toEqual([true, false])
    await page.locator('label:has(#units-si)').click()
    expect([await shown('us'), await shown('si')]).toEqual([false, true])
  })

  it('opens another wood with a cut list of its own', async () => {
    const page = await openPage(LINK)
    await page.locator(SWITCH).click()
    await page.locator('.shop-woods summary').nth(1).click()
    const wood = page.locator('.shop-woods .detail').nth(1)
    await wood.locator('.shop-table').first().waitFor()
    expect(await wood.locator('caption').first().textContent()).not.toBe(
      await page.locator('.shop-inside > table caption').first().textContent()
    )
  })

  for (const [width, colorScheme] of [
    [1280, 'light'],
    [360, 'dark'],
    [320, 'light']
  ] as const) {
    it(`is sound at ${width} px, ${colorScheme}, all opened`, async () => {
      const page = await openPage(LINK, { width, colorScheme })
      await page.locator(SWITCH).click()
      await page.locator('.shop-inside').waitFor()
      for (const summary of await page.locator('.shop-woods summary').all()) await summary.click()
      expect(await axe(page)).toEqual([])
      await noSidewaysScroll(page)
    })
  }

  it('prints on a sheet of its own where it is on, in four sheets at most, and not at all where it is off', async () => {
    const page = await openPage(LINK)
    await page.locator('#change .list').first().waitFor()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('#shop').isVisible()).toBe(false)
    const without = sheetsOf(await page.pdf({ format: 'Letter' }))
    await page.emulateMedia({ media: 'screen' })
    await page.locator(SWITCH).click()
    await page.locator('.shop-inside').waitFor()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.shop-table').first().isVisible()).toBe(true)
    for (const format of ['Letter', 'A4'] as const) {
      const sheets = sheetsOf(await page.pdf({ format }))
      expect(sheets, format).toBeGreaterThan(without)
      expect(sheets, format).toBeLessThanOrEqual(without + 4)
    }
  })

  it.each(['lakeside-pavilion', 'ridge-hall'])(
    'stands closed in an example, and opens without script: %s',
    async (id) => {
      const page = await openPage(`/examples/${id}/`, { javaScriptEnabled: false, width: 360 })
      expect(await page.locator('.shop-table').first().isVisible()).toBe(false)
      await page.locator(SWITCH).click()
      expect(await page.locator('.shop-table').first().isVisible()).toBe(true)
      await page.locator('.shop-table .q').first().click()
      await page.locator('.source:popover-open').waitFor()
      await noSidewaysScroll(page)
    }
  )
})
