// How long the browser takes over each step of a drag on the log end, its processor slowed to a quarter. Reported, never
// asserted: `npm exec -- node tests/bench/log-end.mjs [steps] [slow-down]`, on dist/ as built.
import { chromium } from 'playwright-core'
import { findBrowser, flags } from '../../.ci/browser.mjs'
import { serve } from '../../.ci/server.mjs'

const steps = Number(process.argv[2] ?? 200)
const slow = Number(process.argv[3] ?? 4)
/** What the main thread does in a frame. To hand it over (Commit) it waits for the compositor, which here has no graphics card. */
const WORK = ['FireAnimationFrame', 'EventDispatch', 'UpdateLayoutTree', 'Layout', 'PrePaint', 'Paint', 'Layerize']

const server = await serve()
const browser = await chromium.launch({ ...(await findBrowser()), args: flags, headless: true })
const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
await page.goto(`${server.origin}${server.base}log-end/`)
await page.locator('#log-ends[data-live]').waitFor()
const box = await page.locator('.ends-piece').boundingBox()
if (box === null) throw new Error('nothing to take hold of')
const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]

/** @type {any[]} */
const events = []
const devtools = await page.context().newCDPSession(page)
devtools.on('Tracing.dataCollected', ({ value }) => events.push(...value))
await devtools.send('Emulation.setCPUThrottlingRate', { rate: slow })
await devtools.send('Tracing.start', {
  traceConfig: { includedCategories: ['devtools.timeline', 'disabled-by-default-devtools.timeline', 'toplevel'] },
  transferMode: 'ReportEvents'
})
await page.mouse.move(x, y)
await page.mouse.down()
for (let i = 1; i <= steps; i++) {
  await page.mouse.move(x - 40 * Math.sin(i / 9), y - 45 * (1 - Math.cos(i / 13)))
  await page.waitForTimeout(25)
}
await page.mouse.up()
const complete = new Promise((done) => devtools.once('Tracing.tracingComplete', () => done(null)))
await devtools.send('Tracing.end')
await complete
await browser.close()
await server.close()

const move = events.find((e) => e.name === 'EventDispatch' && e.args.data.type === 'pointermove')
const main = events.filter((e) => e.ph === 'X' && e.pid === move.pid && e.tid === move.tid)
const frames = main
  .filter((e) => e.name === 'RunTask')
  .map((task) => ({ task, parts: main.filter((e) => e.ts >= task.ts && e.ts + e.dur <= task.ts + task.dur) }))
  .filter(({ parts }) => parts.some((e) => e.name === 'FireAnimationFrame'))

/** @param {string} name @param {number[]} ms */
function report(name, ms) {
  const sorted = ms.toSorted((a, b) => a - b)
  const at = (/** @type {number} */ share) => (sorted[Math.ceil(share * sorted.length) - 1] ?? 0).toFixed(1).padStart(6)
  const late = ms.filter((n) => n > 1000 / 60).length
  process.stdout.write(
    `${name.padEnd(32)} median${at(0.5)}  95 %${at(0.95)}  most${at(1)} ms  above 16.7 ms: ${late}\n`
  )
}
const spent = (/** @type {any[]} */ parts, /** @type {string} */ name) =>
  parts.filter((e) => e.name === name).reduce((ms, e) => ms + (e.tdur ?? e.dur) / 1000, 0)
process.stdout.write(`${frames.length} frames of a drag in ${steps} steps, processor ${slow} times slower\n`)
report(
  'frame, by the clock',
  frames.map(({ task }) => task.dur / 1000)
)
report(
  'frame, on the processor',
  frames.map(({ task }) => task.tdur / 1000)
)
report(
  '  without handing it over',
  frames.map(({ task, parts }) => task.tdur / 1000 - spent(parts, 'Commit'))
)
for (const name of WORK)
  report(
    `  ${name}`,
    frames.map(({ parts }) => spent(parts, name))
  )
