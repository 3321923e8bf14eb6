/**
 * Kaplan–Meier and log-rank beside R's survival package over the same table, in one run, with and without the reading of the
 * table. Used by scripts/bench.mjs; alone: `node scripts/bench-survival.mjs`. Without that package only our own times.
 */
import { spawnSync } from 'node:child_process'
import { createWriteStream, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { buildEntry } from './build-entry.mjs'

const rProgram = fileURLToPath(new URL('bench-survival.R', import.meta.url))
const rounds = 5

export async function benchSurvival(sizes = [10_000, 100_000, 1_000_000]) {
  const program = await buildEntry('tests/bench/survival.ts', 'bench-survival')
  const { followedLines } = await import(pathToFileURL(program).href)
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-survival-'))
  const lines = ['time to an event, processor time']
  try {
    for (const size of sizes) {
      const file = join(folder, `${size}.csv`)
      await pipeline(Readable.from(followedLines(size)), createWriteStream(file))
      const own = oneSize(program, file)
      const there = inR(file)
      lines.push(
        `${size} rows: Kaplan–Meier ${ms(own.fit)}, log-rank ${ms(own.test)}; reading the table and both ${ms(own.whole)} by the clock; at most ${Math.round(own.megabytes)} MB`,
      )
      if (there) lines.push(...compared(own, there))
      else if (size === sizes[0]) lines.push('R or its package survival is not on this machine: only our own times')
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  return lines
}

/** In a process of its own, so that the memory is that of one size. */
function oneSize(program, file) {
  const code = `import(${JSON.stringify(pathToFileURL(program).href)}).then(({ benchSurvival }) => benchSurvival(${JSON.stringify(file)}, ${rounds})).then((found) => console.log(JSON.stringify(found)))`
  const run = spawnSync(process.execPath, ['--input-type=module', '-e', code], { encoding: 'utf8' })
  if (run.status !== 0) throw new Error(run.stderr)
  return JSON.parse(run.stdout)
}

function inR(file) {
  const run = spawnSync('Rscript', ['--vanilla', rProgram, file, String(rounds)], { encoding: 'utf8' })
  return run.status === 0 ? JSON.parse(run.stdout) : undefined
}

function compared(own, there) {
  const off = Math.max(
    Math.abs(own.survival - there.survival),
    Math.abs(own.chiSquare - there.chiSquare) / Math.max(1, there.chiSquare),
  )
  return [
    `  R ${there.r}, survival ${there.package}: Kaplan–Meier ${ms(there.fit)} (${(there.fit / own.fit).toFixed(1)} × ours, target 5), log-rank ${ms(there.test)} (${(there.test / own.test).toFixed(1)} × ours); its reading of the table ${ms(there.reading)}; answers differ by ${off.toExponential(1)}`,
  ]
}

const ms = (value) => `${value < 10 ? value.toFixed(2) : value.toFixed(0)} ms`

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  for (const line of await benchSurvival()) console.log(line)
}
