/** The drying clock: there without script, live with it; what cannot be drawn is said; a setting travels as a link. */
import type { Locator, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { axe, openPage, type PageOptions } from './harness'
import { heldBack, LOST, noSidewaysScroll, sheetsOf } from './steps'

async function open(options: PageOptions & { at?: string } = {}): Promise<Page> {
  const page = await openPage(`/drying-clock/${options.at ?? ''}`, options)
  if (options.javaScriptEnabled !== false) await page.locator('#drying-clock[data-live]').waitFor()
  return page
}
const field = (page: Page, id: string) => page.locator(`#clock-${id}`)
const caption = (page: Page) => page.locator('.clock-figure figcaption')
const shows = (page: Page, words: RegExp) =>
  page.waitForFunction(
    ([source]) => new RegExp(source ?? '').test(document.querySelector('.clock-figure figcaption')?.textContent ?? ''),
    [words.source]
  )
const line = (page: Page) => page.locator('.clock .pic--wide .chalk-line').getAttribute('d')

describe('without script', () => {
  it('draws, tells and lists the example, with the sources of its figures', async () => {
    const page = await open({ javaScriptEnabled: false })
    expect(await page.locator('h1').count()).toBe(1)
    expect(await page.locator('.clock svg[role="img"]').count()).toBe(2)
    expect(await page.locator('.clock svg:visible').count()).toBe(1)
    expect(await caption(page).textContent()).toMatch(/8 × 8.in Douglas-fir, green, felled in January.*Portland, OR/)
    expect(await page.locator('.clock-table tbody tr').count()).toBe(5)
    expect(await page.locator('.clock-told').textContent()).toMatch(/still to come in the frame/)
    expect(await page.locator('.clock-fields').isVisible()).toBe(false)
    expect(await page.locator('main').textContent()).toMatch(/A kiln is paced to the weeks that the shop gives it/)
    expect(await page.locator('main [style]').count()).toBe(0)
    const figure = page.locator('.clock-table .q').first()
    await figure.focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('.source:popover-open').textContent()).toMatch(
      /Moisture on the drying clock.*How we know/
    )
  })
})

describe('the drying clock', () => {
  for (const width of [320, 360, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`is sound at ${width} px, ${colorScheme}, refused fields and a kept curve and all`, async () => {
        const page = await open({ width, colorScheme })
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
        await page.getByRole('button', { name: 'Keep this one to compare' }).click()
        await field(page, 'wood').selectOption('giant-sequoia')
        await shows(page, /giant sequoia.*Dotted/)
        await field(page, 'breadth').fill('99')
        await page.locator('#clock-breadth-error').waitFor()
        await field(page, 'place').fill('Zzyzx')
        await field(page, 'place').blur()
        await page.locator('#clock-place-error').waitFor()
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
      })
    }
  }

  it('opens in forced colours, its lines told apart', async () => {
    const page = await open({ forcedColors: 'active' })
    expect(await axe(page)).toEqual([])
    const drawn = await page.evaluate(() =>
      ['.clock-middle', '.clock-outside', '.clock-air', '.chalk-line'].map((name) => {
        const { stroke, strokeDasharray, strokeWidth } = getComputedStyle(
          document.querySelector(`.pic--wide ${name}`) as Element
        )
        return { stroke, dash: `${strokeDasharray} ${strokeWidth}` }
      })
    )
    expect(new Set(drawn.map((d) => d.dash)).size).toBe(4)
    for (const { stroke } of drawn) expect(stroke).not.toBe('rgb(255, 255, 255)')
  })

  it('follows wood, way of drying and month; fields come and go with what they belong to', async () => {
    const page = await open()
    const before = await line(page)
    await field(page, 'wood').selectOption('white-oak')
    await shows(page, /white oak/)
    expect(await line(page)).not.toBe(before)
    expect(await field(page, 'yardWeeks').count()).toBe(0)
    await field(page, 'seasoning').selectOption('air')
    await field(page, 'yardWeeks').fill('2 years')
    await shows(page, /104\.4 weeks in the yard/)
    await field(page, 'seasoning').selectOption('kiln')
    expect(await field(page, 'yardWeeks').count()).toBe(0)
    await shows(page, /7 weeks in the kiln/)
    await field(page, 'exposure').selectOption('roofed')
    await shows(page, /outside under a roof/)
    expect(await field(page, 'heating').count()).toBe(0)
    await field(page, 'felledMonth').selectOption('7')
    await shows(page, /felled in July/)
    expect(await page.locator('.clock-table').textContent()).toMatch(/Out of the kiln/)
  })

  it('can be worked by keyboard alone: a place by name, and back to where it was', async () => {
    const page = await open()
    await field(page, 'place').focus()
    await page.keyboard.press('Control+a')
    await page.keyboard.type('burlington verm')
    await page.locator('[role="option"]').first().waitFor()
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await shows(page, /Burlington, VT/)
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('clock-exposure')
    await page.keyboard.press('ArrowDown')
    await shows(page, /indoors, not heated/)
    await page.goBack()
    await shows(page, /Burlington, VT, in a heated room/)
    await page.goBack()
    await shows(page, /Portland, OR/)
    expect(await field(page, 'place').inputValue()).toBe('Portland, OR')
  })

  it.each([
    ['breadth', '99', /from 2 to 24.in/],
    ['depth', 'wide', /could not read that.*inches.*from 2 to 30.in/],
    ['shopWeeks', '900', /from 0 to 260.weeks/],
    ['shopWeeks', '', /could not read that/]
  ])('refuses %s %j beside its field, keeps it, and leaves the picture', async (id, typed, words) => {
    const page = await open()
    const before = await line(page)
    await field(page, id).fill(typed)
    await page.locator(`#clock-${id}-error`).waitFor()
    expect(await page.locator(`#clock-${id}-error`).textContent()).toMatch(words)
    expect(await field(page, id).getAttribute('aria-describedby')).toContain(`clock-${id}-error`)
    await field(page, id).blur()
    expect(await field(page, id).inputValue()).toBe(typed)
    expect(await line(page)).toBe(before)
    expect(new URL(page.url()).hash).toBe('')
  })

  it('says which place it does not know, offers near ones, and shows the old one again when emptied', async () => {
    const page = await open()
    await field(page, 'place').fill('Burlingtun')
    await page.getByText('Nearest that we have').waitFor()
    await field(page, 'place').blur()
    await page.locator('#clock-place-error').waitFor()
    expect(await field(page, 'place').inputValue()).toBe('Burlingtun')
    await field(page, 'place').fill('')
    await field(page, 'place').blur()
    expect(await field(page, 'place').inputValue()).toBe('Portland, OR')
    expect(await page.locator('#clock-place-error').count()).toBe(0)
    await field(page, 'place').fill('Burlingtun')
    await page.getByRole('button', { name: 'Burlington, VT' }).click()
    await shows(page, /Burlington, VT/)
  })

  it('speaks millimetres where the reader does', async () => {
    const page = await open()
    await page.locator('label:has(#units-si)').click()
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#clock-breadth')?.value === '203')
    await field(page, 'breadth').fill('20')
    await page.locator('#clock-breadth-error').waitFor()
    expect(await page.locator('#clock-breadth-error').textContent()).toMatch(/from 51 to 609.mm/)
    await field(page, 'breadth').fill('300')
    await shows(page, /203 × 300.mm/)
    expect(page.url()).toMatch(/#douglas-fir\/300x203\.2mm\//)
  })

  it('leaves a curve to compare with, and takes it away', async () => {
    const page = await open()
    await page.getByRole('button', { name: 'Keep this one to compare' }).click()
    expect(await page.locator('.clock-kept').count()).toBe(0)
    await field(page, 'breadth').fill('12')
    await shows(page, /Dotted, kept to compare: 8 × 8/)
    expect(await page.locator('.pic--wide .clock-kept').count()).toBe(1)
    expect(await page.locator('.pic--wide text', { hasText: 'kept: 8 × 8' }).count()).toBe(1)
    await page.getByRole('button', { name: 'Take the dotted one away' }).click()
    await page.locator('.clock-kept').first().waitFor({ state: 'detached' })
  })

  it('opens each figure, whichever wood, and repeats no id', async () => {
    const page = await open()
    await field(page, 'wood').selectOption('red-oak')
    await shows(page, /red oak/)
    const opened = async (figure: Locator) => {
      await figure.focus()
      await page.keyboard.press('Enter')
      const note = page.locator('.source:popover-open')
      await note.locator('.source-formula').waitFor()
      const text = await note.textContent()
      await page.keyboard.press('Escape')
      return text
    }
    const row = page.locator('.clock-table tbody tr').nth(1)
    expect(await opened(row.locator('td .q').first())).toMatch(/days for a 1 in board/)
    expect(await opened(row.locator('td .q').last())).toMatch(/still to come/)
    const ids = await page.evaluate(() => [...document.querySelectorAll('[id]')].map((el) => el.id))
    expect(new Set(ids).size).toBe(ids.length)
  })
})

describe('a link', () => {
  it('carries the setting to another visitor, who sees the same', async () => {
    const page = await open()
    await field(page, 'wood').selectOption('white-oak')
    await field(page, 'seasoning').selectOption('air')
    await field(page, 'yardWeeks').fill('104')
    await shows(page, /104 weeks in the yard/)
    const { hash } = new URL(page.url())
    expect(hash).toBe('#white-oak/8x8in/portland-or/heated/air-104/jan/8/first-winter')
    const other = await open({ at: hash })
    await shows(other, /104 weeks in the yard/)
    expect(await other.locator('.clock-table').textContent()).toBe(await page.locator('.clock-table').textContent())
    expect(await line(other)).toBe(await line(page))
    expect(await field(other, 'yardWeeks').inputValue()).toBe('104')
  })

  it.each([
    ['#white-oak/8by8', /at “8by8”|could not be read/],
    ['#balsa/8x8in/portland-or/heated/green/jan/8/first-winter', /at “balsa”/],
    ['#white-oak/8x99in/portland-or/heated/green/jan/8/first-winter', /could not be read/],
    ['#%E0%A4%A', /could not be read/]
  ])('that cannot be read, %s, shows the example and says so', async (at, words) => {
    const page = await open({ at })
    const notice = page.locator('.clock-words .notice')
    await notice.waitFor()
    await page.waitForFunction(() =>
      /could not be read/.test(document.querySelector('.clock-words')?.textContent ?? '')
    )
    expect(await notice.textContent()).toMatch(words)
    expect(await caption(page).textContent()).toMatch(/8 × 8.in Douglas-fir, green/)
  })

  it('is left alone by the skip link', async () => {
    const page = await open()
    await field(page, 'wood').selectOption('white-oak')
    await shows(page, /white oak/)
    await page.evaluate(() => {
      location.hash = '#main'
    })
    await page.waitForTimeout(200)
    expect(await caption(page).textContent()).toMatch(/white oak/)
    expect(await page.locator('.clock-words .notice').count()).toBe(0)
  })

  it('leads here from a brief, with its own timber', async () => {
    const page = await openPage('/examples/ridge-hall/')
    await page.getByRole('link', { name: 'Try other woods, sizes and dates' }).click()
    await page.waitForURL(/drying-clock\/#/)
    await page.locator('#drying-clock[data-live]').waitFor()
    await shows(page, /dried by radio-frequency vacuum/)
    expect(await page.locator('.clock-words .notice').count()).toBe(0)
  })
})

describe('a bad connection', () => {
  it('says that it loads, says that it failed, keeps what was chosen, and tries again', async () => {
    const page = await openPage('/log-end/', { allow: [LOST] })
    const numbers = await heldBack(page, '**/data/reference.json')
    await page.goto(page.url().replace('log-end', 'drying-clock'))
    await page.locator('#drying-clock[data-live]').waitFor()
    await field(page, 'wood').selectOption('red-oak')
    await page.getByText('Loading the numbers about wood').waitFor()
    expect(await caption(page).textContent()).toMatch(/Douglas-fir/)
    await numbers.lose()
    await page.getByText('did not load').waitFor()
    expect(await field(page, 'wood').inputValue()).toBe('red-oak')
    numbers.pass()
    await page.getByRole('button', { name: 'Try again' }).click()
    await shows(page, /red oak/)
    expect(await page.locator('.clock-words .notice').count()).toBe(0)
  })

  it('says so too where the controls themselves do not come, and takes what was typed before they did', async () => {
    const page = await openPage('/log-end/', { allow: [LOST] })
    let fail = true
    await page.context().route('**/data/drying-clock.json', (route) => (fail ? route.abort() : route.continue()))
    await page.goto(page.url().replace('log-end', 'drying-clock'))
    await field(page, 'breadth').fill('12')
    await field(page, 'place').fill('Burl')
    await page.getByText('The controls did not load').waitFor()
    fail = false
    await page.getByRole('button', { name: 'Try again' }).click()
    await shows(page, /8 × 12.in/)
    expect(await field(page, 'breadth').inputValue()).toBe('12')
    expect(await field(page, 'place').inputValue()).toBe('Burl')
    expect(await page.locator('#drying-clock-waits').isVisible()).toBe(false)
  })
})

describe('on paper', () => {
  it('is two sheets, Letter and A4, without its fields', async () => {
    const page = await open({ colorScheme: 'dark' })
    for (const format of ['Letter', 'A4']) {
      expect(sheetsOf(await page.pdf({ format })), format).toBe(2)
    }
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.clock-fields').isVisible()).toBe(false)
    expect(await page.locator('.clock-table').isVisible()).toBe(true)
  })
})
