/** The framer's half of the site in one walk, on a phone: a sheet, an invite, a client's brief, and the shop's reading of it. */
import { describe, expect, it } from 'vitest'
import { encodeBrief } from '../../src/shop/link'
import { readSheet } from '../../src/shop/sheet/door'
import { Hand } from './hand'
import { openPage } from './harness'
import { awake, noSidewaysScroll, savedAnswers, sheetsOf } from './steps'

const PHONE = { width: 360, height: 740, hasTouch: true } as const
const SHOP = 'Crooked Creek Framers (invented)'
const WOODS = [
  ['white-oak', 'white o', '5.10'],
  ['red-oak', 'red o', '4.40'],
  ['eastern-white-pine', 'eastern wh', '3.20'],
  ['eastern-hemlock', 'eastern h', '2.90'],
  ['douglas-fir', 'douglas', '5.60'],
  ['black-locust', 'locust', '7.50']
] as const
const NOTE = 'We cut in winter and raise in spring.'
const CAUTION = 'Our timbers check; we orient the checks away from view where we can.'
const PROMISE = 'Oak comes green only.'

const open = (path: string, who: string) => openPage(path, PHONE).then((page) => new Hand(page, who))

/** Step 1: a sheet from nothing. */
async function makeSheet(hand: Hand): Promise<void> {
  const { page } = hand
  await page.locator('#shop-sheet[data-live]').waitFor()
  await hand.tap(page.locator('#sheet-name'))
  await hand.type(SHOP)
  for (const [id, typed] of WOODS) {
    await hand.tap(page.locator('#shop-find'))
    await page.locator('#shop-find').selectText()
    await hand.type(typed)
    await hand.tap(page.locator(`label:has(#sheet-wood-${id})`))
  }
  // Enter goes from price to price, and on to the rates.
  await hand.tap(page.locator('.shop-prices input').first())
  for (const id of await page.locator('.shop-prices input[id$="-price"]').evaluateAll((all) => all.map((x) => x.id))) {
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(id)
    await hand.type(WOODS.find(([wood]) => id === `sheet-wood-${wood}-price`)?.[2] ?? '')
    await hand.press('Enter')
  }
  await hand.type('9')
  await hand.press('Enter')
  await hand.type('3')
  await hand.tap(page.locator('#sheet-note'))
  await hand.type(NOTE)
  await hand.tap(page.locator('#sheet-cautions'))
  await hand.type(CAUTION)
  const oak = page.locator('.shop-prices > li', { has: page.locator('#sheet-wood-white-oak-price') })
  await hand.tap(oak.locator('summary'))
  await hand.tap(page.locator('#sheet-wood-white-oak-note'))
  await hand.type(PROMISE)
  await page.locator('.shop-standing', { hasText: 'It is kept on this device' }).waitFor()
  await noSidewaysScroll(page)
}

/** Step 2: an invite with three answers, one of them settled. */
async function invite(hand: Hand): Promise<string> {
  const { page } = hand
  await hand.tap(page.getByRole('link', { name: 'Invite a client' }))
  await page.locator('#invite-link').waitFor()
  const set = async (id: string, act: () => Promise<void>) => {
    const row = page.locator(`#set-${id}`)
    if (!(await row.isVisible())) await hand.tap(page.locator('details.stage', { has: row }).locator('summary'))
    await hand.tap(row)
    await act()
    await hand.tap(hand.button('Done'))
  }
  await set('project', () => hand.tap(page.locator('label:has(input[name=project][value=great-room])')))
  await set('exposure', () => hand.tap(page.locator('label:has(input[name=exposure][value=heated])')))
  await set('span', async () => {
    await hand.tap(page.locator('#span-number'))
    await hand.type('20')
  })
  await hand.tap(page.locator('.known li', { hasText: 'Clear span' }).locator('label', { hasText: 'settled' }))
  await noSidewaysScroll(page)
  return new URL(await page.locator('#invite-link').inputValue()).hash
}

interface Told {
  readonly lead: string
  readonly timber: string
  readonly bill: readonly string[]
  readonly prices: readonly string[]
}
/** What a brief says of lead, board feet and money. */
async function toldBy({ page }: Hand): Promise<Told> {
  await page.locator('.brief h1').waitFor()
  const text = async (selector: string) => (await page.locator(selector).allTextContents()).map((x) => x.trim())
  return {
    lead: (await text('.brief h1')).join(),
    timber: (await text('#cost .sheet-body, #cost p')).join(' '),
    bill: await text('#cost .bill dd'),
    prices: await text('#cost tbody tr')
  }
}

/** Step 3: the client opens it, answers a little, and stops. */
async function answer(hand: Hand): Promise<{ told: Told; link: string }> {
  const { page } = hand
  await page.locator('.invite-note', { hasText: SHOP }).waitFor()
  await page.locator('.invite-note', { hasText: NOTE }).waitFor()
  // Suggested: it stands there, and one tap goes on.
  await page.locator('.suggested', { hasText: SHOP }).waitFor()
  await hand.tap(hand.button('Next'))
  const title = (words: RegExp) => page.locator('h1#question', { hasText: words }).waitFor()
  await title(/carry/)
  await hand.tap(page.locator('label:has(input[name=role][value=structure])'))
  await hand.tap(hand.button('Next'))
  await page.locator('.suggested').waitFor()
  await hand.tap(hand.button('Next'))
  await title(/nearest, in weather/)
  await hand.tap(page.locator('[role=combobox]'))
  await hand.type('burl')
  await hand.tap(page.locator('[role=option]', { hasText: 'Burlington, VT' }))
  await hand.tap(hand.button('Next'))
  await title(/main timbers carry/)
  await hand.tap(page.locator('label:has(input[value=unsure])'))
  await hand.tap(hand.button('Next'))
  await noSidewaysScroll(page)
  await hand.tap(page.getByRole('link', { name: 'See your brief so far' }))
  const told = await toldBy(hand)
  await page.locator('.shop-line', { hasText: NOTE }).waitFor()
  await page.locator('#cautions', { hasText: CAUTION }).waitFor()
  await page.locator('.wood-note', { hasText: PROMISE }).waitFor({ state: 'attached' })
  await page.locator('.title-block', { hasText: SHOP }).waitFor()
  expect(await page.locator('#cost').textContent()).not.toMatch(/placeholder|invented prices/i)
  await noSidewaysScroll(page)
  await page.evaluate(() =>
    Object.defineProperty(navigator, 'clipboard', { value: { writeText: () => Promise.reject(new Error('no')) } })
  )
  await hand.tap(hand.button('Copy a link to this brief'))
  return { told, link: await page.locator('#brief-link').inputValue() }
}

describe('a framer, a client, and the framer again', () => {
  it('by touch and keyboard on a phone: sheet, invite, brief, shop detail, two briefs, paper', {
    timeout: 240_000
  }, async () => {
    const framer = await open('/shop/', 'framer, sheet')
    await makeSheet(framer)
    const kept = readSheet(
      await framer.page.evaluate(() => JSON.parse(localStorage.getItem('bentwise.sheet.1') ?? '0'))
    )
    if (!kept.ok) throw new Error(JSON.stringify(kept.problems))
    expect(kept.sheet.woods.map((wood) => [wood.species, wood.perBoardFoot]).sort()).toEqual(
      WOODS.map(([id, , price]) => [id, Number(price)]).sort()
    )
    const afterSheet = [framer.taps, framer.keys]
    const hash = await invite(framer)

    const client = await open(`/start/${hash}`, 'client')
    const { told, link } = await answer(client)
    expect(await savedAnswers(client.page)).toMatchObject({ span: 6096, role: 'structure', place: 'burlington-vt' })

    const again = await open(`/brief/${new URL(link).hash}`, 'framer, brief')
    expect(await toldBy(again)).toEqual(told)
    const { page } = again
    expect(await page.locator('.brief-from').textContent()).toContain(`with the sheet of ${SHOP}`)
    const settled = page.locator('#told dl > div', { hasText: 'Clear span' })
    expect(await settled.textContent()).toContain('settled by the shop')
    expect(await page.locator('#told dl > div', { hasText: 'Where the timbers live' }).textContent()).toContain(
      'as the shop suggested'
    )

    await again.tap(page.locator('.shop-switch > summary'))
    const cut = page.locator('.shop-table').first()
    await cut.waitFor()
    expect(await cut.locator('tbody tr').count()).toBeGreaterThan(2)
    // Board feet and price of the list are those that the client read.
    const figure = async (label: string) =>
      (await page.locator('.shop-inside .figures dt', { hasText: label }).first().locator('+ dd').textContent())?.trim()
    const timber = await figure('Timber cost')
    expect(timber).toMatch(/\d/)
    // The bill says one figure, the list its range by the sheet's band: the one lies in the other.
    const sums = (text: string | undefined) =>
      [...(text ?? '').matchAll(/[\d,]+/g)].map(([n]) => Number(n.replaceAll(',', '')))
    const [low = 0, high = 0] = sums(timber)
    expect(sums(told.bill[0])[0]).toBeGreaterThanOrEqual(low)
    expect(sums(told.bill[0])[0]).toBeLessThanOrEqual(high)
    expect(await page.locator('.asked > li').count()).toBe(20)
    await noSidewaysScroll(page)

    const other = encodeBrief(
      { project: 'porch', exposure: 'weather', place: 'burlington-vt', span: 3657.6 },
      kept.sheet
    )
    await again.tap(page.getByRole('link', { name: 'Set this brief beside another' }))
    await awake(page)
    await page.waitForFunction(() => document.querySelector<HTMLTextAreaElement>('#first-brief')?.value.includes('#b='))
    await again.paste(page.locator('#second-brief'), `Here is ours: https://example.org/brief/#b=${other}`)
    await again.tap(again.button('Compare'))
    await page.locator('#compared').waitFor()
    const wood = page.locator('.pair-table').last().locator('tbody tr').first()
    expect(told.lead.toLowerCase()).toContain((await wood.locator('td').first().textContent())?.trim().toLowerCase())
    expect(await page.locator('.pair-sheet').allTextContents()).toEqual([
      `with its own sheet, of ${SHOP}`,
      `with its own sheet, of ${SHOP}`
    ])
    expect(await page.locator('.pair-table').last().textContent()).toContain(timber)
    await noSidewaysScroll(page)
    await page.emulateMedia({ media: 'print' })
    expect(sheetsOf(await page.pdf({ format: 'Letter' }))).toBeLessThanOrEqual(3)
    await page.emulateMedia({ media: 'screen' })

    // Paper: the client's brief alone, then with the shop's half.
    await page.goBack()
    await page.locator('.shop-inside').waitFor()
    await page.locator('#change .list').first().waitFor()
    const print = async (format: 'Letter' | 'A4') => {
      await page.emulateMedia({ media: 'print' })
      for (const selector of ['.title-block', '#cautions'])
        expect(await page.locator(selector).first().isVisible(), selector).toBe(true)
      const sheets = sheetsOf(await page.pdf({ format }))
      await page.emulateMedia({ media: 'screen' })
      return sheets
    }
    const whole = [await print('Letter'), await print('A4')]
    await again.tap(page.locator('.shop-switch > summary'))
    await page.locator('.shop-inside').waitFor({ state: 'detached' })
    const alone = [await print('Letter'), await print('A4')]
    for (const [i, sheets] of alone.entries()) {
      expect(sheets).toBeLessThanOrEqual(11)
      expect((whole[i] ?? 99) - sheets).toBeGreaterThan(0)
      expect((whole[i] ?? 99) - sheets).toBeLessThanOrEqual(4)
    }

    if (process.env['REPORT_WALK']) {
      const [taps = 0, keys = 0] = afterSheet
      const lines = [
        `framer, sheet of six woods: ${taps} taps, ${keys} keys`,
        `framer, invite: ${framer.taps - taps} taps, ${framer.keys - keys} keys`,
        `client: ${client.taps} taps, ${client.keys} keys`,
        `framer, shop detail and two briefs: ${again.taps} taps, ${again.keys} keys`,
        `sheets: ${alone.join(' Letter, ')} A4; with shop detail ${whole.join(' Letter, ')} A4`
      ]
      process.stdout.write(`${lines.join('\n')}\n`)
    }
  })
})
