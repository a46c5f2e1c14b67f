/** A person at a phone: taps and keystrokes, counted. Pasting counts as one tap, as choosing it from the menu does. */
import type { Locator, Page } from 'playwright-core'

export class Hand {
  taps = 0
  keys = 0
  constructor(
    readonly page: Page,
    readonly who: string
  ) {}

  async tap(target: Locator): Promise<void> {
    this.taps++
    await target.tap()
  }
  async type(text: string): Promise<void> {
    this.keys += text.length
    await this.page.keyboard.type(text)
  }
  async press(key: string): Promise<void> {
    this.keys++
    await this.page.keyboard.press(key)
  }
  async paste(target: Locator, text: string): Promise<void> {
    this.taps += 2
    await target.tap()
    await this.page.keyboard.insertText(text)
  }
  /** The way that leads on, by what is written on it. */
  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', { name, ...(typeof name === 'string' && { exact: true }) })
  }
}
