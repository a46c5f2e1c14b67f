import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { root } from './place.mjs'

/**
 * A shop's own sheet in place of `content/shop.json`: BENTWISE_SHOP names the file that /shop/ saved, from the checkout.
 * What is wrong with it is said where the build reads it (src/pages/data/reference.json.ts).
 * @returns {import('vite').Plugin}
 */
export function ownShop() {
  const own = process.env.BENTWISE_SHOP
  return {
    name: 'own-shop',
    enforce: 'pre',
    load(id) {
      if (!own || !/\/content\/shop\.json$/.test(id)) return null
      return readFileSync(resolve(root, own), 'utf8').replace(/^\uFEFF/, '')
    }
  }
}
