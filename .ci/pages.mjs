// The pages of a build, read from what was written, so that no page can be left out of the list.
import { glob, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { basePath, dist } from './place.mjs'

/** @typedef {{ path: string, title: string, kind: string }} Page `path`: under the base, `woods/red-oak/` */

/** @param {string} html @param {RegExp} pattern */
const found = (html, pattern) => (pattern.exec(html)?.[1] ?? '').replace(/\s+/g, ' ').trim()

/** Every page that readers may find: not those marked noindex. In the order of their kinds, then by title. */
export async function pagesIn() {
  /** @type {Page[]} */
  const pages = []
  for await (const file of glob('**/*.html', { cwd: dist })) {
    const html = await readFile(join(dist, file), 'utf8')
    if (html.includes('content="noindex"')) continue
    pages.push({
      path: file.replaceAll('\\', '/').replace(/index\.html$/, ''),
      title: found(html, /<title[^>]*>([^<]*)<\/title>/).replace(/ · Bentwise$/, ''),
      kind: found(html, /data-pagefind-filter="kind:([^"]*)"/)
    })
  }
  return pages.sort((a, b) => a.title.localeCompare(b.title, 'en'))
}

/** The list as HTML: a heading for each kind, the smallest kinds first. @param {Page[]} pages */
export function listOf(pages) {
  const kinds = Map.groupBy(pages, ({ kind }) => kind)
  return [...kinds]
    .sort(([, a], [, b]) => a.length - b.length)
    .map(([kind, of]) => {
      const links = of.map(({ path, title }) => `<li><a href="${basePath()}${path}">${title}</a></li>`)
      return `<h3>${kind}</h3><ul class="plain every-page" role="list">${links.join('')}</ul>`
    })
    .join('')
}
