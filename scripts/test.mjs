/**
 * `npm test`: every check and every test, on a fresh machine too. Installs the packages of the lock file, then the
 * Debian packages that the tests of PostgreSQL, of PDF and in a browser need (says so; asks with one sentence when it
 * may not). CHROME names another browser than Debian's.
 */
import { spawn } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { ensureDebian } from './ensure-debian.mjs'
import { installPackages } from './ready.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const counts = { passed: 0, failed: 0, skipped: 0 }

/** The closing counts of vitest stand in one line, those of the browser's runner one under the other. */
function countsIn(said) {
  const lines = said.split('\n')
  const whole = lines.findLast((text) => /\bTests\s+.*\d+ (passed|failed)/.test(text))
  return whole ?? lines.filter((text) => /^\s+\d+ (passed|failed|skipped)\b/.test(text)).join(' ')
}

/** Runs one step, shows what it says, and adds up the tests it counted. */
function step(title, args) {
  console.log(`\n== ${title}`)
  return new Promise((done) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let said = ''
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding('utf8').on('data', (chunk) => {
        said += chunk
        process.stdout.write(chunk)
      })
    }
    child.on('close', (code) => {
      const line = countsIn(said)
      for (const kind of Object.keys(counts)) counts[kind] += Number(new RegExp(`(\\d+) ${kind}`).exec(line)?.[1] ?? 0)
      done(code === 0)
    })
  })
}

await installPackages()
try {
  ensureDebian(['postgresql', 'poppler-utils', 'qpdf', ...(process.env.CHROME ? [] : ['chromium'])])
} catch (error) {
  console.error(error.message)
  process.exit(1)
}

const results = []
results.push(await step('check: types, style, import rule, unit tests', ['scripts/check.mjs']))
// The same plans at every run on as many processors, so that a failure is of the change at hand; `npm run laws` makes new ones each time.
results.push(await step('laws of the doses', ['scripts/laws.mjs', '100000', '20261129']))
results.push(await step('spoilt messages of laboratories', ['scripts/broken-messages.mjs', '100000', '20261130']))
results.push(await step('build', ['scripts/build.mjs', '--force']))
results.push(await step('first JavaScript of the screens', ['scripts/web-size.mjs']))
results.push(await step('the worked case of the README', ['scripts/readme.mjs', '--check']))
results.push(
  await step('both stores, papers, command line, journeys', [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--project',
    'whole',
  ]),
)
results.push(
  await step('journeys in a browser', ['node_modules/@playwright/test/cli.js', 'test', '--config', 'tests/browser']),
)
if (results.includes(false) && counts.failed === 0) counts.failed = 1
console.log(
  `\n${counts.passed} passed, ${counts.failed} failed${counts.skipped > 0 ? `, ${counts.skipped} skipped` : ''}`,
)
process.exitCode = results.includes(false) ? 1 : 0
