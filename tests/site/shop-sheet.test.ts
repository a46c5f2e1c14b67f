/** The shop sheet as a framer meets it: made from nothing on a phone by keyboard, kept, opened, filled from a spreadsheet. */
import type { Download, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { readSheet } from '../../src/shop/sheet/door'
import { sheet as sample } from '../reference'
import { axe, openPage, type PageOptions } from './harness'
import { noSidewaysScroll, tabTo } from './steps'

async function open(options: PageOptions = {}): Promise<Page> {
  const page = await openPage('/shop/', { width: 360, ...options })
  if (options.javaScriptEnabled !== false) await page.locator('#shop-sheet[data-live]').waitFor()
  return page
}
const stored = (page: Page, key: string): Promise<unknown> =>
  page.evaluate((name) => JSON.parse(localStorage.getItem(name) ?? 'null'), key)
const kept = (page: Page) => stored(page, 'bentwise.sheet.1')
const standing = (page: Page) => page.locator('.shop-standing')
const button = (page: Page, name: RegExp) => page.getByRole('button', { name })

/** What has to be typed for a whole sheet. */
async function fillIn(page: Page): Promise<void> {
  await page.fill('#sheet-name', 'Invented framers')
  for (const [wood, price] of [
    ['white-oak', '4.90'],
    ['eastern-white-pine', '3']
  ]) {
    await page.check(`#sheet-wood-${wood}`)
    await page.fill(`#sheet-wood-${wood}-price`, price ?? '')
  }
  await page.fill('#sheet-rate-joinery-value', '9')
  await page.fill('#sheet-rate-raising-value', '2,50')
  await standing(page).getByText('It is kept on this device').waitFor()
}
async function textOf(download: Download): Promise<string> {
  const pieces: Buffer[] = []
  for await (const piece of await download.createReadStream()) pieces.push(Buffer.from(piece))
  return Buffer.concat(pieces).toString('utf8')
}
const file = (name: string, text: string) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(text) })

describe('without script', () => {
  it('says what it needs script for, what a sheet holds, and how to write one by hand', async () => {
    const page = await open({ javaScriptEnabled: false })
    expect(await page.locator('.shop-without').textContent()).toMatch(/needs script.*by hand.*sample/s)
    expect(await page.locator('#shop-sheet').isVisible()).toBe(false)
    const holds = await page.locator('main').textContent()
    expect(holds).toMatch(/Joinery, raising, finish/)
    await page.locator('summary', { hasText: 'How far each number' }).click()
    expect(await page.getByText('from 0 to 1,000 per board foot').first().isVisible()).toBe(true)
    for (const link of await page.locator('main a[href*="/data/"]').all()) {
      const answer = await page.request.get(new URL((await link.getAttribute('href')) ?? '', page.url()).href)
      expect(answer.ok()).toBe(true)
      await answer.json()
    }
  })
})

describe('a sheet from nothing', () => {
  it('is made on a phone by keyboard alone, passes the door, and is there again', async () => {
    const page = await open()
    await tabTo(page, '#sheet-name')
    await page.keyboard.type('Invented framers')
    await tabTo(page, '#shop-find')
    await page.keyboard.type('white o')
    await tabTo(page, '#sheet-wood-white-oak')
    await page.keyboard.press('Space')
    await tabTo(page, '#sheet-wood-white-oak-price')
    await page.keyboard.type('4.90')
    // Enter goes from number to number.
    await page.keyboard.press('Enter')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('sheet-rate-joinery-value')
    await page.keyboard.type('$9')
    await page.keyboard.press('Enter')
    await page.keyboard.type('2,50')
    await standing(page).getByText('It is kept on this device').waitFor()
    const made = readSheet(await kept(page))
    expect(made).toMatchObject({
      ok: true,
      sheet: {
        name: 'Invented framers',
        placeholder: false,
        woods: [{ species: 'white-oak', perBoardFoot: 4.9 }],
        rates: { joinery: { value: 9 }, raising: { value: 2.5 } }
      }
    })
    expect(await standing(page).locator('a.btn').getAttribute('href')).toMatch(/\/invite\/$/)
    await page.reload()
    await page.locator('#shop-sheet[data-live]').waitFor()
    expect(await page.locator('#sheet-wood-white-oak-price').inputValue()).toBe('4.90')
    expect(await standing(page).textContent()).toMatch(/complete/)
    expect(readSheet(await kept(page))).toEqual(made)
  })

  it('takes what was typed and ticked before its script had come', async () => {
    const page = await open()
    let go = () => {}
    const held = new Promise<void>((done) => {
      go = done
    })
    await page.route('**/shop-form.json', async (route) => {
      await held
      await route.continue()
    })
    await page.reload()
    await page.fill('#sheet-name', 'Early birds')
    await page.check('#sheet-wood-red-oak')
    await page.selectOption('#sheet-rate-freight-by', 'sum')
    go()
    await page.locator('#sheet-wood-red-oak-price').waitFor()
    expect(await page.locator('#sheet-name').inputValue()).toBe('Early birds')
    expect(await page.locator('#sheet-rate-freight-by').inputValue()).toBe('sum')
    expect(await page.locator('#sheet-rate-freight-value').count()).toBe(1)
  })

  it('the usual woods of a region are ticked at once', async () => {
    const page = await open()
    await page.selectOption('#shop-where', 'west')
    await button(page, /Tick the \d+ usual ones of the West/).click()
    expect(await page.locator('.shop-prices > li').count()).toBeGreaterThan(5)
    expect(await page.locator('#sheet-wood-douglas-fir-price').count()).toBe(1)
    expect(await page.locator('#sheet-wood-white-oak-price').count()).toBe(0)
  })

  it('lists what is missing, with the way to each field, and complains of a field once it was left', async () => {
    const page = await open()
    expect(await standing(page).locator('li').allTextContents()).toEqual([
      'Name of the shop',
      'Woods you carry',
      'Joinery: charge',
      'Raising: charge'
    ])
    expect(await page.locator('.error').count()).toBe(0)
    await standing(page).locator('a', { hasText: 'Joinery' }).click()
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('sheet-rate-joinery-value')
    await page.keyboard.press('Tab')
    expect(await page.locator('#sheet-rate-joinery-value-error').textContent()).toMatch(
      /from 0 to 1,000 per board foot/
    )
    expect(await page.locator('#sheet-rate-joinery-value').getAttribute('aria-describedby')).toMatch(/-error$/)
  })

  it('a wrong price is refused in place, kept as typed over a reload, and leaves the last whole sheet in use', async () => {
    const page = await open()
    await fillIn(page)
    const before = await kept(page)
    await page.fill('#sheet-wood-white-oak-price', '-4')
    await page.locator('#sheet-wood-white-oak-price-error').waitFor()
    expect(await page.locator('#sheet-wood-white-oak-price-error').textContent()).toMatch(/has to be from 0/)
    await page.reload()
    await page.locator('#shop-sheet[data-live]').waitFor()
    expect(await page.locator('#sheet-wood-white-oak-price').inputValue()).toBe('-4')
    expect(await kept(page)).toEqual(before)
    expect(await standing(page).textContent()).toMatch(/last complete sheet stays in use/)
  })

  it('opens the part that a complaint lies in', async () => {
    const page = await open()
    await page.locator('summary', { hasText: 'Waste' }).click()
    await page.fill('#sheet-band', '95')
    await page.locator('summary', { hasText: 'Waste' }).click()
    expect(await page.locator('summary', { hasText: 'Waste' }).textContent()).toMatch(/another look/)
    await standing(page).locator('a', { hasText: 'A quote may differ' }).click()
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('sheet-band')
  })

  it('sections are ticked in a grid or typed; a tick and the list agree', async () => {
    const page = await open()
    await page.locator('summary', { hasText: 'Sections and grade' }).click()
    await page.locator('summary', { hasText: 'grid' }).click()
    await page.getByLabel('4 by 6', { exact: true }).check()
    expect(await page.locator('#sheet-sizes').inputValue()).toMatch(/^4x6, 6x6,/)
    await page.fill('#sheet-sizes', '8x8 8x10')
    expect(await page.locator('.shop-matrix input:checked').count()).toBe(2)
    await button(page, /Millimetres/).click()
    expect(await page.locator('#sheet-sizes').inputValue()).toMatch(/150x150/)
    await button(page, /Put back/).click()
    expect(await page.locator('#sheet-sizes').inputValue()).toBe('8x8 8x10')
  })
})

describe('from the sample', () => {
  it('is a placeholder until the framer says otherwise; and what stood before can be put back', async () => {
    const page = await open()
    await page.fill('#sheet-name', 'Mine')
    await button(page, /Fill in from the sample/).click()
    await standing(page).getByText('still the sample').waitFor()
    expect(await page.locator('.shop-prices .mark--placeholder').count()).toBe(sample.woods.length)
    expect(await kept(page)).toEqual(sample)
    await button(page, /These are our prices/).click()
    expect(await kept(page)).toEqual({ ...sample, placeholder: false })
    await button(page, /Put back/).click()
    await button(page, /Fill in from the sample/).click()
    await button(page, /Put back/).click()
    expect(await page.locator('.shop-prices > li').count()).toBe(sample.woods.length)
  })
})

describe('what a client sees', () => {
  it('is worked out by the engine from this sheet, follows a price and another job, in the shop’s words', async () => {
    const page = await open({ width: 1280 })
    await fillIn(page)
    await page.locator('.shop-client').scrollIntoViewIfNeeded()
    const lead = page.locator('.shop-woods tr.lead td').last()
    await lead.waitFor()
    const first = await lead.textContent()
    await page.fill('#sheet-rate-joinery-value', '30')
    await page.waitForFunction(
      (was) => {
        const now = document.querySelector('.shop-woods tr.lead td:last-child')?.textContent
        return now !== undefined && now !== was
      },
      first,
      { timeout: 20_000 }
    )
    await page.fill('#sheet-cautions', 'We do not deliver in mud season.')
    await page.locator('.shop-client .caution', { hasText: 'mud season' }).waitFor()
    const about = await page.locator('.shop-client .help').textContent()
    await page.selectOption('#shop-job', '1')
    expect(await page.locator('.shop-client .help').textContent()).not.toBe(about)
  })
  it('text that holds script is text', async () => {
    const page = await open({ width: 1280 })
    await fillIn(page)
    const evil = '<img src=x onerror="document.title=1"><script>document.title=2</script>'
    for (const field of ['name', 'contact', 'note', 'cautions']) await page.fill(`#sheet-${field}`, evil.slice(0, 79))
    await page.locator('.shop-client').scrollIntoViewIfNeeded()
    await page.locator('.shop-client .caution', { hasText: '<img' }).waitFor()
    expect(await page.locator('main img, main form script').count()).toBe(0)
    expect(await page.title()).toMatch(/Shop sheet/)
    expect(await kept(page)).toMatchObject({ name: evil.slice(0, 79) })
  })
})

describe('a file', () => {
  it('saved and opened again gives the same sheet', async () => {
    const page = await open()
    await fillIn(page)
    const [download] = await Promise.all([page.waitForEvent('download'), button(page, /Save the sheet/).click()])
    const text = await textOf(download)
    const before = await kept(page)
    expect(JSON.parse(text)).toEqual(before)
    await button(page, /Empty the form/).click()
    await page.locator('#shop-open').setInputFiles(file('sheet.json', text))
    await button(page, /Put it into the form/).click()
    await standing(page).getByText('It is kept on this device').waitFor()
    expect(await kept(page)).toEqual(before)
  })
  it.each([
    ['{"version":1', /not JSON/],
    ['{"version":7}', /version 7/],
    [
      JSON.stringify({ ...sample, woods: [{ species: 'white-oak', perBoardFoot: -1 }] }),
      /price per board foot: at least 0/
    ],
    ['x'.repeat(300_000), /300 KB.*at most 200 KB/],
    [JSON.stringify({ ...sample, woods: [{ species: 'balsa', perBoardFoot: 1 }] }), /None of its woods/]
  ])('that cannot be taken is told in place and changes nothing, %#', async (text, says) => {
    const page = await open()
    await fillIn(page)
    const before = [await kept(page), await stored(page, 'bentwise.sheet-draft.1')]
    await page.locator('#shop-open').setInputFiles(file('sheet.json', text))
    await page.locator('#shop-opened').waitFor()
    expect(await page.locator('#shop-opened').textContent()).toMatch(says)
    expect([await kept(page), await stored(page, 'bentwise.sheet-draft.1')]).toEqual(before)
  })
  it('with an unknown wood is taken only when that was said', async () => {
    const page = await open()
    const woods = [...sample.woods, { species: 'balsa', perBoardFoot: 1 }]
    await page.locator('#shop-open').setInputFiles(file('sheet.json', JSON.stringify({ ...sample, woods })))
    expect(await page.locator('#shop-opened').textContent()).toMatch(/no data on balsa/)
    expect(await page.locator('.shop-prices > li').count()).toBe(0)
    await button(page, /Put it into the form/).click()
    expect(await page.locator('.shop-prices > li').count()).toBe(sample.woods.length)
  })
})

describe('a list of prices', () => {
  const LIST =
    'Species;Price;On request\nWhite oak;4.900,00;yes\nHemlock;"2.750,00";\nMystery wood;1.000,00;\nRed oak;dear;\n'
  it('is looked over first: unit asked, one of two chosen, the rest left', async () => {
    const page = await open()
    await page.locator('#shop-csv').setInputFiles(file('prices.csv', LIST))
    const review = page.locator('.shop-review')
    await review.waitFor()
    expect(await review.locator('tbody tr').count()).toBe(4)
    expect(await review.textContent()).toMatch(/price “dear”: not a number/)
    await noSidewaysScroll(page)
    expect(await axe(page)).toEqual([])
    await review.getByLabel('per thousand board feet').check()
    expect(await button(page, /Take 1 of 4 lines/).count()).toBe(1)
    await review.getByLabel('Wood of line 3, Hemlock').selectOption('eastern-hemlock')
    expect(await page.locator('.shop-prices > li').count()).toBe(0)
    await button(page, /Take 2 of 4 lines/).click()
    expect(await page.locator('#sheet-wood-white-oak-price').inputValue()).toBe('4.9')
    expect(await page.locator('#sheet-wood-white-oak-request').isChecked()).toBe(true)
    expect(await page.locator('#sheet-wood-eastern-hemlock-price').inputValue()).toBe('2.75')
    await button(page, /Put back/).click()
    expect(await page.locator('.shop-prices > li').count()).toBe(0)
  })
  it('can be saved to fill in, and pasted', async () => {
    const page = await open()
    await fillIn(page)
    const [download] = await Promise.all([page.waitForEvent('download'), button(page, /Save a list/).click()])
    const text = await textOf(download)
    expect(text).toMatch(/white-oak,White oak,4\.90/)
    await page.locator('summary', { hasText: 'paste the cells' }).click()
    await page.fill('#shop-paste', 'Wood\tPrice per BF\nWhite oak\t$5.10')
    await button(page, /Take 1 of 1 line/).click()
    expect(await page.locator('#sheet-wood-white-oak-price').inputValue()).toBe('5.1')
    await page.fill('#shop-paste', 'nonsense')
    expect(await page.locator('#shop-csv-says').textContent()).toMatch(/could not tell the columns/)
  })
})

describe('the form is sound', () => {
  for (const width of [320, 360, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`at ${width} px, ${colorScheme}: empty, filled, all open and refused`, async () => {
        const page = await open({ width, colorScheme })
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
        await button(page, /Fill in from the sample/).click()
        for (const summary of await page.locator('.shop-part > details > summary').all()) await summary.click()
        await page.locator('.shop-prices summary').first().click()
        await page.locator('summary', { hasText: 'grid' }).click()
        await page.fill('#sheet-wood-white-oak-price', '-1')
        await page.fill('#sheet-sizes', '8y8')
        await page.locator('.shop-client').scrollIntoViewIfNeeded()
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
        expect(await page.locator('main [style]').count()).toBe(0)
        const ids = await page.evaluate(() => [...document.querySelectorAll('[id]')].map((el) => el.id))
        expect(new Set(ids).size).toBe(ids.length)
        const small = await page.evaluate(() =>
          [...document.querySelectorAll('.shop-form :is(input, select, textarea, button, summary)')]
            .map((el) => ({
              id: el.id || el.textContent,
              box: el.getBoundingClientRect(),
              label: el.closest('label')?.getBoundingClientRect()
            }))
            .filter(({ box, label }) => box.width > 0 && Math.max(box.height, label?.height ?? 0) < 24)
            .map(({ id }) => id)
        )
        expect(small).toEqual([])
      })
    }
  }
  it('in forced colours and with reduced motion', async () => {
    const page = await open({ forcedColors: 'active', reducedMotion: 'reduce' })
    await button(page, /Fill in from the sample/).click()
    expect(await axe(page)).toEqual([])
  })
  it('speaks metric beside what is typed in feet and board feet', async () => {
    const page = await open()
    await fillIn(page)
    await page.locator('label:has(#units-si)').click()
    expect(await page.locator('.shop-prices .unit .si').first().textContent()).toMatch(
      /\$2,0\d\d per m³|\$1,2\d\d per m³/
    )
  })
})
