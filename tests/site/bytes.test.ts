/** What a first view costs, compressed, before anyone touches it. Bytes are a promise; times are not tested. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { basePath, dist } from '../../.ci/place.mjs'

const base = basePath()

const KB = 1024

/** Path in dist/ of an address of the site. */
const local = (url: string) => join(dist, url.replace(base, '/'))
const packed = (path: string) =>
  path.endsWith('.woff2') ? readFileSync(path).length : gzipSync(readFileSync(path), { level: 9 }).length

/** A script and all that it imports without being asked. */
function withImports(path: string, seen = new Set<string>()): Set<string> {
  if (seen.has(path) || !existsSync(path)) return seen
  seen.add(path)
  const code = readFileSync(path, 'utf8')
  for (const m of code.matchAll(/(?:from|import)\s*"(\.\.?\/[^"]+\.js)"/g))
    withImports(join(dirname(path), m[1] ?? ''), seen)
  return seen
}

function firstView(page: string) {
  const html = readFileSync(join(dist, page, 'index.html'), 'utf8')
  const all = (pattern: RegExp) => [...html.matchAll(pattern)].map((m) => local(m[1] ?? ''))
  const styles = all(/<link[^>]+rel="stylesheet"[^>]*href="([^"]+)"(?![^>]*media="print")/g)
  const scripts = new Set<string>()
  for (const entry of [
    ...all(/<script[^>]+src="([^"]+)"/g),
    ...all(/component-url="([^"]+)"/g),
    ...all(/renderer-url="([^"]+)"/g)
  ])
    withImports(entry, scripts)
  const fonts = new Set(
    styles.flatMap((s) =>
      [...readFileSync(s, 'utf8').matchAll(/url\(([^)]+\.woff2)\)/g)].map((m) =>
        join(dirname(s), (m[1] ?? '').split('/').at(-1) ?? '')
      )
    )
  )
  const sum = (paths: Iterable<string>) => [...paths].reduce((n, p) => n + packed(p), 0)
  const script = sum(scripts)
  return {
    script,
    fonts: fonts.size,
    total: packed(join(dist, page, 'index.html')) + sum(styles) + sum(fonts) + script
  }
}

describe('first view', () => {
  it.each([
    '',
    'start',
    'brief',
    'log-end',
    'drying-clock',
    'size-ladder',
    'framers',
    'shop',
    'sources',
    'search',
    'places',
    'invite',
    'compare',
    'handouts',
    'handouts/species-chart',
    'handouts/movement',
    'handouts/log-end',
    'handouts/exposure-and-rot',
    'handouts/questionnaire',
    'handouts/first-meeting',
    'handouts/aftercare'
  ])('/%s is at most 60 KB, 25 KB of it script, with at most two fonts', (page) => {
    const view = firstView(page)
    expect(view.fonts).toBe(2)
    expect(view.script).toBeLessThanOrEqual(25 * KB)
    expect(view.total).toBeLessThanOrEqual(60 * KB)
  })
  it.each(['', 'framers', 'handouts', 'sources', 'places', 'examples/lakeside-pavilion', 'examples/ridge-hall'])(
    '/%s ships no script file',
    (page) => {
      expect(firstView(page).script).toBe(0)
    }
  )
  it('an example brief, every source note and meaning of a word in it, is at most 84 KB', () => {
    for (const page of ['examples/lakeside-pavilion', 'examples/ridge-hall'])
      expect(firstView(page).total).toBeLessThanOrEqual(84 * KB)
  })
  it('no script that may come later is larger than the engine may be, 64 KB', () => {
    const scripts = readdirSync(join(dist, '_astro')).filter((file) => file.endsWith('.js'))
    expect(scripts.length).toBeGreaterThan(10)
    for (const file of scripts)
      expect(gzipSync(readFileSync(join(dist, '_astro', file))).length, file).toBeLessThanOrEqual(64 * KB)
  })
  if (process.env['REPORT_BYTES']) {
    it('report', () => {
      for (const page of [
        '',
        'start',
        'brief',
        'invite',
        'log-end',
        'drying-clock',
        'size-ladder',
        'compare',
        'framers',
        'shop',
        'sources',
        'handouts/species-chart',
        'handouts/movement',
        'handouts/log-end',
        'handouts/exposure-and-rot',
        'handouts/questionnaire',
        'handouts/aftercare',
        'examples/ridge-hall'
      ]) {
        const v = firstView(page)
        process.stdout.write(`/${page}: ${(v.total / KB).toFixed(1)} KB, script ${(v.script / KB).toFixed(1)} KB\n`)
      }
    })
  }
})
