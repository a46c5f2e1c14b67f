// `npm start`: installs where needed, builds, and serves the site on this machine.
import { ensureInstalled } from './install.mjs'
import { script } from './process.mjs'
import { serve } from './server.mjs'

if (!(await ensureInstalled())) process.exit(1)
if ((await script('build')).code !== 0) {
  console.error('\nThe build failed, so there is nothing to serve.')
  process.exit(1)
}
const first = Number(process.env.PORT ?? 4173)
if (!Number.isInteger(first) || first < 0 || first > 65535) {
  console.error(`PORT is not a port number: ${process.env.PORT}`)
  process.exit(1)
}
const { address } = await serve({ port: first, tries: 100 })
console.log(`\nBentwise is at ${address}\nPress Ctrl+C to stop.`)

// Ended by a signal, npm leaves its child running; a server that nobody started must not hold the port.
const parent = process.ppid
setInterval(() => {
  if (process.ppid !== parent) process.exit()
}, 500).unref()
