import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './place.mjs'
import { run } from './process.mjs'

/** @param {string} path @returns {Record<string, { version?: string, optional?: boolean }>} */
const packagesIn = (path) => JSON.parse(readFileSync(join(root, path), 'utf8')).packages

/**
 * Whether node_modules holds what the lock asks for. npm records what it installed in a hidden lock of its own;
 * comparing the two beats comparing dates, which git sets anew at every checkout.
 */
function isInstalled() {
  if (!existsSync(join(root, 'node_modules/node/bin'))) return false
  if (!existsSync(join(root, 'node_modules/.package-lock.json'))) return false
  const have = packagesIn('node_modules/.package-lock.json')
  return Object.entries(packagesIn('package-lock.json')).every(
    // Optional packages are for other machines' processors.
    ([path, { version, optional }]) => path === '' || optional || have[path]?.version === version
  )
}

/** Installs the locked packages where they are missing or outdated. @returns {Promise<boolean>} success */
export async function ensureInstalled() {
  if (isInstalled()) return true
  console.log('Installing the packages named in package-lock.json ...')
  // Older Node versions than the tools want are fine here: the project's own Node comes with this install.
  const { code } = await run('npm', ['ci', '--loglevel=error'])
  // npm has been seen to break off and still exit 0, so what it left is looked at too.
  const ok = code === 0 && isInstalled()
  if (!ok) console.error('npm ci failed; is the npm registry reachable?')
  return ok
}
