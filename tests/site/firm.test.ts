/** How sure, in the browser: any two side by side, two figures traded, and the questionnaire that says when to stop. */
import { describe, expect, it } from 'vitest'
import { encodeLink } from '../../src/shop/link'
import { axe, openPage } from './harness'
import { noSidewaysScroll, saveAnswers, savedAnswers } from './steps'

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

describe('two side by side', () => {
  it('begins with the first choice and the runner-up, and takes any other by keyboard', async () => {
    const page = await openPage(LINK)
    const one = page.getByLabel('The one')
    await one.waitFor()
    const wood = (await page.locator('.brief h1').textContent())?.split(',')[0] ?? ''
    const heads = () => page.locator('.side thead th').allTextContents()
    expect((await heads())[0]).toContain(wood)
    const before = await heads()
    const other = page.getByLabel('The other')
    await other.focus()
    await page.keyboard.type('White oak')
    await page.waitForFunction((was) => document.querySelectorAll('.side thead th')[1]?.textContent !== was, before[1])
    expect((await heads())[1]).toContain('White oak')
    expect((await heads())[0]).toBe(before[0])
    expect(await other.evaluate((el) => el === document.activeElement)).toBe(true)
    // What sets them apart is said in sentences, and each figure opens.
    expect(await page.locator('#side .list li').count()).toBeGreaterThan(0)
    expect(await page.locator('.side .q').count()).toBeGreaterThan(10)
    expect(await axe(page)).toEqual([])
    // Paper shows the brief's own two.
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.side:visible thead th').allTextContents()).toEqual(before)
  })
  it('one that is out says why; at 320 px both columns have room', async () => {
    const page = await openPage(LINK, { width: 320 })
    const other = page.getByLabel('The other')
    await other.waitFor()
    const out = await other.locator('option', { hasText: '(out)' }).first().getAttribute('value')
    await other.selectOption(out)
    await page.getByText('cannot do this job so:').waitFor()
    await noSidewaysScroll(page)
  })
})

describe('what is traded for what', () => {
  it('draws the two figures that are picked, and lists the efficient choices', async () => {
    const page = await openPage(LINK, { width: 360 })
    await page.getByLabel('Across').waitFor()
    await page.getByLabel('Upwards').selectOption('stickWeight')
    await page.locator('#trade th', { hasText: 'Weight of the heaviest stick' }).waitFor()
    // A figure is not set against itself: the other axis gives way.
    await page.getByLabel('Across').selectOption('stickWeight')
    await page.waitForFunction(() => {
      const [x, y] = [...document.querySelectorAll<HTMLSelectElement>('#trade select')]
      return x?.value === 'stickWeight' && y?.value === 'jobCost'
    })
    const letters = await page.locator('#trade tbody th').allTextContents()
    expect(letters.length).toBeGreaterThan(0)
    expect(letters[0]).toMatch(/^A\. /)
    await noSidewaysScroll(page)
    expect(await axe(page)).toEqual([])
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('#trade table:visible thead th').allTextContents()).toEqual([
      'Choice',
      'Whole job',
      'Gap at a shoulder'
    ])
  })
  it('stands in an example without script, and in forced colours its marks differ by shape', async () => {
    const page = await openPage('/examples/ridge-hall/', { javaScriptEnabled: false, forcedColors: 'active' })
    expect(await page.locator('#trade svg path[d$=z]').count()).toBeGreaterThan(1)
    expect(await page.locator('#trade svg rect').count()).toBeGreaterThan(1)
    expect(await page.locator('#trade select, #side select').count()).toBe(0)
    expect(await page.locator('.side tbody tr').count()).toBeGreaterThan(10)
  })
})

describe('how sure', () => {
  it('says how safe the choice is at its own weights, with the error', async () => {
    const page = await openPage(LINK)
    await page.locator('#sure').waitFor()
    expect(await page.locator('#sure').textContent()).toMatch(/stays first in .+ of such cases, give or take .+%/)
  })
})

describe('when to stop', () => {
  it('says which questions left still matter, each a step away, and keeps up with the answers', async () => {
    const page = await openPage('/start/')
    await saveAnswers(page, JSON.stringify(ANSWERS))
    await page.goto(`${page.url()}#q=budget`)
    await page.reload()
    const note = page.locator('.settled .left-open')
    await note.locator('a').first().waitFor()
    const said = await note.textContent()
    expect(said).toMatch(/^\d+ questions are left\. .+ could .+\./)
    await page.locator('.choice').first().click()
    await page.waitForFunction((was) => {
      const text = document.querySelector('.settled .left-open')?.textContent
      return text !== was && text?.includes('left.')
    }, said)
    const before = await savedAnswers(page)
    await note.locator('a').first().click()
    await page.waitForFunction(() => location.hash.startsWith('#q='))
    expect(await savedAnswers(page)).toEqual(before)
    expect(await axe(page)).toEqual([])
  })
  it('in the overview it stands once, over the answers', async () => {
    const page = await openPage('/start/', { width: 360 })
    await saveAnswers(page, JSON.stringify(ANSWERS))
    await page.goto(`${page.url()}#overview`)
    await page.reload()
    await page.locator('.overview .left-open a').first().waitFor()
    expect(await page.locator('.left-open:visible').count()).toBe(1)
    await noSidewaysScroll(page)
  })
})
