/** The engine as the site runs it: bundled. Run module by module, every call across files would cost a getter more. */
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'vite'

const folder = join(import.meta.dirname, '../../node_modules/.cache/bentwise/bench')

export async function bundledEngine(): Promise<typeof import('./engine')> {
  await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      ssr: join(import.meta.dirname, 'engine.ts'),
      outDir: folder,
      emptyOutDir: true,
      target: 'esnext',
      rollupOptions: { output: { entryFileNames: 'engine.mjs' } }
    }
  })
  return import(/* @vite-ignore */ pathToFileURL(join(folder, 'engine.mjs')).href)
}
