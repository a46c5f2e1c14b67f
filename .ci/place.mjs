import { resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of the checkout. */
export const root = fileURLToPath(new URL('..', import.meta.url))
/** What a build writes and everything else reads; OUT_DIR names another folder, from the checkout. */
export const dist = resolve(root, process.env.OUT_DIR || 'dist')

/**
 * The path under which the site is published, with a slash at both ends: `/` or `/some/folder/`.
 * @param {string | undefined} value
 */
export function basePath(value = process.env.BASE_PATH) {
  const parts = (value ?? '').split('/').filter(Boolean)
  return parts.length === 0 ? '/' : `/${parts.join('/')}/`
}
