// The index of the search page, written beside the pages. Only what our own page loads is kept: no ready-made
// interface, no worker (a few hundred pages are searched in a blink), no word forms of other languages.
import { mkdir, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { close, createIndex } from 'pagefind'
import { dist } from './place.mjs'

const KEPT = /^(pagefind\.js|pagefind-entry\.json|wasm\.en\.pagefind|.*\.pf_(meta|index|fragment|filter))$/

/** @returns {Promise<number>} pages in the index */
export async function writeIndex() {
  try {
    const { index, errors } = await createIndex({
      // Figures stand in both systems; an excerpt that ran them together could not be read.
      excludeSelectors: [
        '.source',
        '.si',
        '.print-only',
        '.origins',
        '.cited',
        '.crumb',
        'nav',
        '.visually-hidden',
        'svg',
        'noscript',
        'datalist',
        'select'
      ]
    })
    if (!index) throw new Error(errors.join('\n'))
    const added = await index.addDirectory({ path: dist })
    const { files, errors: wrong } = await index.getFiles()
    const all = [...errors, ...added.errors, ...wrong]
    if (all.length > 0) throw new Error(all.join('\n'))
    for (const { path, content } of files.filter((file) => KEPT.test(file.path))) {
      const to = join(dist, 'pagefind', path)
      await mkdir(dirname(to), { recursive: true })
      await writeFile(to, content)
    }
    return files.filter(({ path }) => path.endsWith('.pf_fragment')).length
  } finally {
    await close()
  }
}
