// Builds the site into dist/. Astro exits 0 after some errors that it only logs (a broken reference, a duplicate
// id), so the log is read too, and anything in it that is not on the list below fails the build.
import { rm } from 'node:fs/promises'
import { stripVTControlCharacters } from 'node:util'
import { finish } from './finish.mjs'
import { dist, root } from './place.mjs'
import { run } from './process.mjs'

/** Warnings that are known and harmless: a pattern, and why. @type {{ line: RegExp, why: string }[]} */
const allowed = []

// What was built before is thrown away, so the folder must not be one that holds the checkout.
if (`${root}/`.startsWith(`${dist}/`)) throw new Error(`OUT_DIR holds the checkout itself: ${dist}`)
// Without this, a build that fails early would leave the last one's pages to be tested.
await rm(dist, { recursive: true, force: true })

const fonts = await run('node', ['.ci/fonts.mjs'])
const astro = await run('astro', ['build'], { env: { ASTRO_TELEMETRY_DISABLED: '1' }, keep: true })

const complaints = stripVTControlCharacters(astro.output)
  .split('\n')
  .filter((line) => /\[(WARN|ERROR)\]|(^|\s)(warning|error)\b|\(!\)/i.test(line))
  .filter((line) => !allowed.some(({ line: known }) => known.test(line)))

if (complaints.length > 0) {
  console.error(`\nbuild: these lines of the log must not be there (see .ci/build.mjs):\n${complaints.join('\n')}`)
}
if (astro.code === 0) await finish()
process.exitCode = fonts.code || astro.code || (complaints.length > 0 ? 1 : 0)
