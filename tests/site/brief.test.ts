import { readFileSync } from 'node:fs'
import { text as textOf } from 'node:stream/consumers'
import { describe, expect, it } from 'vitest'
import { encodeLink } from '../../src/shop/link'
import { axe, openPage } from './harness'
import { noSidewaysScroll, saveAnswers, savedAnswers, sheetsOf } from './steps'

const ANSWERS = {
  project: 'pavilion',
  exposure: 'weather',
  place: 'seattle-wa',
  span: 4876.8,
  finish: 'grey',
  upkeep: 'none',
  order: ['durability', 'cost']
}
const LINK = `/brief/#b=${encodeLink(ANSWERS)}`

const EXAMPLES = ['/examples/lakeside-pavilion/', '/examples/ridge-hall/']
const PARTS = [
  'sure',
  'why',
  'runner-up',
  'side',
  'change',
  'woods',
  'trade',
  'sizes',
  'movement',
  'drying',
  'lasting',
  'finish',
  'cost',
  'cautions',
  'ask',
  'shop',
  'told',
  'origins'
]

describe('a brief', () => {
  it('opens from a link, answers every part in order, and touches no answers of one’s own', async () => {
    const page = await openPage(LINK)
    await page.locator('.brief h1').waitFor()
    const parts = await page.locator('.brief section.sheet').evaluateAll((all) => all.map((section) => section.id))
    expect(
      PARTS.filter((part) => parts.includes(part)),
      'in the order of the sheet'
    ).toEqual(parts)
    expect(parts).toContain('woods')
    expect(await savedAnswers(page)).toEqual({})
    expect(await page.title()).toMatch(/^Brief: /)
  })

  it('accounts for every wood of the shop', async () => {
    const page = await openPage(LINK)
    await page.locator('.brief h1').waitFor()
    const shop = JSON.parse(readFileSync(new URL('../../content/shop.json', import.meta.url), 'utf8'))
    const named = (await page.locator('.woods-table tbody tr').count()) + (await page.locator('.outs > li').count())
    expect(named).toBe(shop.woods.length)
  })

  it('is the same from a copied link in another browser', async () => {
    const page = await openPage(LINK)
    await page.locator('.brief h1').waitFor()
    // Where the clipboard is refused, the link stands in a field, to be copied by hand.
    await page.evaluate(() =>
      Object.defineProperty(navigator, 'clipboard', { value: { writeText: () => Promise.reject(new Error('no')) } })
    )
    await page.getByRole('button', { name: 'Copy a link to this brief' }).click()
    const link = new URL(await page.locator('#brief-link').inputValue())
    const other = await openPage(`/brief/${link.hash}`)
    // What would change it is worked off after the brief stands.
    for (const p of [page, other]) await p.locator('#change .list').first().waitFor()
    const text = (p: typeof page) => p.locator('.brief > :not(.summary)').allTextContents()
    expect(await text(other)).toEqual(await text(page))
    expect(await text(other)).not.toEqual([])
  })

  it('tries every other answer once the brief stands, and each leads back to its question', async () => {
    const page = await openPage(LINK)
    await page.locator('#change .list').first().waitFor()
    const first = page.locator('#change .list a').first()
    expect(await first.getAttribute('href')).toMatch(/\/start\/#q=\w+$/)
    expect(await page.locator('#change').textContent()).toMatch(/Where it tips/)
  })

  it('goes to the clipboard where that is allowed', async () => {
    const page = await openPage(LINK)
    await page.locator('.brief h1').waitFor()
    await page.evaluate(() =>
      Object.defineProperty(navigator, 'clipboard', {
        value: { writeText: async (text: string) => void Object.assign(window, { copied: text }) }
      })
    )
    await page.getByRole('button', { name: 'Copy a link to this brief' }).click()
    await page.getByText('Link copied.').waitFor()
    expect(await page.evaluate(() => (window as unknown as { copied: string }).copied)).toContain('/brief/#b=2.')
  })

  it('is downloaded as plain JSON', async () => {
    const page = await openPage(LINK)
    await page.locator('.brief h1').waitFor()
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download as JSON' }).click()
    ])
    const text = await textOf(await download.createReadStream())
    expect(JSON.parse(text).answers).toMatchObject({ project: 'pavilion' })
    expect(text).not.toMatch(/NaN|Infinity/)
  })

  it('of one’s own answers needs no link, and is changed by editing them', async () => {
    const page = await openPage('/brief/')
    await page.getByRole('heading', { level: 1, name: 'No answers yet' }).waitFor()
    await saveAnswers(page, JSON.stringify(ANSWERS))
    await page.reload()
    await page.locator('.brief h1').waitFor()
    await page.getByRole('link', { name: 'Change answers' }).click()
    await page.getByRole('heading', { level: 1, name: 'Your answers' }).waitFor()
    expect(await page.locator('.answers', { hasText: '16 ft' }).count()).toBeGreaterThan(0)
  })

  it('opens each figure to formula, inputs and source, by keyboard', async () => {
    const page = await openPage(LINK)
    await page.locator('.brief h1').waitFor()
    const figure = page.locator('#movement .margin .q').first()
    await figure.focus()
    await page.keyboard.press('Enter')
    const note = page.locator('.source:popover-open')
    await note.waitFor()
    expect(await note.locator('.formula').count()).toBe(1)
    expect(await note.locator('.source-input').count()).toBeGreaterThan(0)
    expect(await note.locator('.source-mark').textContent()).toMatch(/How we know/)
    expect(await axe(page)).toEqual([])
    await page.keyboard.press('Escape')
    expect(await page.locator('.source:popover-open').count()).toBe(0)
    const ids = await page.locator('.source').evaluateAll((all) => all.map((note) => note.id))
    expect(new Set(ids).size).toBe(ids.length)
  })
})

describe('the timetable of a brief', () => {
  it('names months and the date, is told in a list, and its letters can be read at 360 px', async () => {
    const page = await openPage(`/brief/#b=${encodeLink({ ...ANSWERS, stands: 'w52', begins: 'spring' })}`, {
      width: 360
    })
    const sheet = page.locator('.timetable svg')
    await sheet.waitFor()
    expect(await sheet.getAttribute('aria-label')).toMatch(
      /^Time from the order until it can be raised: Green 5.weeks; /
    )
    const letters = await sheet
      .locator('text')
      .evaluateAll((all) => all.map((t) => ({ says: t.textContent, high: t.getBoundingClientRect().height })))
    expect(letters.map((t) => t.says)).toContain('your date')
    expect(letters.map((t) => t.says)).toContain('Jul')
    for (const { says, high } of letters) expect(high, says ?? '').toBeGreaterThan(11)
    const told = await page.locator('.timetable-told li').allTextContents()
    expect(told.map((text) => text.split(':')[0])).toEqual(['Green', 'Air-dried', 'Kiln-dried', 'Vacuum-dried'])
  })
})

describe('a link that is not whole', () => {
  it.each([
    ['cut', LINK.slice(0, -12)],
    ['empty', '/brief/#b='],
    ['hostile', '/brief/#b=1.<script>alert(1)</script>.x'],
    ['of another version', '/brief/#b=9.abc.def'],
    ['far too long', `/brief/#b=1.${'A'.repeat(20_000)}.x`]
  ])('%s: says so, leaves one’s own answers, offers to go on', async (_name, path) => {
    const page = await openPage('/framers/')
    await saveAnswers(page, '{"finish":"grey"}')
    const start = page.url().replace('/framers/', '')
    await page.goto('about:blank')
    await page.goto(start + path)
    await page.getByRole('heading', { level: 1, name: 'This link did not open' }).waitFor()
    expect(await savedAnswers(page)).toEqual({ finish: 'grey' })
    await page.getByRole('link', { name: 'See my own brief' }).click()
    await page.locator('.brief h1').waitFor()
    expect(page.url()).not.toContain('#b=')
  })

  it('with answers that cannot be: leaves those out and says which', async () => {
    const page = await openPage(`/brief/#b=${encodeLink({ ...ANSWERS, span: -5, stands: 'yesterday' })}`)
    await page.locator('.brief h1').waitFor()
    expect(await page.locator('.brief-from').textContent()).toContain('Left out of it')
  })
})

describe('a brief is sound', () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      it(`at ${width} px, ${colorScheme}`, async () => {
        const page = await openPage(LINK, { width, colorScheme })
        await page.locator('.brief h1').waitFor()
        for (const summary of await page.locator('.detail summary').all()) await summary.click()
        expect(await axe(page)).toEqual([])
        await noSidewaysScroll(page)
      })
    }
  }

  it('at 320 px', async () => {
    const page = await openPage(LINK, { width: 320 })
    await page.locator('.brief h1').waitFor()
    for (const summary of await page.locator('.detail summary').all()) await summary.click()
    await noSidewaysScroll(page)
  })

  it.each([
    // What is still open takes a sheet more.
    ['with open questions', LINK, 12],
    ['the pavilion', '/examples/lakeside-pavilion/', 11],
    ['the hall', '/examples/ridge-hall/', 11]
  ])('on paper, Letter and A4, nothing to press: %s', async (_, path, most) => {
    const page = await openPage(path)
    // The last part to come.
    await page.locator('#change .list').first().waitFor()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.btn:visible, .source:visible, .notice:visible').count()).toBe(0)
    expect(await page.locator('.origins').isVisible()).toBe(true)
    for (const format of ['Letter', 'A4'] as const) {
      const sheets = sheetsOf(await page.pdf({ format, preferCSSPageSize: false }))
      expect(sheets, format).toBeGreaterThan(2)
      expect(sheets, format).toBeLessThanOrEqual(most)
    }
  })

  it('without script, the page says what there is instead', async () => {
    const page = await openPage('/brief/', { javaScriptEnabled: false })
    await page.getByRole('link', { name: 'an example' }).click()
    await page.locator('.brief h1').waitFor()
  })
})

describe.each(EXAMPLES)('%s', (path) => {
  it('is whole without script, and its figures open', async () => {
    const page = await openPage(path, { javaScriptEnabled: false })
    expect(await page.locator('script[src]').count()).toBe(0)
    await page.locator('.summary .q').first().click()
    await page.locator('.source:popover-open').waitFor()
    await noSidewaysScroll(page)
  })

  it('says the same as the engine in the browser does with its answers', async () => {
    const page = await openPage(path)
    const headline = await page.locator('.brief h1').textContent()
    const woods = await page.locator('.woods-table th[scope=row]').allTextContents()
    await page.getByRole('link', { name: 'Go on from these answers' }).click()
    await page.getByRole('heading', { level: 1, name: 'Your answers' }).waitFor()
    await page.getByRole('link', { name: 'See your brief' }).click()
    await page.locator('.brief h1').waitFor()
    expect(await page.locator('.brief h1').textContent()).toBe(headline)
    expect(await page.locator('.woods-table th[scope=row]').allTextContents()).toEqual(woods)
  })

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`is sound at 360 px, ${colorScheme}`, async () => {
      const page = await openPage(path, { width: 360, colorScheme })
      expect(await axe(page)).toEqual([])
      await noSidewaysScroll(page)
    })
  }
})
