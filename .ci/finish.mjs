// What is made of the pages once they are written: the list of them all, the index of the search, and last the service
// worker, which lists every file.
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { listOf, pagesIn } from './pages.mjs'
import { dist } from './place.mjs'
import { writeIndex } from './search-index.mjs'
import { writeWorker } from './worker.mjs'

export async function finish() {
  const search = join(dist, 'search/index.html')
  const html = await readFile(search, 'utf8')
  const spot = '<div id="every-page"></div>'
  if (!html.includes(spot)) throw new Error(`dist/search/index.html has no ${spot}`)
  const pages = await pagesIn()
  await writeFile(search, html.replace(spot, listOf(pages)))
  const indexed = await writeIndex()
  const { first, later } = await writeWorker()
  console.log(`search: ${indexed} pages; offline: ${first} files at once, ${later} later`)
}
