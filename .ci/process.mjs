import { spawn } from 'node:child_process'
import { root } from './place.mjs'

// Windows finds npm and the tools only as .cmd files, which need a shell.
const shell = process.platform === 'win32'

/**
 * Runs a command in the checkout, shows its output, and gives its exit code and what it said.
 * @param {string} command
 * @param {string[]} args
 * @param {{ env?: Record<string, string>, keep?: boolean }} [options] `keep`: hold the output for reading.
 * @returns {Promise<{ code: number, output: string }>}
 */
export function run(command, args, { env = {}, keep = false } = {}) {
  const colour = keep && process.stdout.isTTY ? { FORCE_COLOR: '1' } : {}
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: root,
      shell,
      env: { ...process.env, ...colour, ...env },
      stdio: ['inherit', keep ? 'pipe' : 'inherit', keep ? 'pipe' : 'inherit']
    })
    let output = ''
    /** @param {NodeJS.WriteStream} to @returns {(chunk: Buffer) => void} */
    const pass = (to) => (chunk) => {
      output += chunk
      to.write(chunk)
    }
    child.stdout?.on('data', pass(process.stdout))
    child.stderr?.on('data', pass(process.stderr))
    child.on('error', (error) => resolve({ code: 1, output: String(error) }))
    child.on('close', (code) => resolve({ code: code ?? 1, output }))
  })
}

/**
 * Runs one of package.json's scripts. Going through npm finds the tools, and the Node that the project brings:
 * a shell that was started before the install still holds the machine's own.
 * @param {string} script
 * @param {string[]} [args]
 * @param {Record<string, string>} [env]
 */
export function script(script, args = [], env = {}) {
  return run('npm', ['run', '-s', script, ...(args.length > 0 ? ['--', ...args] : [])], { env })
}
