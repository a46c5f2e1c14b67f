// Runs Astro's command line without its telemetry: `node .ci/astro.mjs <command> [arguments]`.
import { run } from './process.mjs'

const { code } = await run('astro', process.argv.slice(2), { env: { ASTRO_TELEMETRY_DISABLED: '1' } })
process.exitCode = code
