/** `npm run bench`: the figures of the closing notes, on this machine, now. Times are medians; no test depends on them. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { ready } from './ready.mjs'

await ready()
const { benchStorage } = await import('./bench-storage.mjs')
const { benchApp } = await import('./bench-app.mjs')
const { buildEntry } = await import('./build-entry.mjs')
const root = fileURLToPath(new URL('..', import.meta.url))
const ms = (value) => `${value.toFixed(1)} ms`

/** Median seconds of whole-process runs of the command line. */
function whole(rounds, ...args) {
  const times = Array.from({ length: rounds }, () => {
    const began = performance.now()
    const run = spawnSync(process.execPath, [join(root, 'dist/cli.js'), ...args], { cwd: root })
    if (run.status !== 0) throw new Error(String(run.stderr))
    return (performance.now() - began) / 1000
  }).sort((a, b) => a - b)
  return `${(times[Math.floor(rounds / 2)] ?? 0).toFixed(2)} s (${rounds} runs, ${times[0]?.toFixed(2)} to ${times.at(-1)?.toFixed(2)})`
}

console.log(`Node ${process.versions.node}, ${cpus().length} × ${cpus()[0]?.model ?? 'unknown processor'}`)
const { benchFold } = await import(pathToFileURL(await buildEntry('tests/bench/fold.ts', 'bench-fold')).href)
const fold = benchFold()
console.log(`fold of ${fold.size} entries: ${ms(fold.median)} (${ms(fold.least)} to ${ms(fold.most)})`)
const { benchDosePlan, benchPlanNow } = await import(
  pathToFileURL(await buildEntry('tests/bench/dose-plan.ts', 'bench-dose-plan')).href
)
const plan = benchDosePlan()
const recompute = benchPlanNow()
const withinScreen = ({ half, most }) => `half within ${ms(half)}, 95 % within ${ms(most)} (a screen has 16 ms)`
console.log(`plan of ${plan.size} lines: ${withinScreen(plan)}`)
console.log(`plan of ${recompute.size} lines in a case, as its page recomputes it: ${withinScreen(recompute)}`)
const { benchCulture } = await import(pathToFileURL(await buildEntry('tests/bench/culture.ts', 'bench-culture')).href)
const culture = benchCulture()
console.log(`results of cultures read on one core: ${culture.perSecond} a second (${culture.results} of one drug each)`)
console.log(await (await import('./bench-antibiogram.mjs')).benchAntibiogram())
console.log(await (await import('./bench-yearly.mjs')).benchYearly())
const { benchInBrowser } = await import('./bench-browser.mjs')
await benchInBrowser(withinScreen)
const { benchOffline } = await import('./bench-offline.mjs')
await benchOffline()
for (const line of await (await import('./bench-evidence.mjs')).benchEvidence()) console.log(line)
for (const line of await (await import('./bench-survival.mjs')).benchSurvival()) console.log(line)
for (const [store, figures] of Object.entries(await benchStorage())) {
  if (figures)
    console.log(
      `durable entries per second, ${store}: ${figures.oneAtATime} one at a time, ${figures.batchesOfTwenty} in batches of 20`,
    )
  else console.log(`durable entries per second, ${store}: skipped`)
}
const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-bench-'))
const file = join(folder, 'case.jsonl')
console.log(`demo, whole process: ${whole(5, 'demo', '--case', 'spaniel', '--out', file)}`)
console.log(`verify, whole process: ${whole(5, 'verify', file)}`)
console.log(`pack of the demo case, whole process: ${whole(5, 'pack', file, '--out', join(folder, 'papers'))}`)
rmSync(folder, { recursive: true, force: true })
await benchApp()
