// `npm run pictures`, after a build: draws the pictures of the README from the built site, and the one that previews of a
// link show (public/social.png, part of the next build).
import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { findBrowser, flags } from './browser.mjs'
import { root } from './place.mjs'
import { serve } from './server.mjs'

const folder = join(root, '.ci/pictures')

/** @type {{ name: string, path: string, width: number, height: number, at?: string, dark?: boolean }[]} */
const shots = [
  { name: 'questions', path: '/start/', width: 1100, height: 700 },
  { name: 'brief', path: '/examples/ridge-hall/', width: 1000, height: 700 },
  { name: 'log-end', path: '/log-end/', width: 760, height: 440, at: 'main svg' },
  { name: 'size-ladder', path: '/size-ladder/', width: 390, height: 780, at: 'main svg', dark: true }
]

const browser = await chromium.launch({ ...(await findBrowser()), args: flags })
const server = await serve()
await mkdir(folder, { recursive: true })

for (const { name, path, width, height, at, dark } of shots) {
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: dark ? 'dark' : 'light',
    reducedMotion: 'reduce',
    serviceWorkers: 'block'
  })
  const page = await context.newPage()
  await page.goto(server.address + path.slice(1), { waitUntil: 'networkidle' })
  if (at)
    await page
      .locator(at)
      .first()
      .evaluate((el) => el.scrollIntoView({ block: 'center' }))
  await save(join(folder, `${name}.png`), await page.screenshot())
  await context.close()
}

// The two log ends of the first page, on a sheet of their own with the site's letters and colours.
const context = await browser.newContext({ viewport: { width: 1200, height: 630 }, serviceWorkers: 'block' })
const page = await context.newPage()
await page.goto(server.address, { waitUntil: 'networkidle' })
const style = await readFile(join(root, '.ci/social.css'), 'utf8')
await page.evaluate(() => {
  const drawings = [...document.querySelectorAll('.hero-figure svg')].filter((svg) => svg.checkVisibility())
  const says = document.querySelector('h1')?.textContent
  if (drawings.length === 0 || !says) throw new Error('the first page has no drawing or no heading')
  const words = document.createElement('div')
  const [name, line] = [document.createElement('p'), document.createElement('h1')]
  name.textContent = 'Bentwise'
  line.textContent = says
  words.append(name, line)
  document.body.className = 'social'
  document.body.replaceChildren(words, ...drawings)
})
const sheet = await context.newCDPSession(page)
await sheet.send('Page.setBypassCSP', { enabled: true })
await page.evaluate((css) => {
  const own = new CSSStyleSheet()
  own.replaceSync(css)
  document.adoptedStyleSheets = [own]
}, style)
await save(join(root, 'public/social.png'), await page.screenshot())

await browser.close()
await server.close()

/** @param {string} path @param {Buffer} png */
async function save(path, png) {
  await writeFile(path, png)
  console.log(`${path.slice(root.length)}: ${Math.round(png.length / 1024)} KB`)
}
