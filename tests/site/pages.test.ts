/**
 * The pages that are there for everyone: they open without complaint at a phone's width and a desk's, in light and
 * dark, read well to assistive technology, and never scroll sideways. Units and theme work as promised.
 */
import { readFileSync } from 'node:fs'
import { renderToString } from 'preact-render-to-string'
import { describe, expect, it } from 'vitest'
import { EXAMPLES, QUESTION_EXAMPLES } from '../../src/ui/examples'
import { axe, openPage } from './harness'

const PAGES = ['/', '/framers/', '/sources/', '/places/'] as const
const LOST = '/no-such-page/'
const notFound = /404/

async function sound(path: string, options: Parameters<typeof openPage>[1]) {
  const page = await openPage(path, { ...options, allow: path === LOST ? [notFound] : [] })
  expect(await page.locator('h1').count(), 'one h1').toBe(1)
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(over, 'no sideways scroll').toBeLessThanOrEqual(0)
  expect(await axe(page)).toEqual([])
  return page
}

describe.each([...PAGES, LOST])('%s', (path) => {
  for (const width of [320, 360, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`is sound at ${width} px, ${colorScheme}`, async () => {
        await sound(path, { width, colorScheme })
      })
    }
  }

  it('opens in forced colours', async () => {
    await sound(path, { forcedColors: 'active' })
  })

  it('ships no framework script', async () => {
    const page = await openPage(path, { allow: path === LOST ? [notFound] : [] })
    expect(await page.locator('script[src], astro-island, link[rel=modulepreload]').count()).toBe(0)
  })
})

const US = '.q .us, .pair .us'
const SI = '.q .si, .pair .si'

describe('the unit switch', () => {
  it('works without script', async () => {
    const page = await openPage('/', { javaScriptEnabled: false })
    expect(await page.locator(US).first().isVisible()).toBe(true)
    expect(await page.locator(SI).first().isVisible()).toBe(false)
    await page.locator('label:has(#units-si)').click()
    expect(await page.locator(US).first().isVisible()).toBe(false)
    expect(await page.locator(SI).first().isVisible()).toBe(true)
  })

  it('is remembered on the next page', async () => {
    const page = await openPage('/')
    await page.locator('label:has(#units-si)').click()
    expect(await page.evaluate(() => localStorage.getItem('bentwise.units'))).toBe('si')
    await page.locator('.site-nav a', { hasText: 'For framers' }).click()
    await page.waitForURL(/framers/)
    expect(await page.locator('#units-si').isChecked()).toBe(true)
    expect(await page.locator('.q .si').first().isVisible()).toBe(true)
  })
})

describe('the theme switch', () => {
  it('overrides the device, and goes back to it', async () => {
    const page = await openPage('/', { colorScheme: 'light' })
    const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor)
    const light = await paper()
    await page.locator('label:has(#theme-dark)').click()
    const dark = await paper()
    expect(dark).not.toBe(light)
    await page.reload()
    expect(await paper()).toBe(dark)
    await page.locator('label:has(#theme-auto)').click()
    expect(await paper()).toBe(light)
  })

  it('is not shown where it could do nothing', async () => {
    const page = await openPage('/', { javaScriptEnabled: false })
    expect(await page.locator('.switch--theme').isVisible()).toBe(false)
  })
})

describe('a figure', () => {
  for (const width of [360, 1280]) {
    it(`opens to its source by keyboard, without script, ${width} px`, async () => {
      const page = await openPage('/', { width, javaScriptEnabled: false })
      const figure = page.locator('.q').first()
      await figure.focus()
      await page.keyboard.press('Enter')
      const note = page.locator('.source:popover-open')
      expect(await note.textContent()).toMatch(/How we know/)
      const box = await note.boundingBox()
      expect(box && box.x >= 0 && box.x + box.width <= width, 'the note lies within the window').toBe(true)
      await page.keyboard.press('Escape')
      expect(await note.count()).toBe(0)
    })
  }
})

describe('the style sheets', () => {
  const read = (name: string) => readFileSync(new URL(`../../src/styles/${name}`, import.meta.url), 'utf8')

  it('say the same dark twice: as the device asks, and as the reader asks', () => {
    const lists = [...read('tokens.css').matchAll(/color-scheme: dark;([^}]*)\}/g)].map((m) =>
      (m[1] ?? '').replace(/\s+/g, ' ').trim()
    )
    expect(lists).toHaveLength(2)
    expect(lists[0]).toBe(lists[1])
  })

  it('agree on the order of the layers', () => {
    const order = (text: string) => text.match(/^@layer [^{;]+;/m)?.[0]
    expect(order(read('print.css'))).toBe(order(read('index.css')))
  })
})

describe('on paper', () => {
  for (const path of PAGES) {
    it(`${path} prints on Letter and A4, in black`, async () => {
      const page = await openPage(path, { colorScheme: 'dark' })
      await page.emulateMedia({ media: 'print' })
      const colours = await page.evaluate(() => {
        const { color, backgroundColor } = getComputedStyle(document.body)
        return {
          color,
          backgroundColor,
          head: getComputedStyle(document.querySelector('.site-head') as Element).display
        }
      })
      expect(colours).toEqual({ color: 'rgb(0, 0, 0)', backgroundColor: 'rgb(255, 255, 255)', head: 'none' })
      for (const format of ['Letter', 'A4']) expect((await page.pdf({ format })).length).toBeGreaterThan(5000)
    })
  }
})

describe('the drawings', () => {
  const all = [...EXAMPLES, ...QUESTION_EXAMPLES].map(({ name, node }) => ({ name, html: renderToString(node) }))

  it.each(all)('$name: says what it shows, and has no broken number and no inline style', ({ html }) => {
    expect(html).toMatch(/<svg[^>]*role="img"[^>]*aria-label="[^"]{12,}"/)
    expect(html).not.toMatch(/NaN|Infinity|undefined|style=/)
  })

  for (const width of [320, 1280]) {
    it(`are accessible and within the page at ${width} px`, async () => {
      const page = await openPage('/framers/', { width })
      await page.evaluate(
        (html) => {
          const place = document.querySelector('main .page')
          if (place) place.innerHTML = `<h1>Drawings</h1>${html}`
        },
        all.map(({ html }) => `<figure class="figure">${html}</figure>`).join('')
      )
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth
      )
      expect(over).toBeLessThanOrEqual(0)
      expect(await axe(page)).toEqual([])
    })
  }
})
