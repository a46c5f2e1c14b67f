// Runs once before the site tests: needs a build, and opens the one browser that all test files share.
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { findBrowser, flags } from './browser.mjs'
import { dist } from './place.mjs'
import { serve } from './server.mjs'

/** @param {import('vitest/node').TestProject} project */
export default async function setup(project) {
  if (!existsSync(join(dist, 'index.html'))) {
    throw new Error('dist/index.html is missing: the site tests need a build. Run `npm run build` first.')
  }
  const browser = await chromium.launchServer({ ...(await findBrowser()), args: flags, headless: true })
  const server = await serve()
  project.provide('site', { origin: server.origin, base: server.base, browser: browser.wsEndpoint() })
  return async () => {
    await browser.close()
    await server.close()
  }
}
