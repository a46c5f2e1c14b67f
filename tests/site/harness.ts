/**
 * What the site tests share: the built site on a local server, one real browser, pages that fail their test when
 * the browser complains, and the accessibility checker.
 */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults, Result, RunOptions } from 'axe-core'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { inject, onTestFinished } from 'vitest'
import { serve } from '../../.ci/server.mjs'

declare module 'vitest' {
  interface ProvidedContext {
    /** Put there by `.ci/site-setup.mjs`. */
    site: { origin: string; base: string; browser: string }
  }
}

/**
 * A server of the test's own on a free port: another origin, a fresh cache, or one that can be closed to go offline.
 * It closes when the test ends, after the pages that were opened since.
 */
export async function serveDist(options: { base?: string; folder?: string } = {}) {
  const server = await serve(options)
  onTestFinished(server.close)
  return server
}

let shared: Promise<Browser> | undefined

/** The browser that all test files share; the setup opens and closes it. */
export function browser(): Promise<Browser> {
  shared ??= chromium.connect(inject('site').browser)
  return shared
}

export interface PageOptions {
  width?: number
  height?: number
  colorScheme?: 'light' | 'dark'
  javaScriptEnabled?: boolean
  /** A touch screen, so that `tap` works. */
  hasTouch?: boolean
  forcedColors?: 'active' | 'none'
  reducedMotion?: 'reduce' | 'no-preference'
  /** Complaints that this test expects, such as the browser's own remark on a page that answers 404. */
  allow?: readonly RegExp[]
  /** The site's service worker would fill a cache of its own in each fresh profile: let in by the tests that are about it. */
  serviceWorkers?: 'allow' | 'block'
  /** An origin from `serveDist()`; the shared server's unless given. */
  origin?: string
}

/** A path of the site, as published: `/wood/` under base `/some/folder/` is `/some/folder/wood/`. */
export function underBase(path: string): string {
  return inject('site').base + path.replace(/^\/+/, '')
}

/**
 * Opens a page of the site in a fresh profile. When the test ends the page closes, and the test fails if there
 * was a console error or warning, an uncaught error, a violation of the content policy (which shows as a console
 * error), or a request to any other origin.
 */
export async function openPage(path: string, options: PageOptions = {}): Promise<Page> {
  const origin = options.origin ?? inject('site').origin
  const context = await (await browser()).newContext({
    viewport: { width: options.width ?? 1280, height: options.height ?? 900 },
    colorScheme: options.colorScheme ?? 'light',
    javaScriptEnabled: options.javaScriptEnabled ?? true,
    hasTouch: options.hasTouch ?? false,
    forcedColors: options.forcedColors ?? 'none',
    reducedMotion: options.reducedMotion ?? 'no-preference',
    serviceWorkers: options.serviceWorkers ?? 'block'
  })
  const complaints = listen(context, origin)
  onTestFinished(async () => {
    await context.close()
    const unexpected = complaints.filter((text) => !options.allow?.some((known) => known.test(text)))
    if (unexpected.length > 0) {
      throw new Error(`${path}: the browser complained\n  ${unexpected.join('\n  ')}`)
    }
  })
  const page = await context.newPage()
  await page.goto(origin + underBase(path), { waitUntil: 'load' })
  return page
}

/** Collects complaints of every page in a context, pop-ups included. */
function listen(context: BrowserContext, origin: string): string[] {
  const complaints: string[] = []
  context.on('console', (message) => {
    if (message.type() !== 'error' && message.type() !== 'warning') return
    // Said by the test browser where it keeps the service worker out.
    if (message.text() === 'Service Worker registration blocked by Playwright') return
    complaints.push(`console ${message.type()}: ${message.text()}`)
  })
  context.on('weberror', (error) => complaints.push(`uncaught: ${error.error().message}`))
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url())
    if (protocol !== 'data:' && protocol !== 'blob:' && asked !== origin) {
      complaints.push(`request to another origin: ${request.url()}`)
    }
  })
  return complaints
}

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

export interface Violation {
  rule: string
  help: string
  nodes: string[]
}

/**
 * Accessibility violations of a page as it is now. The checker is evaluated through the browser's own debugging
 * channel, which the page's content policy does not reach; the page must have JavaScript on.
 */
export async function axe(page: Page, rules: RunOptions['rules'] = {}): Promise<Violation[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axeSource)
  const found = await page.evaluate(
    (options) => (globalThis as unknown as { axe: { run(options: unknown): Promise<AxeResults> } }).axe.run(options),
    { runOnly: { type: 'tag', values: tags }, rules, resultTypes: ['violations'] }
  )
  return found.violations.map((violation: Result) => ({
    rule: violation.id,
    help: violation.help,
    nodes: violation.nodes.map((node) => `${node.target.join(' ')} ${node.html}`)
  }))
}
