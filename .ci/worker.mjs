// Writes dist/sw.js: service-worker.js with the list of files before it. Its cache is named after what is in the files.
import { createHash } from 'node:crypto'
import { glob, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { basePath, dist } from './place.mjs'

/** Not asked for by any page: for search engines, previews and the print shop. */
const NEVER = /^(sw\.js|robots\.txt|sitemap.*\.xml|404\.html|social\.png|fonts\/LICENSE\.txt)$/
/** Pages to read: kept too, but after the job can be done offline. */
const LATER = /^(woods|notes|examples|handouts|data\/woods)\//

export async function writeWorker() {
  const code = await readFile(new URL('service-worker.js', import.meta.url), 'utf8')
  const hash = createHash('sha256').update(code)
  /** @type {string[]} */
  const files = []
  for await (const entry of glob('**/*', { cwd: dist, withFileTypes: true })) {
    if (entry.isFile())
      files.push(
        join(entry.parentPath, entry.name)
          .slice(dist.length + 1)
          .replaceAll('\\', '/')
      )
  }
  const kept = files.filter((file) => !NEVER.test(file)).sort()
  for (const file of kept) hash.update(`${file}\0`).update(await readFile(join(dist, file)))

  const address = (/** @type {string} */ file) => file.replace(/(^|\/)index\.html$/, '$1')
  const first = kept.filter((file) => !LATER.test(file)).map(address)
  const later = kept.filter((file) => LATER.test(file)).map(address)
  const given = {
    BASE: basePath(),
    NAME: `bentwise ${basePath()} ${hash.digest('hex').slice(0, 16)}`,
    FIRST: first,
    LATER: later
  }
  const lines = Object.entries(given).map(([name, value]) => `const ${name} = ${JSON.stringify(value)}`)
  await writeFile(join(dist, 'sw.js'), `${lines.join('\n')}\n${code}`)
  return { first: first.length, later: later.length }
}
