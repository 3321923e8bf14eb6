/**
 * The figures of the app: the lists over ten thousand cases, an entry on another screen, a warm start, the first
 * JavaScript. Used by scripts/bench.mjs; alone: `node scripts/bench-app.mjs [CASES]`.
 */
import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { ready } from './ready.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const spread = ({ median, p95, most }) =>
  `p95 ${p95.toFixed(1)} ms (median ${median.toFixed(1)}, most ${most.toFixed(1)})`

async function load(entry, name) {
  const { buildEntry } = await import('./build-entry.mjs')
  return import(pathToFileURL(await buildEntry(entry, name)).href)
}

async function lists(cases) {
  const { benchListsOnSqlite, benchListsOnPostgres } = await load('tests/bench/owed-lists.ts', 'bench-lists')
  for (const [store, bench] of Object.entries({ sqlite: benchListsOnSqlite, postgres: benchListsOnPostgres })) {
    const found = await bench(cases)
    if (!found) {
      console.log(`Owed and cases, ${store}: skipped`)
      continue
    }
    console.log(
      `Owed (${found.owed} rows) and ${found.cases} cases, ${found.megabytes} MB, ${store}: ${spread(found.whole)}; only what changed ${spread(found.news)}; an entry among them ${spread(found.accept)}`,
    )
    const { accept, seconds, waits } = found.house
    console.log(
      `a policy of the house that moves a date in every case: on disk in ${accept.toFixed(1)} ms, in every list after ${seconds.toFixed(1)} s; a request waits meanwhile ${spread(waits)}`,
    )
  }
}

async function press() {
  const { benchPress } = await load('tests/bench/press.ts', 'bench-press')
  const { kilobytes, paper, median, most } = await benchPress()
  console.log(
    `a letter of more than twenty pages (${kilobytes.toFixed(0)} kB) is printed in ${paper.toFixed(0)} ms; a request for the server's health waits meanwhile ${median.toFixed(1)} ms (most ${most.toFixed(1)})`,
  )
}

async function live() {
  const { benchLiveOnSqlite, benchLiveOnPostgres } = await load('tests/bench/live.ts', 'bench-live')
  for (const [store, bench] of Object.entries({ sqlite: benchLiveOnSqlite, postgres: benchLiveOnPostgres })) {
    const found = await bench()
    console.log(`an entry on another screen, ${store}: ${found ? spread(found) : 'skipped'}`)
  }
}

/** Seconds from `npm start` to a whole first page, on a data folder that has the invented practice in it. */
async function warmStart(rounds = 5) {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-bench-'))
  const data = join(folder, 'data')
  const cli = (...args) => {
    const run = spawnSync(process.execPath, [join(root, 'dist/cli.js'), ...args], { cwd: root, encoding: 'utf8' })
    if (run.status !== 0) throw new Error(run.stderr)
  }
  cli('demo', '--out', join(folder, 'demo.jsonl'))
  cli('import', join(folder, 'demo.jsonl'), '--data', data)
  const times = []
  for (let round = 0; round <= rounds; round += 1) {
    const took = await oneStart(data)
    // The first start of a folder makes its certificates; the next ones are warm.
    if (round > 0) times.push(took)
  }
  rmSync(folder, { recursive: true, force: true })
  times.sort((a, b) => a - b)
  return `${times[Math.floor(rounds / 2)].toFixed(2)} s (${rounds} runs, ${times[0].toFixed(2)} to ${times.at(-1).toFixed(2)})`
}

async function oneStart(data) {
  const env = { ...process.env }
  delete env.DATABASE_URL
  const began = performance.now()
  const child = spawn('npm', ['start', '--', '--data', data, '--port', '0', '--host', '127.0.0.1'], {
    cwd: root,
    env,
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  let said = ''
  child.stdout.setEncoding('utf8').on('data', (chunk) => {
    said += chunk
  })
  try {
    for (;;) {
      const url = /http:\/\/localhost:\d+/.exec(said)?.[0]
      const page = url && (await fetch(url).catch(() => undefined))
      if (page?.ok && (await page.text()).includes('<div id="root">')) return (performance.now() - began) / 1000
      if (child.exitCode !== null) throw new Error(`npm start ended: ${said}`)
      await new Promise((resolve) => setTimeout(resolve, 10))
    }
  } finally {
    const ended = new Promise((resolve) => child.once('exit', resolve))
    child.kill('SIGTERM')
    await ended
    await untilFree(data)
  }
}

/** npm may end a moment before the server has closed its folder. */
async function untilFree(data) {
  for (let tries = 0; tries < 100; tries += 1) {
    const run = spawnSync(process.execPath, [join(root, 'dist/cli.js'), 'owed', '--data', data], { cwd: root })
    if (run.status === 0) return
  }
  throw new Error('The server did not end with npm.')
}

export async function benchApp(cases = 10_000) {
  const { webSize } = await import('./web-size.mjs')
  const { script, style } = webSize()
  console.log(`first JavaScript: ${(script / 1000).toFixed(1)} kB gzipped; styles ${(style / 1000).toFixed(1)} kB`)
  console.log(`npm start to a whole page, warm: ${await warmStart()}`)
  await live()
  await press()
  await lists(cases)
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  await ready()
  await benchApp(Number(process.argv[2] ?? 10_000))
}
