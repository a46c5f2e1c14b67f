/** What the tests of questionnaire and brief do by keyboard, as a person would: Tab, arrows, Space, Enter, typing. */
import type { Page } from 'playwright-core'
import { expect } from 'vitest'
import { QUESTIONS } from '../../src/choice/questions'
import type { Question } from '../../src/choice/types'

/** Presses Tab until the focused element matches. */
export async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 80; i++) {
    await page.keyboard.press('Tab')
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) === true, selector)) return
  }
  throw new Error(`Tab never came to ${selector}`)
}

export async function questionShown(page: Page): Promise<Question> {
  const title = (await page.locator('h1#question').textContent())?.trim()
  const found = QUESTIONS.find((q) => q.title === title)
  if (found === undefined) throw new Error(`no question is titled "${title}"`)
  return found
}

/** Waits until another question than `last` is on the page, or another page altogether. */
export async function moved(page: Page, last: Question): Promise<void> {
  await page.waitForFunction((title) => document.querySelector('h1')?.textContent?.trim() !== title, last.title)
}

const TYPED: Readonly<Record<string, string>> = {
  span: '20 ft',
  spacing: '12',
  count: '5',
  slope: '9',
  snow: '40',
  postHeight: "10'",
  stick: '24',
  depthLimit: '14',
  budgetSum: '90,000'
}

/** Answers the question on the page by keyboard alone and goes on with Enter. */
export async function answerByKeyboard(page: Page, question: Question): Promise<void> {
  switch (question.kind) {
    case 'choice':
      await tabTo(page, `input[name="${question.id}"]`)
      await page.keyboard.press('Space')
      break
    case 'number':
      await tabTo(page, `#${question.id}-number`)
      await page.keyboard.type(TYPED[question.id] ?? '10')
      break
    case 'section':
      await tabTo(page, `#${question.id}-number`)
      await page.keyboard.type('8')
      await page.keyboard.press('Tab')
      await page.keyboard.type('10')
      break
    case 'place':
      await tabTo(page, '[role=combobox]')
      await page.keyboard.type('dulu')
      await page.waitForSelector('[role=option]')
      await page.keyboard.press('ArrowDown')
      await page.keyboard.press('Enter')
      await page.waitForFunction(
        () => document.querySelector<HTMLInputElement>('[role=combobox]')?.value === 'Duluth, MN'
      )
      break
    case 'order':
      await tabTo(page, '.order-rest button')
      for (let i = 1; i < question.choices.length; i++) {
        await page.keyboard.press('Enter')
        await page.waitForFunction((n) => document.querySelectorAll('.order > li').length >= n, i)
        await page.waitForFunction(() => document.activeElement?.matches('.order-rest button, .order button') === true)
      }
      await tabTo(page, 'button[type=submit]')
      break
  }
  await page.keyboard.press('Enter')
  await moved(page, question)
}

/** Picks "Not sure" and goes on. */
export async function notSure(page: Page, question: Question): Promise<void> {
  await page.locator('input[value=unsure]').check()
  await page.locator('button[type=submit]').click()
  await moved(page, question)
}

/** The first touch loads the rest of the questionnaire; tests that need it at once wait for it here. */
export async function awake(page: Page): Promise<void> {
  await page.locator('astro-island:not([ssr])').first().waitFor({ state: 'attached' })
}

export async function noSidewaysScroll(page: Page): Promise<void> {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
  expect(over, 'the page must not scroll sideways').toBeLessThanOrEqual(0)
}

/** Answers as saved on this device. */
export function savedAnswers(page: Page): Promise<Record<string, unknown>> {
  return page.evaluate(() => JSON.parse(localStorage.getItem('bentwise.answers.1') ?? '{}'))
}

export async function saveAnswers(page: Page, text: string): Promise<void> {
  await page.evaluate((t) => localStorage.setItem('bentwise.answers.1', t), text)
}

/** How many sheets a PDF has. */
export const sheetsOf = (pdf: Uint8Array): number =>
  Buffer.from(pdf)
    .toString('latin1')
    .match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0

/** What the browser says of a file that did not come. */
export const LOST = /net::ERR|ERR_FAILED|Failed to load|Failed to fetch/

/** A file that is kept waiting, then lost, then let through. */
export async function heldBack(page: Page, file: string) {
  let pass: (() => void) | undefined
  let mode: 'hold' | 'fail' | 'go' = 'hold'
  await page.context().route(file, async (route) => {
    if (mode === 'hold') await new Promise<void>((done) => (pass = done))
    await (mode === 'fail' ? route.abort() : route.continue())
  })
  return {
    lose: async () => {
      mode = 'fail'
      await expect.poll(() => pass !== undefined).toBe(true)
      pass?.()
    },
    pass: () => {
      mode = 'go'
    }
  }
}
