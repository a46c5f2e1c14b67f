import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

/**
 * Two projects: `engine` is plain TypeScript and needs nothing else; `site` opens the built pages in a browser.
 * Neither loads Astro, which would take seconds and make no difference.
 */
export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: 'engine',
          environment: 'node',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/site/**'],
          setupFiles: '.ci/seed.mjs',
          // A busy machine may take several times as long.
          testTimeout: 20_000,
          benchmark: { include: ['tests/bench/**/*.bench.ts'] }
        }
      },
      {
        root,
        test: {
          name: 'site',
          environment: 'node',
          include: ['tests/site/**/*.test.ts'],
          benchmark: { include: [], exclude: ['**'] },
          globalSetup: '.ci/site-setup.mjs',
          testTimeout: 60_000,
          hookTimeout: 60_000
        }
      }
    ]
  }
})
