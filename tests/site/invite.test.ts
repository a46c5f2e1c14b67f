/** The invite, end to end: a framer makes it, a client answers, the brief comes back and says the same. */
import { readFileSync } from 'node:fs'
import { buffer } from 'node:stream/consumers'
import jsQR from 'jsqr'
import type { Page } from 'playwright-core'
import { PNG } from 'pngjs'
import { describe, expect, it } from 'vitest'
import type { ShopSheetContent } from '../../src/data/shop-schema'
import { encodeBrief, encodeInvite } from '../../src/shop/link'
import { axe, openPage } from './harness'
import { noSidewaysScroll, saveAnswers, savedAnswers, sheetsOf, tabTo } from './steps'

const sample = JSON.parse(readFileSync(new URL('../../content/shop.json', import.meta.url), 'utf8')) as ShopSheetContent
const few: ShopSheetContent = {
  ...sample,
  name: 'Two Woods (invented)',
  note: 'We saw what we fell.',
  contact: 'by the river',
  placeholder: false,
  woods: [
    { species: 'white-oak', perBoardFoot: 5.5, note: 'from up the road' },
    { species: 'eastern-white-pine', perBoardFoot: 2.75 }
  ]
}
const ANSWERS = { project: 'pavilion', exposure: 'roofed', place: 'burlington-vt', span: 4876.8 } as const
const invite = (locked: readonly string[] = [], sheet = few) =>
  `/start/#i=${encodeInvite({ sheet, answers: ANSWERS, locked })}`

const openBench = async (options: Parameters<typeof openPage>[1] = {}) => {
  const page = await openPage('/invite/', options)
  await page.locator('#invite-link').waitFor()
  return page
}
const openStages = (page: Page) =>
  page.evaluate(() => {
    for (const stage of document.querySelectorAll<HTMLDetailsElement>('details.stage')) stage.open = true
  })
const linkOf = async (page: Page) => new URL(await page.locator('#invite-link').inputValue())
/** Answers one question on the invite page. */
async function set(page: Page, id: string, act: () => Promise<void>) {
  await openStages(page)
  await page.locator(`#set-${id}`).click()
  await act()
  await page.getByRole('button', { name: 'Done' }).click()
}
const noClipboard = (page: Page) =>
  page.evaluate(() =>
    Object.defineProperty(navigator, 'clipboard', { value: { writeText: () => Promise.reject(new Error('no')) } })
  )
const saidOf = async (page: Page) => {
  await page.locator('.brief h1').waitFor()
  await page.locator('#change .list').first().waitFor()
  return page.locator('.brief > :not(.summary)').allTextContents()
}

describe('the whole walk', () => {
  it('framer, client on a phone, framer again: the same lead and prices', { timeout: 120_000 }, async () => {
    const framer = await openBench()
    await set(framer, 'exposure', () => framer.locator('input[name=exposure][value=heated]').check())
    await set(framer, 'span', () => framer.locator('#span-number').fill('20 ft'))
    await framer.locator('.known li', { hasText: 'Clear span' }).locator('input[type=checkbox]').check()
    const { hash, pathname } = await linkOf(framer)
    expect(pathname).toMatch(/\/start\/$/)

    const client = await openPage(`/start/${hash}`, { width: 360 })
    await client.locator('.invite-note', { hasText: sample.name }).waitFor()
    expect(await savedAnswers(client)).toEqual({ exposure: 'heated', span: 6096 })
    expect(client.url()).not.toContain('#i=')
    await client.locator('input[name=project][value=great-room]').check()
    await client.getByRole('button', { name: 'Next' }).click()
    await client.getByRole('heading', { name: /Will the timbers carry/ }).waitFor()
    await client.getByRole('button', { name: 'Next' }).click()
    await client.locator('#complaint').waitFor()
    await client.locator('input[name=role][value=structure]').check()
    await client.getByRole('button', { name: 'Next' }).click()
    await client.locator('.suggested', { hasText: `Suggested by ${sample.name}` }).waitFor()
    await noSidewaysScroll(client)
    // Changed, it is the client's own.
    await client.locator('input[name=exposure][value=unheated]').check()
    await client.locator('.suggested').waitFor({ state: 'detached' })
    await client.locator('input[name=exposure][value=heated]').check()
    await client.getByRole('link', { name: 'See your brief so far' }).click()
    const mine = await saidOf(client)
    await client.locator('.title-block', { hasText: sample.name }).waitFor()
    await noSidewaysScroll(client)
    await noClipboard(client)
    await client.getByRole('button', { name: 'Copy a link to this brief' }).click()
    const back = new URL(await client.locator('#brief-link').inputValue())

    const again = await openPage(`/brief/${back.hash}`)
    expect(await saidOf(again)).toEqual(mine)
    expect(await again.locator('.brief-from').textContent()).toContain(`with the sheet of ${sample.name}`)
    expect(await savedAnswers(again)).toEqual({})
  })

  it('an own sheet goes out with its invite and comes back with the brief, over another sheet', async () => {
    const framer = await openPage('/framers/')
    await framer.evaluate((text) => localStorage.setItem('bentwise.sheet.1', text), JSON.stringify(few))
    await framer.goto(framer.url().replace('/framers/', '/invite/'))
    await framer.locator('#invite-link').waitFor()
    expect(await framer.locator('main').textContent()).toContain('Two Woods (invented): 2 woods')
    const { hash } = await linkOf(framer)

    const client = await openPage(`/start/${hash}`, { width: 360 })
    await client.waitForFunction(() => document.querySelectorAll('.woods li').length === 2)
    await client.locator('.invite-note', { hasText: 'We saw what we fell.' }).waitFor()

    const changed = { ...few, woods: few.woods.map((wood) => ({ ...wood, perBoardFoot: 99 })) }
    const code = encodeBrief(ANSWERS, changed)
    await framer.goto(framer.url().replace('/invite/', `/brief/#b=${code}`))
    await framer.locator('.brief-from', { hasText: 'has the same name and says something else' }).waitFor()
    await framer.getByRole('link', { name: 'See these answers with the sheet in use here' }).click()
    await framer.locator('.brief-from', { hasText: 'It carries no sheet' }).waitFor()
  })
})

describe('an invite, opened', () => {
  it('settled answers are not asked, are listed, and hold in the brief', async () => {
    const page = await openPage(invite(['project', 'span']), { width: 360 })
    await page.locator('.invite-note').waitFor()
    await page.waitForFunction(() => !document.querySelector('h1')?.textContent?.includes('What are you building'))
    await page.getByRole('link', { name: 'All questions and answers' }).click()
    await page.locator('.answers', { hasText: '16 ft settled by Two Woods (invented)' }).first().waitFor()
    expect(await page.getByRole('link', { name: /^Change ?: How far is it/ }).count()).toBe(0)
    expect(await page.locator('.answers', { hasText: 'suggested by Two Woods (invented)' }).count()).toBeGreaterThan(0)
    expect(await axe(page)).toEqual([])
    await noSidewaysScroll(page)
    await page.getByRole('button', { name: 'Clear all answers' }).click()
    await page.getByRole('button', { name: 'Clear them' }).click()
    await page.waitForFunction(
      () => localStorage.getItem('bentwise.answers.1') === '{"project":"pavilion","span":4876.8}'
    )
  })

  it('stays through a reload until it is put away', async () => {
    const page = await openPage(invite(['span']))
    await page.locator('.invite-note').waitFor()
    await page.reload()
    await page.locator('.invite-note').waitFor()
    await page.locator('.invite-note summary').click()
    await page.getByText('Nothing is sent.').waitFor()
    await page.getByRole('button', { name: 'Put this shop’s sheet away' }).click()
    await page.getByRole('button', { name: 'Put it away' }).click()
    await page.locator('.invite-note').waitFor({ state: 'detached' })
    await page.waitForFunction(() => document.querySelectorAll('.woods li').length > 20)
    expect(await savedAnswers(page)).toEqual(ANSWERS)
  })

  it('never writes over one’s own answers without being asked', async () => {
    const page = await openPage('/framers/')
    await saveAnswers(page, '{"span":6096,"place":"seattle-wa","finish":"grey"}')
    const start = page.url().replace('/framers/', invite(['span']))
    for (const [button, place] of [
      ['Do not open it', 'seattle-wa'],
      ['Open it, keep my answers', 'seattle-wa'],
      ['Open it, take its answers', 'burlington-vt']
    ] as const) {
      await page.goto('about:blank')
      await page.goto(start)
      await page.getByRole('button', { name: button }).waitFor()
      const kept = await savedAnswers(page)
      expect(kept['place'], button).toBe('seattle-wa')
      await page.getByRole('button', { name: button }).click()
      await page.getByRole('button', { name: button }).waitFor({ state: 'detached' })
      const now = await savedAnswers(page)
      expect(now['place'], button).toBe(place)
      expect(now['finish']).toBe('grey')
      expect(now['span']).toBe(button === 'Do not open it' ? 6096 : 4876.8)
    }
  })

  it('a broken one is told in words, at the questions and at the brief', async () => {
    const code = invite().split('#i=')[1] ?? ''
    const page = await openPage(`/start/#i=${code.slice(0, -9)}`)
    await page.locator('.notice', { hasText: 'It may have been cut when it was copied' }).waitFor()
    expect(await page.locator('.invite-note').count()).toBe(0)
    const brief = await openPage('/brief/#b=2.abc.def')
    await brief.getByRole('heading', { name: 'This link did not open' }).waitFor()
    // A whole one leads from the brief to the questions.
    const other = await openPage(`/brief/#i=${code}`)
    await other.locator('.invite-note').waitFor()
    expect(other.url()).toContain('/start/')
  })

  it('kept by the device and spoilt there: said, and the sample stands in', async () => {
    const page = await openPage('/framers/')
    await page.evaluate(() =>
      localStorage.setItem('bentwise.invite.1', '{"sheet":{"name":"Spoilt"},"answers":{"span":1},"locked":["span",{}]}')
    )
    await page.goto(page.url().replace('/framers/', '/start/'))
    await page.locator('.invite-note', { hasText: 'not in use' }).waitFor()
    await page.waitForFunction(() => document.querySelectorAll('.woods li').length > 20)
  })

  it('markup in a shop’s words is only text', async () => {
    const evil = '<img src=x onerror="document.title=1"><script>document.title=2</script>'
    const sheet = { ...few, name: evil.slice(0, 80), note: evil, contact: evil }
    const page = await openPage(invite(['span'], sheet))
    await page.locator('.invite-note', { hasText: '<img src=x' }).waitFor()
    await page.goto(page.url().replace(/\/start\/.*/, '/brief/'))
    await page.locator('.shop-line', { hasText: '<script>' }).waitFor()
    expect(await page.locator('main img, .invite-note script, .brief script, .shop-line script').count()).toBe(0)
    expect(await page.title()).toMatch(/^Brief: /)
  })

  for (const colorScheme of ['light', 'dark'] as const) {
    it(`is sound on a phone, ${colorScheme}`, async () => {
      const page = await openPage(invite(['span']), { width: 360, colorScheme })
      await page.locator('.invite-note summary').click()
      expect(await axe(page)).toEqual([])
      await noSidewaysScroll(page)
      await page.goto(page.url().replace(/\/start\/.*/, '/brief/'))
      await page.locator('.brief h1').waitFor()
      await page.locator('.invite-note summary').click()
      expect(await axe(page)).toEqual([])
      await noSidewaysScroll(page)
    })
  }
})

describe('a brief file', () => {
  it('opens again with its sheet, and says the same', async () => {
    const page = await openPage(`/brief/#b=${encodeBrief(ANSWERS, few)}`)
    const said = await saidOf(page)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download as JSON' }).click()
    ])
    const file = {
      name: 'brief.json',
      mimeType: 'application/json',
      buffer: await buffer(await download.createReadStream())
    }
    const other = await openPage('/brief/')
    await other.getByRole('heading', { name: 'No answers yet' }).waitFor()
    await other.locator('input[type=file]').setInputFiles({ ...file, buffer: Buffer.from('{"a":') })
    await other.locator('.error', { hasText: 'not JSON' }).waitFor()
    await other.locator('input[type=file]').setInputFiles(file)
    expect(await saidOf(other)).toEqual(said)
    expect(await savedAnswers(other)).toEqual({})
  })
})

describe('making an invite', () => {
  it('marks the sample as invented, and leads to one’s own sheet', async () => {
    const page = await openBench()
    await page.locator('.caution', { hasText: 'This is the sample sheet.' }).waitFor()
    expect(await page.getByRole('link', { name: 'make a sheet of your own' }).getAttribute('href')).toMatch(/\/shop\/$/)
    expect(await page.locator('main').textContent()).toContain('No client’s name or address is asked')
  })

  it('the code is read back from the downloaded PNG as the link itself, and the SVG stands alone', async () => {
    const page = await openBench({ colorScheme: 'dark' })
    for (const correction of ['L', 'M', 'Q']) {
      await page.locator(`input[name=correction][value=${correction}]`).check()
      const [png] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Download as PNG' }).click()
      ])
      const { width, height, data } = PNG.sync.read(await buffer(await png.createReadStream()))
      expect(jsQR(new Uint8ClampedArray(data), width, height)?.data).toBe((await linkOf(page)).href)
    }
    // And as it stands on the screen of a page in the dark.
    const shot = PNG.sync.read(await page.locator('.code .qr').screenshot())
    expect(jsQR(new Uint8ClampedArray(shot.data), shot.width, shot.height)?.data).toBe((await linkOf(page)).href)
    const [svg] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download as SVG' }).click()
    ])
    expect((await buffer(await svg.createReadStream())).toString()).toMatch(/^<svg xmlns=/)
  })

  it('copies by keyboard, with words of one’s own, or lays the text out selected', async () => {
    const page = await openBench()
    await page.locator('#invite-words').fill('Dear neighbour')
    await noClipboard(page)
    await page.locator('#invite-link').focus()
    await tabTo(page, 'button.btn--small')
    await page.keyboard.press('Enter')
    await page.locator('#invite-by-hand').waitFor()
    await page.waitForFunction(() => {
      const field = document.querySelector<HTMLTextAreaElement>('#invite-by-hand')
      return field === document.activeElement && field?.selectionEnd === field?.value.length
    })
    const text = await page.locator('#invite-by-hand').inputValue()
    expect(text).toBe(`Dear neighbour\n\n${(await linkOf(page)).href}`)
    await page.reload()
    await page.locator('#invite-words').waitFor()
    expect(await page.locator('#invite-words').inputValue()).toBe('Dear neighbour')
  })

  it('takes the answers on this device', async () => {
    const page = await openPage('/framers/')
    await saveAnswers(page, JSON.stringify(ANSWERS))
    await page.goto(page.url().replace('/framers/', '/invite/'))
    await page.getByRole('button', { name: 'Take the 4 answers on this device' }).click()
    await page.locator('.known li', { hasText: 'Burlington, VT' }).waitFor()
    expect(await savedAnswers(page)).toEqual(ANSWERS)
  })

  it('typed nonsense is not dropped in silence', async () => {
    const page = await openBench()
    await openStages(page)
    await page.locator('#set-span').click()
    await page.locator('#span-number').fill('900')
    await page.getByRole('button', { name: 'Done' }).click()
    await page.locator('#complaint').waitFor()
    expect(await page.locator('#span-number').inputValue()).toBe('900')
  })

  it('too long for a code: says so, and says what each part would save', async () => {
    // Words that do not pack: a note at each of thirty woods.
    let seed = 1
    const letter = () => {
      seed = (seed * 48271) % 0x7fffffff
      return String.fromCharCode(97 + (seed % 26))
    }
    const odd = () => Array.from({ length: 110 }, letter).join('')
    const long = { ...sample, woods: sample.woods.map((wood) => ({ ...wood, note: odd() })) }
    const page = await openPage('/framers/')
    await page.evaluate((text) => localStorage.setItem('bentwise.sheet.1', text), JSON.stringify(long))
    await page.goto(page.url().replace('/framers/', '/invite/'))
    await page.getByText('Too much for a code.').waitFor()
    expect(await page.locator('#invite-length').textContent()).toMatch(/Over 2,000/)
    const before = (await linkOf(page)).href.length
    const row = page.locator('.slim label', { hasText: 'notes on single woods' })
    const saves = Number(/save (\d+)/.exec((await row.textContent()) ?? '')?.[1])
    await row.locator('input').check()
    await page.locator('.code .qr').waitFor()
    expect((await linkOf(page)).href.length).toBe(before - saves)
    expect(await page.locator('#invite-length').textContent()).toMatch(/Under 2,000/)
    // The sheet itself stays whole.
    expect(await page.evaluate(() => localStorage.getItem('bentwise.sheet.1'))).toBe(JSON.stringify(long))
  })

  it('prints the card alone, on one sheet of either size', async () => {
    const page = await openBench()
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.card').isVisible()).toBe(true)
    expect(await page.locator('h1:visible, .btn:visible, #invite-link:visible, .margin:visible').count()).toBe(0)
    for (const format of ['Letter', 'A4'] as const) {
      expect(sheetsOf(await page.pdf({ format })), format).toBe(1)
    }
    const shot = PNG.sync.read(await page.locator('.card .qr').screenshot())
    expect(jsQR(new Uint8ClampedArray(shot.data), shot.width, shot.height)?.data).toBe((await linkOf(page)).href)
  })

  for (const width of [360, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`is sound at ${width} px, ${colorScheme}`, async () => {
        const page = await openBench({ width, colorScheme })
        expect(await axe(page)).toEqual([])
        await set(page, 'place', async () => {
          await page.locator('[role=combobox]').fill('dulu')
          await page.locator('[role=option]').first().click()
        })
        await page.locator('#set-order').click()
        await page.locator('.slim > summary').click()
        expect(await axe(page)).toEqual([])
        await noSidewaysScroll(page)
      })
    }
  }

  it('fits 320 px, and opens in forced colours', async () => {
    const narrow = await openBench({ width: 320 })
    await openStages(narrow)
    await noSidewaysScroll(narrow)
    const forced = await openBench({ forcedColors: 'active' })
    expect(await axe(forced)).toEqual([])
  })

  it('without script points to the questions on paper', async () => {
    const page = await openPage('/invite/', { javaScriptEnabled: false })
    await page.getByRole('link', { name: 'the questions on paper' }).waitFor()
  })
})
