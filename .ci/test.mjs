// `npm test`: every check in order. A failed one never stops the ones after it. The last line is the sum.
import { mkdir, readFile, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { ensureInstalled } from './install.mjs'
import { root } from './place.mjs'
import { script } from './process.mjs'

const reports = join(root, 'node_modules/.cache/bentwise')
let passed = 0
let failed = 0
/** @type {string[]} */
const broken = []

/** @param {string} name @param {{ passed: number, failed: number, skipped?: number }} count */
function note(name, count) {
  passed += count.passed
  failed += count.failed
  if (count.failed > 0) broken.push(name)
  const skipped = count.skipped ? `, ${count.skipped} skipped` : ''
  console.log(`-- ${name}: ${count.passed} passed, ${count.failed} failed${skipped}`)
}

/** @typedef {Record<string, string>} Env what a check is to see in its environment beside the rest */

/** A check that passes or fails as a whole. @param {string} name @param {string} npmScript @param {Env} [env] */
async function check(name, npmScript, env) {
  console.log(`\n== ${name}`)
  const ok = (await script(npmScript, [], env)).code === 0
  note(name, ok ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 })
}

/**
 * A Vitest project, or some of its files, counted test by test.
 * @param {string} name @param {'engine' | 'site'} project @param {string[]} [only] @param {Env} [env]
 */
async function tests(name, project, only = [], env = {}) {
  console.log(`\n== ${name}`)
  const file = join(reports, `${project}.json`)
  await rm(file, { force: true })
  const args = [...only, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`]
  const { code } = await script(`test:${project}`, args, env)
  const report = await readFile(file, 'utf8').then(JSON.parse, () => undefined)
  const count = {
    passed: report?.numPassedTests ?? 0,
    failed: report ? failuresIn(report) : 0,
    skipped: (report?.numPendingTests ?? 0) + (report?.numTodoTests ?? 0)
  }
  // Nor may a failure outside any test (a stray rejection, a global setup that throws) go uncounted.
  if (code !== 0 && count.failed === 0) count.failed = 1
  note(name, count)
}

/**
 * Failed tests, and files that do not load: those have no tests to fail, yet are a failure.
 * @param {{ testResults: { status: string, assertionResults: { status: string }[] }[] }} report
 */
function failuresIn({ testResults }) {
  let sum = 0
  for (const { status, assertionResults } of testResults) {
    const tests = assertionResults.filter((test) => test.status === 'failed').length
    sum += tests === 0 && status === 'failed' ? 1 : tests
  }
  return sum
}

// The site as somebody else may publish it: in a folder of their own address, with their own shop sheet.
const elsewhere = {
  OUT_DIR: 'node_modules/.cache/bentwise/elsewhere',
  BASE_PATH: '/some/folder/',
  SITE_URL: 'https://frames.example',
  BENTWISE_SHOP: 'tests/site/own-shop.json'
}

if (await ensureInstalled()) {
  await mkdir(reports, { recursive: true })
  await check('format and lint', 'check:lint')
  await check('types', 'check:types')
  await check('astro check', 'check:astro')
  await tests('engine tests', 'engine')
  await check('build', 'build')
  await tests('site tests', 'site')
  await check('build for elsewhere', 'build', elsewhere)
  await tests('site tests elsewhere', 'site', ['elsewhere', 'whole'], elsewhere)
} else {
  note('install', { passed: 0, failed: 1 })
}

console.log(broken.length > 0 ? `\nFailed: ${broken.join('; ')}` : '\nAll checks passed.')
console.log(`${passed} passed, ${failed} failed`)
process.exitCode = failed > 0 ? 1 : 0
