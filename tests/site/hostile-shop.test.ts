/** Words and prices that nobody should send, in a sheet that holds: they stay text, wrap, break no sentence, and are told. */
import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import type { ShopSheetContent } from '../../src/data/shop-schema'
import { encodeBrief, encodeInvite, encodeLink } from '../../src/shop/link'
import { axe, openPage } from './harness'
import { awake, noSidewaysScroll } from './steps'

const sample = JSON.parse(readFileSync(new URL('../../content/shop.json', import.meta.url), 'utf8')) as ShopSheetContent
const ANSWERS = { project: 'porch', exposure: 'weather', place: 'seattle-wa', span: 3657.6 } as const
const LONG = 'Woodwrights'.repeat(14)
const MARKUP = '<img src=x onerror="document.title=1"><script>document.title=2</script>'
const ODD: ShopSheetContent = {
  ...sample,
  placeholder: false,
  name: LONG.slice(0, 80),
  contact: `{gap} نجارة الأخشاب 🪵🪓 ${LONG.slice(0, 60)}`,
  note: `${MARKUP}\n{first} and {timber}\n${LONG}\nמימין לשמאל`,
  cautions: [LONG.slice(0, 150), `{weight} ${MARKUP}`, 'אזהרה: עץ נסדק 🪵'],
  woods: sample.woods.map((wood, i) => ({ ...wood, note: i === 0 ? MARKUP : LONG.slice(0, 100) }))
}
const priced = (perBoardFoot: number): ShopSheetContent => ({
  ...sample,
  woods: sample.woods.map((wood) => ({ ...wood, perBoardFoot }))
})

async function sound(page: Page): Promise<void> {
  await noSidewaysScroll(page)
  expect(
    await page.locator('main img, .brief script, .compared script, .invite-note script, .card script').count()
  ).toBe(0)
  const clipped = await page.evaluate(() =>
    [...document.querySelectorAll('.title-block dd, .shop-line, .invite-note, .wood-note, .cautions li, .card')]
      .filter((x) => x.scrollWidth > x.clientWidth + 1 && getComputedStyle(x).display !== 'inline')
      .map((x) => x.className || x.textContent?.slice(0, 40))
  )
  expect(clipped).toEqual([])
}

describe('words of a shop', () => {
  it.each([320, 1280])(
    'stay text and wrap at %i px: questions, brief, shop detail, two briefs, invite',
    {
      timeout: 120_000
    },
    async (width) => {
      const page = await openPage(`/start/#i=${encodeInvite({ sheet: ODD, answers: ANSWERS, locked: ['span'] })}`, {
        width
      })
      await page.locator('.invite-note', { hasText: '{first} and {timber}' }).waitFor()
      await page.locator('.invite-note summary').click()
      await sound(page)

      await page.goto(page.url().replace(/\/start\/.*/, '/brief/'))
      await page.locator('.shop-line', { hasText: '<script>' }).waitFor()
      expect(await page.locator('.title-block').first().textContent()).toContain('{gap} نجارة')
      expect(await page.locator('#cautions').textContent()).toContain('{weight} <img')
      expect(await page.title()).toMatch(/^Brief: /)
      await page.locator('.shop-switch > summary').click()
      await page.locator('.shop-inside').waitFor()
      await sound(page)
      if (width === 320) expect(await axe(page)).toEqual([])

      await page.getByRole('link', { name: 'Set this brief beside another' }).click()
      await awake(page)
      const second = encodeBrief(ANSWERS, { ...ODD, name: 'Oak {first} & {Sons}' })
      await page.locator('#second-brief').fill(`#b=${second}`)
      await page.getByRole('button', { name: 'Compare' }).click()
      await page.locator('#compared').waitFor()
      expect(await page.locator('.compared').textContent()).toContain('Oak {first} & {Sons}')
      await sound(page)

      await page.evaluate((text) => localStorage.setItem('bentwise.sheet.1', text), JSON.stringify(ODD))
      await page.goto(page.url().replace(/\/compare\/.*/, '/invite/'))
      await page.locator('#invite-link').waitFor()
      await sound(page)
    }
  )
})

describe('a sheet that does not hold', () => {
  it.each([
    ['text that turns the reading direction', { note: '\u202egnp.exe' }],
    ['a name longer than may be', { name: LONG }],
    ['no wood at all', { woods: [] }]
  ])('is refused in words: %s', async (_, change) => {
    const page = await openPage(`/brief/#b=${encodeBrief(ANSWERS, { ...sample, ...change })}`)
    await page.getByRole('heading', { name: 'This link did not open' }).waitFor()
    expect(await page.locator('.notice').textContent()).toMatch(/sheet could not be read/)
  })
})

describe('prices', () => {
  it('the dearest that a sheet may hold is worked out, and fits', async () => {
    const page = await openPage(`/brief/#b=${encodeBrief(ANSWERS, priced(1000))}`, { width: 320 })
    await page.locator('.brief h1').waitFor()
    expect(await page.locator('#cost .bill').textContent()).toMatch(/\$\d{1,3},\d{3},\d{3}/)
    expect(await page.locator('main').textContent()).not.toMatch(/NaN|Infinity|undefined/)
    await sound(page)
  })
  it('for nothing too', async () => {
    const page = await openPage(`/brief/#b=${encodeBrief(ANSWERS, { ...priced(0), rates: {} })}`, { width: 320 })
    await page.locator('.brief h1').waitFor()
    expect(await page.locator('main').textContent()).not.toMatch(/NaN|Infinity|undefined/)
  })
  it.each([-5, 1e9])('%d in a link is refused in words', async (price) => {
    const page = await openPage(`/brief/#b=${encodeBrief(ANSWERS, priced(price))}`)
    await page.getByRole('heading', { name: 'This link did not open' }).waitFor()
    expect(await page.locator('.notice').textContent()).toMatch(/sheet could not be read \(woods/)
  })
})

describe('what is brought', () => {
  it('half a link, an invite, and a file too large, are each refused in place', async () => {
    const page = await openPage('/compare/')
    await awake(page)
    const whole = encodeBrief(ANSWERS, sample)
    await page.locator('#first-brief').fill(`https://example.org/brief/#b=${whole.slice(0, whole.length / 2)}`)
    await page.locator('#second-brief').fill(`#i=${encodeInvite({ sheet: sample, answers: {}, locked: [] })}`)
    await page.getByRole('button', { name: 'Compare' }).click()
    await page.locator('#first-brief-problem').waitFor()
    expect(await page.locator('#first-brief-problem').textContent()).toMatch(/not whole|changed or cut/)
    expect(await page.locator('#second-brief-problem').textContent()).toMatch(/still to be answered/)
    const huge = { name: 'huge.json', mimeType: 'application/json', buffer: Buffer.alloc(6_000_000, '[') }
    await page.locator('input[type=file]').first().setInputFiles(huge)
    await page.locator('#first-brief-problem', { hasText: 'far larger' }).waitFor()
    // Deep, and small enough to be read.
    const deep = { ...huge, name: 'deep.json', buffer: Buffer.alloc(400_000, '[') }
    await page.locator('input[type=file]').first().setInputFiles(deep)
    await page.locator('#first-brief-problem', { hasText: 'deep.json' }).waitFor()
  })
  it('a link over 2,000 characters opens, and copying it says so', async () => {
    const page = await openPage(`/brief/#b=${encodeBrief(ANSWERS, longest())}`, { width: 320 })
    await page.locator('.brief h1').waitFor()
    await page.evaluate(() =>
      Object.defineProperty(navigator, 'clipboard', { value: { writeText: () => Promise.resolve() } })
    )
    await page.getByRole('button', { name: 'Copy a link to this brief' }).click()
    await page.locator('.actions', { hasText: /\d{4} characters long: .* send the file instead/ }).waitFor()
  })
  it('links without a sheet rest on the one in use here, and that is said', async () => {
    const page = await openPage('/compare/')
    await awake(page)
    await page.locator('#first-brief').fill(encodeLink(ANSWERS))
    await page.locator('#second-brief').fill(encodeBrief(ANSWERS, ODD))
    await page.getByRole('button', { name: 'Compare' }).click()
    await page.locator('#compared').waitFor()
    expect(await page.locator('.pair-sheet').allTextContents()).toEqual([
      `came without a sheet; worked out from ${sample.name}`,
      `with its own sheet, of ${ODD.name}`
    ])
  })
})

/** Words that do not pack. */
function longest(): ShopSheetContent {
  let seed = 7
  const word = () => {
    seed = (seed * 48271) % 0x7fffffff
    return seed.toString(36)
  }
  return {
    ...sample,
    woods: sample.woods.map((wood) => ({ ...wood, note: Array.from({ length: 17 }, word).join('') }))
  }
}
