import { describe, expect, it } from 'vitest'
import { openPage } from './harness'

describe('the home page opens without complaints', () => {
  for (const width of [360, 1280]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`${width} px wide, ${colorScheme}`, async () => {
        const page = await openPage('/', { width, colorScheme })
        expect(await page.locator('h1').count()).toBe(1)
        const overflow = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth
        )
        expect(overflow, 'the page must not scroll sideways').toBeLessThanOrEqual(0)
      })
    }
  }

  it('carries a content policy that allows nothing inline', async () => {
    const page = await openPage('/')
    const policy = await page.locator('meta[http-equiv="content-security-policy" i]').getAttribute('content')
    expect(policy).toContain("default-src 'self'")
    expect(policy).not.toContain('unsafe-inline')
  })
})
