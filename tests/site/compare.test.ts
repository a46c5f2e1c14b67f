/** The page that sets two returned briefs side by side. */
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { encodeLink } from '../../src/shop/link'
import { axe, openPage } from './harness'
import { awake, noSidewaysScroll, saveAnswers, sheetsOf } from './steps'

const PAVILION = {
  project: 'pavilion',
  exposure: 'weather',
  place: 'seattle-wa',
  span: 4876.8,
  order: ['durability', 'cost']
}
const HALL = {
  project: 'great-room',
  exposure: 'heated',
  place: 'duluth-mn',
  span: 7315.2,
  order: ['movement', 'look']
}
const linkOf = (answers: Readonly<Record<string, unknown>>) =>
  `https://example.org/brief/#b=${encodeLink(answers as never)}`

async function compared(options: Parameters<typeof openPage>[1] = {}) {
  const page = await openPage('/compare/', options)
  await awake(page)
  await page.getByLabel('First brief', { exact: true }).fill(linkOf(PAVILION))
  await page.getByLabel('Second brief', { exact: true }).fill(linkOf(HALL))
  await page.getByRole('button', { name: 'Compare' }).click()
  await page.locator('#compared').waitFor()
  return page
}

describe('compare', () => {
  it('two links, by keyboard: what differs, what comes out; focus goes to it', async () => {
    const page = await openPage('/compare/')
    await awake(page)
    await page.getByLabel('First brief', { exact: true }).focus()
    await page.keyboard.insertText(linkOf(PAVILION))
    await page.getByLabel('Second brief', { exact: true }).focus()
    await page.keyboard.insertText(`Here it is: ${linkOf(HALL)} thanks`)
    await page.getByRole('button', { name: 'Compare' }).focus()
    await page.keyboard.press('Enter')
    await page.locator('#compared').waitFor()
    await page.waitForFunction(() => document.activeElement?.id === 'compared')
    const tables = page.locator('.pair-table')
    expect(await tables.nth(0).locator('tbody th').allTextContents()).toContain('Clear span')
    expect(await tables.nth(1).locator('tbody th').first().textContent()).toMatch(/^Wood/)
    expect(await page.locator('.compared').textContent()).toMatch(/answers differ: /)
    await page.getByRole('link', { name: /Great room/ }).click()
    await page.locator('.brief h1').waitFor()
  })

  it('what cannot be read is said beside it, and nothing typed is lost', async () => {
    const page = await openPage('/compare/')
    await awake(page)
    await page.getByLabel('First brief', { exact: true }).fill(linkOf(PAVILION))
    await page.getByLabel('Second brief', { exact: true }).fill('see you on Monday')
    await page.getByRole('button', { name: 'Compare' }).click()
    await page.locator('#second-brief-problem').waitFor()
    expect(await page.locator('.error').count()).toBe(1)
    expect(await page.getByLabel('Second brief', { exact: true }).inputValue()).toBe('see you on Monday')
    expect(await page.getByLabel('First brief', { exact: true }).inputValue()).toBe(linkOf(PAVILION))
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('second-brief')
    expect(await axe(page)).toEqual([])
  })

  it('a downloaded file, against the brief of this device', async () => {
    const page = await openPage('/brief/')
    await saveAnswers(page, JSON.stringify(HALL))
    await page.goto(page.url().replace('/brief/', '/compare/'))
    await awake(page)
    const files = page.locator('input[type=file]')
    await files
      .nth(0)
      .setInputFiles({ name: 'broken.json', mimeType: 'application/json', buffer: Buffer.from('{"version":1') })
    await page.locator('#first-brief-problem').waitFor()
    expect(await page.locator('#first-brief-problem').textContent()).toMatch(/broken\.json.*not JSON/)
    await files.nth(0).setInputFiles({
      name: 'bentwise-brief.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ version: 1, answers: PAVILION }))
    })
    await page.waitForFunction(() => document.querySelector<HTMLTextAreaElement>('#first-brief')?.value.includes('#b='))
    await page.getByRole('button', { name: 'Take the one on this device' }).nth(1).click()
    await page.waitForFunction(() =>
      document.querySelector<HTMLTextAreaElement>('#second-brief')?.value.includes('#b=')
    )
    await page.getByRole('button', { name: 'Compare' }).click()
    await page.locator('#compared').waitFor()
    expect(await page.locator('.compared .title-block').textContent()).toMatch(/Pavilion[\s\S]*Great room/)
  })

  it('is reached from a brief, which is then the first', async () => {
    const page = await openPage(`/brief/#b=${encodeLink(PAVILION as never)}`)
    await page.locator('.shop-switch > summary').click()
    await page.getByRole('link', { name: 'Set this brief beside another' }).click()
    await page.waitForFunction(() => document.querySelector<HTMLTextAreaElement>('#first-brief')?.value.includes('#b='))
  })

  for (const [width, colorScheme] of [
    [1280, 'dark'],
    [320, 'light']
  ] as const) {
    it(`is sound at ${width} px, ${colorScheme}`, async () => {
      const page = await compared({ width, colorScheme })
      expect(await axe(page)).toEqual([])
      await noSidewaysScroll(page)
    })
  }

  it('prints on three sheets at most, with nothing to press', async () => {
    const page = await compared()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.btn:visible, textarea:visible').count()).toBe(0)
    for (const format of ['Letter', 'A4'] as const) {
      const sheets = sheetsOf(await page.pdf({ format }))
      expect(sheets, format).toBeGreaterThan(0)
      expect(sheets, format).toBeLessThanOrEqual(3)
    }
  })

  it('without script, says what there is instead', async () => {
    const page = await openPage('/compare/', { javaScriptEnabled: false })
    await page.getByRole('link', { name: 'an example brief' }).click()
    await page.locator('.brief h1').waitFor()
  })

  it('its places are of the list', () => {
    const ids = JSON.parse(readFileSync(new URL('../../content/places.json', import.meta.url), 'utf8'))
    expect(JSON.stringify(ids)).toContain('duluth-mn')
  })
})
