/** The log end: there without script, live with it, by pointer and by keyboard; what cannot be drawn is said. */
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Locator, Page } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { axe, openPage, type PageOptions } from './harness'
import { noSidewaysScroll } from './steps'

async function open(options: PageOptions = {}): Promise<Page> {
  const page = await openPage('/log-end/', options)
  if (options.javaScriptEnabled !== false) await page.locator('#log-ends[data-live]').waitFor()
  return page
}
const says = (page: Page, pattern: RegExp) =>
  page.waitForFunction(
    ([source]) => new RegExp(source ?? '').test(document.querySelector('#ends-says')?.textContent ?? ''),
    [pattern.source]
  )
const outline = (page: Page) => page.locator('.ends-pic polygon.cut').nth(1).getAttribute('points')
const field = (page: Page, id: string) => page.locator(`#bench-${id}`)
const readout = (page: Page) => page.locator('.ends-readout').textContent()

async function drag(page: Page, what: Locator, dx: number, dy: number) {
  await page.locator('.ends-pic').scrollIntoViewIfNeeded()
  const box = await what.boundingBox()
  if (box === null) throw new Error('nothing to take hold of')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + dx / 2, y + dy / 2)
  await page.mouse.move(x + dx, y + dy)
  await page.mouse.up()
}

describe('without script', () => {
  it('tells and shows both log ends, with their figures', async () => {
    const page = await open({ javaScriptEnabled: false })
    expect(await page.locator('h1').count()).toBe(1)
    expect(await page.locator('main').textContent()).toContain('a boxed piece has to check')
    expect(await page.locator('.ends-pic polygon.cut').count()).toBe(2)
    const captions = page.locator('.ends-caption')
    expect(await captions.nth(0).textContent()).toMatch(/Boxed heart.*8.in.*12.in.*log.*check opens up to 1\/2.in/)
    expect(await captions.nth(1).textContent()).toMatch(/Free of heart centre.*19.in.*log.*no check/)
    expect(await page.locator('.ends-fields').isVisible()).toBe(false)
    expect(await page.locator('main [style]').count()).toBe(0)
  })
})

describe('the log end', () => {
  for (const width of [320, 360, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`is sound at ${width} px, ${colorScheme}`, async () => {
        const page = await open({ width, colorScheme })
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
        // Still so with the piece out of its log and everything said about it.
        await field(page, 'breadth').fill('20')
        await says(page, /out of the log/)
        await noSidewaysScroll(page)
        expect(await axe(page)).toEqual([])
      })
    }
  }

  it('opens in forced colours', async () => {
    expect(await axe(await open({ forcedColors: 'active' }))).toEqual([])
  })

  it('is moved by arrow keys, and the figures follow', async () => {
    const page = await open()
    const before = [await outline(page), await readout(page)]
    await page.locator('.ends-piece').focus()
    await page.keyboard.press('Shift+ArrowUp')
    await page.keyboard.press('ArrowUp')
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#bench-top')?.value === '−3/4')
    expect(await outline(page)).not.toBe(before[0])
    expect(await readout(page)).not.toBe(before[1])
  })

  it('is dragged, and drags no page with it', async () => {
    const page = await open()
    const before = await outline(page)
    await drag(page, page.locator('.ends-piece'), -30, -40)
    await page.waitForFunction(
      (old) => document.querySelectorAll('.ends-pic polygon.cut')[1]?.getAttribute('points') !== old,
      before
    )
    expect(await field(page, 'left').inputValue()).not.toBe('−4')
  })

  it('is sized by a corner', async () => {
    const page = await open()
    await drag(page, page.locator('.ends-handle').nth(2), -40, -40)
    await page.waitForFunction(() => Number(document.querySelector<HTMLInputElement>('#bench-breadth')?.value[0]) < 8)
  })

  it('says what kind of piece it has become', async () => {
    const page = await open()
    await says(page, /pith is outside: it can stay whole/)
    await page.locator('.ends-piece').focus()
    for (let i = 0; i < 3; i++) await page.keyboard.press('Shift+ArrowUp')
    await says(page, /pith is inside: it will check, up to .+ on the bottom face/)
    expect(await page.locator('.ends-readout thead').textContent()).toContain('Check')
    await page.getByRole('button', { name: 'Quartered', exact: true }).click()
    await says(page, /out of square/)
  })

  it('refuses a section that its log cannot hold, keeps the picture and what was typed, and offers the log', async () => {
    const page = await open()
    const before = await outline(page)
    await field(page, 'depth').fill('14')
    await says(page, /reaches .+ out of the log/)
    expect(await outline(page)).toBe(before)
    expect(await field(page, 'depth').inputValue()).toBe('14')
    expect(await field(page, 'depth').getAttribute('aria-invalid')).toBe('true')
    const told = await field(page, 'depth').getAttribute('aria-describedby')
    expect(await page.locator(`[id="${told?.split(' ')[0]}"]`).textContent()).toMatch(/out of the log/)
    await page.getByRole('button', { name: 'Fit the log to it' }).first().click()
    await says(page, /it can stay whole/)
    expect(await outline(page)).not.toBe(before)
  })

  it.each([
    ['to', '-3', /0 to 115.%, the most that Douglas-fir holds/],
    ['from', '115.25', /0 to 115.%, the most that Douglas-fir holds/],
    ['pithX', '30', /pith has to lie inside/],
    ['depth', '0', /above zero/],
    ['depth', 'wide', /could not read/]
  ])('refuses %s %s beside its field', async (id, typed, words) => {
    const page = await open()
    const before = await outline(page)
    await field(page, id).fill(typed)
    await page.locator(`#${id}-error`).waitFor()
    expect(await page.locator(`#${id}-error`).textContent()).toMatch(words)
    await field(page, id).blur()
    expect(await field(page, id).inputValue()).toBe(typed)
    expect(await outline(page)).toBe(before)
  })

  it('judges a moisture anew for each wood, and keeps it as typed', async () => {
    const page = await open()
    const wood = page.locator('#bench-wood')
    const from = field(page, 'from')
    // Not typed, it is that of green heartwood, whichever the wood.
    await wood.selectOption('white-oak')
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#bench-from')?.value === '64')
    await from.fill('110.25')
    await page.locator('#from-error').waitFor()
    expect(await page.locator('#from-error').textContent()).toMatch(/0 to 78.%, the most that white oak holds/)
    await wood.selectOption('douglas-fir')
    await page.locator('#from-error').waitFor({ state: 'detached' })
    expect(await page.locator('figcaption').textContent()).toMatch(/Douglas-fir from 110/)
    await wood.selectOption('white-ash')
    await page.locator('#from-error').waitFor()
    expect(await page.locator('#from-error').textContent()).toMatch(/0 to 46.%, the most that white ash holds/)
    expect(await from.inputValue()).toBe('110.25')
  })

  it('swells where it is wetter later', async () => {
    const page = await open()
    await field(page, 'from').fill('8')
    await field(page, 'to').fill('20')
    await says(page, /it swells. The bottom face gains/)
    expect(await readout(page)).toMatch(/Swells round the rings/)
    expect(await page.locator('.ends-caption').first().textContent()).toMatch(/gains up to .*no check/)
    expect(await page.locator('figcaption').textContent()).toMatch(/filled, as swollen/)
  })

  it('opens each figure to its formula, what went in, and its source', async () => {
    const page = await open()
    const opened = async (figure: Locator) => {
      await figure.focus()
      await page.keyboard.press('Enter')
      const note = page.locator('.source:popover-open')
      await note.locator('.source-formula').waitFor()
      const text = await note.textContent()
      await page.keyboard.press('Escape')
      return text
    }
    const row = page.locator('.ends-figures > div')
    expect(await opened(row.filter({ hasText: 'round the rings' }).locator('.q'))).toMatch(
      /S₀ \(1 − M\/Mf\).*tangential.*7.6.*M now.*37.*M later.*8.*Table 4-3/
    )
    expect(await opened(page.locator('.ends-caption').first().locator('.q').nth(1))).toMatch(/2π · d · \(eT − eR\)/)
    expect(await opened(page.locator('.ends-readout td .q').first())).toMatch(/θ \(1 − eT\)/)
    const ids = await page.evaluate(() => [...document.querySelectorAll('[id]')].map((el) => el.id))
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('writes its figures as soon as the piece is let go', async () => {
    const page = await open()
    const from = await field(page, 'top').inputValue()
    await drag(page, page.locator('.ends-piece'), 0, -60)
    expect(await field(page, 'top').inputValue()).not.toBe(from)
  })

  it('works in millimetres too', async () => {
    const page = await open()
    await page.locator('label:has(#units-si)').click()
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#bench-breadth')?.value === '203')
    await field(page, 'left').fill('-90')
    await page.locator('.ends-piece').focus()
    await page.keyboard.press('ArrowRight')
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#bench-left')?.value === '−85')
  })

  it('lets the other log end be worked on', async () => {
    const page = await open()
    await page.getByRole('button', { name: 'Move this one instead' }).click()
    await says(page, /pith is inside/)
    expect(await field(page, 'logDiameter').inputValue()).toBe('12')
  })
})

describe('the first view', () => {
  const dist = join(import.meta.dirname, '../../dist')
  const packed = (path: string) =>
    path.endsWith('.woff2') ? readFileSync(path).length : gzipSync(readFileSync(path), { level: 9 }).length
  const withImports = (path: string, seen = new Set<string>()): Set<string> => {
    if (seen.has(path) || !existsSync(path)) return seen
    seen.add(path)
    for (const m of readFileSync(path, 'utf8').matchAll(/(?:from|import)\s*"(\.\.?\/[^"]+\.js)"/g))
      withImports(join(dirname(path), m[1] ?? ''), seen)
    return seen
  }

  it('is within 60 KB, 25 KB of it script; what moves the piece comes after it', async () => {
    const page = await open({ javaScriptEnabled: false })
    // Asked from outside: a page without script need not draw another frame for its own polling.
    const fonts = () =>
      page.evaluate(() => performance.getEntriesByType('resource').filter((r) => r.name.endsWith('.woff2')).length)
    await expect.poll(fonts, { timeout: 20_000 }).toBe(2)
    const all = await page.evaluate(() => ({
      scripts: [...document.scripts].map((s) => s.src).filter(Boolean),
      rest: performance
        .getEntriesByType('resource')
        .map((r) => r.name)
        .filter((name) => /\.(css|woff2)$/.test(name))
    }))
    const local = (url: string) => join(dist, '_astro', url.split('/').at(-1) ?? '')
    const sum = (paths: Iterable<string>) => [...paths].reduce((n, path) => n + packed(path), 0)
    const scripts = new Set(all.scripts.flatMap((url) => [...withImports(local(url))]))
    expect(all.rest.length, 'style sheets and fonts are counted').toBeGreaterThanOrEqual(4)
    expect(sum(scripts)).toBeLessThanOrEqual(25 * 1024)
    expect(
      packed(join(dist, 'log-end/index.html')) + sum(new Set(all.rest.map(local))) + sum(scripts)
    ).toBeLessThanOrEqual(60 * 1024)
  })
})
