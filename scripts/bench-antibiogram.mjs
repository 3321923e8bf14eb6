/**
 * An antibiogram over a million rows that are read as they come: time, and the most memory it ever held, in a program of
 * its own. Used by scripts/bench.mjs; alone: `node scripts/bench-antibiogram.mjs [ROWS]`.
 */
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { buildEntry } from './build-entry.mjs'

export async function benchAntibiogram(size = 1_000_000) {
  const program = await buildEntry('tests/bench/antibiogram.ts', 'bench-antibiogram')
  const run = spawnSync(process.execPath, [program, String(size)], { encoding: 'utf8' })
  if (run.status !== 0) throw new Error(run.stderr)
  const { read, isolates, seconds, processor, megabytes } = JSON.parse(run.stdout)
  const said = (value) => value.toLocaleString('en')
  return `antibiogram of ${said(read)} rows, streamed: ${seconds.toFixed(1)} s (${processor.toFixed(1)} s of processor), ${said(isolates)} first isolates counted, at most ${Math.round(megabytes)} MB of memory`
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  console.log(await benchAntibiogram(Number(process.argv[2] ?? 1_000_000)))
}
