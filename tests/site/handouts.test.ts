/** Handouts on paper and on a screen: sheets counted, letters measured, nothing cut off, codes read back. */

import jsQR from 'jsqr'
import type { Page } from 'playwright-core'
import { PNG } from 'pngjs'
import { describe, expect, it } from 'vitest'
import { HANDOUTS, type Prose } from '../../src/handouts/prose'
import { axe, openPage, type PageOptions, underBase } from './harness'
import { sheetsOf } from './steps'

const PT = 96 / 72
const MM = 96 / 25.4
/** Paper in mm. */
const PAPERS = { Letter: [215.9, 279.4], A4: [210, 297] } as const
type Format = keyof typeof PAPERS
/** Margins of the page rule in handouts.css, mm. */
const SIDES = 26
const ENDS = 24
const LEAST_PT = 8

const path = (prose: Prose) => `/handouts/${prose.id}/`
const open = (prose: Prose, options: PageOptions = {}) => openPage(path(prose), options)

/** What a sheet has room for, CSS pixels. */
function room(prose: Prose, format: Format): readonly [number, number] {
  const [short, long] = PAPERS[format]
  const [w, h] = prose.wide ? [long, short] : [short, long]
  return [(w - SIDES) * MM, (h - ENDS) * MM]
}

async function onPaper(prose: Prose, format: Format, metric: boolean): Promise<Page> {
  const page = await open(prose, { width: Math.floor(room(prose, format)[0]), colorScheme: 'dark' })
  if (metric) await page.locator('label:has(#units-si)').click()
  await page.emulateMedia({ media: 'print' })
  await page.evaluate(() => document.fonts.ready)
  return page
}

/** Every run of letters that is printed: its size in px as drawn, its colour, and whether it lies within its sheet. */
const letters = (page: Page) =>
  page.evaluate(() => {
    const found: { text: string; px: number; colour: string; out: number }[] = []
    for (const leaf of document.querySelectorAll('.leaf')) {
      const edge = leaf.getBoundingClientRect()
      const walk = document.createTreeWalker(leaf, NodeFilter.SHOW_TEXT)
      for (let node = walk.nextNode(); node !== null; node = walk.nextNode()) {
        const parent = node.parentElement
        if (parent === null || node.textContent?.trim() === '' || parent.closest('.visually-hidden, .recalled'))
          continue
        const range = document.createRange()
        range.selectNodeContents(node)
        const box = range.getBoundingClientRect()
        if (box.width === 0) continue
        const style = getComputedStyle(parent)
        const scale =
          parent instanceof SVGElement ? ((parent as Element as SVGGraphicsElement).getScreenCTM?.()?.a ?? 1) : 1
        found.push({
          text: node.textContent?.trim().slice(0, 40) ?? '',
          px: Number.parseFloat(style.fontSize) * Math.abs(scale),
          colour: parent instanceof SVGElement ? style.fill : style.color,
          out: Math.max(edge.left - box.left, box.right - edge.right)
        })
      }
    }
    return found
  })

function contrastOnWhite(colour: string): number {
  const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map(Number)
  expect(Math.max(r, g, b) - Math.min(r, g, b), `${colour} is a grey`).toBeLessThanOrEqual(2)
  const s = r / 255
  const light = s <= 0.03928 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4
  return 1.05 / (light + 0.05)
}

const boxesOf = (pdf: Buffer) =>
  [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/g)].map((m) => [
    Number(m[1]),
    Number(m[2])
  ])

describe.each(HANDOUTS.map((prose) => [prose.id, prose] as const))('%s', (_, prose) => {
  for (const format of ['Letter', 'A4'] as const) {
    for (const metric of [false, true]) {
      it(`prints on ${prose.sheets} of ${format}, ${metric ? 'metric' : 'feet and inches'}, legibly and whole`, async () => {
        const page = await onPaper(prose, format, metric)
        const [width, height] = room(prose, format)
        const said = await letters(page)
        expect(said.length).toBeGreaterThan(30)
        for (const { text, px, colour, out } of said) {
          expect(px / PT, `${text}: at least ${LEAST_PT} pt`).toBeGreaterThanOrEqual(LEAST_PT - 0.02)
          expect(out, `${text}: within its sheet`).toBeLessThanOrEqual(1)
          expect(contrastOnWhite(colour), `${text}: ${colour}`).toBeGreaterThanOrEqual(4.5)
        }
        const sizes = await page
          .locator('.leaf')
          .evaluateAll((leaves) => leaves.map((l) => [l.scrollWidth, l.clientHeight]))
        expect(sizes).toHaveLength(prose.sheets)
        for (const [w = 0, h = 0] of sizes) {
          expect(w).toBeLessThanOrEqual(Math.ceil(width))
          expect(h, 'fits one sheet').toBeLessThanOrEqual(height)
        }
        const pdf = await page.pdf({ format, preferCSSPageSize: true })
        expect(sheetsOf(pdf)).toBe(prose.sheets)
        for (const [w = 0, h = 0] of boxesOf(pdf)) expect(w > h, 'set across').toBe(prose.wide)
      })
    }
  }

  for (const [width, colorScheme] of [
    [320, 'light'],
    [360, 'dark'],
    [1280, 'light']
  ] as const) {
    it(`is sound at ${width} px, ${colorScheme}`, async () => {
      const page = await open(prose, { width, colorScheme })
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth
      )
      expect(over, 'no sideways scroll').toBeLessThanOrEqual(0)
      expect(await page.locator('h1').count()).toBe(1)
      expect(await axe(page)).toEqual([])
    })
  }

  it('opens in forced colours', async () => {
    expect(await axe(await open(prose, { forcedColors: 'active' }))).toEqual([])
  })

  it('reads without script, with a line for the shop', async () => {
    const page = await open(prose, { javaScriptEnabled: false })
    const text = (await page.locator('.leaf').allTextContents()).join(' ')
    expect(text).toContain(prose.lead.split('{')[0]?.trim())
    expect(text).toMatch(/engineer/)
    expect(text).not.toMatch(/[{}]|NaN|undefined|Infinity/)
    expect(await page.locator('main [style]').count()).toBe(0)
    expect(await page.locator('[data-shop]').count()).toBe(prose.sheets)
    expect(await page.locator('[data-shop]').allTextContents()).toEqual(Array(prose.sheets).fill('to be filled in'))
  })
})

describe('the shop', () => {
  it('stands in the title block once its sheet is on this device; an invite comes first', async () => {
    const page = await openPage('/handouts/aftercare/')
    const names = () => page.locator('[data-shop]').allInnerTexts()
    await page.evaluate(() =>
      localStorage.setItem('bentwise.sheet.1', JSON.stringify({ name: 'Invented & <b>Sons</b>' }))
    )
    await page.reload()
    await expect.poll(names).toEqual(['Invented & <b>Sons</b>', 'Invented & <b>Sons</b>'])
    await page.evaluate(() =>
      localStorage.setItem(
        'bentwise.invite.1',
        JSON.stringify({ sheet: { name: 'Made-up Frames' }, answers: {}, locked: [] })
      )
    )
    await page.reload()
    await expect.poll(names).toEqual(['Made-up Frames', 'Made-up Frames'])
  })

  it('with a sheet that has no name the line stays', async () => {
    const page = await openPage('/handouts/aftercare/')
    await page.evaluate(() => localStorage.setItem('bentwise.sheet.1', JSON.stringify({ name: 7 })))
    await page.reload()
    expect(await page.locator('[data-shop] .visually-hidden').count()).toBe(2)
  })
})

describe('the code on the questionnaire', () => {
  const read = async (page: Page): Promise<string | undefined> => {
    const { data, width, height } = PNG.sync.read(await page.locator('.qr').screenshot())
    return jsQR(new Uint8ClampedArray(data), width, height)?.data
  }

  it('opens the questions where this site is served from', async () => {
    const page = await openPage('/handouts/questionnaire/', { colorScheme: 'dark' })
    const origin = new URL(page.url()).origin
    await expect.poll(() => read(page)).toBe(origin + underBase('/start/'))
    expect(await page.locator('.address').textContent()).toBe(new URL(origin).host + underBase('/start/'))
  })

  it('without script, built for no address, no code is shown and the words name the page', async () => {
    const page = await openPage('/handouts/questionnaire/', { javaScriptEnabled: false })
    expect(await page.locator('.qr').isVisible()).toBe(false)
    expect(await page.locator('.address').textContent()).toBe(`${underBase('/start/')} of this site`)
  })
})

describe('the index', () => {
  it('leads to every handout, and framers find it', async () => {
    const page = await openPage('/handouts/')
    for (const prose of HANDOUTS) expect(await page.locator(`main a[href="${underBase(path(prose))}"]`).count()).toBe(1)
    expect(await axe(page)).toEqual([])
    const framers = await openPage('/framers/')
    expect(await framers.locator(`main a[href="${underBase('/handouts/')}"]`).count()).toBe(1)
  })
})
