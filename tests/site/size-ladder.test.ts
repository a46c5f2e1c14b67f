/** The size ladder: there without script, live with it; the impossible is said with a way out; a job travels as a link. */
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { axe, openPage, type PageOptions } from './harness'
import { heldBack, LOST, noSidewaysScroll, sheetsOf } from './steps'

async function open(options: PageOptions & { at?: string } = {}): Promise<Page> {
  const page = await openPage(`/size-ladder/${options.at ?? ''}`, options)
  if (options.javaScriptEnabled !== false) await page.locator('#size-ladder[data-live]').waitFor()
  return page
}
const field = (page: Page, id: string) => page.locator(`#ladder-${id}`)
const caption = (page: Page) => page.locator('.ladder-figure figcaption')
const shows = (page: Page, words: RegExp) =>
  page.waitForFunction(
    ([source]) => new RegExp(source ?? '').test(document.querySelector('.ladder-figure figcaption')?.textContent ?? ''),
    [words.source]
  )
const chosen = (page: Page, words: RegExp) =>
  page.waitForFunction(
    ([source]) => new RegExp(source ?? '').test(document.querySelector('.ladder-chosen')?.textContent ?? ''),
    [words.source]
  )
const drawn = (page: Page) => page.locator('.ladder-forces svg').innerHTML()
const IMPOSSIBLE = '#beam/60x10ft/8in12/roof/40psf/heated/green/no1/full-sawn/douglas-fir'

describe('without script', () => {
  it('draws, tells and lists the example, with the sources of its figures and its cautions', async () => {
    const page = await open({ javaScriptEnabled: false })
    expect(await page.locator('h1').count()).toBe(1)
    expect(await page.locator('.ladder-figure svg:visible').count()).toBe(1)
    expect(await page.locator('.ladder-forces svg:visible').count()).toBe(1)
    expect(await caption(page).textContent()).toMatch(/King-post truss, 24.ft span, 12.ft spacing, 8.in 12/)
    expect(await page.locator('.ladder-table tbody tr').count()).toBeGreaterThan(25)
    expect(await page.locator('.ladder-table button.ladder-pick').count()).toBe(0)
    expect(await page.locator('.ladder-fields').isVisible()).toBe(false)
    expect(await page.locator('.ladder-told').textContent()).toMatch(/not for construction.*wind and uplift.*engineer/s)
    expect(await page.locator('main [style]').count()).toBe(0)
    await page.locator('.ladder-parts summary').first().click()
    expect(await page.locator('.ladder-parts table').first().textContent()).toMatch(/NDS 3\.9\.2/)
    const figure = page.locator('.ladder-table .q').first()
    await figure.focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('.source:popover-open').textContent()).toMatch(/Smallest section.*How we know/)
  })
})

describe('the size ladder', () => {
  for (const width of [320, 360, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`is sound at ${width} px, ${colorScheme}, all open, refused, impossible and all`, async () => {
        const page = await open({ width, colorScheme })
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
        for (const summary of await page.locator('.ladder-sheet summary').all()) await summary.click()
        await field(page, 'span').fill('200')
        await page.locator('#ladder-span-error').waitFor()
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
        await field(page, 'span').fill('60')
        await field(page, 'kind').selectOption('beam')
        await chosen(page, /Impossible in Douglas-fir/)
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
      })
    }
  }

  it('opens in forced colours, push and pull told apart', async () => {
    const page = await open({ forcedColors: 'active' })
    expect(await axe(page)).toEqual([])
    const lines = await page.evaluate(() =>
      ['.force-push', '.force-pull'].map((name) => {
        const { stroke, strokeDasharray } = getComputedStyle(document.querySelector(name) as Element)
        return { stroke, strokeDasharray }
      })
    )
    expect(lines[0]?.strokeDasharray).not.toBe(lines[1]?.strokeDasharray)
    for (const { stroke } of lines) expect(stroke).not.toBe('rgb(255, 255, 255)')
  })

  it('letters of the pictures can be read on the narrowest phone', async () => {
    const page = await open({ width: 320, at: '#queen/40x10ft/6in12/roof/40psf/heated/green/no1/full-sawn/white-oak' })
    await shows(page, /Queen-post/)
    const sizes = await page.evaluate(() =>
      [...document.querySelectorAll<SVGTextElement>('.ladder-forces text, .ladder-figure .pic--narrow text')].map(
        (t) => Number(t.getAttribute('font-size')) * (t.getScreenCTM()?.a ?? 0)
      )
    )
    expect(sizes.length).toBeGreaterThan(8)
    for (const px of sizes) expect(px).toBeGreaterThan(10.5)
    const over = await page.evaluate(() => {
      const box = document.querySelector('.ladder-forces svg')?.getBoundingClientRect()
      return [...document.querySelectorAll('.ladder-forces text')].filter(
        (t) => t.getBoundingClientRect().right > (box?.right ?? 0) + 1
      ).length
    })
    expect(over).toBe(0)
  })

  it('follows what is asked; fields come and go with what they belong to', async () => {
    const page = await open()
    const before = await drawn(page)
    expect(await page.locator('.ladder-points').count()).toBe(0)
    await field(page, 'kind').selectOption('queen')
    await shows(page, /Queen-post truss/)
    expect(await drawn(page)).not.toBe(before)
    await chosen(page, /Straining beam/)
    await field(page, 'kind').selectOption('joist')
    await shows(page, /Floor joist.*floor of rooms/)
    expect(await field(page, 'slope').count()).toBe(0)
    expect(await field(page, 'snow').count()).toBe(0)
    await field(page, 'bears').selectOption('deck')
    await shows(page, /deck in the open, 40.psf of snow/)
    await page.getByRole('button', { name: 'Add a load' }).click()
    await field(page, 'point1').fill('2000')
    await shows(page, /2,000.lb at mid-span/)
    await field(page, 'kind').selectOption('post')
    await shows(page, /Post, 9.ft high/)
    expect(await field(page, 'height').count()).toBe(1)
    await field(page, 'grade').selectOption('no2')
    await field(page, 'surface').selectOption('planed')
    await shows(page, /No\. 2, planed/)
    await field(page, 'surface').selectOption('metric')
    await shows(page, /No\. 2, full-sawn to metric sizes/)
    expect(await page.locator('.ladder-table td').first().textContent()).toMatch(/^\d+ × \d+.mm/)
  })

  it('a heavier snow makes stouter timber, in figures that open', async () => {
    const page = await open()
    const first = () => page.locator('.ladder-table tbody tr').first().locator('td').first().textContent()
    const light = await first()
    await field(page, 'snow').fill('120')
    await shows(page, /120.psf/)
    expect(await first()).not.toBe(light)
    const used = page.locator('.ladder-table .q').nth(1)
    await used.focus()
    await page.keyboard.press('Enter')
    const note = page.locator('.source:popover-open')
    await note.locator('.source-formula').waitFor()
    expect(await note.textContent()).toMatch(/NDS|National Design Specification/)
    const ids = await page.evaluate(() => [...document.querySelectorAll('[id]')].map((el) => el.id))
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('can be worked by keyboard alone: a wood from the table, its checks, and back', async () => {
    const page = await open()
    await page.getByRole('button', { name: 'White oak' }).focus()
    await page.keyboard.press('Enter')
    await chosen(page, /^In white oak/)
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('ladder-chosen')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    expect(await page.locator('.ladder-parts details').first().getAttribute('open')).not.toBeNull()
    expect(await page.locator('.ladder-parts table').first().isVisible()).toBe(true)
    await page.goBack()
    await chosen(page, /^In Douglas-fir/)
    expect(await field(page, 'wood').inputValue()).toBe('douglas-fir')
  })

  it.each([
    ['span', '0', /from 4.ft to 60.ft/],
    ['span', '200', /from 4.ft to 60.ft/],
    ['slope', '90 degrees', /could not read that.*from 2.in 12 to 24.in 12/],
    ['slope', '90', /from 2.in 12 to 24.in 12/],
    ['width', '0', /from 6.in to 24.ft/],
    ['snow', '99999', /from 0.psf to 200.psf/],
    ['span', 'wide', /could not read that.*from 4.ft/],
    ['snow', '', /could not read that/]
  ])('refuses %s %j beside its field, keeps it, and leaves the picture', async (id, typed, words) => {
    const page = await open()
    const before = await drawn(page)
    await field(page, id).fill(typed)
    await page.locator(`#ladder-${id}-error`).waitFor()
    expect(await page.locator(`#ladder-${id}-error`).textContent()).toMatch(words)
    expect(await field(page, id).getAttribute('aria-describedby')).toContain(`ladder-${id}-error`)
    await field(page, id).blur()
    expect(await field(page, id).inputValue()).toBe(typed)
    expect(await drawn(page)).toBe(before)
    expect(new URL(page.url()).hash).toBe('')
    expect(await page.locator('.bench-words').textContent()).toMatch(/needs another look/)
  })

  it('takes four loads at points, each refused at its own field, put and removed by keyboard', async () => {
    const page = await open({ at: '#beam/16x8ft/8in12/roof/40psf/heated/green/no1/full-sawn/douglas-fir', width: 360 })
    await shows(page, /^Beam or girt, 16.ft span/)
    await page.getByRole('button', { name: 'Add a load' }).focus()
    for (const n of [1, 2, 3, 4]) {
      await page.keyboard.press('Enter')
      await page.waitForFunction((id) => document.activeElement?.id === id, `ladder-point${n}`)
      if (n < 4) await page.getByRole('button', { name: 'Add a load' }).focus()
    }
    expect(await page.getByRole('button', { name: 'Add a load' }).count()).toBe(0)
    await field(page, 'point2').fill('2500')
    await field(page, 'at2').fill('20')
    await page.locator('#ladder-at2-error').waitFor()
    expect(await page.locator('#ladder-at2-error').textContent()).toMatch(/from 0.in to 16.ft/)
    await field(page, 'point3').fill('999999999')
    await page.locator('#ladder-point3-error').waitFor()
    expect(await page.locator('#ladder-point3-error').textContent()).toMatch(/from 0.lb to 50,000.lb/)
    await noSidewaysScroll(page)
    expect(await axe(page)).toEqual([])
    // Removed with what was wrong in it; what was refused elsewhere stays as typed.
    await page.getByRole('button', { name: 'Remove load 3' }).focus()
    await page.keyboard.press('Enter')
    await page.waitForFunction(() => document.activeElement?.id === 'ladder-add')
    expect(await field(page, 'at2').inputValue()).toBe('20')
    await field(page, 'at2').fill('5 ft 6 in')
    await shows(page, /1,000.lb at mid-span, 2,500.lb at 5.ft 6.in, 1,000.lb at 2.ft/)
    expect(new URL(page.url()).hash).toMatch(/\/p1000lb\/p2500lb@5\.5ft\/p1000lb@2ft$/)
    expect(await page.locator('.ladder-forces').textContent()).toMatch(/load 1 1,000.lb.*load 3 1,000.lb/)
    // A shorter span leaves a load hanging in the air: said at the load.
    await field(page, 'span').fill('5')
    await page.locator('#ladder-at2-error').waitFor()
    expect(await page.locator('#ladder-at2-error').textContent()).toMatch(/to 5.ft/)
  })

  it('every figure of the page opens to where it comes from', async () => {
    const page = await open()
    await page.locator('.ladder-table button.ladder-pick').first().waitFor()
    const bare = await page.evaluate(() =>
      [
        ...document.querySelectorAll(
          '.ladder-table td, .ladder-parts tr:not(.ladder-inputs) td, .ladder-parts p, .ladder-told p'
        )
      ]
        .filter((el) => [...el.querySelectorAll('.us')].some((us) => !us.closest('.q, .source')))
        .map((el) => el.textContent)
    )
    expect(bare).toEqual([])
    await page.locator('.ladder-parts summary').first().click()
    await page.locator('.ladder-parts tbody .q').first().click()
    expect(await page.locator('.source:popover-open').textContent()).toMatch(
      /Compression with bending.*P.*8,\d\d0.lb.*Fc.*925.psi.*National Design Specification.*3\.9\.2/
    )
  })

  it('says what is impossible, and what would make it possible', async () => {
    const page = await open({ at: IMPOSSIBLE })
    await chosen(page, /Impossible in Douglas-fir of this grade/)
    const says = await page.locator('.ladder-ways').textContent()
    expect(says).toMatch(/carries as far as \d+.ft/)
    expect(says).toMatch(/carry a width of/)
    expect(says).toMatch(/In its place would do: .*truss/)
    expect(says).toMatch(/engineer/)
    expect(await page.locator('.ladder-told').textContent()).toMatch(/None of \d+ woods/)
    expect(await page.locator('.ladder-forces').count()).toBe(0)
    await noSidewaysScroll(page)
  })

  it('speaks metres and kilonewtons where the reader does', async () => {
    const page = await open()
    await page.locator('label:has(#units-si)').click()
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#ladder-span')?.value === '7.32')
    expect(await page.locator('.ladder-forces .si', { hasText: 'kN' }).first().isVisible()).toBe(true)
    await field(page, 'span').fill('70')
    await page.locator('#ladder-span-error').waitFor()
    expect(await page.locator('#ladder-span-error').textContent()).toMatch(/from 1\.22.m to 18\.28.m/)
    await field(page, 'span').fill('9')
    await shows(page, /9.m span/)
    expect(page.url()).toMatch(/#king\/9000x3657\.6mm\//)
  })
})

describe('a link', () => {
  it('carries the job to another visitor, who sees the same', async () => {
    const page = await open()
    await field(page, 'kind').selectOption('beam')
    await field(page, 'bears').selectOption('storage')
    await field(page, 'span').fill('14 ft 6 in')
    await page.getByRole('button', { name: 'Add a load' }).click()
    await field(page, 'point1').fill('1500')
    await field(page, 'wood').selectOption('white-oak')
    await chosen(page, /^In white oak/)
    const { hash } = new URL(page.url())
    expect(hash).toBe('#beam/14.5x12ft/8in12/storage/40psf/heated/green/no1/full-sawn/white-oak/p1500lb')
    const other = await open({ at: hash })
    await chosen(other, /^In white oak/)
    const table = (p: Page) => p.locator('.ladder-rungs').textContent()
    expect(await table(other)).toBe(await table(page))
    expect(await field(other, 'point1').inputValue()).toBe('1500')
    expect(await field(other, 'span').inputValue()).toBe('14 ft 6 in')
  })

  it.each([
    ['#king/24by10', /at “24by10”/],
    ['#king/24x10ft/8in12/roof/40psf/heated/green/no1/full-sawn/balsa', /at “balsa”/],
    ['#king/200x10ft/8in12/roof/40psf/heated/green/no1/full-sawn/white-oak', /could not be read/],
    ['#joist/12x2ft/8in12/roof/40psf/heated/green/no1/full-sawn/white-oak', /at “roof”/],
    ['#%E0%A4%A', /could not be read/]
  ])('that cannot be read, %s, shows the example and says so', async (at, words) => {
    const page = await open({ at })
    await page.waitForFunction(() =>
      /could not be read/.test(document.querySelector('.bench-words')?.textContent ?? '')
    )
    expect(await page.locator('.bench-words .notice').textContent()).toMatch(words)
    expect(await caption(page).textContent()).toMatch(/King-post truss, 24.ft span/)
  })

  it('leads here from the pages that it belongs to', async () => {
    for (const from of ['/', '/framers/', '/drying-clock/', '/log-end/']) {
      const page = await openPage(from)
      await page.locator('main a[href$="/size-ladder/"]').first().click()
      await page.waitForURL(/size-ladder/)
      expect(await page.locator('h1').textContent()).toBe('How stout?')
    }
  })
})

describe('a bad connection', () => {
  it('says that it loads, says that it failed, keeps what was chosen, and tries again', async () => {
    const page = await openPage('/log-end/', { allow: [LOST] })
    const numbers = await heldBack(page, '**/data/reference.json')
    await page.goto(page.url().replace('log-end', 'size-ladder'))
    await page.locator('#size-ladder[data-live]').waitFor()
    await field(page, 'wood').selectOption('red-oak')
    await page.getByText('Loading the numbers about wood').waitFor()
    await numbers.lose()
    await page.getByText('did not load').waitFor()
    expect(await field(page, 'wood').inputValue()).toBe('red-oak')
    numbers.pass()
    await page.getByRole('button', { name: 'Try again' }).click()
    await chosen(page, /^In red oak/)
    expect(await page.locator('.bench-words .notice').count()).toBe(0)
  })

  it('says so too where the controls themselves do not come, and takes what was typed before they did', async () => {
    const page = await openPage('/log-end/', { allow: [LOST] })
    let fail = true
    await page.context().route('**/data/size-ladder.json', (route) => (fail ? route.abort() : route.continue()))
    await page.goto(page.url().replace('log-end', 'size-ladder'))
    await field(page, 'span').fill('30')
    await page.getByText('The controls did not load').waitFor()
    fail = false
    await page.getByRole('button', { name: 'Try again' }).click()
    await shows(page, /30.ft span/)
    expect(await field(page, 'span').inputValue()).toBe('30')
    expect(await page.locator('#size-ladder-waits').isVisible()).toBe(false)
  })
})

describe('on paper', () => {
  it('is four sheets, Letter and A4, all checks of the wood looked into on them, without its fields, with its cautions', async () => {
    const page = await open({ colorScheme: 'dark' })
    for (const format of ['Letter', 'A4']) {
      expect(sheetsOf(await page.pdf({ format })), format).toBe(4)
    }
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.ladder-fields').isVisible()).toBe(false)
    expect(await page.locator('.ladder-pick').first().isVisible()).toBe(true)
    expect(await page.locator('.ladder-forces svg').isVisible()).toBe(true)
    expect(await page.locator('.ladder-told').textContent()).toMatch(/not for construction/)
    // Closed on screen, set down on paper: each timber's checks take up room.
    for (const table of await page.locator('.ladder-parts table').all())
      expect((await table.boundingBox())?.height).toBeGreaterThan(60)
    expect(await page.locator('.ladder-parts').textContent()).toMatch(/NDS 3\.9\.2.*P 8,\d\d0.lb.*Next lighter is.*%/s)
    await page.emulateMedia({ media: 'screen' })
    expect(await page.locator('.ladder-parts table').first().isVisible()).toBe(false)
  })
})
