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

/** A check that passes or fails as a whole. @param {string} name @param {string} npmScript */
async function check(name, npmScript) {
  console.log(`\n== ${name}`)
  const ok = (await script(npmScript)).code === 0
  note(name, ok ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 })
}

/** A Vitest project, counted test by test. @param {string} name @param {'engine' | 'site'} project */
async function tests(name, project) {
  console.log(`\n== ${name}`)
  const file = join(reports, `${project}.json`)
  await rm(file, { force: true })
  const args = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`]
  const { code } = await script(`test:${project}`, args)
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

if (await ensureInstalled()) {
  await mkdir(reports, { recursive: true })
  await check('format and lint', 'check:lint')
  await check('types', 'check:types')
  await check('astro check', 'check:astro')
  await tests('engine tests', 'engine')
  await check('build', 'build')
  await tests('site tests', 'site')
} else {
  note('install', { passed: 0, failed: 1 })
}

console.log(broken.length > 0 ? `\nFailed: ${broken.join('; ')}` : '\nAll checks passed.')
console.log(`${passed} passed, ${failed} failed`)
process.exitCode = failed > 0 ? 1 : 0
