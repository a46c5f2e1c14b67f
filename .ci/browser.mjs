// The browser of the site tests. It comes inside an npm package, so that a machine needs no browser of its own;
// CHROMIUM_PATH names another one.
import { existsSync } from 'node:fs'
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { root } from './place.mjs'
import { run } from './process.mjs'

export const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync'
]

/** @typedef {{ executablePath: string, env: Record<string, string | undefined> }} Browser */

/**
 * Where the browser is, and the environment that it needs.
 * @returns {Promise<Browser>}
 */
export async function findBrowser() {
  const own = process.env.CHROMIUM_PATH
  if (own) return { executablePath: own, env: process.env }
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error('The packaged browser runs on 64-bit Linux only: set CHROMIUM_PATH to a Chromium or Chrome.')
  }
  const home = await unpack()
  return {
    executablePath: join(home, 'chromium'),
    env: {
      ...process.env,
      LD_LIBRARY_PATH: [join(home, 'al2023/lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':'),
      FONTCONFIG_PATH: join(home, 'fonts')
    }
  }
}

/**
 * Unpacks the packaged browser once per version. The package would unpack into the machine's shared temporary
 * folder and take whatever lies there, so it is given a folder of its own, which gets its name when complete.
 */
async function unpack() {
  const manifest = await readFile(join(root, 'node_modules/@sparticuz/chromium/package.json'), 'utf8')
  const home = join(root, 'node_modules/.cache/chromium', JSON.parse(manifest).version)
  if (existsSync(home)) return home
  const partial = `${home}.${process.pid}`
  await mkdir(partial, { recursive: true })

  const { code } = await run('node', ['.ci/unpack.mjs'], {
    // Without the second one the package leaves out the shared libraries that it carries (libnss3 and kin).
    env: { TMPDIR: partial, AWS_LAMBDA_JS_RUNTIME: 'nodejs24.x' }
  })
  if (code !== 0) throw new Error('The packaged browser could not be unpacked.')

  // The packaged settings name /tmp/fonts.
  await writeFile(
    join(partial, 'fonts/fonts.conf'),
    `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${home}/fonts</dir><cachedir>${home}/fonts-cache</cachedir></fontconfig>
`
  )
  try {
    await rename(partial, home)
  } catch (error) {
    await rm(partial, { recursive: true, force: true })
    if (!existsSync(home)) throw error
  }
  return home
}
