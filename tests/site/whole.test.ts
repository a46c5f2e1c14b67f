/** The built site as a whole, read from its files: every link leads somewhere, every page can be reached, each has its heading. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { basePath, dist } from '../../.ci/place.mjs'

const base = basePath()
/** Notes that ask the engine for a section. */
const noteSizes = readdirSync(join(import.meta.dirname, '../../content/notes'))
  .filter((file) =>
    /\{\{ladder |ladder section/.test(readFileSync(join(import.meta.dirname, '../../content/notes', file), 'utf8'))
  )
  .map((file) => file.replace('.md', ''))
const site = process.env['SITE_URL']

interface Page {
  /** Its address under the base: `/start/` */
  readonly path: string
  readonly html: string
  readonly ids: ReadonlySet<string>
}

const pages: readonly Page[] = readdirSync(dist, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.html'))
  .map((file) => {
    const html = readFileSync(join(dist, file), 'utf8')
    const ids = new Set([...html.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1] ?? ''))
    return { path: `/${file.replaceAll('\\', '/').replace(/index\.html$/, '')}`, html, ids }
  })
const at = new Map(pages.map((page) => [page.path, page]))
/** Not led to by any link: shown by the host, and by the service worker. */
const SHOWN = ['/404.html', '/offline/']
/** What stands behind # on these is read by a script. */
const READ = /^[abiqs]=|^(file|overview)$/

/** Every address of this site that a page names, as [path under the base, fragment]. */
function targets({ html, path }: Page): [string, string][] {
  const named = [...html.matchAll(/<(?:a|link|script|img|form)\b[^>]*?\s(?:href|src|action)="([^"]*)"/g)].map((m) =>
    (m[1] ?? '').replaceAll('&amp;', '&').replaceAll('&#38;', '&')
  )
  return named
    .filter((url) => !/^(mailto:|data:|https?:)/.test(url))
    .map((url) => {
      const { pathname, hash } = new URL(url, `https://x.example${base}${path.slice(1)}`)
      expect(pathname.startsWith(base), `${path} leads out of the base: ${url}`).toBe(true)
      return [`/${pathname.slice(base.length)}`, decodeURIComponent(hash.slice(1))]
    })
}

describe.each(pages.map((page) => [page.path, page] as const))('%s', (path, page) => {
  const { html } = page
  it('leads only where there is something', () => {
    for (const [to, fragment] of targets(page)) {
      const file = join(dist, to.endsWith('/') ? `${to}index.html` : to)
      expect(existsSync(file), `${path} -> ${to}`).toBe(true)
      if (fragment === '' || READ.test(fragment)) continue
      // Benches and the questions read a whole job from there.
      if (/^\/(drying-clock|size-ladder|log-end|shop|woods\/compare)\/$/.test(to) && !/^[a-z-]+$/.test(fragment))
        continue
      expect(at.get(to)?.ids.has(fragment), `${path} -> ${to}#${fragment}`).toBe(true)
    }
  })

  it('has a language, a description, and headings that go down by one', () => {
    expect(html).toMatch(/<html[^>]* lang="en"/)
    expect(/<meta name="description" content="([^"]*)"/.exec(html)?.[1] ?? '').toMatch(/^.{15,}/)
    const body = html.replace(/<(noscript|template|script)\b[\s\S]*?<\/\1>/g, '')
    const levels = [...body.matchAll(/<h([1-6])\b/g)].map((m) => Number(m[1]))
    // A page that is drawn by script alone has its heading once it is drawn; its own tests look at that.
    if (levels.length === 0) expect(html, 'drawn by script').toMatch(/astro-island/)
    else
      expect(
        levels.filter((level) => level === 1),
        'one h1'
      ).toHaveLength(1)
    for (const [i, level] of levels.entries())
      expect(level - (levels[i - 1] ?? level), `${levels}`).toBeLessThanOrEqual(1)
  })

  it('has each id once', () => {
    const all = [...html.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1])
    expect(all.filter((id, i) => all.indexOf(id) !== i)).toEqual([])
  })

  it('has no inline style and no script but those of its policy', () => {
    expect(html).not.toMatch(/<[a-z][^>]*\sstyle="/)
    expect(html).toMatch(/http-equiv="content-security-policy"/i)
    expect(html).not.toMatch(/unsafe-inline|unsafe-eval(?<!wasm-unsafe-eval)/)
  })
})

/** What a page says in its content, on paper as on a screen. */
function printed(html: string): string {
  const main = /<main[\s\S]*<\/main>/.exec(html)?.[0] ?? ''
  return main
    .replace(/<(script|template|noscript)\b[\s\S]*?<\/\1>/g, '')
    .replace(/<p class="no-print"[\s\S]*?<\/p>/g, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
}
/** Pages that show what section a timber needs: briefs, woods, and whatever draws or tables sections. */
const shows = ({ path, html }: Page): boolean =>
  /^\/(examples|woods)\/|^\/size-ladder\/$/.test(path) ||
  /<div class="ladder">|<th[^>]*>Section<|class="[^"]*forces/.test(html) ||
  noteSizes.some((id) => path === `/notes/${id}/`)

describe('a page with a size', () => {
  const sized = pages.filter(shows)
  it('is found by what it shows', () => {
    expect(sized.length).toBeGreaterThan(45)
    for (const path of ['/woods/', '/woods/compare/', '/notes/strength-and-grade/', '/notes/choosing-local/'])
      expect(sized.map((page) => page.path)).toContain(path)
  })
  it.each(sized.map((page) => [page.path, page.html]))(
    '%s says what such a size is, and what is not in it',
    (_, html) => {
      const said = printed(html)
      for (const word of [
        /not for construction|not a design/,
        /licensed engineer/i,
        /local code/,
        /wind/i,
        /uplift/i,
        /snow/,
        /earthquake/
      ])
        expect(said).toMatch(word)
      expect(said).toMatch(/connections?|notched ends/)
    }
  )
})

describe('all pages', () => {
  it('have titles of their own', () => {
    const titles = pages.map(({ html }) => /<title[^>]*>([^<]*)/.exec(html)?.[1])
    expect(titles.filter((title, i) => !title || titles.indexOf(title) !== i)).toEqual([])
  })

  it('can be reached from the first one, without the list of all pages', () => {
    const reached = new Set(['/'])
    for (const path of reached) {
      const page = at.get(path)
      if (!page) continue
      const html = path === '/search/' ? page.html.replace(/<h2>Every page[\s\S]*/, '') : page.html
      for (const [to] of targets({ ...page, html })) reached.add(to)
    }
    expect(pages.map(({ path }) => path).filter((path) => !reached.has(path) && !SHOWN.includes(path))).toEqual([])
  })

  it('that may be found are on the list of all pages', () => {
    const list = /<h2>Every page[\s\S]*/.exec(at.get('/search/')?.html ?? '')?.[0] ?? ''
    for (const { path, html } of pages.filter((page) => !page.html.includes('content="noindex"')))
      expect(list, html.slice(0, 0) + path).toContain(`href="${base}${path.slice(1)}"`)
  })

  it.runIf(site)('are in the sitemap, and name their address and a picture in full', () => {
    const map = readFileSync(join(dist, 'sitemap-0.xml'), 'utf8')
    const listed = [...map.matchAll(/<loc>([^<]*)</g)].map((m) => m[1])
    const full = (path: string) => new URL(base + path.slice(1), site).href
    const found = pages.filter(({ html }) => !html.includes('content="noindex"')).map(({ path }) => full(path))
    expect(listed.sort()).toEqual(found.sort())
    for (const { path, html } of pages) {
      if (path === '/404.html') continue
      expect(html, path).toContain(`<link rel="canonical" href="${full(path)}"`)
      expect(html, path).toContain(`<meta property="og:image" content="${full('/social.png')}"`)
    }
    expect(readFileSync(join(dist, 'robots.txt'), 'utf8')).toContain(full('/sitemap-index.xml'))
  })

  it.skipIf(site)('name no address that the site does not know', () => {
    for (const { path, html } of pages) expect(html, path).not.toMatch(/rel="canonical"|property="og:|example\/(?!s)/)
    expect(existsSync(join(dist, 'sitemap-0.xml'))).toBe(false)
  })

  it('the picture for previews is 1200 by 630', () => {
    const png = readFileSync(join(dist, 'social.png'))
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1200, 630])
    expect(png.length).toBeLessThan(120 * 1024)
  })
})
