import { describe, expect, it } from 'vitest'
import { QUESTIONS } from '../../src/choice/questions'
import { encodeLink } from '../../src/shop/link'
import { axe, openPage } from './harness'
import {
  answerByKeyboard,
  awake,
  moved,
  noSidewaysScroll,
  notSure,
  questionShown,
  saveAnswers,
  savedAnswers
} from './steps'

const span = QUESTIONS.find((q) => q.id === 'span')?.title ?? ''
const place = QUESTIONS.find((q) => q.id === 'place')?.title ?? ''

describe('the questionnaire', () => {
  for (const width of [360, 1280]) {
    it(`is answered by keyboard alone, to a brief, at ${width} px`, { timeout: 120_000 }, async () => {
      const page = await openPage('/start/', { width })
      await awake(page)
      const seen: string[] = []
      while (page.url().includes('/start/') && seen.length < 40) {
        const question = await questionShown(page)
        seen.push(question.id)
        await answerByKeyboard(page, question)
        if ((await page.locator('h1#question').count()) > 0) {
          // Focus follows to the heading, after the frame that shows it.
          await page.waitForFunction(() => document.activeElement?.id === 'question')
        }
      }
      await page.waitForSelector('.brief h1', { timeout: 8000 }).catch(async () => {
        throw new Error(
          `no brief: ${await page.locator('main').textContent()} ${JSON.stringify(await savedAnswers(page))}`
        )
      })
      expect(new Set(seen).size, 'no question twice').toBe(seen.length)
      expect(seen.length).toBeGreaterThan(12)
      expect(await page.locator('.title-block').first().textContent()).toContain('Duluth, MN')
      await noSidewaysScroll(page)
    })
  }

  it('says what an answer did to the woods, and keeps the list in step', async () => {
    const page = await openPage('/start/')
    await awake(page)
    await page.locator('input[value=pavilion]').check()
    await page.locator('.woods li.lead').waitFor()
    const before = await page.locator('.settled-line').textContent()
    await page.goto(`${page.url().split('#')[0]}#q=exposure`)
    await page.locator('input[value=ground]').check()
    await page.waitForFunction((old) => document.querySelector('.settled-line')?.textContent !== old, before)
    expect(await page.locator('.settled [role=status]').textContent()).toMatch(/^Out: .+ woods in, \d+ out\.$/)
    expect(await page.locator('.woods li.out').count()).toBeGreaterThan(3)
  })

  it('says of the sizes in its list what they leave out, and says nothing of sizes where it names none', async () => {
    const page = await openPage('/start/', { width: 1280 })
    const list = page.locator('.settled')
    await saveAnswers(page, '{"role":"structure","carries":"truss","span":10000,"spacing":4000,"snow":3000}')
    await page.reload()
    await page.locator('.woods li.lead').waitFor()
    expect(await list.locator('.woods').textContent()).toMatch(/\d × \d/)
    expect(await list.textContent()).toMatch(
      /not for construction.*drifted snow, earthquake and connections.*local code/
    )
    await saveAnswers(page, '{"role":"looks","finish":"pale"}')
    await page.reload()
    await page.locator('.woods li.lead').waitFor()
    expect(await list.locator('.woods').textContent()).not.toMatch(/\d × \d/)
    expect(await list.textContent()).not.toMatch(/construction/)
  })

  it('keeps the answers and the spot through a reload', async () => {
    const page = await openPage('/start/', { width: 360 })
    await awake(page)
    for (let i = 0; i < 3; i++) await answerByKeyboard(page, await questionShown(page))
    const here = await questionShown(page)
    const kept = await savedAnswers(page)
    await page.reload()
    await awake(page)
    await page.waitForFunction((title) => document.querySelector('h1')?.textContent?.trim() === title, here.title)
    expect(await savedAnswers(page)).toEqual(kept)
    // The same in a new tab without the address's hash, as after a closed one.
    const tab = await page.context().newPage()
    await tab.goto(page.url().replace(/#.*/, ''))
    await tab.waitForFunction((title) => document.querySelector('h1')?.textContent?.trim() === title, here.title)
  })

  it('goes back by its own button and by the browser’s, and keeps what was picked', async () => {
    const page = await openPage('/start/')
    await awake(page)
    const first = await questionShown(page)
    await answerByKeyboard(page, first)
    const second = await questionShown(page)
    await page.getByRole('button', { name: 'Back' }).click()
    await moved(page, second)
    expect((await questionShown(page)).id).toBe(first.id)
    expect(await page.locator(`input[name="${first.id}"]:checked`).count()).toBe(1)
    await page.goBack()
    await moved(page, first)
    expect((await questionShown(page)).id).toBe(second.id)
  })

  it('lists every question with its answer, and each can be changed', async () => {
    const page = await openPage('/start/')
    await awake(page)
    await answerByKeyboard(page, await questionShown(page))
    await page.getByRole('link', { name: 'All questions and answers' }).click()
    await page.getByRole('heading', { level: 1, name: 'Your answers' }).waitFor()
    expect(await page.locator('.answers > div').count()).toBeGreaterThan(20)
    expect(await axe(page)).toEqual([])
    await page.getByRole('link', { name: new RegExp(`Answer ?: ${span.replace('?', '.')}`) }).click()
    await page.locator('#span-number').fill('24')
    await page.locator('#span-number').press('Enter')
    await page.getByRole('link', { name: 'All questions and answers' }).click()
    await page.locator('.answers', { hasText: '24 ft' }).first().waitFor()
  })

  it('takes “Not sure” to everything, and still gives a brief', { timeout: 120_000 }, async () => {
    const page = await openPage('/start/')
    await awake(page)
    while (page.url().includes('/start/')) await notSure(page, await questionShown(page))
    await page.waitForSelector('.brief h1')
    expect(await page.locator('#sure li').count(), 'questions that would settle it').toBeGreaterThan(0)
  })

  it('does not go on without an answer, and says so in place', async () => {
    const page = await openPage('/start/')
    await awake(page)
    const question = await questionShown(page)
    await page.getByRole('button', { name: 'Next' }).click()
    await page.locator('#complaint').waitFor()
    expect((await questionShown(page)).id).toBe(question.id)
  })
})

describe('what is typed', () => {
  it('out of range gets the range in words, stays as typed, and survives a reload', async () => {
    const page = await openPage('/start/#q=span')
    await page.locator('#span-number').fill('900')
    await page.locator('#span-number').press('Enter')
    const words = (await page.locator('#complaint').textContent())?.replaceAll('\u00a0', ' ')
    expect(words).toContain('from 4 ft to 60 ft')
    expect(await page.locator('#span-number').inputValue()).toBe('900')
    expect((await savedAnswers(page))['span']).toBeUndefined()
    await page.reload()
    expect(await page.locator('#span-number').inputValue()).toBe('900')
  })

  it.each(['0', '-4', 'abc', ''])('%j is refused without a throw', async (text) => {
    const page = await openPage('/start/#q=span')
    await page.locator('#span-number').fill(text)
    await page.locator('#span-number').press('Enter')
    await page.locator('#complaint').waitFor()
    expect((await savedAnswers(page))['span']).toBeUndefined()
  })

  it('is converted when the units are switched', async () => {
    const page = await openPage('/start/#q=span')
    await page.locator('#span-number').fill('16')
    await page.locator('label', { hasText: 'metric' }).click()
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#span-number')?.value === '4.88')
    await page.locator('label', { hasText: 'ft, in' }).click()
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#span-number')?.value === '16')
    expect((await savedAnswers(page))['span']).toBeCloseTo(4876.8, 3)
  })

  it('is answered by a quick pick', async () => {
    const page = await openPage('/start/#q=span')
    await page.getByRole('button', { name: /^Hall/ }).click()
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#span-number')?.value === '28')
  })

  it('as a place that we do not have is kept, with the nearest that we have', async () => {
    const page = await openPage('/start/#q=place')
    await page.locator('[role=combobox]').click()
    await page.locator('[role=combobox]').fill('Bend, OR')
    await page.getByText('We have no weather for “Bend, OR”').waitFor()
    await page.locator('[role=combobox]').press('Enter')
    await page.locator('#complaint').waitFor()
    expect((await questionShown(page)).title).toBe(place)
    expect(await page.locator('[role=combobox]').inputValue()).toBe('Bend, OR')
    await page.getByRole('button', { name: 'Eugene, OR' }).click()
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('[role=combobox]')?.value === 'Eugene, OR'
    )
    expect((await savedAnswers(page))['place']).toBe('eugene-or')
  })
})

describe('what comes from outside', () => {
  it.each([
    ['not JSON', '{"span":'],
    ['a list', '[1,2,3]'],
    ['unknown questions and values', '{"span":"wide","nonsense":1,"__proto__":{"x":1},"finish":"grey"}']
  ])('saved state from nowhere: %s', async (_name, text) => {
    // Put there by a page that keeps no answers: one that does would mend them at once, before the reload.
    const page = await openPage('/framers/')
    await saveAnswers(page, text)
    await page.goto(page.url().replace('/framers/', '/start/'))
    await page.locator('.notice').waitFor()
    expect(await page.evaluate(() => localStorage.getItem('bentwise.answers.1.aside'))).toBe(text)
    if (text.includes('finish')) expect((await savedAnswers(page))['finish']).toBe('grey')
    // And the questionnaire goes on.
    await page.locator('h1#question').waitFor()
  })

  it('a link with answers is taken where there are none', async () => {
    const page = await openPage(`/start/#a=${encodeLink({ span: 6096, finish: 'dark' })}`)
    await page.getByRole('heading', { level: 1, name: 'Your answers' }).waitFor()
    expect(await savedAnswers(page)).toEqual({ span: 6096, finish: 'dark' })
  })

  it('a link with answers asks before it replaces one’s own', async () => {
    const page = await openPage('/start/')
    await saveAnswers(page, '{"finish":"grey"}')
    const link = `${page.url()}#a=${encodeLink({ finish: 'dark' })}`
    await page.goto('about:blank')
    await page.goto(link)
    await page.getByRole('button', { name: 'Keep my own' }).waitFor()
    expect(await savedAnswers(page)).toEqual({ finish: 'grey' })
    await page.getByRole('button', { name: 'Keep my own' }).click()
    expect(await savedAnswers(page)).toEqual({ finish: 'grey' })
    await page.goto('about:blank')
    await page.goto(link)
    await page.getByRole('button', { name: /^Replace mine/ }).click()
    await page.waitForFunction(() => localStorage.getItem('bentwise.answers.1') === '{"finish":"dark"}')
  })

  it('a broken link says so and leaves one’s own answers alone', async () => {
    const page = await openPage('/start/')
    const start = page.url()
    await saveAnswers(page, '{"finish":"grey"}')
    for (const code of ['1.abc', '', '1.%%%.zz', `${encodeLink({ span: 6096 }).slice(0, -9)}`]) {
      await page.goto('about:blank')
      await page.goto(`${start}#a=${code}`)
      await page.locator('.notice', { hasText: 'Your own answers are as they were' }).waitFor()
      expect(await savedAnswers(page)).toEqual({ finish: 'grey' })
    }
  })
})

describe('the questionnaire is sound', () => {
  const spots = ['', '#q=place', '#q=span', '#q=size', '#q=order', '#overview']
  for (const colorScheme of ['light', 'dark'] as const) {
    for (const width of [360, 1280]) {
      it(`on every kind of screen, ${width} px, ${colorScheme}`, async () => {
        const page = await openPage('/start/', { width, colorScheme })
        for (const spot of spots) {
          await page.evaluate((hash) => location.replace(`${location.pathname}${hash || '#q=project'}`), spot)
          await page.reload()
          await awake(page)
          await page.locator('.step-control, .overview').first().waitFor()
          if (spot === '#q=place') {
            await page.locator('[role=combobox]').fill('san')
            await page.locator('[role=option]').first().waitFor()
          }
          expect(await axe(page), spot).toEqual([])
          await noSidewaysScroll(page)
        }
      })
    }
  }

  it('fits 320 px', async () => {
    const page = await openPage('/start/', { width: 320 })
    for (const q of QUESTIONS) {
      await page.evaluate((id) => location.replace(`${location.pathname}#q=${id}`), q.id)
      await page.reload()
      await page.locator('.step-control').waitFor()
      await noSidewaysScroll(page)
    }
  })

  it('without script points to all the questions on paper', async () => {
    const page = await openPage('/start/', { javaScriptEnabled: false })
    await page.getByRole('link', { name: /questions stand on one sheet/ }).click()
    for (const q of QUESTIONS) expect(await page.getByRole('heading', { name: q.title }).count(), q.id).toBe(1)
    await noSidewaysScroll(page)
  })
})
