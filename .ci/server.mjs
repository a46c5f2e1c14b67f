// A small static server for dist/: what a plain web host does, and nothing more.
import { createReadStream } from 'node:fs'
import { stat } from 'node:fs/promises'
import { createServer } from 'node:http'
import { extname, join, resolve, sep } from 'node:path'
import { basePath, dist } from './place.mjs'

const host = '127.0.0.1'

/** @type {Record<string, string>} */
const types = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8'
}

/** @param {string} path */
const kind = (path) =>
  stat(path).then(
    (found) => (found.isDirectory() ? 'folder' : found.isFile() ? 'file' : 'none'),
    () => 'none'
  )

/**
 * Where a request leads: a file to send, or an address to go to.
 * @param {string} folder @param {string} base @param {URL} url
 * @returns {Promise<{ status: number, file: string } | { status: 301, to: string }>}
 */
async function find(folder, base, { pathname, search }) {
  const missing = { status: 404, file: join(folder, '404.html') }
  if (`${pathname}/` === base) return { status: 301, to: base + search }
  if (!pathname.startsWith(base)) return missing
  let inside
  try {
    inside = decodeURIComponent(pathname.slice(base.length))
  } catch {
    return missing
  }
  const path = resolve(folder, `.${sep}${inside}`)
  const within = path === folder || path.startsWith(folder + sep)
  if (!within || inside.includes('\0')) return missing
  const found = await kind(path)
  if (found === 'file' && !pathname.endsWith('/')) return { status: 200, file: path }
  if (found !== 'folder') return missing
  if (!pathname.endsWith('/')) return { status: 301, to: `${pathname}/${search}` }
  const index = join(path, 'index.html')
  return (await kind(index)) === 'file' ? { status: 200, file: index } : missing
}

/**
 * Serves a folder on this machine only.
 * @param {{ port?: number, tries?: number, folder?: string, base?: string }} [options]
 *   `port`: the first to try, 0 for any free one; `tries`: how many ports, counting up.
 * @returns {Promise<{ address: string, origin: string, base: string, close: () => Promise<void> }>}
 */
export async function serve({ port = 0, tries = 1, folder = dist, base = basePath() } = {}) {
  const server = createServer(async (request, response) => {
    response.setHeader('X-Content-Type-Options', 'nosniff')
    response.setHeader('Cache-Control', 'no-cache')
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end()
      return
    }
    // Put together from parts: a path that begins with two slashes must not be read as another host.
    const url = new URL(`http://${host}${request.url ?? '/'}`)
    const found = await find(folder, base, url)
    if ('to' in found) {
      // A path's leading slashes are folded, so that a redirect never leaves this server.
      response.writeHead(301, { Location: found.to.replace(/^\/+/, '/') }).end()
      return
    }
    if ((await kind(found.file)) !== 'file') {
      response.writeHead(404, { 'Content-Type': 'text/plain; charset=utf-8' }).end('Not found\n')
      return
    }
    const type = types[extname(found.file).toLowerCase()] ?? 'application/octet-stream'
    response.writeHead(found.status, { 'Content-Type': type })
    if (request.method === 'HEAD') response.end()
    else
      createReadStream(found.file)
        .on('error', () => response.destroy())
        .pipe(response)
  })

  const open = await listen(server, port, tries)
  const origin = `http://${host}:${open}`
  return {
    address: origin + base,
    origin,
    base,
    close: () =>
      new Promise((done) => {
        server.close(() => done())
        // Browsers hold connections open; waiting for them would keep the process alive.
        server.closeAllConnections()
      })
  }
}

/**
 * Listens on the first free port.
 * @param {import('node:http').Server} server @param {number} first @param {number} tries
 * @returns {Promise<number>}
 */
async function listen(server, first, tries) {
  for (let port = first; ; port++) {
    try {
      await new Promise((resolve, reject) => {
        server.once('error', reject)
        server.listen(port, host, () => {
          server.off('error', reject)
          resolve(undefined)
        })
      })
      const address = server.address()
      return typeof address === 'object' && address ? address.port : port
    } catch (error) {
      const busy = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE'
      if (!busy || port - first + 1 >= tries) throw error
    }
  }
}
