/**
 * The yearly report over ten thousand invented cases: frozen, read back, counted, written as document, CSV and JSON, in a
 * program of its own; the PDF apart. Used by scripts/bench.mjs; alone: `node scripts/bench-yearly.mjs [CASES]`.
 */
import { spawnSync } from 'node:child_process'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { buildEntry } from './build-entry.mjs'

const faces = ['400Regular', '400Regular_Italic', '600SemiBold', '700Bold']

export async function benchYearly(size = 10_000) {
  const program = await buildEntry('tests/bench/yearly.ts', 'bench-yearly')
  const { resolve } = createRequire(import.meta.url)
  const fonts = faces.map((face) => resolve(`@expo-google-fonts/noto-sans/${face}/NotoSans_${face}.ttf`))
  const runs = Array.from({ length: 3 }, () => {
    const run = spawnSync(process.execPath, [program, String(size), ...fonts], { encoding: 'utf8' })
    if (run.status !== 0) throw new Error(run.stderr)
    return JSON.parse(run.stdout)
  }).sort((a, b) => a.whole - b.whole)
  const { cases, frozen, counted, written, whole, processor, megabytes, print, withPdf } = runs[1]
  const s = (value) => `${value.toFixed(2)} s`
  return `yearly report over ${cases.toLocaleString('en')} cases: ${s(whole)} (${s(processor)} of processor; frozen ${s(frozen)}, read back and counted ${s(counted)}, document, CSV and JSON ${s(written)}; ${s(runs[0].whole)} to ${s(runs[2].whole)}), at most ${Math.round(megabytes)} MB of memory; its PDF ${s(print)} more, ${Math.round(withPdf)} MB`
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  console.log(await benchYearly(Number(process.argv[2] ?? 10_000)))
}
